// What the user chose once and the program keeps.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "lesson/where_and_when.h"
#include "review/school.h"
#include "ui/controller_book.h"
#include "ui/display.h"
#include "ui/key_bindings.h"

namespace slopewise {

struct Settings {
    std::optional<bool> up_key_pushes;  // the up key lowers the nose, as a stick pushed forward; unset: ask
    bool sound = true;
    double volume = 0.8;  // share of the loudest, 0 ... 1
    Display display{};
    WhereAndWhen where_and_when{};
    School school{};        // its limits, units, words and aircraft
    std::string student{};  // name or code of who flies; empty: none given
    KeyBindings keys{};
    ControllerBook controllers{};
};

// What could be read of a kept text, and what could not: each bad value has its default, alone.
struct KeptSettings {
    Settings settings;
    std::vector<Problem> problems;
};

inline constexpr std::string_view settings_key = "slopewise-settings";

std::string settings_text(const Settings& settings);

// An empty text gives the defaults. What an older text does not say has its default too, which for reduced
// motion is what the machine prefers.
KeptSettings parse_settings(std::string_view text, bool prefers_reduced_motion = false);

}  // namespace slopewise
