#include "ui/devices_used.h"

namespace slopewise {

void mark(DevicesUsed& used, Device device) {
    if (device == Device::keyboard) used.keyboard = true;
    if (device == Device::mouse) used.mouse = true;
    if (device == Device::thumb_pads) used.thumb_pads = true;
}

void mark_controller(DevicesUsed& used, const ControllerName& name) {
    for (ControllerName& known : used.controllers) {
        if (known == name) return;
        if (known[0] != '\0') continue;
        known = name;
        return;
    }
    used.more_controllers = true;
}

std::string devices_words(const DevicesUsed& used) {
    std::string words;
    const auto add = [&words](std::string_view one) { words.append(words.empty() ? "" : ", ").append(one); };
    if (used.keyboard) add("keyboard");
    if (used.mouse) add("mouse");
    if (used.thumb_pads) add("thumb pads");
    for (const ControllerName& name : used.controllers) {
        if (name[0] == '\0') continue;
        add("controller: ");
        words.append(words_of(name));
    }
    if (used.more_controllers) add("more");
    return words.empty() ? "no hand" : words;
}

}  // namespace slopewise
