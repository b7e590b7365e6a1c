#include "ui/screens/choice_figure.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>

#include "ui/widgets/aircraft_mark.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr float pi = 3.14159265f;

// The figure's own geometry: miles along the ground, and the path's height as a share of the figure.
struct Frame {
    float ground_y, aim_x, mile, rise;  // pixels; `rise` of the path in a mile

    ImVec2 at(float miles_out, float angle_share) const {
        return {aim_x - miles_out * mile, ground_y - miles_out * rise * angle_share};
    }
};

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float line_width() { return std::max(1.0f, std::round(grid(0.1875f))); }

void dashed_line(ImDrawList* list, ImVec2 from, ImVec2 to, ImU32 colour) {
    const ImVec2 way{to.x - from.x, to.y - from.y};
    const float length = std::sqrt(way.x * way.x + way.y * way.y);
    const float dash = grid(0.75f);
    for (float at = 0; at < length; at += 2 * dash) {
        const float end = std::min(at + dash, length);
        list->AddLine({from.x + way.x * at / length, from.y + way.y * at / length},
                      {from.x + way.x * end / length, from.y + way.y * end / length}, colour, line_width());
    }
}

void arrow_left(ImDrawList* list, ImVec2 tip, float length, ImU32 colour) {
    const float head = grid(1);
    list->AddLine({tip.x + head * 0.5f, tip.y}, {tip.x + length, tip.y}, colour, line_width());
    list->AddTriangleFilled(tip, {tip.x + head * 1.2f, tip.y - head * 0.5f},
                            {tip.x + head * 1.2f, tip.y + head * 0.5f}, colour);
}

void draw_ground(ImDrawList* list, const Frame& frame, ImVec2 min, ImVec2 max, const ChoiceView& choice) {
    const Palette& c = theme().colour;
    list->AddLine({min.x, frame.ground_y}, {max.x, frame.ground_y}, c.ink, line_width());
    list->AddRectFilled({frame.aim_x - grid(3), frame.ground_y - line_width()},
                        {max.x, frame.ground_y + grid(0.5f)}, c.ink);
    const float label_y = frame.ground_y + grid(1.25f);
    for (const int miles : choice.distances_nm) {
        const ImVec2 foot = frame.at(static_cast<float>(miles), 0);
        list->AddLine(foot, {foot.x, foot.y + grid(0.75f)}, c.ink, line_width());
        const bool chosen = miles == choice.distance_nm;
        text_centred(list, {foot.x, label_y + note_height() / 2}, TextSize::note, chosen ? c.ink : c.ink_soft,
                     std::to_string(miles) + " NM", chosen);
    }
    text_right(list, {max.x, label_y}, TextSize::note, c.ink_soft, "aim point");
    // From the words to the spot itself.
    list->AddLine({frame.aim_x, frame.ground_y}, {frame.aim_x, label_y}, c.ink, line_width());
}

void draw_path(ImDrawList* list, const Frame& frame, float farthest) {
    const Palette& c = theme().colour;
    const ImVec2 aim = frame.at(0, 0);
    list->AddTriangleFilled(aim, frame.at(farthest, 1.17f), frame.at(farthest, 0.83f), c.band);
    list->AddLine(frame.at(farthest, 1), aim, c.accent, line_width());
    // Above the path, between the starts at whole miles, so that no aircraft stands on the words.
    constexpr std::string_view words = "3\u00b0 path";
    const float left = frame.at(0.5f * farthest, 0).x - text_extent(TextSize::note, words).x / 2;
    const float upper_edge = frame.at((frame.aim_x - left) / frame.mile, 1.17f).y;
    text_at(list, {left, upper_edge - note_height() - grid(0.25f)}, TextSize::note, c.accent, words);
}

// How the figure is drawn on the left, the wind on the right; under one another where the figure is narrow.
void draw_captions(ImDrawList* list, ImVec2 min, ImVec2 max, const ChoiceView& choice) {
    const Palette& c = theme().colour;
    constexpr std::string_view who = "Heights stretched";
    const ImVec2 taken = text_at(list, min, TextSize::note, c.ink_soft, who);
    const float wind_width = text_extent(TextSize::note, "20 kt headwind").x + grid(1);
    const float free = max.x - min.x - taken.x - wind_width;
    const float top = free > grid(8) ? min.y : min.y + line_height(TextSize::note);

    const bool calm = choice.headwind_kt < 0.5;
    text_right(list, {max.x, top}, TextSize::note, c.ink_soft,
               calm ? "no wind" : std::to_string(std::lround(choice.headwind_kt)) + " kt headwind");
    if (calm) return;
    const float longest = std::min(grid(16), top > min.y ? 0.3f * (max.x - min.x) : free - grid(4));
    const float length =
        longest * (0.25f + 0.75f * static_cast<float>(choice.headwind_kt / choice.max_headwind_kt));
    arrow_left(list, {max.x - wind_width - length, top + note_height() / 2}, length, c.ink_soft);
}

void draw_start(ImDrawList* list, const Frame& frame, const ChoiceView& choice) {
    const Palette& c = theme().colour;
    const float share = choice.position == 0 ? 1.33f : (choice.position == 1 ? 1.0f : 0.67f);
    const auto miles = static_cast<float>(choice.distance_nm);
    const ImVec2 place = frame.at(miles, share);
    dashed_line(list, frame.at(miles, 0), {place.x, place.y + grid(1.5f)}, c.ink_soft);
    const float length = std::max(44.0f, grid(8));
    aircraft_mark(list, place, length, -3.0f * pi / 180.0f, c.ink, c.paper);
}

}  // namespace

void draw_choice_figure(ImDrawList* list, ImVec2 min, ImVec2 max, const ChoiceView& choice) {
    if (choice.distances_nm.empty()) return;
    const float farthest =
        static_cast<float>(*std::max_element(choice.distances_nm.begin(), choice.distances_nm.end()));
    const float left_room = std::max(26.0f, grid(5));  // half an aircraft beyond the farthest start
    const float right_room = std::max(40.0f, grid(8));
    Frame frame;
    frame.ground_y = std::round(max.y - note_height() - grid(1.5f));
    frame.aim_x = max.x - right_room;
    frame.mile = (frame.aim_x - min.x - left_room) / farthest;
    const float sky = frame.ground_y - min.y - note_height() - grid(2);
    frame.rise = sky / (farthest * 1.45f);

    draw_path(list, frame, farthest + 0.12f);
    draw_ground(list, frame, min, max, choice);
    draw_captions(list, min, max, choice);
    draw_start(list, frame, choice);
}

}  // namespace slopewise
