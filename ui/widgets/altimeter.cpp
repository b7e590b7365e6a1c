#include "ui/widgets/altimeter.h"

#include <cmath>

namespace slopewise {

namespace {

constexpr double turn_rad = 6.28318530717958647693;

}  // namespace

void draw_altimeter(ImDrawList* list, const Dial& dial, const InstrumentsView& i) {
    if (i.covered.altimeter) return dial_cover(list, dial, "altimeter");
    const Palette& colour = theme().colour;
    dial_face(list, dial);
    for (int step = 0; step < 50; ++step) {
        const bool hundred = step % 5 == 0;
        if (!hundred && !dial.roomy()) continue;
        dial_tick(list, dial, turn_rad * step / 50, hundred ? 0.81 : 0.88, 0.94,
                  hundred ? colour.dial_ink : colour.dial_soft, dial.line());
    }
    for (int hundreds = 0; hundreds < 10; hundreds += 2) {
        const char words[] = {static_cast<char>('0' + hundreds), '\0'};
        dial_numeral(list, dial, turn_rad * hundreds / 10, words);
    }
    if (i.failed.altimeter) return dial_failed(list, dial, TextSize::text);
    const double thousands_rad = turn_rad * std::fmod(i.altitude_ft / 10000.0 + 1.0, 1.0);
    const double hundreds_rad = turn_rad * std::fmod(i.altitude_ft / 1000.0 + 10.0, 1.0);
    dial_pointer(list, dial, thousands_rad, 0.74, 0.52, colour.dial_ink,
                 0.17);  // short, and stands on its point
    dial_pointer(list, dial, hundreds_rad, 0.50, 0.93, colour.needle, 0.12);

    const std::string words = whole_number(std::round(i.altitude_ft / 5.0) * 5.0);
    dial_digits(list, dial, TextSize::text, words, "ft");
}

}  // namespace slopewise
