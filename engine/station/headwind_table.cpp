#include "station/headwind_table.h"

#include "base/exact_math.h"
#include "base/units.h"

namespace slopewise {

std::array<HeadwindRow, headwinds_kt.size()> headwind_table(const Scenario& scenario, double distance_m) {
    const Runway& runway = scenario.surroundings.runway;
    const double height_m = aim_point(runway).z_m + distance_m * exact::tan(runway.lights.nominal_path_rad);
    std::array<HeadwindRow, headwinds_kt.size()> table;
    Scenario there = scenario;
    for (std::size_t i = 0; i < table.size(); ++i) {
        HeadwindRow& row = table[i];
        row.headwind_mps = mps_from_kt(headwinds_kt[i]);
        there.surroundings.wind = Wind{};
        there.surroundings.wind.headwind_mps = row.headwind_mps;
        const TrimState trim = reference_trim(there, height_m);
        row.flyable = trim.flyable;
        if (!trim.flyable) continue;
        row.ground_speed_mps = trim.ground_speed_mps;
        row.sink_mps = trim.sink_mps;
        row.air_path_rad = -trim.air_path_rad;
        row.power = trim.power;
        row.lever = trim.controls.throttle;
        row.pitch_rad = trim.pitch_rad;
    }
    return table;
}

}  // namespace slopewise
