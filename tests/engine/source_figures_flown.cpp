#include "tests/engine/source_figures.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "flight/instruments.h"
#include "lesson/approach_choice.h"
#include "lesson/gates.h"
#include "review/go_around.h"
#include "review/stability.h"
#include "tests/fixtures.h"
#include "world/turbulence.h"

namespace slopewise::test {
namespace {

double fpm(double speed_kt, double path_deg) {
    return fpm_from_mps(mps_from_kt(speed_kt) * std::tan(rad_from_deg(path_deg)));
}

void hold_speed(HeldFigures& held) {
    double least = 1e9, most = 0.0;
    for (const Aircraft& aircraft : shipped().aircraft) {
        const double ratio = aircraft.approach_speed_mps / stall_speed_mps(aircraft, landing_flap(aircraft));
        least = std::min(least, ratio);
        most = std::max(most, ratio);
    }
    held.tells("target_ratio", {least, most});
    const Criteria usual;
    for (const GateCriteria& gate : {usual.far, usual.decision})
        held.tells("speed_limits", {kt_from_mps(gate.slow_mps), kt_from_mps(gate.fast_mps)});
    // What a plain approach is held to; a lesson may have tolerances of its own.
    const Tolerances plain = find_lesson(shipped(), "final_calm")->tolerances;
    held.tells("speed_limits", {kt_from_mps(plain.slow_mps), kt_from_mps(plain.fast_mps)});
    held.tells("speed_near", {200, kt_from_mps(usual.near.fast_mps)});
    CHECK(usual.near.slow_mps == usual.near.fast_mps);
    const Geometry& seat = tourer().geometry;
    held.tells("caution_eye", {ft_from_m(seat.eye_up_m + seat.wheels_down_m)});
    held.tells("vertical_speed_lag", {100.0 * (1.0 - std::exp(-3.0)), 3.0 * vertical_speed_lag_s});
}

void hold_sink_and_wind(HeldFigures& held) {
    held.tells("sink_formula", {fpm_from_mps(mps_from_kt(1.0)), fpm(65, 3), 65, 3});
    held.tells("sink_rule", {5, 65, 5.0 * 65.0, 100.0 * (1.0 - 5.0 * 65.0 / fpm(65, 3))});
    held.tells("sink_in_headwind", {65, 3, fpm(65, 3), fpm(55, 3), 10, fpm(45, 3), 20});
    held.tells("headwinds", {most_headwind_kt});
    held.tells("wind_over_grass", {Wind{}.roughness_m, Wind{}.reference_height_m});
    held.tells("turbulence_vertical", {dryden_scales(100.0, 10.0).vertical_sigma_mps / 10.0});
}

void hold_gates(HeldFigures& held) {
    held.tells("gate_1000", {gate_heights_ft[0]});
    held.tells("gate_500", {gate_heights_ft[1]});
    held.tells("gate_300", {Criteria{}.decision_gate_ft});
    CHECK(gate_heights_ft[2] == Criteria{}.decision_gate_ft);
    held.tells("gate_200", {gate_heights_ft[3]});
    held.tells("gate_50", {scoring_floor_ft});
    CHECK(gate_heights_ft[4] == scoring_floor_ft);
    held.tells("gate_means", {gate_window_s, gate_window_s});

    const Criteria usual;
    for (const GateCriteria& gate : {usual.far, usual.decision, usual.near})
        held.tells("limit_path", {deg_from_rad(gate.path_rad), ft_from_m(gate.path_floor_m)});
    const Tolerances plain = find_lesson(shipped(), "final_calm")->tolerances;
    held.tells("limit_path", {deg_from_rad(plain.path_rad), ft_from_m(plain.path_floor_m)});
    for (const GateCriteria& gate : {usual.decision, usual.near})
        held.tells("limit_sink", {fpm_from_mps(usual.far.sink_mps), 500, fpm_from_mps(gate.sink_mps)});
    for (const GateCriteria& gate : {usual.far, usual.decision})
        held.tells("limit_most_sink", {300, fpm_from_mps(gate.most_sink_mps)});
    held.tells("limit_most_sink_near", {200, fpm_from_mps(usual.near.most_sink_mps)});
    held.tells("limit_settled",
               {gate_trend_s, deg_from_rad(usual.most_pitch_range_rad), 100.0 * usual.most_lever_step});
    held.tells("limit_power", {500, 100.0 * usual.least_power_over_idle});
    CHECK(usual.landing_flap);
    held.tells("limit_configuration", {500});
    held.tells("decision_time", {usual.decision_s});
    held.tells("answer_band", {deg_from_rad(usual.answer_rad), ft_from_m(usual.answer_floor_m)});
    // The limits that hold change at these heights.
    CHECK(&criteria_at(usual, 500.0) == &usual.far);
    CHECK(&criteria_at(usual, 300.0) == &usual.decision);
    CHECK(&criteria_at(usual, 200.0) == &usual.near);
}

// Flown: the lever a little over and a little under what the entry tells.
void hold_go_around(HeldFigures& held) {
    const Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt = begin_attempt(scenario);
    ControlPositions hands = scenario.start_trim.controls;
    hands.throttle = full_power_lever + 0.001;
    while (attempt.end == End::none && attempt.tick < 120 * 60) tick(scenario, attempt, quantize(hands));
    CHECK(attempt.end == End::went_around);
    held.tells("go_around_seen", {100.0 * full_power_lever, attempt.climb_ticks * tick_s});
    Attempt less = begin_attempt(scenario);
    hands.throttle = full_power_lever - 0.001;
    for (int i = 0; i < 120 * 20; ++i) tick(scenario, less, quantize(hands));
    CHECK(less.end == End::none);
}

}  // namespace

void hold_what_is_flown(HeldFigures& held) {
    hold_speed(held);
    hold_sink_and_wind(held);
    hold_gates(held);
    hold_go_around(held);
}

}  // namespace slopewise::test
