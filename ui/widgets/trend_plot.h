// How a student comes on: a value an attempt, one attempt after the other, as a textbook plots it.
#pragma once

#include <span>
#include <string>

#include "ui/view_logbook.h"
#include "ui/widgets/paper.h"

namespace slopewise {

// The attempts from left to right, and a value upwards.
struct TrendPanel {
    ImVec2 min, max;  // of what is drawn in; words stand left of it
    std::size_t count = 0;
    float high = 1;  // the value at the top; greater ones are drawn there as open triangles

    float x(std::size_t index) const {
        return min.x + (max.x - min.x) * (static_cast<float>(index) + 0.5f) / static_cast<float>(count);
    }
    float y(float value) const { return max.y - (max.y - min.y) * (value < high ? value / high : 1.0f); }
};

// Where a panel of so many attempts and such a height stands in a column, with room for its words.
TrendPanel trend_panel(const Column& column, float height, std::size_t count, float high);

// A value that is a little above nearly all of these, round, and between 0.5 and 2 degrees.
float pleasant_top_deg(std::span<const TrendPoint> points, float TrendPoint::*value);

// Axes, the numbers on the left with their unit, and a line where each session begins.
void draw_trend_frame(ImDrawList* list, const TrendPanel& panel, std::span<const TrendPoint> points,
                      float step, int decimals, const char* unit);

// The numbers of the attempts below a panel.
void draw_attempt_axis(ImDrawList* list, const TrendPanel& panel);

// A mark an attempt: filled unaided, hollow aided. Where there are more attempts than marks have room, a bar
// from the least to the greatest of those that share the room.
void draw_trend_marks(ImDrawList* list, const TrendPanel& panel, std::span<const TrendPoint> points,
                      float TrendPoint::*value);
// How many attempts share such a bar; 1: each has its own mark.
std::size_t attempts_a_mark(const TrendPanel& panel);

// A line through the values that there are (not negative), not joined across a long gap.
void draw_trend_line(ImDrawList* list, const TrendPanel& panel, std::span<const TrendPoint> points,
                     float TrendPoint::*value, ImU32 colour);

}  // namespace slopewise
