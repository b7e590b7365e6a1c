// The model pilot at the controls of an attempt.
#pragma once

#include "flight/model_pilot.h"
#include "lesson/attempt.h"

namespace slopewise {

// The briefing's figures for this scenario, as the pilot takes them along.
PilotPlan plan_of(const Scenario& scenario);

// What a pilot sees at this moment.
Sight sight_of(const Scenario& scenario, const Attempt& attempt);

// A pilot ready at the start of the scenario.
ModelPilot pilot_for(const Scenario& scenario, const PilotSkill& skill, std::uint64_t seed);

// Flies until scoring ends, or for 20 minutes at most; calls `each(controls, events)` after every tick.
template <class Each>
void demonstrate(const Scenario& scenario, Attempt& attempt, ModelPilot& pilot, Each&& each) {
    constexpr std::int64_t most_ticks = 20 * 60 * 120;
    while (attempt.end == End::none && attempt.tick < most_ticks) {
        const Controls controls = fly(pilot, sight_of(scenario, attempt), time_s(attempt));
        each(controls, tick(scenario, attempt, controls));
    }
}

}  // namespace slopewise
