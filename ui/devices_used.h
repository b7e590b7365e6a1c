// What the hands have used in a flight: it is kept with the attempt and printed on its sheet.
#pragma once

#include <array>
#include <string>

#include "ui/controller.h"

namespace slopewise {

enum class Device { keyboard, mouse, thumb_pads };

struct DevicesUsed {
    bool keyboard = false, mouse = false, thumb_pads = false;
    std::array<ControllerName, 2> controllers{};  // the first two by name
    bool more_controllers = false;
};

void mark(DevicesUsed& used, Device device);
void mark_controller(DevicesUsed& used, const ControllerName& name);

inline bool any_controller(const DevicesUsed& used) { return used.controllers[0][0] != '\0'; }

// "keyboard, controller: Four-axis stick"; "no hand" when nothing moved a control. At most 200 bytes, which
// is what a recording takes.
std::string devices_words(const DevicesUsed& used);

}  // namespace slopewise
