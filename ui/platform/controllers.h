// Sticks, yokes, levers and gamepads through SDL2.
#pragma once

#include "ui/controller.h"

namespace slopewise {

void open_controllers();
void close_controllers();

// What each connected device gives now; call it once a frame. Devices are opened and closed as they come and
// go, and keep their place among the others meanwhile.
ControllerReadings read_controllers_now();

}  // namespace slopewise
