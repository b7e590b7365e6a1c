#include "ui/widgets/vertical_speed.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

namespace {

constexpr double level_rad = -1.57079632679489661923;  // to the left
constexpr double most_fpm = 1500.0, reach_rad = 2.55;

double angle_rad(double fpm) {
    return level_rad + reach_rad * std::clamp(fpm, -most_fpm, most_fpm) / most_fpm;
}

}  // namespace

void draw_vertical_speed(ImDrawList* list, const Dial& dial, const InstrumentsView& i) {
    if (i.covered.vertical_speed) return dial_cover(list, dial, "vert. speed");
    const Palette& colour = theme().colour;
    dial_face(list, dial);
    for (int hundreds = -15; hundreds <= 15; ++hundreds) {
        const bool five = hundreds % 5 == 0;
        if (!five && !dial.roomy()) continue;
        dial_tick(list, dial, angle_rad(hundreds * 100.0), five ? 0.81 : 0.88, 0.94,
                  five ? colour.dial_ink : colour.dial_soft, dial.line());
    }
    // In hundreds of feet a minute, above and below.
    dial_numeral(list, dial, angle_rad(1000), "10");
    dial_numeral(list, dial, angle_rad(-1000), "10");
    dial_numeral(list, dial, level_rad, "0");
    if (i.failed.vertical_speed) return dial_failed(list, dial, TextSize::text);
    dial_pointer(list, dial, angle_rad(i.vertical_speed_fpm), 0.50, 0.93, colour.needle, 0.12);

    const std::string words = whole_number(std::round(i.vertical_speed_fpm / 10.0) * 10.0);
    dial_digits(list, dial, TextSize::text, words, "ft/min");
}

}  // namespace slopewise
