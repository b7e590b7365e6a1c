#include "tests/screens/sample_devices.h"

#include <cmath>

namespace slopewise {
namespace {

std::vector<float> wave(double size, double from) {
    std::vector<float> trace;
    for (int i = 0; i < 180; ++i) trace.push_back(static_cast<float>(size * std::sin(0.05 * i + from)));
    return trace;
}

ControllersView::Axis axis(std::string name, int chosen, bool springs, bool stays) {
    ControllersView::Axis view;
    view.name = std::move(name);
    view.chosen = chosen;
    view.springs = springs;
    view.stays = stays;
    view.dead_zone = springs ? 0.06 : 0;
    view.expo = springs ? 0.4 : 0;
    view.told = true;
    view.raw = 0.42;
    view.shaped = 0.27;
    view.raw_trace = wave(0.9, chosen);
    view.shaped_trace = wave(0.7, chosen);
    return view;
}

}  // namespace

KeysView sample_keys() {
    KeysView sheet;
    sheet.rows = {{"nose down", "Up arrow"},     {"nose up", "Down arrow"},
                  {"more power", "Keypad 9"},    {"less power", "Keypad 3"},
                  {"close the throttle", "X"},   {"flap down a step", "F"},
                  {"flap up a step", "R"},       {"trim nose up", "Key beside right shift"},
                  {"trim nose down", "\u00d6"},  {"go around", "G"},
                  {"look at the panel", "V"},    {"path help", "Semicolon ;", true},
                  {"hand over, take back", "C"}, {"pause", "P"},
                  {"same again", "N"},           {"mirror start", "M"},
                  {"screen and help", "H"},      {"sound on, off", "Page down"}};
    sheet.sticky = true;
    sheet.news =
        "Key beside right shift: trim nose up. It was for hand over, take back, which now has Left bracket "
        "[.";
    return sheet;
}
ControllersView sample_controllers() {
    ControllersView view;
    view.axis_choices = {
        "nothing",          "stick",     "throttle", "throttle, faster or slower", "trim wheel",
        "trim, up or down", "flap lever"};
    view.button_choices = {"nothing",
                           "flap down a step",
                           "flap up a step",
                           "hold: trim nose up",
                           "hold: trim nose down",
                           "go around",
                           "close the throttle",
                           "pause",
                           "hold: path help",
                           "hold: look at the panel",
                           "hand over / take control"};
    view.devices = {"Four-axis stick with a lever", "Quadrant of three levers"};
    view.kept = true;
    view.advice = "As you set it. Kept on this device, for every controller of this kind.";
    view.news = "Connected: Quadrant of three levers.";
    view.axes = {axis("Axis 1", 0, false, false),
                 axis("Axis 2", 1, true, false),
                 axis("Axis 3", 0, false, false),
                 axis("Axis 4", 2, false, true),
                 axis("Hat, left and right", 0, false, false),
                 axis("Hat, up and down", 5, true, false)};
    view.axes[0].told = false;
    view.axes[3].inverted = true;
    for (int i = 0; i < 12; ++i) view.buttons.push_back({"Button " + std::to_string(i + 1), i % 11, i == 2});
    return view;
}
AboutView sample_about() {
    AboutView view;
    view.where = "this browser, on this device";
    view.kept = {
        {"Logbook", "each approach with its controls, its track and the student's name or code",
         "31 attempts"},
        {"Settings", "the screen, the keys, the controllers, the school, the student's name", "kept"},
        {"Own lessons", "your own, and the draft of one being written", "2 lessons"},
        {"Drills", "the result of each run", "14 results"},
        {"Class", "own question sets and the hands that were counted, without names",
         "1 set, 12 answered questions"}};
    view.parts = {"Slopewise: MIT", "Dear ImGui: MIT", "SDL2: zlib",
                  "Emscripten and its C++ library: MIT, and Apache 2.0 with LLVM exceptions"};
    return view;
}

}  // namespace slopewise
