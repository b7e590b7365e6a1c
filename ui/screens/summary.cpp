// The deviation summary: what happened, measured, to be talked over with an instructor.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/decision_table.h"
#include "ui/screens/fault_card.h"
#include "ui/screens/gate_table.h"
#include "ui/screens/lead_to_sources.h"
#include "ui/screens/lesson_result.h"
#include "ui/screens/measures.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/profile_plot.h"
#include "ui/widgets/text_table.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 38;  // text sizes across the page

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

void title(Column& page, const SummaryView& summary) {
    const Palette& c = theme().colour;
    const ImVec2 words = text_extent(TextSize::title, summary.title, true);
    const float setup = text_extent(TextSize::note, summary.setup).x;
    const bool beside = words.x + grid(4) + setup <= page.width;
    // On the title's baseline, which lies 0.79 of its height down.
    if (beside)
        text_right(page.list, {page.right(), page.y + 0.79f * (words.y - note_height())}, TextSize::note,
                   c.ink_soft, summary.setup);
    paragraph(page, TextSize::title, c.ink, summary.title, true);
    if (!beside) paragraph(page, TextSize::note, c.ink_soft, summary.setup);
    // The advice to stop takes the place of what stood out, so that the buttons stay in sight.
    if (!summary.stop.empty())
        paragraph(page, TextSize::note, c.attention, summary.ended + " " + summary.stop, true);
    else
        paragraph(page, TextSize::note, c.ink_soft,
                  summary.ended + (summary.strongest.empty() ? "" : " " + summary.strongest));
    paragraph(page, TextSize::text, c.ink, summary.estimate, true);
    if (summary.detail == SheetDetail::full) paragraph(page, TextSize::note, c.ink, summary.worst, true);
}

struct NextStep {
    ButtonWords words;
    Action action;
};

// In a lesson: on to the next one where as many runs met it as are asked for, else the same again.
std::vector<NextStep> first_steps(const SummaryView& summary) {
    const LessonResultView& lesson = summary.lesson;
    std::vector<NextStep> steps;
    const bool go_on = lesson.reached && !lesson.next_id.empty();
    if (go_on) steps.push_back({{"Next lesson", Weight::primary}, OpenLesson{lesson.next_id}});
    steps.push_back({{"Same again", go_on ? Weight::plain : Weight::primary}, RestartSame{}});
    if (lesson.varies) steps.push_back({{"Another run"}, FlyNextRun{}});
    if (!lesson.title.empty()) steps.push_back({{"All lessons"}, OpenLessons{}});
    return steps;
}

std::vector<NextStep> next_steps(const SummaryView& summary) {
    std::vector<NextStep> steps = first_steps(summary);
    if (summary.can_mirror) steps.push_back({{"Mirror start"}, RestartMirrored{}});
    if (summary.can_fly_on) steps.push_back({{"Fly on"}, FlyOn{}});
    if (summary.detail != SheetDetail::full)
        steps.push_back({{"Show the detail", Weight::plain, "D"}, ShowDetail{}});
    steps.push_back({{"Take it with you"}, OpenTakeAway{}});
    steps.push_back({{"Replay"}, OpenReplay{}});
    steps.push_back({{summary.from_logbook ? "Back to the logbook" : "New approach"}, GoToChoices{}});
    return steps;
}

// The sheet's second half holds all that was measured; the last button leads there, where there is one.
std::vector<ButtonWords> step_words(const SummaryView& summary) {
    std::vector<ButtonWords> words;
    for (const NextStep& step : next_steps(summary)) words.push_back(step.words);
    if (summary.detail == SheetDetail::full) words.push_back({"See how it was measured", Weight::quiet});
    return words;
}

// True when what was measured is asked for.
bool draw_next_steps(Column& page, const SummaryView& summary, Actions& actions) {
    const std::vector<NextStep> steps = next_steps(summary);
    const int pressed = button_row(page, step_words(summary));
    if (pressed < 0) return false;
    if (static_cast<std::size_t>(pressed) == steps.size()) return true;
    actions.emplace_back(steps[static_cast<std::size_t>(pressed)].action);
    return false;
}

// With no fault to tell of there may be room above `bottom` for how far off it was, and how much about that.
void draw_short_bands(Column& column, const SummaryView& summary, float bottom) {
    const TextTable& bands = summary.measures.short_bands;
    const float lines = 3.0f + static_cast<float>(bands.rows.size());
    if (column.y + grid(2.5f) + lines * (line_height(TextSize::note) + grid(1)) > bottom) return;
    gap(column, 1.5f);
    draw_text_table(column, bands);
}

// Everything that matters within the window; all that was measured comes below its edge. True when that is
// asked for.
bool side_by_side_sheet(Column& page, const SummaryView& summary, float foot, Actions& actions) {
    const std::array<float, 2> shares{5, 6};
    std::vector<Column> columns = side_by_side(page, shares, 4);
    draw_gate_table(columns[1], summary.gates);
    gap(columns[1], 0.75f);
    draw_fault_card(columns[1], summary.fault);
    if (summary.fault.title.empty()) draw_short_bands(columns[1], summary, foot - press_height() - grid(1));
    // The plot takes what the window leaves above the decision, so that the buttons stay in sight.
    const bool steps_above = !summary.lesson.title.empty();
    const float steps = steps_above ? 0 : button_row_height(page.width, step_words(summary)) + grid(1);
    const float bottom = std::max(foot - steps, columns[1].y);
    const float plot =
        std::max(bottom - decision_height(summary.decision) - grid(1) - columns[0].y, grid(44));
    draw_profile(page.list, {columns[0].left, columns[0].y}, {columns[0].right(), columns[0].y + plot},
                 summary);
    columns[0].y += plot + grid(1);
    draw_decision(columns[0], summary.decision);
    join(page, columns);
    gap(page, 1);
    const bool measures_asked = !steps_above && draw_next_steps(page, summary, actions);
    page.y = std::max(page.y + grid(2), foot + sheet_margin());
    return measures_asked;
}

// One thing under another: the plot as tall as the window allows with the buttons in sight.
bool long_sheet(Column& page, const SummaryView& summary, float foot, Actions& actions) {
    const float plot = std::round(
        std::clamp(foot - press_height() - grid(2) - page.y, 0.45f * page.width, 0.8f * page.width));
    draw_profile(page.list, {page.left, page.y}, {page.right(), page.y + plot}, summary);
    page.y += plot;
    gap(page, 2);
    bool measures_asked = false;
    if (summary.lesson.title.empty()) {
        measures_asked = draw_next_steps(page, summary, actions);
        gap(page, 2);
    }
    draw_fault_card(page, summary.fault);
    gap(page, 1.5f);
    draw_gate_table(page, summary.gates);
    gap(page, 1.5f);
    draw_decision(page, summary.decision);
    gap(page, 2);
    return measures_asked;
}

// After the first runs less is told at once: this attempt in short, or the last three side by side.
void short_sheet(Column& page, const View& view, Actions& actions) {
    const SummaryView& summary = view.summary;
    if (summary.detail == SheetDetail::last_three) {
        draw_text_table(page, summary.last_runs.table);
        gap(page, 0.5f);
        paragraph(page, TextSize::text, theme().colour.ink, summary.last_runs.most_often, true);
        gap(page, 1.5f);
    }
    if (measure(page) >= two_columns_from) {
        const std::array<float, 2> shares{5, 6};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        draw_decision(columns[0], summary.decision);
        draw_fault_card(columns[1], summary.fault);
        join(page, columns);
    } else {
        draw_decision(page, summary.decision);
        gap(page, 1.5f);
        draw_fault_card(page, summary.fault);
    }
    gap(page, 2);
    if (summary.lesson.title.empty()) draw_next_steps(page, summary, actions);
    gap(page, 2);
    for (const std::string& line : view.caution)
        paragraph(page, TextSize::note, theme().colour.ink_soft, line);
    lead_to_sources(page, actions);
}

}  // namespace

Actions draw_summary(const View& view) {
    Actions actions;
    Column page = begin_sheet("summary");
    // Where the window ends, on the sheet as it is scrolled.
    const float foot = page.y - 2 * sheet_margin() + ImGui::GetIO().DisplaySize.y;
    title(page, view.summary);
    gap(page, 0.75f);
    bool measures_asked = false;
    if (!view.summary.lesson.title.empty()) {  // what was asked for comes first, and what to do about it
        draw_lesson_result(page, view.summary.lesson);
        gap(page, 1);
        measures_asked = draw_next_steps(page, view.summary, actions);
        gap(page, 1.5f);
    }
    if (view.summary.detail != SheetDetail::full) {
        short_sheet(page, view, actions);
    } else {
        const auto sheet = measure(page) >= two_columns_from ? side_by_side_sheet : long_sheet;
        measures_asked |= sheet(page, view.summary, foot, actions);
        if (measures_asked) ImGui::SetScrollY(ImGui::GetScrollY() + page.y - sheet_margin());
        draw_measures(page, view);
        lead_to_sources(page, actions);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
