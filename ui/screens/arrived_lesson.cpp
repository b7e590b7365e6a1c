// A lesson that came from somebody else: where from, what it holds, and what to do with it. Nothing has
// begun.
#include <array>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

using Wish = DoWithLesson::Wish;

void wish(Actions& actions, Wish what) { actions.emplace_back(DoWithLesson{what, ""}); }

void refused(Column& page, const ArrivedLessonView& sheet, Actions& actions) {
    paragraph(page, TextSize::text, theme().colour.ink,
              "It is not taken in. Nothing of it is kept, and nothing here has changed.", true);
    gap(page, 0.5f);
    for (const std::string& problem : sheet.problems) attention_note(page, problem);
    gap(page, 1.5f);
    constexpr std::array<ButtonWords, 1> buttons{{{"Leave it", Weight::primary}}};
    if (button_row(page, buttons) == 0) wish(actions, Wish::leave_arrived);
}

void offered(Column& page, const ArrivedLessonView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    paragraph(page, TextSize::number, c.ink, sheet.title, true);
    paragraph(page, TextSize::text, c.ink_soft, sheet.aim);
    gap(page, 1);
    for (const LabelledValue& fact : sheet.holds)
        fact_row(page, fact.label, fact.unit.empty() ? fact.value : fact.value + " " + fact.unit);
    gap(page, 0.5f);
    paragraph(page, TextSize::note, c.ink_soft,
              sheet.known.empty() ? "Every check of a lesson that ships was passed." : sheet.known);
    gap(page, 1.5f);
    constexpr std::array<ButtonWords, 3> with_keep{
        {{"Fly it", Weight::primary}, {"Keep it", Weight::plain}, {"Leave it", Weight::quiet}}};
    constexpr std::array<ButtonWords, 2> without{{{"Fly it", Weight::primary}, {"Leave it", Weight::quiet}}};
    const int pressed = sheet.can_keep ? button_row(page, with_keep) : button_row(page, without);
    if (pressed == 0) wish(actions, Wish::fly_arrived);
    if (pressed == 1) wish(actions, sheet.can_keep ? Wish::keep_arrived : Wish::leave_arrived);
    if (pressed == 2) wish(actions, Wish::leave_arrived);
}

}  // namespace

Actions draw_arrived_lesson(const View& view) {
    const ArrivedLessonView& sheet = view.arrived_lesson;
    Actions actions;
    Column page = begin_sheet("arrived lesson");
    paragraph(page, TextSize::title, theme().colour.ink, "A lesson has come in", true);
    paragraph(page, TextSize::text, theme().colour.ink_soft, sheet.from + ". It begins when you say so.");
    gap(page, 1);
    rule(page);
    gap(page, 1);
    if (sheet.title.empty()) refused(page, sheet, actions);
    else offered(page, sheet, actions);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
