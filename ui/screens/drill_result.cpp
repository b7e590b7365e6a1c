// What a drill came to: its figures with their limits, and what to do now.
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

using Wish = DoWithDrill::Wish;

void limits(Column& column, const DrillResultView& sheet) {
    const Palette& c = theme().colour;
    const float mark = grid(1.5f), indent = grid(3);
    for (const DrillResultView::Limit& limit : sheet.limits) {
        const ImVec2 centre{column.left + mark / 2, column.y + line_height(TextSize::note) * 0.42f};
        if (limit.met) mark_in(column.list, centre, mark, c.good);
        else mark_out(column.list, centre, mark, c.attention);
        Column words{column.list, column.left + indent, column.width - indent, column.y};
        paragraph(words, TextSize::note, c.ink, limit.asked, true);
        paragraph(words, TextSize::note, limit.met ? c.good : c.attention,
                  (limit.met ? "met: found " : "not met: found ") + limit.found);
        column.y = words.y + grid(0.5f);
    }
}

}  // namespace

Actions draw_drill_result(const View& view) {
    const DrillResultView& sheet = view.drill_result;
    const Palette& c = theme().colour;
    Actions actions;
    Column page = begin_sheet("drill result");
    if (title_with_way_back(page, sheet.title, {sheet.back.c_str(), Weight::plain, "Esc"}))
        actions.emplace_back(DoWithDrill{Wish::leave});
    paragraph(page, TextSize::number, c.ink, sheet.verdict, true);
    if (!sheet.items.empty()) paragraph(page, TextSize::text, c.ink, sheet.items);
    paragraph(page, TextSize::note, c.ink_soft, sheet.next);
    gap(page, 1);
    constexpr std::array<ButtonWords, 2> again{
        {{"Again, another seed", Weight::primary}, {"Again, the same seed", Weight::plain, "N"}}};
    const int pressed = button_row(page, again);
    if (pressed == 0) actions.emplace_back(DoWithDrill{Wish::again_anew});
    if (pressed == 1) actions.emplace_back(DoWithDrill{Wish::again});
    gap(page, 1.5f);
    if (!sheet.limits.empty()) heading(page, "What was asked, and what was found");
    limits(page, sheet);
    if (!sheet.figures.empty()) heading(page, "Also measured");
    for (const std::string& figure : sheet.figures) paragraph(page, TextSize::note, c.ink, figure);
    gap(page, 1);
    paragraph(page, TextSize::note, c.ink_soft, sheet.seed);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
