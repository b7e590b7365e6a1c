// How a go-around was flown: what follows the end of scoring too, if it was flown on.
#pragma once

#include "review/deviations.h"

namespace slopewise {

struct GoAroundFigures {
    bool flown = false;
    std::size_t point = 0;       // where it began: said so, or the lever on its way to full
    double height_m = 0.0;       // of the wheels, then
    double full_power_s = -1.0;  // until the lever was at 95 % or more; -1: it never was
    double lowest_m = 0.0;       // wheel height, from then on
    double slowest_mps = 0.0;    // calibrated, from then on
    double most_pitch_rad = 0.0;
    double first_flap_s = -1.0;      // until flap was first raised; -1: not, as far as it was flown
    bool flap_before_climb = false;  // raised while still sinking
    bool flap_all_at_once = false;   // by more than one setting within three seconds
    double flown_on_s = 0.0;         // how long the track goes on
};

inline constexpr double full_power_lever = 0.95;

inline constexpr double go_around_look_s = 60.0;  // so much of what follows its beginning

GoAroundFigures go_around_of(const Track& track, End end);

}  // namespace slopewise
