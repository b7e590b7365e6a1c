// How the school flies and words things: small choices by rows, all of it as a file.
#include <array>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 32;  // text sizes across the page

void choices(Column& column, const SchoolView& school, Actions& actions) {
    heading(column, "In this school");
    int number = 0;
    for (const SchoolView::Row& row : school.rows) {
        gap(column, 0.5f);
        paragraph(column, TextSize::note, theme().colour.ink, row.label);
        gap(column, 0.5f);
        const int pressed = choice_row(column, row.label.c_str(), row.choices, row.chosen);
        if (pressed >= 0) actions.emplace_back(ChooseForSchool{number, pressed});
        ++number;
    }
}

void as_file(Column& column, const SchoolView& school, Actions& actions) {
    const Palette& c = theme().colour;
    constexpr std::array<ButtonWords, 2> words{{{"Hand over its file"}, {"Take in a file"}}};
    heading(column, "Its file");
    gap(column, 0.5f);
    for (const std::string& line : school.facts) paragraph(column, TextSize::note, c.ink, line);
    gap(column, 1);
    const int pressed = button_row(column, words);
    if (pressed == 0) actions.emplace_back(HandOverSchool{});
    if (pressed == 1) actions.emplace_back(TakeInSchool{});
    gap(column, 1);
    for (const std::string& line : school.news) paragraph(column, TextSize::note, c.attention, line);
    paragraph(
        column, TextSize::note, c.ink_soft,
        "The file holds all of this sheet and what counts as stable. Write the name, the aircraft and the "
        "flap heights into it. A file with a mistake changes nothing, and each mistake is told.");
}

}  // namespace

Actions draw_school(const View& view) {
    const SchoolView& school = view.school;
    Actions actions;
    Column page = begin_sheet("school");
    if (title_with_way_back(page, "School", {"Done", Weight::primary, "Esc"}))
        actions.emplace_back(CloseSchool{});
    gap(page, 1);
    if (measure(page) >= two_columns_from) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        choices(columns[0], school, actions);
        as_file(columns[1], school, actions);
        join(page, columns);
    } else {
        choices(page, school, actions);
        gap(page, 1.5f);
        as_file(page, school, actions);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
