// All drills in the order they are learned in, with what each asks and its last result.
#include <algorithm>
#include <array>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"
#include "ui/widgets/options.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 36;  // text sizes across the page

void rows(Column& column, const DrillsView& sheet, std::size_t from, std::size_t to, Actions& actions) {
    for (std::size_t i = from; i < to; ++i) {
        const DrillsView::Row& row = sheet.rows[i];
        if (option_row(column, row.title.c_str(), row.about + " " + row.last,
                       static_cast<int>(i) == sheet.next))
            actions.emplace_back(OpenDrill{row.id});
        gap(column, 0.5f);
    }
}

}  // namespace

Actions draw_drills(const View& view) {
    const DrillsView& sheet = view.drills;
    const Palette& c = theme().colour;
    Actions actions;
    Column page = begin_sheet("drills");
    if (title_with_way_back(page, "Drills", {"Back", Weight::plain, "D"}))
        actions.emplace_back(CloseDrills{});
    paragraph(page, TextSize::note, c.ink_soft,
              "Parts of the approach, practised by themselves. Results are kept for: " + sheet.student + ".");
    if (!sheet.trouble.empty()) attention_note(page, sheet.trouble);
    gap(page, 1);
    if (!sheet.rows.empty()) {
        const DrillsView::Row& next = sheet.rows[static_cast<std::size_t>(sheet.next)];
        const std::string label = "Open " + next.title;
        const std::array<ButtonWords, 1> open{{{label.c_str(), Weight::primary}}};
        if (button_row(page, open) == 0) actions.emplace_back(OpenDrill{next.id});
        gap(page, 1);
    }
    const std::size_t count = sheet.rows.size();
    if (measure(page) >= two_columns_from) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        rows(columns[0], sheet, 0, (count + 1) / 2, actions);
        rows(columns[1], sheet, (count + 1) / 2, count, actions);
        join(page, columns);
    } else {
        rows(page, sheet, 0, count, actions);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
