// Everything that is measured of one approach. What it means is the diagnosis's to say.
#pragma once

#include <vector>

#include "review/aim_point.h"
#include "review/answers.h"
#include "review/bands.h"
#include "review/configuration.h"
#include "review/decision.h"
#include "review/energy.h"
#include "review/go_around.h"
#include "review/summary.h"
#include "review/touchdown.h"

namespace slopewise {

struct Review {
    Summary summary;
    GateValue start;                   // where the approach began
    std::vector<Stability> stability;  // of each of summary.gates; stable by default where not reached
    Decision decision = Decision::none;
    Bands bands;
    Energy energy;
    ControlActivity controls;
    std::vector<PathAnswer> path_answers;
    std::vector<LightAnswer> light_answers;
    Answers answers;
    Configuration configuration;
    AimDrift aim;
    Touchdown touchdown;
    GoAroundFigures go_around;
};

Review review_of(const Scenario& scenario, const Criteria& criteria, const Track& track, End end);

// The gate of a height with its stability; null where the flight began below it or never came down to it.
const GateValue* gate_at(const Review& review, double height_ft);
const Stability* stability_at(const Review& review, double height_ft);

}  // namespace slopewise
