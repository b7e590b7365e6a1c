#include "drill/gate_deck.h"

#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/still.h"
#include "lesson/demonstrate.h"
#include "review/words.h"
#include "world/sight.h"

namespace slopewise {
namespace {

// A gate's trends look ten seconds back and its means two seconds on.
constexpr double before_s = 13.0, after_s = 2.5;

// The start that comes straight down its path and is at the gate as the case says, so long before.
DrillStart before_gate(const DrillStart& at_gate, double gate_ft, const Scenario& base) {
    const double nominal_rad = base.surroundings.runway.lights.nominal_path_rad;
    const double line_rad = nominal_rad + at_gate.offset_rad;
    const Geometry& geometry = base.aircraft.geometry;
    const double eye_over_wheels_m = geometry.eye_up_m + geometry.wheels_down_m;
    const double height_m = m_from_ft(gate_ft) + eye_over_wheels_m - aim_point(base.surroundings.runway).z_m;
    const double distance_m = height_m / exact::tan(line_rad);
    const double speed_mps = base.lesson.target_cas_mps + at_gate.faster_mps - at_gate.headwind_mps;
    const double back_m = speed_mps * before_s;
    const double path_rad = line_rad + at_gate.steeper_rad;
    const double start_line_rad = exact::atan2(height_m + back_m * exact::tan(path_rad), distance_m + back_m);
    DrillStart start = at_gate;
    start.distance_m = distance_m + back_m;
    start.offset_rad = start_line_rad - nominal_rad;
    start.steeper_rad = path_rad - start_line_rad;
    return start;
}

std::vector<std::string> facts_of(const Scenario& scenario, const GatePassed& passed) {
    const GateValue& gate = passed.gate;
    const double target_kt = kt_from_mps(scenario.lesson.target_cas_mps);
    const double wanted_sink_fpm = fpm_from_mps(gate.sink_mps - gate.mean.sink_mps);
    const auto flap = static_cast<std::size_t>(gate.flap_setting);
    return {drill_format("Gate %.0f ft", gate.height_ft),
            "Path " + path_phrase(gate.mean.path_rad, gate.distance_m) + ", " +
                light_words(gate.white_count, units_showing(gate.white_fraction),
                            scenario.surroundings.runway.lights.kind),
            drill_format("Airspeed %.0f kt, target %.0f", kt_from_mps(gate.cas_mps), target_kt),
            drill_format("Sink %.0f ft/min, the path asks for %.0f", fpm_from_mps(gate.sink_mps),
                         wanted_sink_fpm),
            drill_format("Power %.0f %%", 100.0 * gate.power),
            "Flap " + scenario.aircraft.flaps[flap].name};
}

Card card_of(const Scenario& scenario, const GatePassed& passed) {
    Card card;
    const Runway& runway = scenario.surroundings.runway;
    card.picture = still_at(scenario, eye_on_line(runway, passed.gate.distance_m, passed.gate.mean.path_rad));
    card.picture.pitch_rad = passed.gate.pitch_rad;
    card.picture.cas_mps = passed.gate.cas_mps;
    card.picture.flap = passed.gate.flap_setting;
    card.picture.lights_shown = true;
    card.picture.airspeed_shown = true;
    card.question = "Stable, or going around?";
    card.facts = facts_of(scenario, passed);
    for (const std::string& fact : card.facts) card.spoken += fact + ". ";
    card.choices = {"stable: continue", "not stable: go around"};
    card.right = passed.stability.stable() ? call_stable : call_not_stable;
    card.truth_rad = passed.gate.mean.path_rad;
    card.distance_m = passed.gate.distance_m;
    card.reveal = sentence(stability_words(passed.stability)) + ".";
    return card;
}

DrillStart varied(const GateCards& settings, DrillStart start, Random& random) {
    start.offset_rad += settings.shift_rad * draw_between(random, -1.0, 1.0);
    start.faster_mps += settings.shift_mps * draw_between(random, -1.0, 1.0);
    return start;
}

}  // namespace

GatePassed pass_gate(const DrillStart& at_gate, double gate_ft, const Scenario& base,
                     const Criteria& criteria) {
    GatePassed passed;
    const Scenario scenario = scenario_from(before_gate(at_gate, gate_ft, base), base);
    if (!scenario.start_trim.flyable) return passed;
    const Controls held = quantize(scenario.start_trim.controls);
    Attempt attempt = begin_attempt(scenario);
    Track track = begin_track(scenario, attempt);
    while (time_s(attempt) < before_s + after_s && attempt.end == End::none) {
        const Events events = tick(scenario, attempt, held);
        extend(track, scenario, attempt, events);
    }
    passed.gate = gate_value(scenario, scored_points(track), gate_ft);
    passed.flown = passed.gate.reached;
    if (passed.flown) passed.stability = stability_at(scenario, criteria, passed.gate);
    return passed;
}

std::vector<Card> gate_deck(const GateCards& settings, int items, const Scenario& base,
                            const Criteria& criteria, std::uint64_t seed) {
    Random random{seed};
    const auto wanted = static_cast<std::size_t>(items);
    std::vector<Card> cards;
    for (const std::size_t i : draw_rounds(random, settings.cases.size(), 3 * wanted)) {
        if (cards.size() == wanted) break;
        const DrillStart at_gate = varied(settings, settings.cases[i], random);
        const double gate_ft = settings.gates_ft[draw_index(random, settings.gates_ft.size())];
        const GatePassed passed = pass_gate(at_gate, gate_ft, base, criteria);
        if (passed.flown) cards.push_back(card_of(base, passed));
    }
    return cards;
}

}  // namespace slopewise
