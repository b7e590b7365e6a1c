// The entries, a file for those that belong together. To add one: a block in its file, and a line in
// tests/engine/test_sources.cpp that holds its figures to the code.
#pragma once

#include "sources/sources.h"

namespace slopewise {

std::span<const TaughtNumber> light_entries();
std::span<const TaughtNumber> path_and_runway_entries();
std::span<const TaughtNumber> speed_and_sink_entries();
std::span<const TaughtNumber> gate_entries();
std::span<const TaughtNumber> measure_entries();
std::span<const TaughtNumber> help_entries();
std::span<const TaughtNumber> learning_entries();
std::span<const TaughtNumber> caution_entries();

}  // namespace slopewise
