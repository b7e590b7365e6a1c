// Flap and trim: when landing flap was set, what each step of flap did, and whether it was trimmed.
#pragma once

#include <vector>

#include "review/deviations.h"

namespace slopewise {

struct FlapStep {
    std::size_t point = 0;  // the first with the new setting
    int from = 0, to = 0;
    double speed_mps = 0.0;  // calibrated, then
    bool too_fast = false;   // above the limit of the new setting
    double balloon_m = 0.0;  // most height gained on the path within six seconds, less that at the step
    double retrim_s = -1.0;  // until the trim had moved by 0.01 of its travel; -1: within 20 s it had not
    double speed_lost_mps = 0.0;  // most speed lost within ten seconds
};

struct Configuration {
    std::vector<FlapStep> steps;
    int landing_setting = 0;
    bool landing_at_start = false;
    double landing_height_m = -1.0;  // wheel height at which landing flap was set for good; -1: never
    double over_flap_speed_s = 0.0;  // time above the limit of the flap that was out
    double held_stick = 0.0;         // mean of the last half minute: what the trim did not carry
};

inline constexpr double balloon_s = 6.0;
inline constexpr double retrim_within_s = 20.0;
inline constexpr double held_over_s = 30.0;

Configuration configuration_of(const Scenario& scenario, TrackPoints points);

}  // namespace slopewise
