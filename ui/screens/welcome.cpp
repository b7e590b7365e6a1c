// The first page: three sentences for who has never flown here, two ways to begin, and everything else one
// key away.
#include <algorithm>
#include <array>

#include "ui/screens/screens.h"
#include "ui/screens/update_line.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

constexpr float widest_lines = 34;  // text sizes: what an eye reads without losing the line

void sentences(Column& page) {
    const Palette& c = theme().colour;
    Column words = page;
    words.width = std::min(page.width, widest_lines * theme().size[static_cast<std::size_t>(TextSize::text)]);
    paragraph(words, TextSize::number, c.ink, "Here you practise the last miles before the runway.", true);
    gap(words, 1);
    paragraph(words, TextSize::text, c.ink,
              "Keep two white and two red lights, keep the speed, and keep looking out.");
    paragraph(words, TextSize::text, c.ink,
              "Nothing can break, and every flight ends by itself near the ground.");
    page.y = words.y;
}

void beginnings(Column& page, Actions& actions) {
    constexpr std::array<ButtonWords, 2> begin{
        {{"Start with lesson 1", Weight::primary}, {"Fly a final now", Weight::plain, "F"}}};
    const int pressed = button_row(page, begin);
    if (pressed == 0) actions.emplace_back(OpenFirstLesson{});
    if (pressed == 1) actions.emplace_back(FlyNow{});
}

void all_else(Column& page, Actions& actions) {
    constexpr std::array<ButtonWords, 5> ways{{{"All lessons", Weight::quiet, "S"},
                                               {"Drills", Weight::quiet, "D"},
                                               {"Choose an approach", Weight::quiet, "C"},
                                               {"Logbook", Weight::quiet, "L"},
                                               {"Screen and help", Weight::quiet, "H"}}};
    const int pressed = button_row(page, ways);
    if (pressed == 0) actions.emplace_back(OpenLessons{});
    if (pressed == 1) actions.emplace_back(OpenDrills{});
    if (pressed == 2) actions.emplace_back(GoToChoices{});
    if (pressed == 3) actions.emplace_back(OpenLogbook{});
    if (pressed == 4) actions.emplace_back(OpenScreenAndHelp{});
}

void for_instructors(Column& page, Actions& actions) {
    constexpr std::array<ButtonWords, 3> ways{{{"Teach a class", Weight::quiet, "T"},
                                               {"A class in a table", Weight::quiet, "I"},
                                               {"Your own lessons", Weight::quiet, "K"}}};
    paragraph(page, TextSize::note, theme().colour.ink_soft, "For instructors");
    const int pressed = button_row(page, ways);
    if (pressed == 0) actions.emplace_back(OpenClassRoom{});
    if (pressed == 1) actions.emplace_back(OpenClassTable{});
    if (pressed == 2) actions.emplace_back(OpenOwnLessons{});
}

}  // namespace

Actions draw_welcome(const View& view) {
    Actions actions;
    Column page = begin_sheet("welcome");
    if (!view.choice.student.empty())
        text_right(page.list, {page.right(), page.y}, TextSize::note, theme().colour.ink_soft,
                   view.choice.student);
    paragraph(page, TextSize::title, theme().colour.ink, "Slopewise", true);
    gap(page, 1);
    rule(page);
    gap(page, view.about.update_waits ? 1.0f : 3.0f);
    update_line(page, view, actions);
    sentences(page);
    gap(page, 3);
    beginnings(page, actions);
    gap(page, 1.5f);
    all_else(page, actions);
    gap(page, 1);
    for_instructors(page, actions);
    gap(page, 3);
    rule(page);
    gap(page, 1);
    if (!view.notice.empty()) attention_note(page, view.notice);
    for (const std::string& line : view.caution)
        paragraph(page, TextSize::note, theme().colour.ink_soft, line);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
