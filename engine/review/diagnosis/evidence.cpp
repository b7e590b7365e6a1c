#include "review/diagnosis/evidence.h"

#include "base/units.h"

namespace slopewise {

Approach approach_of(const Scenario& scenario, const Criteria& criteria, const Track& track,
                     const Review& review, double panel_share) {
    Approach approach{scenario, criteria, scored_points(track), review};
    const double height_m = scenario.start_state.z_m / 2.0;
    const TrimState briefed = reference_trim(scenario, height_m);
    Scenario calm = scenario;
    calm.surroundings.wind = Wind{};
    approach.briefed_pitch_rad = briefed.pitch_rad;
    approach.briefed_lever = briefed.controls.throttle;
    approach.calm_lever = reference_trim(calm, height_m).controls.throttle;
    approach.panel_share = panel_share;
    return approach;
}

double path_error_deg(const TrackPoint& point) { return deg_from_rad(point.path_error_rad); }
double height_ft(const TrackPoint& point) { return ft_from_m(point.wheel_height_m); }
double speed_error_kt(const Approach& approach, const TrackPoint& point) {
    return kt_from_mps(point.cas_mps - approach.scenario.lesson.target_cas_mps);
}

}  // namespace slopewise
