#include "ui/widgets/figures.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

float height_of(TextSize size) { return theme().size[static_cast<std::size_t>(size)]; }

float hairline() { return std::max(1.0f, std::round(grid(0.125f))); }

void thin_rule(const Column& column, float y) {
    column.list->AddRectFilled({column.left, std::round(y)}, {column.right(), std::round(y) + hairline()},
                               theme().colour.rule);
}

// Calls `use` with each space-separated key of "E D".
template <class Use>
void each_key(std::string_view keys, Use use) {
    while (!keys.empty()) {
        const std::size_t space = keys.find(' ');
        const std::string_view key = keys.substr(0, space);
        if (!key.empty()) use(key);
        keys = space == std::string_view::npos ? std::string_view{} : keys.substr(space + 1);
    }
}

float cap_width(float height, std::string_view key) {
    return std::max(height, text_extent(TextSize::note, key).x + 0.5f * height);
}

float cap_height() { return std::round(height_of(TextSize::note) * 1.12f); }

float widest_caps(std::span<const KeyHint> keys) {
    float width = 0;
    for (const KeyHint& hint : keys) width = std::max(width, key_caps_width(cap_height(), hint.key));
    return width;
}

}  // namespace

void labelled_rows(Column& column, std::span<const LabelledValue> rows) {
    const Palette& c = theme().colour;
    float unit_width = 0;
    for (const LabelledValue& row : rows)
        unit_width = std::max(unit_width, text_extent(TextSize::note, row.unit).x);
    const float value_right = column.right() - (unit_width > 0 ? unit_width + grid(0.75f) : 0.0f);
    const float drop =
        0.29f * (height_of(TextSize::text) - height_of(TextSize::note));  // to a common baseline

    for (std::size_t i = 0; i < rows.size(); ++i) {
        const LabelledValue& row = rows[i];
        if (i > 0) thin_rule(column, column.y);
        column.y += grid(0.375f);
        const float small_y = column.y + (height_of(TextSize::text) - height_of(TextSize::note)) / 2 + drop;
        text_at(column.list, {column.left, small_y}, TextSize::note, c.ink, row.label);
        text_right(column.list, {value_right, column.y}, TextSize::text, c.ink, row.value, true);
        text_at(column.list, {value_right + grid(0.75f), small_y}, TextSize::note, c.ink_soft, row.unit);
        column.y += line_height(TextSize::text);
        const float note_left = column.left + text_extent(TextSize::note, row.label).x + grid(1);
        const float value_left = value_right - text_extent(TextSize::text, row.value, true).x;
        if (note_left + text_extent(TextSize::note, row.note).x + grid(1) <= value_left) {
            text_at(column.list, {note_left, small_y}, TextSize::note, c.ink_soft, row.note);
        } else if (!row.note.empty()) {
            column.y -= grid(0.25f);
            paragraph(column, TextSize::note, c.ink_soft, row.note);
        }
        column.y += grid(0.25f);
    }
}

void share_rows(Column& column, std::span<const ShareBar> rows) {
    const Palette& c = theme().colour;
    float label_width = 0;
    for (const ShareBar& row : rows)
        label_width = std::max(label_width, text_extent(TextSize::note, row.label).x);
    const float value_width = text_extent(TextSize::note, "100 %", true).x;
    const float least_bar = grid(8);
    const bool beside = label_width + value_width + least_bar + grid(3) <= column.width;
    const float bar_right = column.right() - value_width - grid(1.5f);
    const float bar_left =
        beside ? std::max(column.left + label_width + grid(1.5f), column.left + 0.45f * column.width)
               : column.left;
    const float thick = std::round(grid(1));

    for (const ShareBar& row : rows) {
        text_at(column.list, {column.left, column.y}, TextSize::note, c.ink, row.label);
        if (!beside) column.y += line_height(TextSize::note);
        const float middle = std::round(column.y + height_of(TextSize::note) / 2);
        const float share = static_cast<float>(std::clamp(row.fraction, 0.0, 1.0));
        column.list->AddRectFilled({bar_left, middle - thick / 2}, {bar_right, middle + thick / 2},
                                   c.paper_edge);
        column.list->AddRectFilled({bar_left, middle - thick / 2},
                                   {bar_left + (bar_right - bar_left) * share, middle + thick / 2}, c.accent);
        text_right(column.list, {column.right(), column.y}, TextSize::note, c.ink, row.value, true);
        column.y += line_height(TextSize::note) + grid(0.25f);
    }
}

float key_caps_width(float height, std::string_view keys) {
    float width = 0;
    each_key(keys, [&](std::string_view key) {
        width += (width > 0 ? grid(0.5f) : 0.0f) + cap_width(height, key);
    });
    return width;
}

float key_caps(ImDrawList* list, ImVec2 min, float height, std::string_view keys, ImU32 ink, ImU32 outline) {
    float left = min.x;
    each_key(keys, [&](std::string_view key) {
        const float width = cap_width(height, key);
        list->AddRect({left, min.y}, {left + width, min.y + height}, outline, grid(0.375f), 0, hairline());
        text_centred(list, {left + width / 2, min.y + height / 2}, TextSize::note, ink, key);
        left += width + grid(0.5f);
    });
    return std::max(0.0f, left - grid(0.5f) - min.x);
}

void key_rows(Column& column, std::span<const KeyHint> keys) {
    const Palette& c = theme().colour;
    const float cap = cap_height();
    const float words_left = column.left + widest_caps(keys) + grid(1.5f);
    for (const KeyHint& hint : keys) {
        key_caps(column.list, {column.left, column.y}, cap, hint.key, c.ink, c.ink_soft);
        Column words{column.list, words_left, column.right() - words_left,
                     column.y + (cap - height_of(TextSize::note)) / 2};
        paragraph(words, TextSize::note, c.ink, hint.meaning);
        column.y = std::max(words.y, column.y + cap) + grid(0.5f);
    }
}

float key_rows_width(std::span<const KeyHint> keys) {
    float words = 0;
    for (const KeyHint& hint : keys) words = std::max(words, text_extent(TextSize::note, hint.meaning).x);
    return widest_caps(keys) + grid(1.5f) + std::ceil(words);
}

float key_rows_height(float width, std::span<const KeyHint> keys) {
    const float cap = cap_height();
    const float words_width = width - widest_caps(keys) - grid(1.5f);
    float height = 0;
    for (const KeyHint& hint : keys) {
        const float words = (cap - height_of(TextSize::note)) / 2 +
                            paragraph_height(TextSize::note, hint.meaning, words_width);
        height += std::max(words, cap) + grid(0.5f);
    }
    return height;
}

}  // namespace slopewise
