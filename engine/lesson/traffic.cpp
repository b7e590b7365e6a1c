#include "lesson/traffic.h"

#include <algorithm>

#include "base/exact_math.h"

namespace slopewise {

double leader_path_height_m(const Traffic& traffic, const Runway& runway, double x_m) {
    const double down_m = ground_height_m(runway, traffic.touchdown_m);
    if (x_m >= traffic.touchdown_m) return ground_height_m(runway, x_m);
    return down_m + (traffic.touchdown_m - x_m) * exact::tan(traffic.path_rad);
}

LeaderPlace leader_at(const Traffic& traffic, const Runway& runway, double start_distance_m, double time_s) {
    const double start_x_m = runway.aim_distance_m - start_distance_m + traffic.ahead_m;
    const double to_touchdown_s = std::max(0.0, traffic.touchdown_m - start_x_m) / traffic.ground_speed_mps;
    LeaderPlace place;
    if (time_s < to_touchdown_s) {
        place.x_m = start_x_m + traffic.ground_speed_mps * time_s;
    } else {
        place.on_ground = true;
        place.since_touchdown_s = time_s - to_touchdown_s;
        const double rolling_s =
            std::min(place.since_touchdown_s, traffic.ground_speed_mps / leader_braking_mps2);
        place.x_m = std::max(traffic.touchdown_m, start_x_m) +
                    (traffic.ground_speed_mps - 0.5 * leader_braking_mps2 * rolling_s) * rolling_s;
    }
    place.z_m = leader_path_height_m(traffic, runway, place.x_m);
    return place;
}

}  // namespace slopewise
