#include "ui/widgets/text_table.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

constexpr TextSize size = TextSize::note;

std::vector<float> widths(const TextTable& table) {
    std::vector<float> all;
    for (std::size_t i = 0; i < table.heads.size(); ++i) {
        float width =
            std::max(text_extent(size, table.heads[i], true).x, text_extent(size, table.units[i]).x);
        for (const auto& row : table.rows) width = std::max(width, text_extent(size, row[i], i == 0).x);
        all.push_back(std::ceil(width));
    }
    return all;
}

// "Path bias +0.12 °, scatter 0.20 °."
std::string sentence(const TextTable& table, const std::vector<std::string>& row) {
    std::string words;
    for (std::size_t i = 1; i < row.size(); ++i)
        words += (i == 1 ? "" : ", ") + table.heads[i] + " " + row[i] +
                 (table.units[i].empty() ? "" : " " + table.units[i]);
    return words + ".";
}

void draw_sentences(Column& column, const TextTable& table) {
    for (const auto& row : table.rows) {
        paragraph(column, size, theme().colour.ink, row[0], true);
        paragraph(column, size, theme().colour.ink_soft, sentence(table, row));
        gap(column, 0.5f);
    }
}

}  // namespace

void draw_text_table(Column& column, const TextTable& table) {
    const Palette& c = theme().colour;
    heading(column, table.title);
    const std::vector<float> width = widths(table);
    float whole = 0;
    for (const float each : width) whole += each;
    const float least_between = grid(1.5f);
    const auto gaps = static_cast<float>(width.size() - 1);
    if (whole + gaps * least_between > column.width) {
        draw_sentences(column, table);
        return;
    }
    const float between = std::floor(std::clamp((column.width - whole) / gaps, 0.0f, grid(4)));
    const auto each_cell = [&](auto&& draw) {
        float left = column.left;
        for (std::size_t i = 0; i < width.size(); ++i) {
            draw(i, left, left + width[i]);
            left += width[i] + between;
        }
    };
    each_cell([&](std::size_t i, float, float right) {
        text_right(column.list, {right, column.y}, size, c.ink, table.heads[i], true);
        text_right(column.list, {right, column.y + line_height(size)}, size, c.ink_soft, table.units[i]);
    });
    column.y += 2 * line_height(size);
    for (const auto& row : table.rows) {
        rule(column);
        gap(column, 0.5f);
        each_cell([&](std::size_t i, float left, float right) {
            if (i == 0) text_at(column.list, {left, column.y}, size, c.ink, row[i], true);
            else text_right(column.list, {right, column.y}, size, c.ink, row[i]);
        });
        column.y += line_height(size);
    }
    rule(column);
}

}  // namespace slopewise
