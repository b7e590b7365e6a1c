// The deviation summary: what happened, measured, to be talked over with an instructor.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/decision_table.h"
#include "ui/screens/fault_card.h"
#include "ui/screens/gate_table.h"
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
    paragraph(page, TextSize::note, c.ink_soft,
              summary.ended + (summary.strongest.empty() ? "" : " " + summary.strongest));
    paragraph(page, TextSize::text, c.ink, summary.estimate, true);
    if (summary.detail == SheetDetail::full) paragraph(page, TextSize::note, c.ink, summary.worst, true);
}

struct NextStep {
    ButtonWords words;
    Action action;
};

std::vector<NextStep> next_steps(const SummaryView& summary) {
    std::vector<NextStep> steps{{{"Same again", Weight::primary}, RestartSame{}}};
    if (summary.can_mirror) steps.push_back({{"Mirror start"}, RestartMirrored{}});
    if (summary.can_fly_on) steps.push_back({{"Fly on"}, FlyOn{}});
    if (summary.detail != SheetDetail::full)
        steps.push_back({{"Show the detail", Weight::plain, "D"}, ShowDetail{}});
    steps.push_back({{"Take it with you"}, OpenTakeAway{}});
    steps.push_back({{"Replay"}, OpenReplay{}});
    steps.push_back({{summary.from_logbook ? "Back to the logbook" : "New approach"}, GoToChoices{}});
    return steps;
}

constexpr ButtonWords measures_words{"See how it was measured", Weight::quiet};

// The sheet's second half holds all that was measured; this leads there, to `top` on the sheet as it is
// scrolled.
void lead_to_measures(const Column& page, float top) {
    const float width = button_width(measures_words);
    const ImVec2 min{std::round(page.right() - width + grid(1)), std::round(page.y - press_height())};
    if (button(page.list, min, {width, press_height()}, measures_words))
        ImGui::SetScrollY(ImGui::GetScrollY() + top - sheet_margin());
}

// True when they stand in one row and leave room at its end for the lead to the measures.
bool draw_next_steps(Column& page, const SummaryView& summary, Actions& actions) {
    const std::vector<NextStep> steps = next_steps(summary);
    std::vector<ButtonWords> words;
    for (const NextStep& step : steps) words.push_back(step.words);
    const int pressed = button_row(page, words);
    if (pressed >= 0) actions.push_back(steps[static_cast<std::size_t>(pressed)].action);
    words.push_back(measures_words);
    return button_row_height(page.width, words) <= press_height();
}

// With no fault to tell of there may be room above `bottom` for how far off it was, and how much about that.
void draw_short_bands(Column& column, const SummaryView& summary, float bottom) {
    const TextTable& bands = summary.measures.short_bands;
    const float lines = 3.0f + static_cast<float>(bands.rows.size());
    if (column.y + grid(2.5f) + lines * (line_height(TextSize::note) + grid(1)) > bottom) return;
    gap(column, 1.5f);
    draw_text_table(column, bands);
}

// Everything that matters within the window; all that was measured comes below its edge.
void side_by_side_sheet(Column& page, const SummaryView& summary, float foot, Actions& actions) {
    const std::array<float, 2> shares{5, 6};
    std::vector<Column> columns = side_by_side(page, shares, 4);
    draw_gate_table(columns[1], summary.gates);
    gap(columns[1], 0.75f);
    draw_fault_card(columns[1], summary.fault);
    if (summary.fault.title.empty()) draw_short_bands(columns[1], summary, foot - press_height() - grid(1));
    // The plot takes what the window leaves above the decision, so that the buttons stay in sight.
    const float bottom = std::max(foot - press_height() - grid(1), columns[1].y);
    const float plot =
        std::max(bottom - decision_height(summary.decision) - grid(1) - columns[0].y, grid(44));
    draw_profile(page.list, {columns[0].left, columns[0].y}, {columns[0].right(), columns[0].y + plot},
                 summary);
    columns[0].y += plot + grid(1);
    draw_decision(columns[0], summary.decision);
    join(page, columns);
    gap(page, 1);
    const bool in_one_row = draw_next_steps(page, summary, actions);
    const float measures = std::max(page.y + grid(2), foot + sheet_margin());
    if (in_one_row) lead_to_measures(page, measures);
    page.y = measures;
}

// One thing under another: the plot as tall as the window allows with the buttons in sight.
void long_sheet(Column& page, const SummaryView& summary, float foot, Actions& actions) {
    const float plot = std::round(
        std::clamp(foot - press_height() - grid(2) - page.y, 0.45f * page.width, 0.8f * page.width));
    draw_profile(page.list, {page.left, page.y}, {page.right(), page.y + plot}, summary);
    page.y += plot;
    gap(page, 2);
    draw_next_steps(page, summary, actions);
    gap(page, 2);
    draw_fault_card(page, summary.fault);
    gap(page, 1.5f);
    draw_gate_table(page, summary.gates);
    gap(page, 1.5f);
    draw_decision(page, summary.decision);
    gap(page, 2);
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
    draw_next_steps(page, summary, actions);
    gap(page, 2);
    for (const std::string& line : view.caution)
        paragraph(page, TextSize::note, theme().colour.ink_soft, line);
}

}  // namespace

Actions draw_summary(const View& view) {
    Actions actions;
    Column page = begin_sheet("summary");
    // Where the window ends, on the sheet as it is scrolled.
    const float foot = page.y - 2 * sheet_margin() + ImGui::GetIO().DisplaySize.y;
    title(page, view.summary);
    gap(page, 0.75f);
    if (view.summary.detail != SheetDetail::full) {
        short_sheet(page, view, actions);
    } else {
        if (measure(page) >= two_columns_from) side_by_side_sheet(page, view.summary, foot, actions);
        else long_sheet(page, view.summary, foot, actions);
        draw_measures(page, view);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
