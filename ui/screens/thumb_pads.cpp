#include "ui/screens/thumb_pads.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "ui/screens/flight_stick.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

// Far above the 44 CSS pixels of WCAG 2.2, success criterion 2.5.5: a thumb comes down here unseen. (Sizes:
// our own choice, no source.)
constexpr float width_share = 0.17f, least_width = 78, most_width = 190;
constexpr float least_height = 96, most_height = 260;

const Finger* finger_of(const Fingers& fingers, int id) {
    const std::span all(fingers.at.data(), static_cast<std::size_t>(fingers.count));
    const auto found = std::ranges::find(all, id, &Finger::id);
    return found == all.end() ? nullptr : &*found;
}

// The thumb that holds a pad: the one it was, or one that has just come down there.
const Finger* thumb_on(const FingerArea& pad, const Fingers& fingers, int& id) {
    if (const Finger* still = finger_of(fingers, id)) return still;
    id = -1;
    for (int i = 0; i < fingers.count; ++i) {
        const Finger& finger = fingers.at[static_cast<std::size_t>(i)];
        if (!finger.came || !pad.holds(finger.began_x, finger.began_y)) continue;
        id = finger.id;
        return &finger;
    }
    return nullptr;
}

// Step by step, so that past either end it answers at once to the way back, and goes on from whatever else
// has moved the lever meanwhile.
void follow_power(const ThumbPads& places, const PadsView& pads, ThumbPadsUi& ui, Actions& actions) {
    const int before = ui.power_finger;
    const Finger* thumb = thumb_on(places.power, pads.fingers, ui.power_finger);
    if (thumb == nullptr) return;
    const double from_y = ui.power_finger == before ? ui.power_y : thumb->began_y;
    ui.power_y = thumb->y;
    if (thumb->y == from_y) return;
    const double moved = (from_y - thumb->y) / static_cast<double>(places.travel_px);
    actions.emplace_back(SetThrottle{std::clamp(pads.lever + moved, 0.0, 1.0), true});
}

void follow_stick(const ThumbPads& places, const PadsView& pads, ThumbPadsUi& ui, Actions& actions) {
    const bool held = ui.stick_finger != -1;
    const Finger* thumb = thumb_on(places.stick, pads.fingers, ui.stick_finger);
    if (thumb == nullptr) {
        if (held) actions.emplace_back(MoveStick{0.0, true});
        return;
    }
    const auto down_px = static_cast<float>(thumb->y - thumb->began_y);
    actions.emplace_back(
        MoveStick{stick_from(pads.up_pushes ? down_px : -down_px, places.travel_px / 2), true});
}

// ---- how they look ----

ImU32 veiled(ImU32 colour, unsigned alpha) {
    return (colour & ~IM_COL32_A_MASK) | (alpha << IM_COL32_A_SHIFT);
}

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

struct Slot {
    float x, top, bottom;
};

// The slot that the travel is marked by, in the middle of the pad between the words at its ends.
Slot slot_of(const FingerArea& pad, float travel_px) {
    const auto middle_y = static_cast<float>(pad.top + pad.bottom) / 2;
    return {std::round(static_cast<float>(pad.left + pad.right) / 2), std::round(middle_y - travel_px / 2),
            std::round(middle_y + travel_px / 2)};
}

// Seen on sky, grass and glareshield alike: a dark line with a light one in it.
void edged_line(ImDrawList* list, ImVec2 from, ImVec2 to, float width, unsigned alpha) {
    list->AddLine(from, to, veiled(theme().colour.strip, alpha), width + 2);
    list->AddLine(from, to, veiled(theme().colour.dial_ink, alpha), width);
}

void ground(ImDrawList* list, const FingerArea& pad, bool held) {
    const Palette& c = theme().colour;
    const ImVec2 min{static_cast<float>(pad.left), static_cast<float>(pad.top)};
    const ImVec2 max{static_cast<float>(pad.right), static_cast<float>(pad.bottom)};
    list->AddRectFilled(min, max, veiled(c.strip, held ? 96 : 64), grid(1));
    list->AddRect(min, max, veiled(c.dial_ink, held ? 255 : 150), grid(1), 0, held ? 2.0f : 1.0f);
}

void words_at(ImDrawList* list, const FingerArea& pad, bool at_top, std::string_view words) {
    const auto x = static_cast<float>(pad.left + pad.right) / 2;
    const float y = at_top ? static_cast<float>(pad.top) + 0.8f * note_px()
                           : static_cast<float>(pad.bottom) - 0.8f * note_px();
    const ImVec2 extent = text_extent(TextSize::note, words);
    list->AddRectFilled({x - extent.x / 2 - 3, y - extent.y / 2}, {x + extent.x / 2 + 3, y + extent.y / 2},
                        theme().colour.strip, 3);
    text_centred(list, {x, y}, TextSize::note, theme().colour.dial_ink, words);
}

void ticks(ImDrawList* list, const Slot& slot, int parts, float half) {
    for (int i = 0; i <= parts; ++i) {
        const float y =
            slot.bottom + (slot.top - slot.bottom) * static_cast<float>(i) / static_cast<float>(parts);
        const float reach = i == 0 || i == parts || 2 * i == parts ? half : 0.6f * half;
        edged_line(list, {slot.x - reach, y}, {slot.x + reach, y}, 1, 200);
    }
}

void grip(ImDrawList* list, ImVec2 at, bool held) {
    const Palette& c = theme().colour;
    const float half_wide = grid(1.75f), half_tall = grid(0.75f);
    list->AddRectFilled({at.x - half_wide - 1, at.y - half_tall - 1},
                        {at.x + half_wide + 1, at.y + half_tall + 1}, c.shelf, half_tall);
    list->AddRectFilled({at.x - half_wide, at.y - half_tall}, {at.x + half_wide, at.y + half_tall},
                        held ? c.dial_ink : c.dial_soft, half_tall);
}

}  // namespace

ThumbPads place_thumb_pads(ImVec2 min, ImVec2 max, bool stick_left) {
    const float width = std::round(std::clamp(width_share * (max.x - min.x), least_width, most_width));
    const float height = std::round(std::clamp(max.y - min.y, least_height, most_height));
    const auto top = static_cast<double>(max.y - height);
    const FingerArea left{static_cast<double>(min.x), top, static_cast<double>(min.x + width),
                          static_cast<double>(max.y)};
    const FingerArea right{static_cast<double>(max.x - width), top, static_cast<double>(max.x),
                           static_cast<double>(max.y)};
    const float words = 1.6f * note_px();
    return {stick_left ? right : left, stick_left ? left : right,
            std::max(44.0f, std::round(height - 2 * words - grid(2)))};
}

Actions follow_thumbs(const ThumbPads& places, const PadsView& pads, bool free, ThumbPadsUi& ui) {
    Actions actions;
    if (!free) {
        if (ui.stick_finger != -1) actions.emplace_back(MoveStick{0.0, true});
        ui.power_finger = ui.stick_finger = -1;
        return actions;
    }
    follow_power(places, pads, ui, actions);
    follow_stick(places, pads, ui, actions);
    return actions;
}

void draw_thumb_pads(ImDrawList* list, const ThumbPads& places, const PadsView& pads,
                     const InstrumentsView& instruments, const ThumbPadsUi& ui) {
    const float half = grid(1.5f);
    const bool power_held = ui.power_finger != -1, stick_held = ui.stick_finger != -1;

    ground(list, places.power, power_held);
    const Slot lever = slot_of(places.power, places.travel_px);
    edged_line(list, {lever.x, lever.top}, {lever.x, lever.bottom}, 2, 200);
    ticks(list, lever, 4, half);
    const auto share = static_cast<float>(std::clamp(pads.lever, 0.0, 1.0));
    grip(list, {lever.x, lever.bottom + (lever.top - lever.bottom) * share}, power_held);
    words_at(list, places.power, true, "more power");
    words_at(list, places.power, false, "less");

    ground(list, places.stick, stick_held);
    const Slot stick = slot_of(places.stick, places.travel_px);
    edged_line(list, {stick.x, stick.top}, {stick.x, stick.bottom}, 2, 200);
    ticks(list, stick, 2, half);
    const double pulled = pads.up_pushes ? instruments.stick : -instruments.stick;
    const float middle = (stick.top + stick.bottom) / 2;
    const float hand = middle + static_cast<float>(pulled) * (stick.bottom - stick.top) / 2;
    list->AddCircleFilled({stick.x, hand}, grid(1.25f) + 1, theme().colour.shelf, 32);
    list->AddCircleFilled({stick.x, hand}, grid(1.25f),
                          stick_held ? theme().colour.dial_ink : theme().colour.dial_soft, 32);
    words_at(list, places.stick, true, pads.up_pushes ? "nose down" : "nose up");
    words_at(list, places.stick, false, pads.up_pushes ? "nose up" : "nose down");
}

}  // namespace slopewise
