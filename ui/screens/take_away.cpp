// What can be handed over of this flight: the sheet to print and the figures as files.
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 32;  // text sizes across the page

// The name in the accent, and the words about it; pressed as a whole.
bool offer_row(Column& column, const TakeAwayView::Offer& offer) {
    const Palette& c = theme().colour;
    const float words =
        line_height(TextSize::text) + paragraph_height(TextSize::note, offer.about, column.width);
    const float height = std::max(44.0f, std::round(words + grid(1)));
    const ImVec2 min{std::round(column.left), std::round(column.y)};
    const ImVec2 max{min.x + column.width, min.y + height};
    const Press press = press_area(offer.name.c_str(), min, {column.width, height});
    if (press.hovered || press.held)
        column.list->AddRectFilled({min.x - grid(0.75f), min.y}, {max.x + grid(0.75f), max.y}, c.band,
                                   grid(0.5f));
    Column inside{column.list, column.left, column.width, min.y + std::round((height - words) / 2)};
    paragraph(inside, TextSize::text, c.accent, offer.name, true);
    paragraph(inside, TextSize::note, c.ink_soft, offer.about);
    if (press.focused) focus_ring(column.list, min, max, c.ink);
    column.y = max.y;
    rule(column);
    return press.pressed;
}

}  // namespace

Actions draw_take_away(const View& view) {
    const TakeAwayView& sheet = view.take_away;
    Actions actions;
    Column page = begin_sheet("take away");
    if (title_with_way_back(page, "Take it with you", {"Back to the summary", Weight::primary, "T"}))
        actions.emplace_back(CloseTakeAway{});
    const std::array<float, 2> shares{1, 1};
    const std::size_t count = measure(page) >= two_columns_from ? 2 : 1;
    std::vector<Column> columns = side_by_side(page, std::span(shares).first(count), 4);
    const std::size_t each = (sheet.offers.size() + count - 1) / count;
    for (std::size_t i = 0; i < sheet.offers.size(); ++i)
        if (offer_row(columns[i / each], sheet.offers[i]))
            actions.emplace_back(TakeAway{static_cast<int>(i)});
    join(page, columns);
    gap(page, 1.5f);
    paragraph(page, TextSize::note, theme().colour.ink, sheet.handed_over, true);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
