// Cards of "one control at a time": what does it do within some seconds, all else held? The truth is flown,
// not looked up.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

#include "drill/card.h"
#include "drill/drill.h"
#include "review/track.h"

namespace slopewise {

enum class ControlStep { power_up, power_down, nose_up, nose_down, flap_down, trim_up, trim_down };
inline constexpr std::array<std::string_view, 7> control_step_words{
    "Power up",      "Power down",   "Stick back",    "Stick forward",
    "Flap one step", "Trim nose up", "Trim nose down"};

enum class ControlEffect { speed, path, sink };

// The start that the card's flight begins from, and that flight with the control stepped at once and held.
Scenario control_scenario(const ControlCards& settings, const Scenario& base);
Controls stepped_controls(const ControlCards& settings, const Scenario& scenario, ControlStep step);
Track fly_control_step(const ControlCards& settings, const Scenario& scenario, ControlStep step);

// What became of it: the means of the last second, less the start's. Height against the nominal path.
struct ControlOutcome {
    double speed_mps = 0.0, height_m = 0.0, sink_mps = 0.0;
};
ControlOutcome control_outcome(const Track& track);

// Cards of one step and one effect each, drawn among those that are clear: an outcome between half and one
// and a half times what still counts as the same is not asked for. No card stands twice before all have stood
// once.
std::vector<Card> control_deck(const ControlCards& settings, int items, const Scenario& base,
                               std::uint64_t seed);

}  // namespace slopewise
