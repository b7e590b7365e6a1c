#include "ui/screens/lead_to_sources.h"

#include <cmath>

namespace slopewise {
namespace {

// A quiet button's words begin so far inside of it; outset by as much they stand on the edge.
float outset() { return grid(1); }

}  // namespace

void lead_to_sources(Column& column, Actions& actions) {
    Column beyond{column.list, column.left - outset(), column.width + outset(), column.y};
    if (button_row(beyond, std::span(&sources_words, 1)) == 0) actions.emplace_back(OpenSources{});
    column.y = beyond.y;
}

void lead_to_sources_beside(Column& page, float used, Actions& actions) {
    const float width = button_width(sources_words);
    if (used + grid(2) + width > page.width + outset()) {
        gap(page, 1);
        lead_to_sources(page, actions);
        return;
    }
    const ImVec2 min{std::round(page.right() - width + outset()), std::round(page.y - press_height())};
    if (button(page.list, min, {width, press_height()}, sources_words)) actions.emplace_back(OpenSources{});
}

}  // namespace slopewise
