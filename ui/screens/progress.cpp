// How a student comes on: trends, the learning curve, and what there is evidence of. It never says ready.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <string>

#include "ui/screens/lead_to_sources.h"
#include "ui/screens/logbook_rows.h"
#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/trend_plot.h"

namespace slopewise {
namespace {

constexpr float two_columns_from = 38;  // text sizes across the page
constexpr float highest_sum = 4;        // what is above the limits says no more

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float line_px() { return line_height(TextSize::note); }

void attention(Column& page, const std::string& words) {
    const Palette& c = theme().colour;
    mark_out(page.list, {page.left + grid(0.75f), page.y + line_px() * 0.42f}, grid(1.5f), c.attention);
    Column beside{page.list, page.left + grid(3), page.width - grid(3), page.y};
    paragraph(beside, TextSize::note, c.attention, words, true);
    page.y = beside.y;
    gap(page, 0.5f);
}

// How many of each lesson; pressing a row shows that lesson alone.
void lessons(Column& column, const ProgressView& sheet, Actions& actions) {
    const Palette& c = theme().colour;
    constexpr std::array<const char*, 3> heads{"flown", "unaided", "aided"};
    const float each = text_extent(TextSize::note, "unaided").x + grid(1.5f);
    heading(column, "Attempts by lesson");
    for (std::size_t i = 0; i < heads.size(); ++i)
        text_right(column.list, {column.right() - grid(0.5f) - each * static_cast<float>(2 - i), column.y},
                   TextSize::note, c.ink_soft, heads[i]);
    column.y += line_px() + grid(0.25f);
    const float height = std::max(44.0f, std::round(line_px() + grid(1)));
    for (std::size_t row = 0; row < sheet.lessons.size(); ++row) {
        const ProgressView::LessonCount& lesson = sheet.lessons[row];
        const bool chosen = static_cast<int>(row) == sheet.lesson;
        const ImVec2 min{std::round(column.left), std::round(column.y)};
        const ImVec2 max{min.x + column.width, min.y + height};
        const Press press = press_area(lesson.title.c_str(), min, {column.width, height});
        if (chosen || press.hovered) column.list->AddRectFilled(min, max, c.band);
        if (chosen) column.list->AddRectFilled(min, {min.x + grid(0.5f), max.y}, c.accent);
        Column line{column.list, column.left, column.width, min.y};
        rule(line);
        const float y = min.y + (height - note_px()) / 2;
        text_within(column.list, {min.x + grid(1.5f), y}, column.width - grid(2.5f) - 3 * each,
                    TextSize::note, c.ink, lesson.title, chosen);
        const std::array<const std::string*, 3> counts{&lesson.count, &lesson.unaided, &lesson.aided};
        for (std::size_t i = 0; i < counts.size(); ++i)
            text_right(column.list, {max.x - grid(0.5f) - each * static_cast<float>(2 - i), y},
                       TextSize::note, c.ink, *counts[i], chosen);
        if (press.focused) focus_ring(column.list, min, max, c.ink);
        if (press.pressed && !chosen) actions.emplace_back(ChooseProgressLesson{lesson.id});
        column.y = max.y;
    }
    rule(column);
}

void trend(Column& column, const ProgressView& sheet, const char* words, float TrendPoint::*value,
           float TrendPoint::*median, float height) {
    const std::span<const TrendPoint> points = sheet.points;
    paragraph(column, TextSize::note, theme().colour.ink, words, true);
    const float high = pleasant_top_deg(points, value);
    const TrendPanel panel = trend_panel(column, height, points.size(), high);
    draw_trend_frame(column.list, panel, points, high > 1 ? 1.0f : 0.5f, 1, "\u00b0");
    draw_trend_marks(column.list, panel, points, value);
    draw_trend_line(column.list, panel, points, median, theme().colour.ink);
    column.y = panel.max.y + note_px() / 2 + grid(1);  // below the last number beside the axis
}

// A limit across the plot, named at its beginning, where the sum is still low: the strict one above its line,
// the other below.
void limit_line(ImDrawList* list, const TrendPanel& panel, double limit, const std::string& words,
                bool strict) {
    const Palette& c = theme().colour;
    const float y = std::round(panel.y(static_cast<float>(limit)));
    const float thick = strict ? 1.0f : std::max(2.0f, grid(0.25f));
    const ImU32 colour = strict ? c.ink_soft : c.accent;
    list->AddRectFilled({panel.min.x, y}, {panel.max.x, y + thick}, colour);
    const float words_y = strict ? y - note_px() * 1.1f : y + thick + note_px() * 0.1f;
    text_at(list, {panel.min.x + grid(1), words_y}, TextSize::note, colour, words, !strict);
}

std::string with_limit(const char* words, double limit) {
    char number[16];
    std::snprintf(number, sizeof number, "%.1f", limit);
    return words + std::string(number);
}

void signal_marks(ImDrawList* list, const TrendPanel& panel, const ProgressView& sheet) {
    const Palette& c = theme().colour;
    const float size = note_px() * 0.8f;
    const auto on_disc = [&](int index) {
        const ImVec2 at{panel.x(static_cast<std::size_t>(index)), panel.max.y - size};
        list->AddCircleFilled(at, size * 0.8f, c.paper, 20);
        return at;
    };
    if (sheet.signal_at >= 0) mark_in(list, on_disc(sheet.signal_at), size, c.good);
    if (sheet.relapse_at >= 0) mark_out(list, on_disc(sheet.relapse_at), size, c.attention);
}

void learning(Column& column, const ProgressView& sheet, float height) {
    const Palette& c = theme().colour;
    paragraph(column, TextSize::note, c.ink, "Learning curve. " + sheet.learning, true);
    const TrendPanel panel = trend_panel(column, height, sheet.points.size(), highest_sum);
    draw_trend_frame(column.list, panel, sheet.points, 1, 0, "");
    limit_line(column.list, panel, sheet.limit, with_limit("signals at ", sheet.limit), false);
    limit_line(column.list, panel, sheet.strict_limit, with_limit("strict: ", sheet.strict_limit), true);
    draw_trend_line(column.list, panel, sheet.points, &TrendPoint::learning_sum, c.ink);
    signal_marks(column.list, panel, sheet);
    draw_attempt_axis(column.list, panel);
    column.y = panel.max.y + line_px() + grid(0.75f);
}

// What the marks are, said once for both panels.
std::string mark_words(std::size_t attempts_a_bar) {
    if (attempts_a_bar == 1)
        return "Filled: unaided. Hollow: aided. Line: median of five unaided, not joined across 14 days. "
               "Upright lines: a new session.";
    return "Bars: from the least to the greatest of " + std::to_string(attempts_a_bar) +
           " attempts. Line: median of five unaided, not joined across 14 days.";
}

void plots(Column& column, const ProgressView& sheet, float height) {
    const Palette& c = theme().colour;
    const float words = 4 * line_px() + grid(2.75f) + note_px() + 2 * line_px();
    const float each = std::max(4.5f * line_px(), (height - words) / 3.4f);
    heading(column, "Attempt by attempt");
    const std::size_t share = attempts_a_mark(trend_panel(column, each, sheet.points.size(), 1));
    paragraph(column, TextSize::note, c.ink_soft, mark_words(share));
    gap(column, 0.5f);
    trend(column, sheet, "Path: how far off on the whole, either way", &TrendPoint::bias_deg,
          &TrendPoint::median_bias_deg, each);
    trend(column, sheet, "Path: scatter about that", &TrendPoint::scatter_deg,
          &TrendPoint::median_scatter_deg, each);
    learning(column, sheet, 1.4f * each);
}

void evidence(Column& column, const ProgressView& sheet) {
    const Palette& c = theme().colour;
    heading(column, "Evidence, for the instructor to judge");
    paragraph(column, TextSize::note, c.ink_soft, sheet.evidence_words + ". Over all lessons.");
    gap(column, 0.5f);
    const float mark = note_px() * 0.7f, indent = 1.4f * note_px();
    for (const ProgressView::Evidence& item : sheet.evidence) {
        const ImVec2 at{column.left + mark * 0.6f, column.y + note_px() * 0.5f};
        if (item.complete) mark_in(column.list, at, mark, c.good);
        else mark_out(column.list, at, mark, c.attention);
        Column words{column.list, column.left + indent, column.width - indent, column.y};
        paragraph(words, TextSize::note, c.ink, item.what);
        paragraph(words, TextSize::note, item.complete ? c.good : c.attention,
                  (item.complete ? "complete: " : "not yet: ") + item.found);
        column.y = words.y + grid(0.5f);
    }
}

void parameters(Column& column, const ProgressView& sheet) {
    gap(column, 0.5f);
    for (const std::string& words : sheet.parameters)
        paragraph(column, TextSize::note, theme().colour.ink_soft, words);
}

void decisions(Column& column, const ProgressView& sheet) {
    gap(column, 1);
    heading(column, "Decisions");
    paragraph(column, TextSize::note, theme().colour.ink, sheet.decisions);
    gap(column, 1);
}

void hand_over(Column& column, Actions& actions) {
    constexpr ButtonWords words{"Hand over as CSV", Weight::plain, "C"};
    gap(column, 1);
    if (button_row(column, std::span(&words, 1)) == 0) actions.emplace_back(SaveProgress{});
    lead_to_sources_beside(column, button_width(words), actions);
}

void wide_sheet(Column& page, const ProgressView& sheet, Actions& actions) {
    const float room = ImGui::GetIO().DisplaySize.y - sheet_margin() - (page.y + ImGui::GetScrollY());
    const std::array<float, 2> shares{0.42f, 0.58f};
    std::vector<Column> columns = side_by_side(page, shares, 5);
    lessons(columns[0], sheet, actions);
    decisions(columns[0], sheet);
    evidence(columns[0], sheet);
    hand_over(columns[0], actions);
    plots(columns[1], sheet, room);
    parameters(columns[1], sheet);
    join(page, columns);
}

void long_sheet(Column& page, const ProgressView& sheet, Actions& actions) {
    lessons(page, sheet, actions);
    gap(page, 1);
    plots(page, sheet, 0.9f * page.width);
    parameters(page, sheet);
    decisions(page, sheet);
    evidence(page, sheet);
    hand_over(page, actions);
}

}  // namespace

Actions draw_progress(const View& view) {
    Actions actions;
    const ProgressView& sheet = view.progress;
    Column page = begin_sheet("progress");
    if (title_with_way_back(page, "Progress: " + sheet.student, {"Back to the logbook", Weight::plain}))
        actions.emplace_back(CloseProgress{});
    for (const std::string& hint : sheet.hints) attention(page, hint);
    if (!sheet.nothing.empty()) {
        paragraph(page, TextSize::text, theme().colour.ink, sheet.nothing);
        gap(page, 1.5f);
        evidence(page, sheet);
        gap(page, 1);
        lead_to_sources(page, actions);
    } else if (measure(page) >= two_columns_from) {
        wide_sheet(page, sheet, actions);
    } else {
        long_sheet(page, sheet, actions);
    }
    end_sheet(page);
    return actions;
}

}  // namespace slopewise
