#include "tests/golden/flights.h"

#include "base/units.h"
#include "tests/golden/hands.h"

namespace slopewise::golden {
namespace {

// A final of 2 NM with the aircraft as it comes; what is special about each flight is added to it.
Lesson final_in(const Catalog& catalog, const char* aircraft_id) {
    const Aircraft& aircraft = *find_aircraft(catalog, aircraft_id);
    Lesson lesson = *find_lesson(catalog, "final_calm");
    lesson.aircraft_id = aircraft_id;
    lesson.start.distance_m = m_from_nm(2.0);
    lesson.start.cas_mps = lesson.target_cas_mps = aircraft.approach_speed_mps;
    lesson.start.flap = landing_flap(aircraft);
    return lesson;
}

void add(Lesson& lesson, const AirEvent& event) {
    lesson.air_events[static_cast<std::size_t>(lesson.air_event_count++)] = event;
}
void add(Lesson& lesson, const Failure& failure) {
    lesson.failures[static_cast<std::size_t>(lesson.failure_count++)] = failure;
}

Wind logarithmic_wind(double headwind_kt, double roughness_m) {
    Wind wind;
    wind.kind = Wind::Kind::logarithmic;
    wind.headwind_mps = mps_from_kt(headwind_kt);
    wind.roughness_m = roughness_m;
    return wind;
}

Wind tabulated_wind() {
    Wind wind;
    wind.kind = Wind::Kind::table;
    wind.table = {{{m_from_ft(30.0), mps_from_kt(8.0)},
                   {m_from_ft(300.0), mps_from_kt(18.0)},
                   {m_from_ft(1000.0), mps_from_kt(25.0)}}};
    wind.table_size = 3;
    return wind;
}

GoldenFlight flown(const Catalog& catalog, const std::string& what, const Lesson& lesson,
                   const std::string& pilot, std::uint64_t seed) {
    const std::string name = what + ", " + lesson.aircraft_id + ", " + pilot + " " + std::to_string(seed);
    return {name, scenario_of(catalog, lesson),
            [=](const Scenario& scenario, Attempt& attempt) { by_pilot(pilot, seed, scenario, attempt); }};
}

GoldenFlight flown_wildly(const Catalog& catalog, const std::string& what, const Lesson& lesson,
                          std::uint64_t seed) {
    const std::string name = what + ", " + lesson.aircraft_id + ", wild hands " + std::to_string(seed);
    return {name, scenario_of(catalog, lesson), [=](const Scenario& scenario, Attempt& attempt) {
                by_wild_hands(seed, 120.0, scenario, attempt);
            }};
}

// The free approaches; the syllabus changes more often than the flight does.
void add_lessons(const Catalog& catalog, std::vector<GoldenFlight>& flights) {
    std::uint64_t seed = 1;
    for (const Lesson& lesson : catalog.lessons)
        if (lesson.syllabus.place == 0) flights.push_back(flown(catalog, lesson.id, lesson, "good", seed++));
}

void add_weather(const Catalog& catalog, std::vector<GoldenFlight>& flights) {
    Lesson log = final_in(catalog, "trainer");
    log.wind = logarithmic_wind(14.0, 0.1);
    flights.push_back(flown(catalog, "log wind", log, "ignores_wind", 11));

    Lesson light = final_in(catalog, "trainer");
    light.wind = logarithmic_wind(10.0, 0.03);
    light.turbulence_w20_mps = mps_from_kt(15.0);
    light.seed = 42;
    flights.push_back(flown(catalog, "light turbulence", light, "late_power", 12));

    Lesson rough = final_in(catalog, "heavy_single");
    rough.wind = tabulated_wind();
    rough.turbulence_w20_mps = mps_from_kt(30.0);
    flights.push_back(flown(catalog, "wind table, moderate turbulence", rough, "over_control", 13));

    Lesson gusts = final_in(catalog, "tourer");
    add(gusts, AirEvent{AirEvent::Kind::gust, AirEvent::Trigger::time, 20.0, 0.0, 5.0, 2.0, 60.0});
    add(gusts,
        AirEvent{AirEvent::Kind::sink_patch, AirEvent::Trigger::distance, 0.0, 2000.0, 0.0, -3.0, 600.0});
    add(gusts, AirEvent{AirEvent::Kind::shear, AirEvent::Trigger::distance, 0.0, 1000.0, -6.0, 0.0, 200.0});
    flights.push_back(flown(catalog, "gust, sink, shear", gusts, "needle_chasing", 14));

    Lesson hot = final_in(catalog, "tourer");
    hot.weather = {25.0, 99000.0};
    hot.mass_kg = 850.0;
    flights.push_back(flown(catalog, "hot day, light load", hot, "duck_under", 15));
}

void add_failures(const Catalog& catalog, std::vector<GoldenFlight>& flights) {
    using Kind = Failure::Kind;
    using Trigger = Failure::Trigger;
    const auto with = [&](const char* what, const char* aircraft, const Failure& failure, const char* pilot,
                          std::uint64_t seed) {
        Lesson lesson = final_in(catalog, aircraft);
        add(lesson, failure);
        flights.push_back(flown(catalog, what, lesson, pilot, seed));
    };
    with("airspeed blank", "tourer", {Kind::airspeed_blank, Trigger::time, 15.0, 0.0, 0}, "good", 21);
    with("airspeed stuck", "trainer", {Kind::airspeed_stuck, Trigger::distance, 3000.0, 0.0, 0}, "good", 22);
    with("partial power", "heavy_single", {Kind::power_partial, Trigger::time, 10.0, 0.3, 0}, "low_stretch",
         23);
    with("power lost", "trainer", {Kind::power_lost, Trigger::height, 120.0, 0.0, 0}, "presses_on", 24);
    with("a light out", "tourer", {Kind::light_out, Trigger::time, 0.0, 0.0, 1}, "light_chasing", 25);
    with("a light misaimed", "trainer", {Kind::light_misaimed, Trigger::time, 5.0, rad_from_deg(0.3), 2},
         "light_chasing", 26);
    with("lights out", "heavy_single", {Kind::lights_out, Trigger::height, 50.0, 0.0, 0}, "light_chasing",
         27);
    with("condensation", "tourer", {Kind::condensation, Trigger::time, 0.0, 1.0, 0}, "light_chasing", 28);

    Lesson stuck = final_in(catalog, "tourer");
    stuck.start.flap = 1;
    add(stuck, Failure{Kind::flap_stuck, Trigger::time, 40.0, 0.0, 0});
    flights.push_back(flown(catalog, "flap stuck", stuck, "late_flap", 29));
}

void add_wild_hands(const Catalog& catalog, std::vector<GoldenFlight>& flights) {
    flights.push_back(flown_wildly(catalog, "calm", final_in(catalog, "tourer"), 31));
    Lesson wind = final_in(catalog, "trainer");
    wind.wind = tabulated_wind();
    flights.push_back(flown_wildly(catalog, "wind table", wind, 32));
    Lesson storm = final_in(catalog, "heavy_single");
    storm.wind = logarithmic_wind(25.0, 0.4);
    storm.turbulence_w20_mps = mps_from_kt(45.0);
    add(storm, AirEvent{AirEvent::Kind::shear, AirEvent::Trigger::time, 30.0, 0.0, -10.0, -2.0, 300.0});
    add(storm, Failure{Failure::Kind::power_partial, Failure::Trigger::time, 50.0, 0.5, 0});
    flights.push_back(flown_wildly(catalog, "severe turbulence", storm, 33));
}

}  // namespace

std::vector<GoldenFlight> golden_flights(const Catalog& catalog) {
    std::vector<GoldenFlight> flights;
    add_lessons(catalog, flights);
    add_weather(catalog, flights);
    add_failures(catalog, flights);
    add_wild_hands(catalog, flights);
    flights.push_back({"go-around at 200 ft", scenario_of(catalog, *find_lesson(catalog, "final_headwind")),
                       by_one_who_goes_around});
    return flights;
}

}  // namespace slopewise::golden
