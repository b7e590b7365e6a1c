#include "ui/screens/measures.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/widgets/figures.h"
#include "ui/widgets/light_picture.h"
#include "ui/widgets/text_table.h"

namespace slopewise {
namespace {

// Text sizes across the page from which it has so many columns.
constexpr float three_columns_from = 44;
constexpr float two_columns_from = 30;

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

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

void overview(Column& page, const SummaryView& summary) {
    if (measure(page) < two_columns_from) {
        whole_run(page, summary);
        gap(page, 1.5f);
        tolerance(page, summary);
        gap(page, 1.5f);
        light_shares(page, summary);
        return;
    }
    const std::array<float, 2> shares{1, 1};
    std::vector<Column> columns = side_by_side(page, shares, 4);
    whole_run(columns[0], summary);
    gap(columns[0], 1.5f);
    light_shares(columns[0], summary);
    tolerance(columns[1], summary);
    join(page, columns);
}

void draw_group(Column& column, const MeasuresView::Group& group) {
    heading(column, group.title);
    labelled_rows(column, group.rows);
    if (!group.note.empty()) paragraph(column, TextSize::note, theme().colour.ink_soft, group.note);
    gap(column, 1.5f);
}

// Each group goes under the shortest column so far.
void groups(Column& page, const MeasuresView& measures) {
    const std::array<float, 3> shares{1, 1, 1};
    const float sizes = measure(page);
    const std::size_t count = sizes >= three_columns_from ? 3 : (sizes >= two_columns_from ? 2 : 1);
    std::vector<Column> columns = side_by_side(page, std::span(shares).first(count), 4);
    for (const MeasuresView::Group& group : measures.groups)
        draw_group(*std::ranges::min_element(columns, {}, &Column::y), group);
    join(page, columns);
}

void lines(Column& page, std::span<const std::string> all) {
    for (const std::string& line : all) paragraph(page, TextSize::note, theme().colour.ink_soft, line);
}

}  // namespace

void draw_measures(Column& page, const View& view) {
    const SummaryView& summary = view.summary;
    overview(page, summary);
    gap(page, 1.5f);
    draw_text_table(page, summary.measures.bands);
    gap(page, 1.5f);
    groups(page, summary.measures);
    heading(page, "Held to");
    lines(page, summary.measures.held_to);
    gap(page, 1);
    heading(page, "How it was measured");
    lines(page, summary.definitions);
    gap(page, 1);
    lines(page, view.caution);
}

}  // namespace slopewise
