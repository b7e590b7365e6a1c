#include "base/units.h"
#include "debrief/flight_tables.h"
#include "flight/dynamics.h"
#include "review/track_csv.h"

namespace slopewise {
namespace {

using F = const ReviewedFlight&;

double flap_limit_kt(F f, std::size_t i) {
    return known_if(int(i) < f.scenario.aircraft.flap_count,
                    kt_from_mps(f.scenario.aircraft.flaps[i].max_speed_mps));
}

constexpr Column<ReviewedFlight> columns[] = {
    {"nominal_path_deg", 6, "the path that is held",
     [](F f) { return deg_from_rad(f.scenario.surroundings.runway.lights.nominal_path_rad); }},
    {"target_speed_kt", 6, "calibrated, gust allowance included",
     [](F f) { return kt_from_mps(f.scenario.lesson.target_cas_mps); }},
    {"aim_beyond_threshold_ft", 5, "the aim point",
     [](F f) { return ft_from_m(f.scenario.surroundings.runway.aim_distance_m); }},
    {"runway_length_ft", 2, "", [](F f) { return ft_from_m(f.scenario.surroundings.runway.length_m); }},
    {"runway_slope_percent", 4, "up in the landing direction positive",
     [](F f) { return 100.0 * f.scenario.surroundings.runway.slope; }},
    {"light_units", 0, "of the picture", [](F f) { return double(f.scenario.lights.pattern); }},
    {"headwind_kt", 3, "the lesson's, at 10 m where it varies with height",
     [](F f) { return kt_from_mps(f.scenario.lesson.wind.headwind_mps); }},
    {"turbulence_w20_kt", 3, "", [](F f) { return kt_from_mps(f.scenario.lesson.turbulence_w20_mps); }},
    {"seed", 0, "of the air", [](F f) { return double(f.scenario.lesson.seed); }},
    {"mass_kg", 1, "", [](F f) { return f.scenario.aircraft.mass_kg; }},
    {"landing_flap_setting", 0, "", [](F f) { return double(briefed_flap(f.scenario)); }},
    {"flap_1_limit_kt", 6, "limiting speed", [](F f) { return flap_limit_kt(f, 1); }},
    {"flap_2_limit_kt", 6, "limiting speed", [](F f) { return flap_limit_kt(f, 2); }},
    {"flap_3_limit_kt", 6, "limiting speed", [](F f) { return flap_limit_kt(f, 3); }},
    {"idle_power_percent", 5, "", [](F f) { return 100.0 * settled_power(f.scenario.aircraft.engine, 0.0); }},
    {"tolerance_path_deg", 6, "with the next: the larger counts",
     [](F f) { return deg_from_rad(f.scenario.lesson.tolerances.path_rad); }},
    {"tolerance_path_ft", 5, "", [](F f) { return ft_from_m(f.scenario.lesson.tolerances.path_floor_m); }},
    {"tolerance_slow_kt", 6, "below target",
     [](F f) { return kt_from_mps(f.scenario.lesson.tolerances.slow_mps); }},
    {"tolerance_fast_kt", 6, "above target",
     [](F f) { return kt_from_mps(f.scenario.lesson.tolerances.fast_mps); }},
    {"tolerance_sink_fpm", 5, "either side of the sink that the path asks for",
     [](F f) { return fpm_from_mps(f.scenario.lesson.tolerances.sink_mps); }},
    {"answer_path_deg", 6, "a path error to answer is larger than this and the next",
     [](F f) { return deg_from_rad(f.criteria.answer_rad); }},
    {"answer_path_ft", 5, "", [](F f) { return ft_from_m(f.criteria.answer_floor_m); }},
    {"convention", 0, "what corrects the path: 0 power, 1 pitch, 2 either",
     [](F f) { return double(f.criteria.convention); }},
    {"decision_gate_ft", 1, "", [](F f) { return f.criteria.decision_gate_ft; }},
    {"decision_s", 2, "time at the gate to go around", [](F f) { return f.criteria.decision_s; }},
    {"gate_path_deg", 6, "stable at the decision gate: within this or the next",
     [](F f) { return deg_from_rad(f.criteria.decision.path_rad); }},
    {"gate_path_ft", 5, "", [](F f) { return ft_from_m(f.criteria.decision.path_floor_m); }},
    {"gate_slow_kt", 6, "", [](F f) { return kt_from_mps(f.criteria.decision.slow_mps); }},
    {"gate_fast_kt", 6, "", [](F f) { return kt_from_mps(f.criteria.decision.fast_mps); }},
    {"gate_sink_fpm", 5, "either side", [](F f) { return fpm_from_mps(f.criteria.decision.sink_mps); }},
    {"gate_most_sink_fpm", 5, "", [](F f) { return fpm_from_mps(f.criteria.decision.most_sink_mps); }},
    {"far_path_deg", 6, "at 500 ft and above: within this or the next",
     [](F f) { return deg_from_rad(f.criteria.far.path_rad); }},
    {"far_path_ft", 5, "", [](F f) { return ft_from_m(f.criteria.far.path_floor_m); }},
    {"far_slow_kt", 6, "", [](F f) { return kt_from_mps(f.criteria.far.slow_mps); }},
    {"far_fast_kt", 6, "", [](F f) { return kt_from_mps(f.criteria.far.fast_mps); }},
    {"far_sink_fpm", 5, "either side", [](F f) { return fpm_from_mps(f.criteria.far.sink_mps); }},
    {"far_most_sink_fpm", 5, "", [](F f) { return fpm_from_mps(f.criteria.far.most_sink_mps); }},
    {"near_path_deg", 6, "at 200 ft and below: within this or the next",
     [](F f) { return deg_from_rad(f.criteria.near.path_rad); }},
    {"near_path_ft", 5, "", [](F f) { return ft_from_m(f.criteria.near.path_floor_m); }},
    {"near_slow_kt", 6, "", [](F f) { return kt_from_mps(f.criteria.near.slow_mps); }},
    {"near_fast_kt", 6, "", [](F f) { return kt_from_mps(f.criteria.near.fast_mps); }},
    {"near_sink_fpm", 5, "either side", [](F f) { return fpm_from_mps(f.criteria.near.sink_mps); }},
    {"near_most_sink_fpm", 5, "", [](F f) { return fpm_from_mps(f.criteria.near.most_sink_mps); }},
    {"gate_pitch_range_deg", 6, "at the decision gate alone, in the ten seconds before",
     [](F f) { return deg_from_rad(f.criteria.most_pitch_range_rad); }},
    {"gate_lever_step_percent", 5, "likewise", [](F f) { return 100.0 * f.criteria.most_lever_step; }},
    {"gate_power_over_idle_percent", 5, "", [](F f) { return 100.0 * f.criteria.least_power_over_idle; }},
    {"gate_landing_flap", 0, "1: must be set at 500 ft and below",
     [](F f) { return double(f.criteria.landing_flap); }},
};

}  // namespace

Table setup_table(const ReviewedFlight& flight) {
    Table table{"setup", "lesson", {}, {}};
    set_heads(table, columns);
    add_row(table, columns, flight.scenario.lesson.id, flight);
    return table;
}

std::vector<Table> flight_tables(const ReviewedFlight& flight) {
    return {setup_table(flight), run_table(flight), gate_table(flight), band_table(flight),
            answer_table(flight)};
}

std::string flight_dictionary(const ReviewedFlight& flight) {
    return dictionary_csv(flight_tables(flight)) + track_dictionary();
}

}  // namespace slopewise
