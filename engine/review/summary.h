// The deviation summary: what the scored part of a track shows, as numbers.
#pragma once

#include <array>
#include <vector>

#include "lesson/attempt.h"
#include "review/gate_value.h"
#include "review/spread.h"

namespace slopewise {

struct WorstMoment {
    std::size_t point = 0;  // index into the track
    double severity = 0.0;  // largest deviation as a multiple of its tolerance
    Deviations deviations;
    // The point at which a flight that began off its path was back on it; 0: it began on it, or never came
    // back. On the way back only the speed counts, and the path where it was left farther than at the start.
    std::size_t back_on_path = 0;
};

struct Summary {
    End end = End::none;
    TrackPoint last;  // where scoring ended
    double scored_s = 0.0;
    std::vector<GateValue> gates;  // those the flight began above, highest first
    Spread path_rad, path_m, speed_mps;
    double path_share = 0.0, speed_share = 0.0, sink_share = 0.0, all_share = 0.0;  // of points in tolerance
    LightSite::Kind light_kind = LightSite::Kind::papi;
    int light_units = 4;                  // of the picture
    std::array<double, 5> light_share{};  // of points showing 0 ... light_units white
    double light_unseen_share = 0.0;
    int light_changes = 0;
    WorstMoment worst;
};

Summary summarise(const Scenario& scenario, const Track& track, End end);

}  // namespace slopewise
