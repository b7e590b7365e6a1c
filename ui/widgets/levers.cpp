#include "ui/widgets/levers.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "ui/widgets/dial.h"
#include "ui/widgets/paper.h"

namespace slopewise {

namespace {

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// Everything below is laid out from the slot that a lever runs in.
struct Slot {
    float x = 0, top = 0, bottom = 0;  // the middle of the lever's travel
    float half_grip = 0;               // half the width of what is gripped

    float y(double share_up) const {
        return bottom - (bottom - top) * static_cast<float>(std::clamp(share_up, 0.0, 1.0));
    }
    double share_up(float y_px) const {
        return bottom > top ? static_cast<double>((bottom - y_px) / (bottom - top)) : 0.0;
    }
};

float grip_height() { return std::max(10.0f, std::round(note_px() * 0.62f)); }

// At the left of its place, over the title and the lines of words that stand on it.
Slot slot_of(const LeverPlace& place, int lines_over_title = 0) {
    const float half_grip = std::round(note_px() * 0.95f), end = grip_height() / 2 + 2;
    const float words = note_px() * (1.25f + static_cast<float>(lines_over_title));
    return {place.min.x + half_grip + 1, place.min.y + end, place.max.y - words - end, half_grip};
}

void title(ImDrawList* list, const LeverPlace& place, const char* words) {
    text_at(list, {place.min.x, place.max.y - note_px()}, TextSize::note, theme().colour.dial_soft, words);
}

// On the title: the indicator beside the lever has failed.
void failed_over_title(ImDrawList* list, const LeverPlace& place) {
    text_at(list, {place.min.x, place.max.y - 2 * note_px()}, TextSize::note, theme().colour.dial_soft,
            "failed");
}

void groove(ImDrawList* list, const Slot& slot) {
    const float half = std::max(2.0f, std::round(note_px() * 0.14f)), end = grip_height() / 2;
    list->AddRectFilled({slot.x - half, slot.top - end}, {slot.x + half, slot.bottom + end},
                        theme().colour.dial, half);
}

void grip(ImDrawList* list, const Slot& slot, float y, bool held) {
    const Palette& colour = theme().colour;
    const float half = grip_height() / 2;
    const ImVec2 min{slot.x - slot.half_grip, y - half}, max{slot.x + slot.half_grip, y + half};
    list->AddRectFilled(min, max, held ? colour.dial_ink : colour.dial_soft, half * 0.5f);
    list->AddLine({min.x + half, y}, {max.x - half, y}, colour.dial, std::max(1.0f, note_px() * 0.07f));
}

// A small wedge beside the slot: where the thing moved really is, when it lags its lever.
void follower(ImDrawList* list, const Slot& slot, float y) {
    const float size = std::max(3.0f, note_px() * 0.24f), x = slot.x + slot.half_grip + 2;
    list->AddTriangleFilled({x, y}, {x + 1.6f * size, y - size}, {x + 1.6f * size, y + size},
                            theme().colour.needle);
}

// The scale that the trim's follower is read against.
void trim_datum(ImDrawList* list, const Slot& slot, float half_wheel) {
    const float x = slot.x + half_wheel + 3, y = slot.y(0.5);
    list->AddLine({x, y}, {x + slot.half_grip * 0.8f, y}, theme().colour.dial_soft,
                  std::max(1.0f, note_px() * 0.08f));
}

// The hand's part: nothing is drawn, the lever follows in the next frame. True while it is held.
bool held_by_hand(const char* name, const LeverPlace& place) {
    ImGui::SetCursorScreenPos({place.min.x - place.reach_px, place.min.y});
    ImGui::InvisibleButton(name, {std::max(1.0f, place.max.x - place.min.x + 2 * place.reach_px),
                                  std::max(1.0f, place.max.y - place.min.y)});
    return ImGui::IsItemActive();
}

// The mouse wheel over a lever, in notches.
double wheel_over(const LeverPlace& place) {
    return ImGui::IsItemHovered() && ImGui::IsMouseHoveringRect(place.min, place.max)
               ? static_cast<double>(ImGui::GetIO().MouseWheel)
               : 0.0;
}

float beside(const Slot& slot) { return slot.x + slot.half_grip + std::round(note_px() * 0.75f); }

void words_at(ImDrawList* list, float x, float middle_y, const char* words, ImU32 colour) {
    text_at(list, {x, std::round(middle_y - note_px() / 2)}, TextSize::note, colour, words);
}

}  // namespace

void draw_stick(ImDrawList* list, const LeverPlace& place, const InstrumentsView& i) {
    const Palette& colour = theme().colour;
    const Slot slot = slot_of(place);
    const float end = grip_height() / 2, datum = slot.y(0.5), hand = slot.y(0.5 - 0.5 * i.stick);
    list->AddRectFilled({slot.x - slot.half_grip, slot.top - end},
                        {slot.x + slot.half_grip, slot.bottom + end}, colour.dial, end * 0.6f);
    list->AddLine({slot.x - slot.half_grip, datum}, {slot.x + slot.half_grip, datum}, colour.dial_soft,
                  std::max(1.0f, note_px() * 0.08f));
    // What is held against the trim, as a bar from the datum to the hand.
    const float bar = slot.half_grip * 0.34f;
    list->AddRectFilled({slot.x - bar, std::min(datum, hand)}, {slot.x + bar, std::max(datum, hand)},
                        colour.shelf_edge);
    list->AddCircleFilled({slot.x, hand}, slot.half_grip * 0.52f, colour.needle, 24);
    if (place.worded) {
        words_at(list, beside(slot), slot.top + note_px() * 0.2f, "push", colour.dial_soft);
        words_at(list, beside(slot), slot.bottom - note_px() * 0.2f, "pull", colour.dial_soft);
    }
    title(list, place, "stick");
}

Actions draw_trim(ImDrawList* list, const LeverPlace& place, const InstrumentsView& i) {
    Actions actions;
    const Palette& colour = theme().colour;
    const bool covered = i.covered.trim, failed = i.failed.trim && !covered;
    const Slot slot = slot_of(place, failed ? 1 : 0);
    const bool held = held_by_hand("trim", place);
    if (held)
        actions.emplace_back(
            SetTrim{std::clamp(1.0 - 2.0 * slot.share_up(ImGui::GetIO().MousePos.y), -1.0, 1.0)});
    const double notches = wheel_over(place);
    if (!held && notches != 0.0)
        actions.emplace_back(SetTrim{std::clamp(i.trim - 0.02 * notches, -1.0, 1.0)});

    // The rim of a wheel, seen edge on: its ridges roll with it. Rolled forward (up) is nose down.
    const float half = slot.half_grip * 0.62f, end = grip_height() / 2, top = slot.top - end,
                bottom = slot.bottom + end;
    const float middle = (top + bottom) / 2, reach = (bottom - top) / 2;
    list->AddRectFilled({slot.x - half, top}, {slot.x + half, bottom}, colour.dial, half * 0.5f);
    constexpr int ridges = 22;
    for (int k = 0; k < ridges; ++k) {
        const double turn = 6.283185307179586 * k / ridges + 2.2 * i.trim;
        if (std::cos(turn) <= 0.12) continue;  // on the side turned away
        const float y = middle + reach * 0.96f * static_cast<float>(std::sin(turn));
        list->AddLine({slot.x - half + 2, y}, {slot.x + half - 2, y},
                      held ? colour.dial_soft : colour.shelf_edge, std::max(1.0f, note_px() * 0.10f));
    }
    if (!covered) trim_datum(list, slot, half);
    if (!covered && !failed)
        follower(list, {slot.x, slot.top, slot.bottom, half}, slot.y(0.5 - 0.5 * i.trim));
    if (place.worded) {
        words_at(list, beside(slot), slot.top + note_px() * 0.2f, "nose down", colour.dial_soft);
        words_at(list, beside(slot), slot.bottom - note_px() * 0.2f, "nose up", colour.dial_soft);
    }
    if (failed) failed_over_title(list, place);
    title(list, place, "trim");
    return actions;
}

Actions draw_throttle(ImDrawList* list, const LeverPlace& place, const InstrumentsView& i) {
    Actions actions;
    const Palette& colour = theme().colour;
    const Slot slot = slot_of(place);
    const bool held = held_by_hand("power", place);
    if (held)
        actions.emplace_back(SetThrottle{std::clamp(slot.share_up(ImGui::GetIO().MousePos.y), 0.0, 1.0)});
    const double notches = wheel_over(place);
    if (!held && notches != 0.0)
        actions.emplace_back(SetThrottle{std::clamp((i.lever_percent + 2.0 * notches) / 100.0, 0.0, 1.0)});

    groove(list, slot);
    for (int quarter = 0; quarter <= 4; ++quarter) {
        const float y = slot.y(quarter / 4.0), reach = quarter % 2 == 0 ? 0.8f : 0.5f;
        list->AddLine({slot.x - slot.half_grip * reach, y}, {slot.x - slot.half_grip * 0.25f, y},
                      colour.shelf_edge, 1.0f);
    }
    grip(list, slot, slot.y(i.lever_percent / 100.0), held);
    const bool none = i.covered.power || i.failed.power;
    if (!none) follower(list, slot, slot.y(i.power_percent / 100.0));

    // Set from the right, so that a third digit moves nothing.
    const std::string words = none ? "\xE2\x80\x93" : whole_number(i.power_percent);
    const float unit_px = text_extent(TextSize::note, "%").x, right = place.max.x - unit_px - 3;
    const float middle = (slot.top + slot.bottom) / 2, tall = text_extent(TextSize::number, words, true).y;
    text_right(list, {right, std::round(middle - tall / 2)}, TextSize::number, colour.dial_ink, words, true);
    text_at(list, {right + 3, std::round(middle + tall * 0.34f - note_px() * 0.9f)}, TextSize::note,
            colour.dial_soft, "%");
    if (i.failed.power && !i.covered.power)
        text_right(list, {place.max.x, std::round(middle + tall / 2)}, TextSize::note, colour.dial_soft,
                   "failed");
    title(list, place, "power");
    return actions;
}

Actions draw_flap(ImDrawList* list, const LeverPlace& place, const InstrumentsView& i) {
    Actions actions;
    const Palette& colour = theme().colour;
    const bool covered = i.covered.flap, failed = i.failed.flap && !covered;
    const Slot slot = slot_of(place, failed ? 1 : 0);
    const int last = static_cast<int>(i.flap_names.size()) - 1;
    if (last < 1) return actions;
    // Up is at the top, as the lever is: more flap is further down.
    const auto detent_y = [&](double step) { return slot.y(1.0 - step / last); };
    const bool held = held_by_hand("flap", place);
    if (held) {
        const int wanted =
            static_cast<int>(std::lround((1.0 - slot.share_up(ImGui::GetIO().MousePos.y)) * last));
        const int index = std::clamp(wanted, 0, last);
        if (index != i.flap_index) actions.emplace_back(SetFlap{index});
    }
    groove(list, slot);
    for (int step = 0; step <= last; ++step) {
        const bool chosen = step == i.flap_index;
        const float y = detent_y(step);
        list->AddLine({slot.x - slot.half_grip * 0.7f, y}, {slot.x + slot.half_grip * 0.7f, y},
                      colour.shelf_edge, 2.0f);
        const float name_y = std::clamp(y, slot.top + note_px() * 0.15f, slot.bottom - note_px() * 0.15f);
        words_at(list, beside(slot) + note_px() * 0.1f, name_y,
                 i.flap_names[static_cast<std::size_t>(step)].c_str(),
                 chosen ? colour.dial_ink : colour.dial_soft);
    }
    grip(list, slot, detent_y(i.flap_index), held);
    if (!covered && !failed)
        follower(list, slot, detent_y(std::clamp(i.flap_position, 0.0, static_cast<double>(last))));
    if (failed) failed_over_title(list, place);
    title(list, place, "flap");
    return actions;
}

float stick_width(bool worded) { return std::round(note_px() * (worded ? 4.9f : 2.3f)); }
float trim_width(bool worded) {
    return worded ? std::round(note_px() * 2.8f) + text_extent(TextSize::note, "nose down").x
                  : std::round(note_px() * 2.4f);
}
float throttle_width() {
    return std::round(note_px() * 2.6f) + text_extent(TextSize::number, "100", true).x +
           text_extent(TextSize::note, "%").x;
}
float flap_width(const InstrumentsView& i) {
    float widest = text_extent(TextSize::note, "flap").x;
    for (const std::string& name : i.flap_names)
        widest = std::max(widest, text_extent(TextSize::note, name).x);
    return std::round(note_px() * 2.9f) + widest;
}

}  // namespace slopewise
