// SDL2 begun and ended, and its sound: no video, no events of its own. Controllers: controllers.h.
#pragma once

#include "ui/sound.h"

namespace slopewise {

// Starts SDL2's joysticks; sound only when there is some. Without them the program is silent and goes on.
void open_devices();
void close_devices();

// What is to be heard from now on.
void play(const SoundView& sound);

}  // namespace slopewise
