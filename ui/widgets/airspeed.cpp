#include "ui/widgets/airspeed.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

namespace {

constexpr double half_sweep_rad = 2.42;  // either side of the top
constexpr double open_share = 0.70;      // of the sweep, for speeds up to the knee

struct Scale {
    double low_kt, knee_kt, high_kt;
};

Scale scale_of(const InstrumentsView& i) {
    const double low_kt = std::max(0.0, std::floor((i.vs0_kt - 12.0) / 10.0) * 10.0);
    const double high_kt = std::max(low_kt + 40.0, std::ceil((i.vne_kt + 4.0) / 10.0) * 10.0);
    const double knee_kt =
        std::clamp(std::ceil((i.vfe_kt + 10.0) / 10.0) * 10.0, low_kt + 20.0, high_kt - 10.0);
    return {low_kt, knee_kt, high_kt};
}

}  // namespace

double airspeed_angle_rad(const InstrumentsView& instruments, double airspeed_kt) {
    const Scale s = scale_of(instruments);
    const double kt = std::clamp(airspeed_kt, s.low_kt, s.high_kt);
    const double share = kt < s.knee_kt
                             ? open_share * (kt - s.low_kt) / (s.knee_kt - s.low_kt)
                             : open_share + (1.0 - open_share) * (kt - s.knee_kt) / (s.high_kt - s.knee_kt);
    return half_sweep_rad * (2.0 * share - 1.0);
}

void draw_airspeed(ImDrawList* list, const Dial& dial, const InstrumentsView& i) {
    if (i.covered.airspeed) return dial_cover(list, dial, "airspeed");
    const Palette& colour = theme().colour;
    const auto angle = [&i](double kt) { return airspeed_angle_rad(i, kt); };
    const Scale s = scale_of(i);

    // The arcs of general practice (Pilot's Handbook of Aeronautical Knowledge): white stall with flap to the
    // flap limit, green stall clean to normal maximum, yellow from there to never-exceed, a red line there.
    dial_face(list, dial);
    dial_arc(list, dial, angle(i.vs1_kt), angle(i.vno_kt), 0.90, 0.955, colour.normal_range);
    dial_arc(list, dial, angle(i.vno_kt), angle(i.vne_kt), 0.90, 0.955, colour.caution_range);
    dial_arc(list, dial, angle(i.vs0_kt), angle(i.vfe_kt), 0.855, 0.885, colour.flap_range);
    dial_tick(list, dial, angle(i.vne_kt), 0.80, 0.96, colour.never_line, dial.line() * 2.2f);

    for (double kt = s.low_kt; kt <= s.high_kt + 0.5; kt += 5.0) {
        const bool ten = std::fmod(kt + 0.5, 10.0) < 1.0;
        if (!ten && kt > s.knee_kt) continue;
        dial_tick(list, dial, angle(kt), ten ? 0.76 : 0.80, 0.845, ten ? colour.dial_ink : colour.dial_soft,
                  dial.line());
        // Every twenty where an approach is flown; above that one number is enough.
        const bool named = kt <= s.knee_kt
                               ? std::fmod(kt + 0.5, 20.0) < 1.0
                               : std::abs(kt - 10.0 * std::round((s.knee_kt + s.high_kt) / 20.0)) < 1.0;
        if (named && kt > s.low_kt) {
            const std::string words = whole_number(kt);
            dial_numeral(list, dial, angle(kt), words);
        }
    }
    // The bug: a notch on the rim at the target.
    if (i.target_kt > 0) {
        const double at = angle(i.target_kt);
        const ImVec2 point = dial.at(at, 0.84), left = dial.at(at - 0.10, 1.0),
                     right = dial.at(at + 0.10, 1.0);
        list->AddTriangleFilled(point, left, right, colour.dial);
        list->AddTriangle(point, left, right, colour.dial_ink, dial.line() * 1.4f);
    }
    const TextSize size = dial.grand() ? TextSize::title : TextSize::number;
    if (i.failed.airspeed) return dial_failed(list, dial, size);
    dial_pointer(list, dial, angle(i.airspeed_kt), 0.44, 0.90, colour.needle, 0.13);
    const std::string words = whole_number(i.airspeed_kt);
    dial_digits(list, dial, size, words, i.stall_warning ? "stall" : "kt");
}

}  // namespace slopewise
