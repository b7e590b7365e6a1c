#include "ui/widgets/readouts.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "ui/theme.h"
#include "ui/widgets/dial.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr const char* no_reading = "\xE2\x80\x93";

struct Readout {
    std::string digits;
    const char* unit = "";
    TextSize size = TextSize::text;
};

// Digits and unit, unless a lid or a failure leaves nothing to read.
Readout readout(bool covered, bool failed, double value, const char* unit, TextSize size = TextSize::text) {
    if (covered) return {no_reading, unit, size};
    if (failed) return {no_reading, "failed", size};
    return {whole_number(value), unit, size};
}

Readout airspeed_readout(const InstrumentsView& i) {
    return readout(i.covered.airspeed, i.failed.airspeed, i.airspeed_kt, i.stall_warning ? "stall" : "kt",
                   TextSize::number);
}

Readout altitude_readout(const InstrumentsView& i) {
    return readout(i.covered.altimeter, i.failed.altimeter, 5.0 * std::round(i.altitude_ft / 5.0), "ft");
}

Readout vertical_speed_readout(const InstrumentsView& i) {
    return readout(i.covered.vertical_speed, i.failed.vertical_speed,
                   10.0 * std::round(i.vertical_speed_fpm / 10.0), "ft/min");
}

void draw_row(ImDrawList* list, ImVec2 min, float height, const Readout& row) {
    const Palette& colour = theme().colour;
    const float digits_px = text_extent(row.size, row.digits, true).y;
    const float note_px = theme().size[static_cast<std::size_t>(TextSize::note)];
    const float top = std::round(min.y + std::max(0.0f, (height - digits_px - note_px) / 2));
    text_at(list, {min.x, top}, row.size, colour.dial_ink, row.digits, true);
    text_at(list, {min.x, std::round(top + digits_px * 0.92f)}, TextSize::note, colour.dial_soft, row.unit);
}

}  // namespace

void draw_readouts(ImDrawList* list, ImVec2 min, float height, const InstrumentsView& i, bool airspeed_too) {
    const float row_px = height / (airspeed_too ? 3.0f : 2.0f);
    if (airspeed_too) draw_row(list, min, row_px, airspeed_readout(i));
    const float y = airspeed_too ? min.y + row_px : min.y;
    draw_row(list, {min.x, y}, row_px, altitude_readout(i));
    draw_row(list, {min.x, y + row_px}, row_px, vertical_speed_readout(i));
}

float readouts_width() {
    return std::max(text_extent(TextSize::text, "\xE2\x88\x92\x30\x30\x30\x30", true).x,
                    text_extent(TextSize::note, "ft/min").x);
}

void draw_back_row(ImDrawList* list, ImVec2 min, float height, const InstrumentsView& i) {
    const Palette& colour = theme().colour;
    const Readout row = airspeed_readout(i);
    const float width = text_extent(TextSize::back_row, "000", true).x;
    const ImVec2 digits = text_extent(TextSize::back_row, row.digits, true);
    const float unit_px = text_extent(TextSize::text, row.unit).y;
    const float top = std::round(min.y + (height - digits.y) / 2);
    text_right(list, {min.x + width, top}, TextSize::back_row, colour.dial_ink, row.digits, true);
    // On the digits' baseline, which lies 0.79 of their height down.
    text_at(list, {min.x + width + grid(1), top + 0.79f * (digits.y - unit_px)}, TextSize::text,
            colour.dial_soft, row.unit);
}

float back_row_width() {
    return text_extent(TextSize::back_row, "000", true).x + grid(1) + text_extent(TextSize::text, "stall").x;
}

}  // namespace slopewise
