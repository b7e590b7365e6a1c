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

}  // namespace

void draw_gate_table(Column& column, std::span<const GateRow> gates) {
    std::vector<TableColumn> columns = all_columns();
    set_widths(columns, gates);
    const float least_between = grid(1.125f);
    while (columns.size() > 6 &&
           whole_width(columns) + least_between * static_cast<float>(columns.size() - 1) > column.width)
        columns.pop_back();
    const float free = column.width - whole_width(columns);
    const float between =
        std::floor(std::clamp(free / static_cast<float>(columns.size() - 1), 0.0f, grid(4)));

    header(column, columns, between);
    bool any_out = false;
    for (const GateRow& row : gates) {
        rule(column);
        gap(column, 0.5f);
        float left = column.left;
        for (const TableColumn& each : columns) {
            cell(column, left, each, row);
            left += each.width + between;
        }
        if (!row.reached) {
            text_at(column.list, {column.left + columns[0].width + between, column.y}, TextSize::note,
                    theme().colour.ink_soft, "not reached");
        } else {
            any_out |= !row.path_in || !row.speed_in || !row.sink_in;
        }
        column.y += line_height(TextSize::note);
    }
    rule(column);
    if (!any_out) return;
    gap(column, 0.5f);
    mark_out(column.list, {column.left + mark_room() * 0.5f, column.y + note_height() * 0.5f},
             note_height() * 0.5f, theme().colour.attention);
    text_at(column.list, {column.left + mark_room() + grid(0.75f), column.y}, TextSize::note,
            theme().colour.attention, "outside the tolerance");
    column.y += line_height(TextSize::note);
}

}  // namespace slopewise
