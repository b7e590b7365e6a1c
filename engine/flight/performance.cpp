#include "flight/performance.h"

#include <cmath>
#include <cstdio>

#include "base/units.h"

namespace slopewise {
namespace {

constexpr double free_air_m = 100.0;                      // high enough to be out of ground effect
constexpr double stall_agreement_mps = mps_from_kt(1.0);  // manuals round to whole knots
constexpr double step_mps = mps_from_kt(0.25);

std::string kt_text(double mps) {
    char text[24];
    std::snprintf(text, sizeof text, "%.1f", kt_from_mps(mps));
    return text;
}

TrimState steady(const Aircraft& aircraft, const Surroundings& calm, double cas_mps, int flap,
                 double path_rad) {
    return solve_trim(aircraft, calm, {cas_mps, flap, path_rad, free_air_m});
}

// The path (rad) that a power fraction gives at a speed: power needed rises with the path, so halve.
double path_at_power(const Aircraft& aircraft, const Surroundings& calm, double cas_mps, int flap,
                     double power) {
    double low = rad_from_deg(-30.0), high = rad_from_deg(30.0);
    for (int i = 0; i < 50; ++i) {
        const double middle = 0.5 * (low + high);
        (steady(aircraft, calm, cas_mps, flap, middle).power < power ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

// Visits speeds from just above the stall to Vno.
template <class Visit>
void for_speeds(const Aircraft& aircraft, double from_mps, Visit&& visit) {
    for (double cas = from_mps; cas <= aircraft.normal_max_mps; cas += step_mps) visit(cas);
}

void find_glide(const Aircraft& aircraft, const Surroundings& calm, Performance& sheet) {
    double flattest = -pi;
    for_speeds(aircraft, 1.05 * sheet.vs1_mps, [&](double cas) {
        const double path = path_at_power(aircraft, calm, cas, 0, aircraft.engine.idle_fraction);
        if (path <= flattest) return;
        flattest = path;
        sheet.best_glide_cas_mps = cas;
    });
    sheet.best_glide_rad = -flattest;
    sheet.landing_glide_rad = -path_at_power(aircraft, calm, aircraft.approach_speed_mps,
                                             landing_flap(aircraft), aircraft.engine.idle_fraction);
}

void find_level(const Aircraft& aircraft, const Surroundings& calm, Performance& sheet) {
    double least = 1e9;
    for_speeds(aircraft, 1.02 * sheet.vs1_mps, [&](double cas) {
        const TrimState level = steady(aircraft, calm, cas, 0, 0.0);
        if (level.power <= 0.0 || level.power >= least) return;
        least = level.power;
        sheet.least_power_cas_mps = cas;
    });
    for (double kt = 5.0 * std::ceil(kt_from_mps(sheet.vs1_mps) / 5.0);
         mps_from_kt(kt) <= aircraft.normal_max_mps; kt += 5.0) {
        const TrimState level = steady(aircraft, calm, mps_from_kt(kt), 0, 0.0);
        if (level.flyable) sheet.level.push_back({mps_from_kt(kt), level.power, level.pitch_rad});
    }
}

void find_climb(const Aircraft& aircraft, const Surroundings& calm, Performance& sheet) {
    const auto climb_at = [&](double cas, int flap) {
        const double path = path_at_power(aircraft, calm, cas, flap, 1.0);
        return -steady(aircraft, calm, cas, flap, path).sink_mps;
    };
    for_speeds(aircraft, 1.1 * sheet.vs1_mps, [&](double cas) {
        const double climb = climb_at(cas, 0);
        if (climb <= sheet.climb_mps) return;
        sheet.climb_mps = climb;
        sheet.climb_cas_mps = cas;
    });
    sheet.go_around_climb_mps = climb_at(aircraft.approach_speed_mps, landing_flap(aircraft));
}

}  // namespace

Performance performance_of(const Aircraft& aircraft, const Surroundings& surroundings) {
    Surroundings calm = surroundings;
    calm.wind = Wind{};
    Performance sheet;
    sheet.vs0_mps = stall_speed_mps(aircraft, landing_flap(aircraft));
    sheet.vs1_mps = stall_speed_mps(aircraft, 0);
    find_glide(aircraft, calm, sheet);
    find_level(aircraft, calm, sheet);
    find_climb(aircraft, calm, sheet);
    sheet.approach =
        steady(aircraft, calm, aircraft.approach_speed_mps, landing_flap(aircraft), rad_from_deg(-3.0));
    return sheet;
}

std::vector<AircraftFlaw> aircraft_flaws(const Aircraft& aircraft) {
    std::vector<AircraftFlaw> flaws;
    const int landing = landing_flap(aircraft);
    const double vs0 = stall_speed_mps(aircraft, landing);
    if (aircraft.approach_speed_mps < 1.2 * vs0) {
        flaws.push_back(
            {"/approach_speed_kt", "is " + kt_text(aircraft.approach_speed_mps),
             "at least 1.2 Vs0, " + kt_text(1.2 * vs0) + " (Vs0 follows from mass, wing area and max_lift)"});
    }
    for (int i = 0; i <= landing; ++i) {
        const FlapSetting& flap = aircraft.flaps[static_cast<std::size_t>(i)];
        const std::string path = "/flaps/" + std::to_string(i);
        const double stall_mps = stall_speed_mps(aircraft, i);
        if (flap.stated_stall_mps > 0.0 && std::abs(flap.stated_stall_mps - stall_mps) > stall_agreement_mps)
            flaws.push_back(
                {path + "/stall_speed_kt", "is " + kt_text(flap.stated_stall_mps),
                 "within 1 kt of " + kt_text(stall_mps) + ", which mass, wing area and max_lift give"});
        if (flap.max_speed_mps < aircraft.approach_speed_mps)
            flaws.push_back(
                {path + "/max_speed_kt", "is " + kt_text(flap.max_speed_mps), "at least /approach_speed_kt"});
        if (i == 0) continue;
        const FlapSetting& before = aircraft.flaps[static_cast<std::size_t>(i - 1)];
        if (flap.max_lift <= before.max_lift)
            flaws.push_back({path + "/max_lift", "does not exceed that of the setting before", ""});
        if (flap.max_speed_mps > before.max_speed_mps)
            flaws.push_back({path + "/max_speed_kt", "is above that of the setting before", ""});
    }
    if (aircraft.never_exceed_mps <= aircraft.normal_max_mps)
        flaws.push_back({"/never_exceed_speed_kt", "is " + kt_text(aircraft.never_exceed_mps),
                         "above /normal_max_speed_kt"});
    Surroundings level_calm;
    level_calm.runway.length_m = 1500.0;
    const TrimState approach =
        steady(aircraft, level_calm, aircraft.approach_speed_mps, landing, rad_from_deg(-3.0));
    if (!approach.flyable)
        flaws.push_back(
            {"", "a 3-degree approach at /approach_speed_kt cannot be flown: " + approach.reason, ""});
    return flaws;
}

}  // namespace slopewise
