// The deviation summary: what happened, measured, to be talked over with an instructor.
#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "ui/screens/gate_table.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/light_picture.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/profile_plot.h"

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
    paragraph(page, TextSize::text, c.ink_soft, summary.ended);
    paragraph(page, TextSize::text, c.ink, summary.worst, true);
}

// Bias and scatter of the path and of the speed, as two short lines.
void figure_line(Column& column, std::string_view name, std::span<const LabelledValue> figures) {
    const Palette& c = theme().colour;
    const float name_width =
        std::max(text_extent(TextSize::note, "Speed", true).x, text_extent(TextSize::note, name, true).x) +
        grid(2);
    text_at(column.list, {column.left, column.y}, TextSize::note, c.ink, name, true);
    const float each =
        (column.width - name_width) / static_cast<float>(std::max<std::size_t>(figures.size(), 1));
    const bool notes = each > note_height() * 11;
    float left = column.left + name_width;
    for (const LabelledValue& figure : figures) {
        float x = left;
        const auto put = [&](std::string_view words, ImU32 ink, bool bold, float after) {
            x += text_at(column.list, {x, column.y}, TextSize::note, ink, words, bold).x + after;
        };
        put(figure.label, c.ink_soft, false, grid(0.75f));
        put(figure.value, c.ink, true, figure.unit == "\u00b0" ? 0.0f : grid(0.5f));
        put(figure.unit, c.ink_soft, false, grid(0.75f));
        if (notes && figure.label == "Bias") put(figure.note, c.ink_soft, false, 0);
        left += each;
    }
    column.y += line_height(TextSize::note);
}

void whole_run(Column& column, const SummaryView& summary) {
    heading(column, "Over the whole run");
    figure_line(column, "Path", summary.path_figures);
    figure_line(column, "Speed", summary.speed_figures);
}

void tolerance(Column& column, const SummaryView& summary) {
    heading(column, "Share of time in tolerance");
    gap(column, 0.25f);
    share_rows(column, summary.in_tolerance);
}

float lamp_height() { return std::round(note_height() * 0.8f); }

float light_shares_height() { return line_height(TextSize::note) * 2 + lamp_height() + grid(2); }

void light_shares(Column& column, const SummaryView& summary) {
    const Palette& c = theme().colour;
    heading(column, "Share of time with each light picture");
    gap(column, 0.5f);
    const float lamp = lamp_height();
    const float each =
        column.width / static_cast<float>(std::max<std::size_t>(summary.light_pictures.size(), 1));
    for (std::size_t i = 0; i < summary.light_pictures.size(); ++i) {
        const float left = std::round(column.left + each * static_cast<float>(i));
        draw_light_picture(column.list, {left, std::round(column.y)}, lamp,
                           summary.light_pictures[i].picture);
        text_at(column.list, {left, column.y + lamp + grid(0.5f)}, TextSize::note, c.ink,
                summary.light_pictures[i].value, true);
    }
    column.y += lamp + grid(0.5f) + line_height(TextSize::note);
}

void definitions(Column& page, const View& view) {
    const Palette& c = theme().colour;
    rule(page);
    gap(page, 1);
    for (const std::string& line : view.summary.definitions)
        paragraph(page, TextSize::note, c.ink_soft, line);
    gap(page, 1);
    for (const std::string& line : view.caution) paragraph(page, TextSize::note, c.ink_soft, line);
}

struct NextStep {
    ButtonWords words;
    Action action;
};

std::vector<NextStep> next_steps(const SummaryView& summary) {
    std::vector<NextStep> steps{{{"Same again", Weight::primary}, RestartSame{}}};
    if (summary.can_mirror) steps.push_back({{"Mirror start"}, RestartMirrored{}});
    if (summary.can_fly_on) steps.push_back({{"Fly on"}, FlyOn{}});
    steps.push_back({{"Save track (CSV)"}, SaveTrack{}});
    steps.push_back({{"New approach"}, GoToChoices{}});
    return steps;
}

constexpr ButtonWords measures_words{"See how it was measured", Weight::quiet};

// The sheet's second half holds what was measured; this leads there.
void lead_to_measures(const Column& page) {
    const float width = button_width(measures_words);
    const ImVec2 min{std::round(page.right() - width + grid(1)), std::round(page.y - press_height())};
    if (button(page.list, min, {width, press_height()}, measures_words))
        ImGui::SetScrollY(ImGui::GetScrollMaxY());
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

// Everything that matters within the window; what was measured comes below its edge.
void side_by_side_sheet(Column& page, const SummaryView& summary, float foot, Actions& actions) {
    const std::array<float, 2> shares{1, 1};
    std::vector<Column> columns = side_by_side(page, shares, 4);
    draw_gate_table(columns[1], summary.gates);
    gap(columns[1], 1);
    whole_run(columns[1], summary);
    gap(columns[1], 1);
    tolerance(columns[1], summary);
    // The plot takes what the window leaves beside the tables, so that the buttons stay in sight.
    const float bottom = std::max(foot - press_height() - grid(2), columns[1].y);
    const float plot = std::max(bottom - light_shares_height() - grid(1) - columns[0].y, grid(24));
    draw_profile(page.list, {columns[0].left, columns[0].y}, {columns[0].right(), columns[0].y + plot},
                 summary);
    columns[0].y += plot + grid(1);
    light_shares(columns[0], summary);
    join(page, columns);
    gap(page, 2);
    if (draw_next_steps(page, summary, actions)) lead_to_measures(page);
    page.y = std::max(page.y, foot + sheet_margin());
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
    draw_gate_table(page, summary.gates);
    gap(page, 1.5f);
    whole_run(page, summary);
    gap(page, 1.5f);
    tolerance(page, summary);
    gap(page, 1.5f);
    light_shares(page, summary);
}

}  // namespace

Actions draw_summary(const View& view) {
    Actions actions;
    Column page = begin_sheet("summary");
    // Where the window ends, on the sheet as it is scrolled.
    const float foot = page.y - 2 * sheet_margin() + ImGui::GetIO().DisplaySize.y;
    title(page, view.summary);
    gap(page, 1.5f);
    if (measure(page) >= two_columns_from) side_by_side_sheet(page, view.summary, foot, actions);
    else long_sheet(page, view.summary, foot, actions);
    gap(page, 2);
    definitions(page, view);
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
