// One drill: what it is, and then its items one by one: what is seen, what is asked, what was right.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/drill_answers.h"
#include "ui/screens/drill_picture.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"

namespace slopewise {
namespace {

using Wish = DoWithDrill::Wish;

constexpr float two_columns_from = 30;       // text sizes across the page
constexpr float picture_share = 0.6f;        // of the page's width
constexpr float upright_height = 0.62f;      // of the picture to its width
constexpr float upright_side_height = 1.1f;  // the same with the dials or a side view under it

// The title in small print, since the picture wants the room; the way back at its right.
void head(Column& page, const DrillView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    const ButtonWords back{sheet.back.c_str(), Weight::quiet, "Esc"};
    const float width = button_width(back), top = page.y;
    Column words{page.list, page.left, page.width - width - grid(2), top + grid(0.5f)};
    paragraph(words, TextSize::text, c.ink, sheet.title + (sheet.place.empty() ? "" : ": " + sheet.place),
              true);
    if (button(page.list, {std::round(page.right() - width), std::round(top)}, {width, press_height()}, back))
        actions.emplace_back(DoWithDrill{Wish::leave});
    page.y = std::max(words.y, top + press_height());
    gap(page, 0.5f);
}

void go_on_button(Column& column, const DrillView& sheet, Actions& actions) {
    if (sheet.go_on.empty()) return;
    gap(column, 0.75f);
    const std::array<ButtonWords, 1> on{{{sheet.go_on.c_str(), Weight::primary, "Enter"}}};
    if (button_row(column, on) == 0) actions.emplace_back(DoWithDrill{Wish::go_on});
}

void about(Column& page, const DrillView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    gap(page, 1);
    if (!sheet.trouble.empty()) attention_note(page, sheet.trouble);
    paragraph(page, TextSize::number, c.ink, sheet.aim, true);
    gap(page, 1);
    paragraph(page, TextSize::text, c.ink, sheet.how);
    go_on_button(page, sheet, actions);
    gap(page, 1.5f);
    heading(page, "Why");
    paragraph(page, TextSize::note, c.ink, sheet.why);
    gap(page, 1);
    heading(page, "What usually goes wrong");
    paragraph(page, TextSize::note, c.ink, sheet.mistakes);
    gap(page, 1);
    heading(page, "What passes");
    for (const std::string& line : sheet.passes) paragraph(page, TextSize::note, c.ink, line);
    gap(page, 1);
    paragraph(page, TextSize::note, c.ink_soft, "Source of the drill: " + sheet.source);
}

// The mark of a moment and the player, for the mouse and the finger.
void player(Column& column, const DrillView& sheet, Actions& actions) {
    const std::array<ButtonWords, 4> buttons{{{"Mark this moment", Weight::plain, "M"},
                                              {sheet.playing ? "Pause" : "Play", Weight::plain, "Space"},
                                              {"1 s back", Weight::quiet, "\u2190"},
                                              {"1 s on", Weight::quiet, "\u2192"}}};
    const int pressed = button_row(column, buttons);
    if (pressed == 0) actions.emplace_back(DoWithDrill{Wish::mark_moment});
    if (pressed == 1) actions.emplace_back(DriveReplay{DriveReplay::Wish::play_or_pause});
    if (pressed == 2) actions.emplace_back(DriveReplay{DriveReplay::Wish::step, -120});
    if (pressed == 3) actions.emplace_back(DriveReplay{DriveReplay::Wish::step, 120});
    gap(column, 0.75f);
}

void pause(Column& column, const DrillView& sheet, Actions& actions) {
    gap(column, 0.25f);
    const std::array<ButtonWords, 1> one{{{sheet.playing ? "Pause" : "Fly on", Weight::quiet, "P"}}};
    if (button_row(column, one) == 0) actions.emplace_back(TogglePause{});
}

void outcome(Column& column, const DrillView& sheet) {
    if (sheet.stage != DrillView::Stage::revealed) return;
    const Palette& c = theme().colour;
    paragraph(column, TextSize::note, sheet.right ? c.good : c.attention, sheet.reveal, true);
    if (!sheet.reaction.empty()) paragraph(column, TextSize::note, c.ink_soft, sheet.reaction);
}

// What is asked and what was right. The way on stands before the answers once they are given, where the eye
// is.
void panel(Column& column, const DrillView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    if (!sheet.share.empty()) paragraph(column, TextSize::note, c.ink_soft, sheet.share);
    if (!sheet.task.empty()) paragraph(column, TextSize::note, c.ink_soft, "Told last: " + sheet.task);
    paragraph(column, TextSize::note, c.ink, sheet.question, true);
    for (const std::string& fact : sheet.facts) paragraph(column, TextSize::note, c.ink, fact);
    if (!sheet.state.empty()) paragraph(column, TextSize::note, c.ink_soft, sheet.state);
    if (sheet.asks_place && !sheet.true_place_shown)
        paragraph(column, TextSize::note, c.ink_soft,
                  "Move the mark with the arrow keys, the mouse or a finger.");
    outcome(column, sheet);
    gap(column, 0.75f);
    if (sheet.asks_moment) player(column, sheet, actions);
    const int pressed = draw_answers(column, sheet);
    if (pressed >= 0) actions.emplace_back(AnswerCard{pressed});
    if (sheet.stage == DrillView::Stage::told) pause(column, sheet, actions);
    go_on_button(column, sheet, actions);
}

void add(Actions& actions, const Actions& more) { actions.insert(actions.end(), more.begin(), more.end()); }

void item(Column& page, const View& view, Actions& actions) {
    const DrillView& sheet = view.drill;
    if (measure(page) >= two_columns_from) {
        const float top = page.y + ImGui::GetScrollY();
        const float height = std::max(grid(20), ImGui::GetIO().DisplaySize.y - sheet_margin() - top);
        const std::array<float, 2> shares{picture_share, 1 - picture_share};
        std::vector<Column> columns = side_by_side(page, shares, 3);
        const ImVec2 min{std::round(columns[0].left), std::round(columns[0].y)};
        const ImVec2 max{std::round(columns[0].right()), std::round(min.y + height)};
        panel(columns[1], sheet, actions);
        add(actions, draw_drill_picture(page.list, min, max, view));
        columns[0].y = max.y;
        join(page, columns);
        return;
    }
    const float share = sheet.side_shown || sheet.dials_shown ? upright_side_height : upright_height;
    const ImVec2 min{page.left, std::round(page.y)};
    const ImVec2 max{page.right(), std::round(min.y + share * page.width)};
    page.y = max.y + grid(1);
    panel(page, sheet, actions);
    add(actions, draw_drill_picture(page.list, min, max, view));
}

}  // namespace

Actions draw_drill(const View& view) {
    const DrillView& sheet = view.drill;
    Actions actions;
    // The arrows move the mark, or the replay.
    if (sheet.asks_place || sheet.asks_moment) keep_arrows_from_focus();
    Column page = begin_sheet("drill");
    head(page, sheet, actions);
    if (sheet.stage == DrillView::Stage::about) about(page, sheet, actions);
    else item(page, view, actions);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
