#include "tests/random_scenarios.h"

#include "base/interpolate.h"
#include "base/units.h"
#include "flight/performance.h"
#include "tests/fixtures.h"

namespace slopewise::test {
namespace {

int random_below(Random& random, int count) { return static_cast<int>(random_between(random, 0.0, count)); }

// A figure a fifth up or down, within what a file may hold.
void vary(Random& random, double& value, double low, double high) {
    value = clamp(value * random_between(random, 0.8, 1.25), low, high);
}

Aircraft varied(Random& random, const Aircraft& shipped) {
    Aircraft aircraft = shipped;
    aircraft.mass_kg = random_between(random, shipped.least_mass_kg, shipped.most_mass_kg);
    Wing& wing = aircraft.wing;
    vary(random, wing.area_m2, 5.0, 60.0);
    vary(random, wing.span_m, 5.0, 30.0);
    vary(random, wing.height_m, 0.2, 5.0);
    vary(random, wing.lift_at_zero, -0.5, 1.0);
    vary(random, wing.lift_slope_per_rad, 2.0, 7.0);
    vary(random, wing.zero_lift_drag, 0.005, 0.2);
    vary(random, wing.oswald, 0.4, 1.0);
    vary(random, wing.separation_drag, 0.0, 3.0);
    vary(random, wing.stall_rounding, 0.01, 0.5);
    Engine& engine = aircraft.engine;
    vary(random, engine.rated_power_w, 20e3, 1000e3);
    vary(random, engine.idle_fraction, 0.0, 0.2);
    vary(random, engine.lag_s, 0.1, 5.0);
    vary(random, engine.disc_diameter_m, 1.0, 4.0);
    vary(random, engine.efficiency, 0.4, 1.0);
    vary(random, engine.windmill_drag, 0.0, 1.0);
    PitchResponse& pitch = aircraft.pitch;
    vary(random, pitch.stick_range_rad, rad_from_deg(4.0), rad_from_deg(25.0));
    vary(random, pitch.frequency_radps, 1.0, 10.0);
    vary(random, pitch.damping, 0.2, 1.5);
    vary(random, pitch.reference_speed_mps, mps_from_kt(30.0), mps_from_kt(200.0));
    for (int i = 0; i < aircraft.flap_count; ++i) {
        FlapSetting& flap = aircraft.flaps[static_cast<std::size_t>(i)];
        vary(random, flap.drag_increment, 0.0, 0.3);
        vary(random, flap.max_lift, 0.5, 4.0);
    }
    vary(random, aircraft.flap_travel_s, 0.5, 20.0);
    return aircraft;
}

AirEvent random_air_event(Random& random) {
    AirEvent event;
    event.kind = static_cast<AirEvent::Kind>(random_below(random, 3));
    event.trigger = static_cast<AirEvent::Trigger>(random_below(random, 2));
    event.at_s = random_between(random, 0.0, 10.0);
    event.at_distance_m = random_between(random, 0.0, m_from_nm(3.0));
    event.along_mps = mps_from_kt(random_between(random, -40.0, 40.0));
    event.up_mps = mps_from_fpm(random_between(random, -2000.0, 2000.0));
    event.length_m = m_from_ft(random_between(random, 30.0, 3000.0));
    return event;
}

Failure random_failure(Random& random) {
    Failure failure;
    failure.kind = static_cast<Failure::Kind>(random_below(random, 9));
    failure.at = random_between(random, 0.0, 10.0);
    failure.amount = failure.kind == Failure::Kind::light_misaimed
                         ? rad_from_deg(random_between(random, -1.0, 1.0))
                         : next_uniform(random);
    failure.unit = random_below(random, 4);
    return failure;
}

Lesson random_lesson(Random& random, const Aircraft& aircraft) {
    Lesson lesson = shipped_scenario("final_calm").lesson;
    lesson.start.distance_m = m_from_nm(random_between(random, 1.0, 3.0));
    lesson.start.offset_rad = rad_from_deg(random_between(random, -0.7, 0.7));
    lesson.start.path_rad = -rad_from_deg(random_between(random, 1.0, 4.0));
    lesson.start.flap = random_below(random, aircraft.flap_count);
    lesson.target_cas_mps = aircraft.approach_speed_mps;
    lesson.start.cas_mps = aircraft.approach_speed_mps * random_between(random, 1.0, 1.3);
    lesson.weather = {random_between(random, -30.0, 30.0), random_between(random, 95000.0, 105000.0)};
    lesson.wind = random_wind(random);
    lesson.seed = next_bits(random) % 1000000;
    if (random_below(random, 2) == 0)
        lesson.turbulence_w20_mps = mps_from_kt(random_between(random, 1.0, 45.0));
    lesson.air_event_count = random_below(random, 4);
    for (int i = 0; i < lesson.air_event_count; ++i)
        lesson.air_events[static_cast<std::size_t>(i)] = random_air_event(random);
    lesson.failure_count = random_below(random, 3);
    for (int i = 0; i < lesson.failure_count; ++i)
        lesson.failures[static_cast<std::size_t>(i)] = random_failure(random);
    return lesson;
}

}  // namespace

double random_between(Random& random, double low, double high) {
    return low + (high - low) * next_uniform(random);
}

Aircraft random_aircraft(Random& random) {
    const std::vector<Aircraft>& all = shipped().aircraft;
    const Aircraft& base = all[static_cast<std::size_t>(next_bits(random) % all.size())];
    Aircraft aircraft = varied(random, base);
    while (!aircraft_flaws(aircraft).empty()) aircraft = varied(random, base);
    return aircraft;
}

Runway random_runway(Random& random) {
    Runway runway = plain_runway();
    runway.length_m = random_between(random, 600.0, 3000.0);
    runway.aim_distance_m = aiming_point_marking(runway.length_m).distance_m;
    runway.elevation_m = random_between(random, -50.0, 2500.0);
    runway.slope = random_between(random, -0.02, 0.02);
    runway.lights.kind = static_cast<LightSite::Kind>(random_below(random, 4));
    runway.lights.side = static_cast<LightSite::Side>(random_below(random, 3));
    runway.lights.nominal_path_rad = rad_from_deg(random_between(random, 2.5, 4.5));
    return runway;
}

Wind random_wind(Random& random) {
    const auto headwind_mps = [&] { return mps_from_kt(random_between(random, -15.0, 40.0)); };
    Wind wind;
    wind.kind = static_cast<Wind::Kind>(random_below(random, 3));
    wind.headwind_mps = headwind_mps();
    wind.roughness_m = random_between(random, 0.0002, 1.0);
    double height_m = 0.0;
    wind.table_size = 2 + random_below(random, 7);
    for (int i = 0; i < wind.table_size; ++i) {
        height_m += random_between(random, 1.0, 100.0);
        wind.table[static_cast<std::size_t>(i)] = {height_m, headwind_mps()};
    }
    return wind;
}

Scenario random_scenario(Random& random) {
    for (;;) {  // most draws can be flown
        const Aircraft aircraft = random_aircraft(random);
        const Scenario scenario =
            make_scenario(random_lesson(random, aircraft), aircraft, random_runway(random));
        if (scenario.start_trim.flyable) return scenario;
    }
}

Controls random_controls(Random& random) {
    const auto position = [&] {
        const double u = next_uniform(random);
        return u < 0.15 ? 0.0 : (u > 0.85 ? 1.0 : (u - 0.15) / 0.7);
    };
    ControlPositions hands;
    hands.stick = 2.0 * position() - 1.0;
    hands.throttle = position();
    hands.trim = 2.0 * position() - 1.0;
    hands.flap = static_cast<int>(next_bits(random) % 4);  // one of them more than there are
    return quantize(hands);
}

}  // namespace slopewise::test
