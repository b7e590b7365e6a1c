// On which approaches each model pilot's fault can show, by a seed: where they start, in what wind and air.
#pragma once

#include <string_view>

#include "lesson/scenario.h"

namespace slopewise::test {

// A late corrector needs something to correct, one who stretches must begin low, landing flap is late only
// where it was not set, the wind is ignored only where it blows, and one presses on only from an unstable
// gate. The others fly from everywhere. Half of the seeds fly in light turbulence.
Scenario occasion(std::string_view pilot, std::uint64_t seed);

}  // namespace slopewise::test
