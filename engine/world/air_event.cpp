#include "world/air_event.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"

namespace slopewise {
namespace {

double share_of_peak(const AirEvent& event, double flown_m) {
    switch (event.kind) {
    case AirEvent::Kind::gust:
        if (flown_m >= 2.0 * event.length_m) return 0.0;
        return 0.5 * (1.0 - exact::cos(pi * flown_m / event.length_m));
    case AirEvent::Kind::sink_patch:
        if (flown_m >= event.length_m) return 0.0;
        return 0.5 * (1.0 - exact::cos(2.0 * pi * flown_m / event.length_m));
    case AirEvent::Kind::shear:
        if (flown_m >= event.length_m) return 1.0;
        return 0.5 * (1.0 - exact::cos(pi * flown_m / event.length_m));
    }
    return 0.0;
}

}  // namespace

bool air_event_begins(const AirEvent& event, double time_s, double distance_m) {
    return event.trigger == AirEvent::Trigger::time ? time_s >= event.at_s
                                                    : distance_m <= event.at_distance_m;
}

double f_factor(double tailwind_rate_mps2, double updraught_mps, double tas_mps) {
    return tailwind_rate_mps2 / gravity_mps2 - updraught_mps / tas_mps;
}

double largest_f_factor(const AirEvent& event, double tas_mps) {
    const double whole_m = event.kind == AirEvent::Kind::gust ? 2.0 * event.length_m : event.length_m;
    constexpr int steps = 200;
    const double step_m = whole_m / steps;
    double largest = 0.0;
    for (int i = 0; i < steps; ++i) {
        const Gust before = air_event_gust(event, i * step_m),
                   after = air_event_gust(event, (i + 1) * step_m);
        const double rate_mps2 = (before.along_mps - after.along_mps) / (step_m / tas_mps);
        largest = std::fmax(largest, f_factor(rate_mps2, 0.5 * (before.up_mps + after.up_mps), tas_mps));
    }
    return largest;
}

Gust air_event_gust(const AirEvent& event, double flown_m) {
    const double share = share_of_peak(event, flown_m);
    return {share * event.along_mps, share * event.up_mps};
}

}  // namespace slopewise
