// Three pictures to be compared: the same eye distance, and one thing that differs.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "base/units.h"
#include "lesson/scenario.h"

namespace slopewise {

enum class StillSet { paths, widths, slopes, lights };
inline constexpr std::size_t still_set_count = 4;

inline constexpr double still_distance_m = 1852.0;  // eye to aim point along the ground: 1 NM

// What differs, in the order of BoardStill::which. Widths are of small fields and of larger ones (18, 30 and
// 45 m; AIM 2-3-3 lists 60, 100 and 150 ft).
inline constexpr std::array<double, 3> still_paths_deg{2.5, 3.0, 3.5};
inline constexpr std::array<double, 3> still_widths_m{18.0, 30.0, 45.0};
inline constexpr std::array<double, 3> still_slopes_percent{2.0, 0.0, -2.0};

// What pilots left to the runway's lights over dark ground held on average in a study: 2.2 degrees over a
// whole runway of 150 by 6,000 ft, 24 of them (Mertens and Lewis, FAA-AM-82-6, its abstract).
inline constexpr double dark_ground_path_rad = rad_from_deg(2.2);

struct BoardStill {
    Scenario scenario;  // its aeroplane, runway, lights and hour; it is not flown
    Point3 eye;
    double pitch_rad = 0.0;  // the same in all of a set, so that it does not tell
    int which = 0;           // 0 to 2: the lower, narrower, rising, brighter one first
};

// The runway that all are compared with: 1,500 by 30 m, level, at 3 degrees, with the country and the
// equipment of another.
Runway standard_runway(const Runway& like);

// Shuffled by a seed of the set's own: the same order every time, and not that of the values.
std::vector<BoardStill> make_stills(const Scenario& base, StillSet set);

}  // namespace slopewise
