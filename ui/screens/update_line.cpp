#include "ui/screens/update_line.h"

#include <cmath>

#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

constexpr ButtonWords use_it{"Use it now", Weight::plain};

}  // namespace

void update_line(Column& column, const View& view, Actions& actions) {
    if (!view.about.update_waits) return;
    const ImVec2 words = text_extent(TextSize::text, update_words, true);
    const float width = button_width(use_it);
    Column beside = column;
    const bool fits = words.x + grid(2) + width <= column.width;
    if (fits) beside.y += std::round((press_height() - words.y) / 2);
    paragraph(beside, TextSize::text, theme().colour.ink, update_words, true);
    const float left = fits ? column.left + words.x + grid(2) : column.left;
    const float top = std::round(fits ? column.y : beside.y + grid(0.5f));
    if (button(column.list, {std::round(left), top}, {width, press_height()}, use_it))
        actions.emplace_back(DoWithProgram{DoWithProgram::Wish::take_update});
    column.y = top + press_height();
    gap(column, 1);
}

}  // namespace slopewise
