#include "world/wind.h"

#include "base/exact_math.h"
#include "base/interpolate.h"

namespace slopewise {
namespace {

double logarithmic(const Wind& wind, double height_m) {
    if (height_m <= wind.roughness_m) return 0.0;
    return wind.headwind_mps * exact::log(height_m / wind.roughness_m) /
           exact::log(wind.reference_height_m / wind.roughness_m);
}

double tabulated(const Wind& wind, double height_m) {
    if (wind.table_size == 0) return 0.0;
    if (height_m <= wind.table[0].height_m) return wind.table[0].headwind_mps;
    for (int i = 1; i < wind.table_size; ++i) {
        const Wind::Point& below = wind.table[static_cast<std::size_t>(i - 1)];
        const Wind::Point& above = wind.table[static_cast<std::size_t>(i)];
        if (height_m > above.height_m) continue;
        const double fraction = (height_m - below.height_m) / (above.height_m - below.height_m);
        return lerp(below.headwind_mps, above.headwind_mps, fraction);
    }
    return wind.table[static_cast<std::size_t>(wind.table_size - 1)].headwind_mps;
}

}  // namespace

double headwind_at_mps(const Wind& wind, double height_m) {
    switch (wind.kind) {
    case Wind::Kind::steady: return wind.headwind_mps;
    case Wind::Kind::logarithmic: return logarithmic(wind, height_m);
    case Wind::Kind::table: return tabulated(wind, height_m);
    }
    return 0.0;
}

}  // namespace slopewise
