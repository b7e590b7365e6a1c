// The station's rows in the order of its panel: which of the approach, and which of the class's own.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "station/station_row.h"

namespace slopewise {

// What the station sets besides the approach itself.
enum class StationWish {
    again,        // where it was put last; or there on the other side of the path
    who_has,      // which controls the one at the keys has
    demonstrate,  // a model pilot shows how, or how not
    calm_beside,  // the same hands in calm air
    lights,       // drawn for the class or not
    restore,      // everything works again
};

struct StationRowWords {
    std::string_view label;
    std::optional<StationRow> row;  // none: the wish
    StationWish wish = StationWish::again;
    std::span<const std::string_view> choices;  // empty: made from the aircraft or the lights
};

struct StationGroupWords {
    std::string_view title;
    std::span<const StationRowWords> rows;
};

// The most used first. No two rows have the same label.
std::span<const StationGroupWords> station_groups();

// The words of a row's choices, "up", "half", "landing" of a flap.
std::vector<std::string> station_choices(const StationRowWords& row, const Scenario& scenario);

// How the model pilots are called, in the order of `pilot_names`; each after "The model pilot".
inline constexpr std::array<std::string_view, 10> pilot_words{"flies it well",
                                                              "is late with the power",
                                                              "over-controls",
                                                              "chases the airspeed needle",
                                                              "stretches the glide when low",
                                                              "ducks under at the end",
                                                              "lowers the flap late",
                                                              "chases the lights",
                                                              "flies as if there were no wind",
                                                              "presses on when it is not stable"};

}  // namespace slopewise
