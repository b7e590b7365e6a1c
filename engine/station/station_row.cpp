#include "station/station_row.h"

#include <cmath>

#include "base/units.h"
#include "lesson/approach_choice.h"
#include "station/approach_now.h"
#include "station/headwind_table.h"
#include "station/station_failures.h"

namespace slopewise {
namespace {

using Kind = Failure::Kind;

// Of the three choices above, on and below, by how many steps it is off; -1 where it is between them.
int of_three(double steps) {
    for (int i = 0; i < 3; ++i)
        if (std::abs(steps - (1 - i)) <= 0.25) return i;
    return -1;
}

template <std::size_t Count>
int index_of(const std::array<double, Count>& values, double value, double within) {
    for (std::size_t i = 0; i < Count; ++i)
        if (std::abs(values[i] - value) <= within) return static_cast<int>(i);
    return -1;
}

int headwind_now(const Lesson& lesson) {
    if (lesson.wind.kind != Wind::Kind::steady) return -1;
    return index_of(headwinds_kt, kt_from_mps(lesson.wind.headwind_mps), 0.05);
}

int gusts_now(const Lesson& lesson) {
    if (lesson.air_event_count > 0) return -1;  // the lesson's own
    return index_of(station_w20_kt, kt_from_mps(lesson.turbulence_w20_mps), 0.05);
}

void set_gusts(Lesson& lesson, std::size_t choice) {
    lesson.turbulence_w20_mps = mps_from_kt(station_w20_kt[choice]);
    lesson.air_event_count = 0;
}

// Rows of units begin with none.
int unit_now(const Scenario& scenario, const Attempt& attempt, Kind kind) {
    for (int unit = 0; unit < scenario.lights.pattern; ++unit)
        if (has_failed(scenario, attempt, kind, unit)) return unit + 1;
    return 0;
}

void set_unit_out(Lesson& lesson, int choice, int units) {
    remove_failures(lesson, Kind::light_out);
    remove_failures(lesson, Kind::lights_out);
    if (choice > units) add_failure(lesson, Kind::lights_out);
    else if (choice > 0) add_failure(lesson, Kind::light_out, 0.0, choice - 1);
}

void set_of_two(Lesson& lesson, int choice, Kind first, Kind second, double amount_of_first) {
    remove_failures(lesson, first);
    remove_failures(lesson, second);
    if (choice == 1) add_failure(lesson, first, amount_of_first);
    if (choice == 2) add_failure(lesson, second);
}

void set_one(Lesson& lesson, int choice, Kind kind, double amount) {
    remove_failures(lesson, kind);
    if (choice == 1) add_failure(lesson, kind, amount);
}

void put(Lesson& lesson, StationRow row, int choice, double nominal_rad) {
    Start& start = lesson.start;
    start.path_rad = -nominal_rad;
    const double off = 1.0 - choice;  // +1 high or fast, 0 on, -1 low or slow
    if (row == StationRow::distance)
        start.distance_m = m_from_nm(station_distances_nm[static_cast<std::size_t>(choice)]);
    if (row == StationRow::path) start.offset_rad = off * rad_from_deg(off_path_deg);
    if (row == StationRow::speed)
        start.cas_mps = lesson.target_cas_mps + off * mps_from_kt(station_speed_step_kt);
    if (row == StationRow::flap) start.flap = choice;
}

}  // namespace

int choice_count(StationRow row, const Scenario& scenario) {
    switch (row) {
    case StationRow::distance: return static_cast<int>(station_distances_nm.size());
    case StationRow::flap: return scenario.aircraft.flap_count;
    case StationRow::headwind: return static_cast<int>(headwinds_kt.size());
    case StationRow::light: return static_cast<int>(daylight_names.size());
    case StationRow::visibility: return static_cast<int>(station_visibilities_m.size());
    case StationRow::unit_out: return scenario.lights.pattern + 2;
    case StationRow::unit_misaimed: return scenario.lights.pattern + 1;
    case StationRow::ground_lights:
    case StationRow::lenses:
    case StationRow::flap_failure: return 2;
    case StationRow::path:
    case StationRow::speed:
    case StationRow::gusts:
    case StationRow::sky:
    case StationRow::airspeed:
    case StationRow::power: return 3;
    }
    return 0;
}

int choice_now(StationRow row, const Scenario& scenario, const Attempt& attempt) {
    const Lesson& lesson = scenario.lesson;
    const Outlook& outlook = lesson.outlook;
    const Start start = start_as_it_is(scenario, attempt);
    const auto failed = [&](Kind kind) { return has_failed(scenario, attempt, kind); };
    const auto of_two = [&](Kind first, Kind second) { return failed(second) ? 2 : (failed(first) ? 1 : 0); };
    switch (row) {
    case StationRow::distance: return index_of(station_distances_nm, nm_from_m(start.distance_m), 0.05);
    case StationRow::path: return of_three(deg_from_rad(start.offset_rad) / off_path_deg);
    case StationRow::speed:
        return of_three(kt_from_mps(start.cas_mps - lesson.target_cas_mps) / station_speed_step_kt);
    case StationRow::flap: return start.flap;
    case StationRow::headwind: return headwind_now(lesson);
    case StationRow::gusts: return gusts_now(lesson);
    case StationRow::light: return static_cast<int>(outlook.light);
    case StationRow::ground_lights: return outlook.ground_lights ? 0 : 1;
    case StationRow::visibility: return index_of(station_visibilities_m, outlook.visibility_m, 1.0);
    case StationRow::sky: return outlook.rain ? 2 : (outlook.overcast ? 1 : 0);
    case StationRow::unit_out:
        return failed(Kind::lights_out) ? scenario.lights.pattern + 1
                                        : unit_now(scenario, attempt, Kind::light_out);
    case StationRow::unit_misaimed: return unit_now(scenario, attempt, Kind::light_misaimed);
    case StationRow::lenses: return failed(Kind::condensation) ? 1 : 0;
    case StationRow::airspeed: return of_two(Kind::airspeed_blank, Kind::airspeed_stuck);
    case StationRow::flap_failure: return failed(Kind::flap_stuck) ? 1 : 0;
    case StationRow::power: return of_two(Kind::power_partial, Kind::power_lost);
    }
    return -1;
}

Lesson with_choice(StationRow row, int choice, const Scenario& scenario, const Attempt& attempt,
                   const Start& began) {
    Lesson lesson = approach_now(scenario, attempt, began);
    const auto index = static_cast<std::size_t>(choice);
    switch (row) {
    case StationRow::distance:
    case StationRow::path:
    case StationRow::speed:
    case StationRow::flap:
        put(lesson, row, choice, scenario.surroundings.runway.lights.nominal_path_rad);
        break;
    case StationRow::headwind:
        lesson.wind = Wind{};
        lesson.wind.headwind_mps = mps_from_kt(headwinds_kt[index]);
        break;
    case StationRow::gusts: set_gusts(lesson, index); break;
    case StationRow::light: lesson.outlook.light = static_cast<Daylight>(choice); break;
    case StationRow::ground_lights: lesson.outlook.ground_lights = choice == 0; break;
    case StationRow::visibility: lesson.outlook.visibility_m = station_visibilities_m[index]; break;
    case StationRow::sky:
        lesson.outlook.overcast = choice > 0;
        lesson.outlook.rain = choice == 2;
        break;
    case StationRow::unit_out: set_unit_out(lesson, choice, scenario.lights.pattern); break;
    case StationRow::unit_misaimed:
        remove_failures(lesson, Kind::light_misaimed);
        if (choice > 0)
            add_failure(lesson, Kind::light_misaimed, rad_from_minutes(station_misaimed_minutes), choice - 1);
        break;
    case StationRow::lenses: set_one(lesson, choice, Kind::condensation, station_mist); break;
    case StationRow::airspeed:
        set_of_two(lesson, choice, Kind::airspeed_blank, Kind::airspeed_stuck, 0.0);
        break;
    case StationRow::flap_failure: set_one(lesson, choice, Kind::flap_stuck, 0.0); break;
    case StationRow::power:
        set_of_two(lesson, choice, Kind::power_partial, Kind::power_lost, station_partial_power);
        break;
    }
    return lesson;
}

Lesson begun_again(const Scenario& scenario, const Start& began) {
    Lesson lesson = scenario.lesson;
    lesson.start = began;
    lesson.hands = Hands::both;
    return lesson;
}

Lesson begun_mirrored(const Scenario& scenario, const Start& began) {
    Lesson lesson = begun_again(scenario, began);
    lesson.start.offset_rad = -began.offset_rad;
    return lesson;
}

Lesson with_nothing_failing(const Scenario& scenario, const Attempt& attempt, const Start& began) {
    Lesson lesson = approach_now(scenario, attempt, began);
    lesson.failure_count = 0;
    return lesson;
}

}  // namespace slopewise
