#include "ui/screens/gate_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <vector>

#include "ui/widgets/light_picture.h"

namespace slopewise {
namespace {

struct TableColumn {
    std::string_view name, unit;
    std::string GateRow::*words;  // null: the light picture
    bool GateRow::*in;            // null: nothing to be in or out of
    bool right = true;            // numbers; words start at the left
    float width = 0;
};

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float lamp_height() { return std::round(note_height() * 0.72f); }
float mark_room() { return note_height() * 0.72f; }

std::vector<TableColumn> all_columns() {
    return {{"Gate", "", &GateRow::height, nullptr, true},
            {"Path", "\u00b0", &GateRow::deviation_deg, &GateRow::path_in, true},
            {"", "ft", &GateRow::deviation_ft, nullptr, true},
            {"Lights", "", nullptr, nullptr, false},
            {"Speed", "kt", &GateRow::speed, &GateRow::speed_in, true},
            {"Sink", "ft/min", &GateRow::sink, &GateRow::sink_in, true},
            {"Power", "%", &GateRow::power, nullptr, true},
            {"Flap", "", &GateRow::flap, nullptr, false}};
}

float lights_width(const GateRow& row) {
    return row.reached ? light_picture_size(lamp_height(), row.lights).x : 0.0f;
}

void set_widths(std::vector<TableColumn>& columns, std::span<const GateRow> gates) {
    for (TableColumn& column : columns) {
        column.width = std::max(text_extent(TextSize::note, column.name, true).x,
                                text_extent(TextSize::note, column.unit).x);
        for (const GateRow& row : gates) {
            if (column.words == nullptr) column.width = std::max(column.width, lights_width(row));
            else
                column.width = std::max(
                    column.width, text_extent(TextSize::note, row.*column.words, column.in != nullptr).x);
        }
        if (column.in != nullptr) column.width += mark_room();
    }
}

float whole_width(const std::vector<TableColumn>& columns) {
    float width = 0;
    for (const TableColumn& column : columns) width += column.width;
    return width;
}

void cell(const Column& place, float left, const TableColumn& column, const GateRow& row) {
    const Palette& c = theme().colour;
    if (!row.reached && column.words != &GateRow::height) return;
    const float right = left + column.width;
    if (column.words == nullptr) {
        draw_light_picture(place.list, {left, std::round(place.y + (note_height() - lamp_height()) / 2)},
                           lamp_height(), row.lights);
        return;
    }
    const bool out = column.in != nullptr && !(row.*column.in);
    // The feet belong to the degrees beside them.
    const bool feet_out = column.words == &GateRow::deviation_ft && !row.path_in;
    const ImU32 ink = out || feet_out
                          ? c.attention
                          : (column.in != nullptr || column.words == &GateRow::height ? c.ink : c.ink_soft);
    const bool bold = out || feet_out || column.words == &GateRow::height;
    const std::string& words = row.*column.words;
    if (!column.right) {
        text_at(place.list, {left, place.y}, TextSize::note, ink, words, bold);
        return;
    }
    text_right(place.list, {right, place.y}, TextSize::note, ink, words, bold);
    const float start = right - text_extent(TextSize::note, words, bold).x;
    if (out)
        mark_out(place.list, {start - mark_room() * 0.64f, place.y + note_height() * 0.5f},
                 note_height() * 0.5f, ink);
}

void header(Column& place, const std::vector<TableColumn>& columns, float between) {
    const Palette& c = theme().colour;
    float left = place.left;
    const float units_y = place.y + note_height();
    for (const TableColumn& column : columns) {
        const float right = left + column.width;
        if (column.right) {
            text_right(place.list, {right, place.y}, TextSize::note, c.ink, column.name, true);
            text_right(place.list, {right, units_y}, TextSize::note, c.ink_soft, column.unit);
        } else {
            text_at(place.list, {left, place.y}, TextSize::note, c.ink, column.name, true);
        }
        left = right + between;
    }
    place.y = units_y + line_height(TextSize::note);
}

constexpr std::string_view stable_head = "Stable by the criteria";

// What "stable" or "not stable: low, slow" wants at most, and the least it is broken into.
struct Room {
    float wanted = 0, least = 0;
};
Room room_for_stability(std::span<const GateRow> gates) {
    Room room{text_extent(TextSize::note, "Stable", true).x, 0};
    for (const GateRow& row : gates)
        room.wanted = std::max(room.wanted, text_extent(TextSize::note, row.stability, !row.stable).x);
    room.wanted = std::ceil(room.wanted) + 1;
    room.least = std::min(room.wanted, text_extent(TextSize::note, "stable, improving", true).x + 1);
    return room;
}

void stability_words(Column& place, const GateRow& row) {
    paragraph(place, TextSize::note, row.stable ? theme().colour.ink_soft : theme().colour.attention,
              row.stability, !row.stable);
}

// How the columns lie: the judgement stands last in what the numbers leave, or, where that is too little, on
// a line of its own.
struct Layout {
    std::vector<TableColumn> columns;
    float between = 0;
    bool judged_beside = true;
};
Layout lay_out(const Column& column, std::span<const GateRow> gates) {
    Layout layout{all_columns(), 0, true};
    set_widths(layout.columns, gates);
    const Room room = room_for_stability(gates);
    const float least_between = grid(1.125f);
    const auto free = [&](float judgement) { return column.width - whole_width(layout.columns) - judgement; };
    const auto gaps = [&] { return static_cast<float>(layout.columns.size()); };
    while (layout.columns.size() > 6 && free(room.wanted) < gaps() * least_between) layout.columns.pop_back();
    layout.judged_beside = free(room.least) >= gaps() * least_between;
    const float left_over = layout.judged_beside
                                ? std::max(free(room.wanted), gaps() * least_between) / gaps()
                                : free(0) / (gaps() - 1);
    layout.between = std::floor(std::clamp(left_over, 0.0f, grid(4)));
    return layout;
}

void gate_row(Column& column, const Layout& layout, const GateRow& row) {
    float left = column.left;
    for (const TableColumn& each : layout.columns) {
        cell(column, left, each, row);
        left += each.width + layout.between;
    }
    const float second = column.left + layout.columns[0].width + layout.between;
    Column judgement{column.list, layout.judged_beside ? left : second, 0, column.y};
    judgement.width = column.right() - judgement.left;
    column.y += line_height(TextSize::note);
    if (!row.reached) {
        text_at(column.list, {second, judgement.y}, TextSize::note, theme().colour.ink_soft, "not reached");
        return;
    }
    if (!layout.judged_beside) judgement.y = column.y;
    stability_words(judgement, row);
    column.y = std::max(column.y, judgement.y);
}

bool any_out(std::span<const GateRow> gates) {
    return std::ranges::any_of(gates, [](const GateRow& row) {
        return row.reached && !(row.path_in && row.speed_in && row.sink_in);
    });
}

void out_legend(const Column& column, float left, float y) {
    const ImU32 ink = theme().colour.attention;
    mark_out(column.list, {left + mark_room() * 0.5f, y + note_height() * 0.5f}, note_height() * 0.5f, ink);
    text_at(column.list, {left + mark_room() + grid(0.75f), y}, TextSize::note, ink, "out of tolerance");
}

// The head of the judgement, over the legend where there is one to give; false where that does not fit.
bool judgement_header(const Column& column, const Layout& layout, bool with_legend) {
    if (!layout.judged_beside) return false;
    const float left = column.left + whole_width(layout.columns) +
                       layout.between * static_cast<float>(layout.columns.size());
    const auto fits = [&](float width) { return left + width <= column.right(); };
    const bool whole = fits(text_extent(TextSize::note, stable_head, true).x);
    text_at(column.list, {left, column.y}, TextSize::note, theme().colour.ink,
            whole ? stable_head : stable_head.substr(0, 6), true);
    if (!fits(mark_room() + grid(0.75f) + text_extent(TextSize::note, "out of tolerance").x)) return false;
    if (with_legend) out_legend(column, left, column.y + note_height());
    return true;
}

}  // namespace

void draw_gate_table(Column& column, std::span<const GateRow> gates) {
    const Layout layout = lay_out(column, gates);
    const bool out = any_out(gates);
    const bool told = judgement_header(column, layout, out);
    header(column, layout.columns, layout.between);
    for (const GateRow& row : gates) {
        rule(column);
        gap(column, 0.5f);
        gate_row(column, layout, row);
    }
    rule(column);
    if (!out || told) return;
    gap(column, 0.5f);
    out_legend(column, column.left, column.y);
    column.y += line_height(TextSize::note);
}

}  // namespace slopewise
