// What counts as stable: every limit with its unit, for the instructor to set.
#include <algorithm>
#include <array>
#include <string>
#include <string_view>

#include "ui/screens/lead_to_sources.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/stepper.h"
#include "ui/widgets/switches.h"

namespace slopewise {
namespace {

// Text sizes across the page from which it has so many columns.
constexpr float three_columns_from = 44;
constexpr float two_columns_from = 32;

constexpr std::string_view usual_words = "These are the usual limits.";

void draw_field(Column& column, const std::string& id, const CriteriaView::Field& field, int number,
                Actions& actions) {
    switch (field.kind) {
    case CriteriaView::Kind::number:
        if (const auto value = stepper(column, {id.c_str(), field.label.c_str(), field.value, field.unit},
                                       field.number, field.least, field.most, field.step))
            actions.emplace_back(SetCriterion{number, *value});
        break;
    case CriteriaView::Kind::on_off:
        if (switch_row(column, field.label.c_str(), field.number > 0.5))
            actions.emplace_back(SetCriterion{number, field.number > 0.5 ? 0.0 : 1.0});
        break;
    case CriteriaView::Kind::choice:
        gap(column, 0.5f);
        paragraph(column, TextSize::note, theme().colour.ink, field.label);
        gap(column, 0.5f);
        const int pressed =
            choice_row(column, field.label.c_str(), field.choices, static_cast<int>(field.number));
        if (pressed >= 0) actions.emplace_back(SetCriterion{number, static_cast<double>(pressed)});
        break;
    }
}

void draw_group(Column& column, const CriteriaView::Group& group, Actions& actions) {
    heading(column, group.title);
    int number = group.first;
    for (const CriteriaView::Field& field : group.fields)
        draw_field(column, group.title + ": " + field.label, field, number++, actions);
    gap(column, 1);
}

}  // namespace

Actions draw_criteria(const View& view) {
    const CriteriaView& sheet = view.criteria;
    Actions actions;
    Column page = begin_sheet("criteria");
    if (title_with_way_back(page, "What counts as stable", {"Done", Weight::primary, "Esc"}))
        actions.emplace_back(CloseCriteria{});
    paragraph(page, TextSize::note, theme().colour.ink_soft,
              "For the instructor. The next flight is held to it, and every sheet says to what.");
    gap(page, 1);
    const std::array<float, 3> shares{1, 1, 1};
    const float sizes = measure(page);
    const std::size_t count = sizes >= three_columns_from ? 3 : (sizes >= two_columns_from ? 2 : 1);
    std::vector<Column> columns = side_by_side(page, std::span(shares).first(count), 4);
    for (const CriteriaView::Group& group : sheet.groups)
        draw_group(*std::ranges::min_element(columns, {}, &Column::y), group, actions);
    join(page, columns);
    gap(page, 1);
    const ButtonWords reset{"Back to the usual", Weight::plain};
    if (sheet.usual) {
        const float note = theme().size[static_cast<std::size_t>(TextSize::note)];
        text_at(page.list, {page.left, page.y + (press_height() - note) / 2}, TextSize::note,
                theme().colour.ink_soft, usual_words);
        page.y += press_height();
    } else if (button_row(page, std::span(&reset, 1)) == 0) {
        actions.emplace_back(ResetCriteria{});
    }
    const float used = sheet.usual ? text_extent(TextSize::note, usual_words).x : button_width(reset);
    lead_to_sources_beside(page, used, actions);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
