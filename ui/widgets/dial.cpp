#include "ui/widgets/dial.h"

#include <algorithm>
#include <cmath>

#include "ui/widgets/paper.h"

namespace slopewise {

namespace {

constexpr double quarter_turn_rad = 1.57079632679489661923;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

}  // namespace

ImVec2 Dial::at(double angle_rad, double share) const {
    return {centre.x + of(share) * static_cast<float>(std::sin(angle_rad)),
            centre.y - of(share) * static_cast<float>(std::cos(angle_rad))};
}

float Dial::line() const { return std::max(1.0f, radius * 0.022f); }

bool Dial::roomy() const { return radius > 3.2f * note_px(); }

bool Dial::grand() const { return radius > 5.2f * note_px(); }

void dial_cover(ImDrawList* list, const Dial& dial, std::string_view name) {
    const Palette& colour = theme().colour;
    list->AddCircleFilled(dial.centre, dial.radius, colour.shelf_edge, 48);
    list->AddCircleFilled(dial.centre, dial.of(0.94), colour.shelf, 48);
    const float line = note_px() * 0.6f;
    text_centred(list, {dial.centre.x, dial.centre.y - line}, TextSize::note, colour.dial_soft, name);
    text_centred(list, {dial.centre.x, dial.centre.y + line}, TextSize::note, colour.dial_soft, "covered");
}

void dial_face(ImDrawList* list, const Dial& dial) {
    const Palette& colour = theme().colour;
    list->AddCircleFilled(dial.centre, dial.radius, colour.dial, 48);
    list->AddCircle(dial.centre, dial.radius - 0.5f, colour.shelf_edge, 48, 1.0f);
}

void dial_tick(ImDrawList* list, const Dial& dial, double angle_rad, double inner_share, double outer_share,
               ImU32 colour, float width) {
    list->AddLine(dial.at(angle_rad, inner_share), dial.at(angle_rad, outer_share), colour, width);
}

void dial_arc(ImDrawList* list, const Dial& dial, double from_rad, double to_rad, double inner_share,
              double outer_share, ImU32 colour) {
    if (to_rad <= from_rad) return;
    const auto start = static_cast<float>(from_rad - quarter_turn_rad),
               end = static_cast<float>(to_rad - quarter_turn_rad);
    list->PathArcTo(dial.centre, dial.of((inner_share + outer_share) / 2), start, end, 24);
    list->PathStroke(colour, 0, dial.of(outer_share - inner_share));
}

void dial_numeral(ImDrawList* list, const Dial& dial, double angle_rad, std::string_view words) {
    if (!dial.roomy()) return;
    // Set by its outer side, so that wide numbers keep off the ticks.
    const ImVec2 extent = text_extent(TextSize::note, words);
    const float x = (dial.of(0.76) - extent.x / 2) * static_cast<float>(std::sin(angle_rad));
    const float y = (dial.of(0.76) - extent.y / 2) * static_cast<float>(std::cos(angle_rad));
    text_centred(list, {dial.centre.x + x, dial.centre.y - y}, TextSize::note, theme().colour.dial_soft,
                 words);
}

void dial_pointer(ImDrawList* list, const Dial& dial, double angle_rad, double inner_share,
                  double outer_share, ImU32 colour, double breadth_share) {
    const ImVec2 tip = dial.at(angle_rad, outer_share), tail = dial.at(angle_rad, inner_share);
    const float x = dial.of(breadth_share / 2) * static_cast<float>(std::cos(angle_rad));
    const float y = dial.of(breadth_share / 2) * static_cast<float>(std::sin(angle_rad));
    list->AddTriangleFilled(tip, {tail.x - x, tail.y - y}, {tail.x + x, tail.y + y}, colour);
}

void dial_digits(ImDrawList* list, const Dial& dial, TextSize size, std::string_view digits,
                 std::string_view unit) {
    const Palette& colour = theme().colour;
    const ImVec2 extent = text_extent(size, digits, true);
    const ImVec2 under = text_extent(TextSize::note, unit);
    const float lift = dial.roomy() ? under.y * 0.30f : under.y * 0.42f;
    text_at(list, {std::round(dial.centre.x - extent.x / 2), std::round(dial.centre.y - extent.y / 2 - lift)},
            size, colour.dial_ink, digits, true);
    text_at(list,
            {std::round(dial.centre.x - under.x / 2), std::round(dial.centre.y + extent.y * 0.42f - lift)},
            TextSize::note, colour.dial_soft, unit);
}

void dial_failed(ImDrawList* list, const Dial& dial, TextSize size) {
    dial_digits(list, dial, size, "\xE2\x80\x93", "failed");
}

std::string whole_number(double value) {
    const long rounded = std::lround(std::clamp(value, -99999.0, 99999.0));
    return (rounded < 0 ? "\xE2\x88\x92" : "") + std::to_string(std::labs(rounded));
}

}  // namespace slopewise
