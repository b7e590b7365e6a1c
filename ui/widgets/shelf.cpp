#include "ui/widgets/shelf.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <string>
#include <vector>

#include "ui/theme.h"
#include "ui/widgets/airspeed.h"
#include "ui/widgets/altimeter.h"
#include "ui/widgets/levers.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/vertical_speed.h"

namespace slopewise {

namespace {

constexpr int levers = 4;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

void append(Actions& actions, const Actions& more) {
    actions.insert(actions.end(), more.begin(), more.end());
}

float levers_width(const InstrumentsView& i, bool worded) {
    return stick_width(worded) + trim_width(worded) + throttle_width() + flap_width(i);
}

// The digits of one instrument, for where its dial would be too small to read.
struct Readout {
    std::string digits;
    const char* unit = "";
    TextSize size = TextSize::text;
};

std::vector<Readout> readouts(const InstrumentsView& i, bool airspeed_too) {
    std::vector<Readout> out;
    if (airspeed_too)
        out.push_back({whole_number(i.airspeed_kt), i.stall_warning ? "stall" : "kt", TextSize::number});
    out.push_back({whole_number(std::round(i.altitude_ft / 5.0) * 5.0), "ft", TextSize::text});
    out.push_back({whole_number(std::round(i.vertical_speed_fpm / 10.0) * 10.0), "ft/min", TextSize::text});
    return out;
}

// Wide enough for any value, so that nothing moves.
float readouts_width() {
    const float widest = text_extent(TextSize::text,
                                     "\xE2\x88\x92"
                                     "0000",
                                     true)
                             .x;
    return std::max(widest, text_extent(TextSize::note, "ft/min").x);
}

// What stands on the shelf, from the fullest to the barest arrangement that fits.
struct Plan {
    int dials = 3;          // the airspeed is the last to lose its dial
    float dial_px = 0;      // diameter
    bool worded = true;     // words at the levers' ends
    float readouts_px = 0;  // width of the column of digits
    float gap_px = 0;
};

Plan plan_for(float width, float height, const InstrumentsView& i) {
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
        plan.readouts_px = arrangement.dials < 3 ? readouts_width() : 0.0f;
        const int parts = levers + arrangement.dials + (arrangement.dials < 3 ? 1 : 0);
        const float fixed = levers_width(i, plan.worded) + plan.readouts_px;
        const float room = width - fixed - static_cast<float>(parts - 1) * least_gap;
        plan.dial_px = plan.dials > 0 ? std::min(height, room / static_cast<float>(plan.dials)) : 0.0f;
        const float used = fixed + static_cast<float>(plan.dials) * plan.dial_px;
        plan.gap_px = std::clamp((width - used) / static_cast<float>(parts - 1), 2.0f, note_px() * 2.2f);
        if (plan.dials == 0 || plan.dial_px >= std::max(least_dial, arrangement.shrink * height)) break;
    }
    return plan;
}

// One under another: the digits, and their unit in small print below them.
void draw_readouts(ImDrawList* list, ImVec2 min, float height, std::span<const Readout> rows) {
    const Palette& colour = theme().colour;
    const float row_px = height / static_cast<float>(rows.size());
    float y = min.y;
    for (const Readout& row : rows) {
        const float digits_px = text_extent(row.size, row.digits, true).y;
        const float top = std::round(y + std::max(0.0f, (row_px - digits_px - note_px()) / 2));
        text_at(list, {min.x, top}, row.size, colour.dial_ink, row.digits, true);
        text_at(list, {min.x, std::round(top + digits_px * 0.92f)}, TextSize::note, colour.dial_soft,
                row.unit);
        y += row_px;
    }
}

}  // namespace

float shelf_height(float window_width, float window_height) {
    const bool upright = window_width < window_height;
    return std::round(window_height * (upright ? 0.20f : 0.24f));
}

Actions draw_shelf(ImDrawList* list, ImVec2 min, ImVec2 max, const InstrumentsView& i) {
    Actions actions;
    const Palette& colour = theme().colour;
    list->AddRectFilled(min, max, colour.shelf);
    list->AddRectFilled(min, {max.x, min.y + 1.0f}, colour.shelf_edge);

    const float edge_y = std::max(5.0f, std::round((max.y - min.y) * 0.07f)),
                edge_x = std::max(8.0f, std::round(theme().unit * 2));
    const ImVec2 low{min.x + edge_x, min.y + edge_y}, high{max.x - edge_x, max.y - edge_y};
    const float height = high.y - low.y;
    if (height < 3 * note_px() || high.x <= low.x) return actions;
    const Plan plan = plan_for(high.x - low.x, height, i);

    float x = low.x;
    const float radius = std::floor(plan.dial_px / 2), middle_y = std::round((low.y + high.y) / 2);
    const auto next_dial = [&] {
        const Dial dial{{std::round(x + radius), middle_y}, radius};
        x += plan.dial_px + plan.gap_px;
        return dial;
    };
    if (plan.dials > 0) draw_airspeed(list, next_dial(), i);
    if (plan.dials > 1) {
        draw_altimeter(list, next_dial(), i);
        draw_vertical_speed(list, next_dial(), i);
    } else {
        draw_readouts(list, {x, low.y}, height, readouts(i, plan.dials == 0));
        x += plan.readouts_px + plan.gap_px;
    }
    // The levers keep to the right: room that is left over lies between.
    const float levers_px = levers_width(i, plan.worded) + (levers - 1) * plan.gap_px;
    x = std::max(x, high.x - levers_px);
    const auto place = [&](float width) {
        const LeverPlace p{
            {std::round(x), low.y}, {std::round(x + width), high.y}, plan.worded, plan.gap_px / 2};
        x += width + plan.gap_px;
        return p;
    };
    draw_stick(list, place(stick_width(plan.worded)), i);
    append(actions, draw_trim(list, place(trim_width(plan.worded)), i));
    append(actions, draw_throttle(list, place(throttle_width()), i));
    append(actions, draw_flap(list, place(flap_width(i)), i));
    return actions;
}

}  // namespace slopewise
