// Sound and controllers through SDL2: no video, no events of its own.
#pragma once

#include <optional>

#include "ui/sound.h"

namespace slopewise {

// Starts SDL2's sound and joysticks; without them the program is silent and goes on.
void open_devices();
void close_devices();

// What is to be heard from now on.
void play(const SoundView& sound);

// Fore-and-aft axis of the first controller: -1 pushed ... +1 pulled. Empty when there is none.
std::optional<double> controller_stick();

}  // namespace slopewise
