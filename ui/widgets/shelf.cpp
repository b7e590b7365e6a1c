#include "ui/widgets/shelf.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "ui/theme.h"
#include "ui/widgets/airspeed.h"
#include "ui/widgets/altimeter.h"
#include "ui/widgets/levers.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/readouts.h"
#include "ui/widgets/vertical_speed.h"

namespace slopewise {

namespace {

constexpr int levers = 4;
constexpr float tall_from = 0.8f;     // height to width: above it the dials stand over the levers
constexpr float dials_share = 0.54f;  // of a tall shelf's height

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

void append(Actions& actions, const Actions& more) {
    actions.insert(actions.end(), more.begin(), more.end());
}

float levers_width(const InstrumentsView& i, bool worded) {
    return stick_width(worded) + trim_width(worded) + throttle_width() + flap_width(i);
}

// What stands on a wide shelf, from the fullest to the barest arrangement that fits.
struct Plan {
    int dials = 3;          // the airspeed is the last to lose its dial
    float dial_px = 0;      // diameter
    bool worded = true;     // words at the levers' ends
    float digits_px = 0;    // width of the columns of digits, the back row's included
    bool readouts = false;  // digits stand for the dials that are missing
    float gap_px = 0;
};

Plan plan_for(float width, float height, const InstrumentsView& i, bool back_row) {
    const float least_dial = 4.4f * note_px(), least_gap = note_px() * 0.75f;
    constexpr struct {
        int dials;
        bool worded;
        float shrink;  // how small the dials may become before the next arrangement is better
    } arrangements[] = {
        {3, true, 0.93f}, {3, false, 0.70f}, {1, true, 0.93f}, {1, false, 0.0f}, {0, false, 0.0f}};
    Plan plan;
    for (const auto& arrangement : arrangements) {
        plan.dials = arrangement.dials;
        plan.worded = arrangement.worded;
        plan.readouts = arrangement.dials < 3;
        plan.digits_px = (plan.readouts ? readouts_width() : 0.0f) + (back_row ? back_row_width() : 0.0f);
        const int parts = levers + arrangement.dials + (plan.readouts ? 1 : 0) + (back_row ? 1 : 0);
        const float fixed = levers_width(i, plan.worded) + plan.digits_px;
        const float room = width - fixed - static_cast<float>(parts - 1) * least_gap;
        plan.dial_px = plan.dials > 0 ? std::min(height, room / static_cast<float>(plan.dials)) : 0.0f;
        const float used = fixed + static_cast<float>(plan.dials) * plan.dial_px;
        plan.gap_px = std::clamp((width - used) / static_cast<float>(parts - 1), 2.0f, note_px() * 2.2f);
        if (plan.dials == 0 || plan.dial_px >= std::max(least_dial, arrangement.shrink * height)) break;
    }
    return plan;
}

// The levers side by side, keeping to the right.
Actions draw_levers(ImDrawList* list, ImVec2 low, ImVec2 high, const InstrumentsView& i, bool worded,
                    float gap_px) {
    Actions actions;
    float x = low.x;
    const auto place = [&](float width) {
        const LeverPlace p{{std::round(x), low.y}, {std::round(x + width), high.y}, worded, gap_px / 2};
        x += width + gap_px;
        return p;
    };
    draw_stick(list, place(stick_width(worded)), i);
    append(actions, draw_trim(list, place(trim_width(worded)), i));
    append(actions, draw_throttle(list, place(throttle_width()), i));
    append(actions, draw_flap(list, place(flap_width(i)), i));
    return actions;
}

// Where the dials end (px) is where looking inside ends.
struct Drawn {
    ImVec2 dials_max;
    Actions actions;
};

Drawn draw_wide(ImDrawList* list, ImVec2 low, ImVec2 high, const InstrumentsView& i, bool wants_back_row) {
    const float width = high.x - low.x, height = high.y - low.y;
    // The back row's digits give way where the levers need the room.
    const bool back_row = wants_back_row && plan_for(width, height, i, true).gap_px > 0.3f * note_px();
    const Plan plan = plan_for(width, height, i, back_row);
    float x = low.x;
    const float radius = std::floor(plan.dial_px / 2), middle_y = std::round((low.y + high.y) / 2);
    const auto next_dial = [&] {
        const Dial dial{{std::round(x + radius), middle_y}, radius};
        x += plan.dial_px + plan.gap_px;
        return dial;
    };
    if (back_row) {
        draw_back_row(list, {x, low.y}, height, i);
        x += back_row_width() + plan.gap_px;
    }
    if (plan.dials > 0) draw_airspeed(list, next_dial(), i);
    if (plan.readouts) {
        draw_readouts(list, {x, low.y}, height, i, plan.dials == 0 && !back_row);
        x += readouts_width() + plan.gap_px;
    } else {
        draw_altimeter(list, next_dial(), i);
        draw_vertical_speed(list, next_dial(), i);
    }
    // The levers keep to the right: room that is left over lies between.
    const float dials_end = x - plan.gap_px / 2;
    x = std::max(x, high.x - levers_width(i, plan.worded) - (levers - 1) * plan.gap_px);
    return {{dials_end, high.y}, draw_levers(list, {x, low.y}, high, i, plan.worded, plan.gap_px)};
}

// A large airspeed with the two others beside it; the levers below, across the whole width.
Drawn draw_tall(ImDrawList* list, ImVec2 low, ImVec2 high, const InstrumentsView& i) {
    const float width = high.x - low.x, between = note_px();
    const float room = std::min(dials_share * (high.y - low.y), (width - between) / 1.5f);
    const float large = std::floor(room / 2), small = std::floor((room - between / 2) / 4);
    const float left = low.x + std::floor((width - 2 * large - between - 2 * small) / 2);
    draw_airspeed(list, {{left + large, low.y + large}, large}, i);
    const float x = left + 2 * large + between + small;
    draw_altimeter(list, {{x, low.y + small}, small}, i);
    draw_vertical_speed(list, {{x, low.y + 2 * large - small}, small}, i);

    const float top = low.y + 2 * large + between;
    const bool worded = levers_width(i, true) + levers * note_px() <= width;
    const float gap_px = (width - levers_width(i, worded)) / (levers - 1);
    return {{high.x, top - between / 2}, draw_levers(list, {low.x, top}, high, i, worded, gap_px)};
}

ImU32 veiled(ImU32 colour, unsigned alpha) {
    return (colour & ~IM_COL32_A_MASK) | (alpha << IM_COL32_A_SHIFT);
}

// Dark, but for the levers' shapes, which the hand finds without looking.
void darken(ImDrawList* list, ImVec2 min, ImVec2 max, ImVec2 dials_max, std::string_view look_way) {
    const Palette& colour = theme().colour;
    const ImVec2 under_edge{min.x, min.y + 1.0f};
    list->AddRectFilled(under_edge, max, veiled(colour.shelf, 130));
    list->AddRectFilled(under_edge, dials_max, veiled(colour.shelf, 238));
    const int way_bytes = static_cast<int>(std::min<std::size_t>(look_way.size(), 24));
    std::array<char, 80> words{};  // no string: each frame draws it, and frames take no memory
    std::snprintf(words.data(), words.size(), "Eyes outside. To look in: %.*s, or here.", way_bytes,
                  look_way.data());
    if (text_extent(TextSize::note, words.data()).x > dials_max.x - min.x - grid(2))
        std::snprintf(words.data(), words.size(), "Look: %.*s or here", way_bytes, look_way.data());
    text_centred(list, {(min.x + dials_max.x) / 2, (min.y + dials_max.y) / 2}, TextSize::note,
                 colour.dial_soft, words.data());
}

// A finger that rests on the dials looks at them.
void feel_for_finger(ImVec2 min, ImVec2 max, Actions& actions) {
    ImGui::SetCursorScreenPos(min);
    ImGui::InvisibleButton("dials", {std::max(1.0f, max.x - min.x), std::max(1.0f, max.y - min.y)});
    if (ImGui::IsItemActivated()) actions.emplace_back(TouchPanel{true});
    if (ImGui::IsItemDeactivated()) actions.emplace_back(TouchPanel{false});
}

}  // namespace

float shelf_height(float window_width, float window_height) {
    const bool upright = window_width < window_height;
    return std::round(window_height * (upright ? 0.20f : 0.24f));
}

Actions draw_shelf(ImDrawList* list, ImVec2 min, ImVec2 max, const InstrumentsView& i,
                   const ShelfLook& look) {
    const Palette& colour = theme().colour;
    list->AddRectFilled(min, max, colour.shelf);
    list->AddRectFilled(min, {max.x, min.y + 1.0f}, colour.shelf_edge);

    const float edge_y = std::max(5.0f, std::min(std::round((max.y - min.y) * 0.07f), note_px())),
                edge_x = std::max(8.0f, std::round(theme().unit * 2));
    const ImVec2 low{min.x + edge_x, min.y + edge_y}, high{max.x - edge_x, max.y - edge_y};
    if (high.y - low.y < 3 * note_px() || high.x <= low.x) return {};
    const bool tall = high.y - low.y > tall_from * (high.x - low.x);
    Drawn drawn = tall ? draw_tall(list, low, high, i) : draw_wide(list, low, high, i, look.back_row);
    if (look.peeks) feel_for_finger(min, drawn.dials_max, drawn.actions);
    if (look.dark) darken(list, min, max, drawn.dials_max, look.look_way);
    return std::move(drawn.actions);
}

}  // namespace slopewise
