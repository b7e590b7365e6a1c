// Numbers set on paper: rows of labelled values, and shares of time as bars with their words.
#pragma once

#include <span>

#include "ui/view.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// One row each: label on the left, number right-aligned with its unit lighter, note after the label or, where
// it is narrow, under it.
void labelled_rows(Column& column, std::span<const LabelledValue> rows);

// One row each: label, bar, value. In a narrow column the bar goes under the label.
void share_rows(Column& column, std::span<const ShareBar> rows);

// A keyboard's keys and what they do, the keys in a column of their own.
void key_rows(Column& column, std::span<const KeyHint> keys);
float key_rows_width(std::span<const KeyHint> keys);  // on one line each
float key_rows_height(float width, std::span<const KeyHint> keys);

// "↑ ↓" as two outlined key caps; returns the width taken. `height` of a cap in pixels.
float key_caps(ImDrawList* list, ImVec2 min, float height, std::string_view keys, ImU32 ink, ImU32 outline);
float key_caps_width(float height, std::string_view keys);

}  // namespace slopewise
