// The mean wind along the runway as a function of height: steady, logarithmic or tabulated.
#pragma once

#include <array>
#include <string_view>

namespace slopewise {

// Headwind is positive: air moving against the landing direction.
struct Wind {
    enum class Kind { steady, logarithmic, table };
    struct Point {
        double height_m;
        double headwind_mps;
    };

    Kind kind = Kind::steady;
    double headwind_mps = 0.0;         // steady; or logarithmic at the reference height
    double reference_height_m = 10.0;  // where a station measures the wind (WMO)
    double roughness_m = 0.03;         // logarithmic: 0.03 m is open grass (common practice)
    std::array<Point, 8> table{};      // rising heights
    int table_size = 0;
};

// Roughness lengths by what the ground is like (Davenport's classes as the WMO's guide gives them, from
// memory).
struct Terrain {
    std::string_view name;
    double roughness_m;
};
inline constexpr std::array<Terrain, 6> terrains{
    {{"water", 0.0002}, {"snow", 0.005}, {"grass", 0.03}, {"crops", 0.10}, {"hedges", 0.25}, {"woods", 1.0}}};

// Mean headwind (m/s) at a height above the ground (m). Below the ground the value at the ground holds;
// outside the table its end values hold. The logarithmic profile is u(h) = u_ref ln(h/z0) / ln(h_ref/z0)
// and is zero at and below the roughness length.
double headwind_at_mps(const Wind& wind, double height_m);

}  // namespace slopewise
