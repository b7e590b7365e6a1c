#include "ui/screens/station_panel.h"

#include <algorithm>
#include <span>
#include <string>

#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

constexpr float label_share = 0.24f;  // of the column's width; the choices have the rest

// The widest that a choice needs, with room on both its sides.
float widest(std::span<const std::string> choices) {
    float width = 0;
    for (const std::string& choice : choices)
        width = std::max(width, text_extent(TextSize::text, choice, true).x);
    return width + grid(1);
}

// In one line where they fit, else in as few as hold them. Returns the choice pressed, or -1.
int choices_in_lines(Column& column, const StationView::Row& row) {
    const std::span<const std::string> all = row.choices;
    const auto fits = static_cast<std::size_t>(std::max(1.0f, column.width / widest(all)));
    const std::size_t lines = (all.size() + fits - 1) / fits, each = (all.size() + lines - 1) / lines;
    int pressed = -1;
    for (std::size_t first = 0; first < all.size(); first += each) {
        const auto some = all.subspan(first, std::min(each, all.size() - first));
        const int base = static_cast<int>(first);
        if (base > 0) ImGui::PushID(base);
        const int one = choice_row(column, row.label.c_str(), some, row.chosen - base);
        if (base > 0) ImGui::PopID();
        if (one >= 0) pressed = base + one;
    }
    return pressed;
}

int labelled_choices(Column& column, const StationView::Row& row) {
    Column names = column, choices = column;
    names.width = label_share * column.width - grid(0.5f);
    choices.left += label_share * column.width;
    choices.width -= label_share * column.width;
    names.y += std::max(0.0f, (press_height() - line_height(TextSize::note)) / 2);
    paragraph(names, TextSize::note, theme().colour.ink, row.label);
    const int pressed = choices_in_lines(choices, row);
    column.y = std::max(names.y, choices.y) + grid(0.25f);
    return pressed;
}

}  // namespace

void draw_station_panel(Column& column, const View& view, Actions& actions) {
    const StationView& station = view.station;
    if (!station.trouble.empty()) attention_note(column, station.trouble);
    paragraph(column, TextSize::note, theme().colour.ink_soft, station.who);
    if (!station.calm.empty()) paragraph(column, TextSize::note, theme().colour.ink, station.calm);
    for (std::size_t i = 0; i < station.groups.size(); ++i) {
        const StationView::Group& group = station.groups[i];
        heading(column, group.title);
        for (std::size_t j = 0; j < group.rows.size(); ++j) {
            const int pressed = labelled_choices(column, group.rows[j]);
            // Pressed again, a place is taken up anew.
            if (pressed >= 0)
                actions.emplace_back(SetStation{static_cast<int>(i), static_cast<int>(j), pressed});
        }
        gap(column, 0.5f);
    }
}

}  // namespace slopewise
