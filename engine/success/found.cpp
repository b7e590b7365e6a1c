#include "success/found.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "base/units.h"
#include "success/flown_measures.h"

namespace slopewise {
namespace {

using Kind = Found::Kind;

Found figure(double value) { return {Kind::figure, value, value, {}}; }
Found answer(bool met, std::string words) { return {met ? Kind::yes : Kind::no, 0.0, 0.0, std::move(words)}; }
Found missed(std::string words) { return answer(false, std::move(words)); }
Found not_due(std::string words) { return {Kind::not_due, 0.0, 0.0, std::move(words)}; }

Found figure_or(const std::optional<double>& value, const char* otherwise) {
    return value.has_value() ? figure(*value) : missed(otherwise);
}

std::string feet(double height_m) {
    char text[40];
    std::snprintf(text, sizeof text, "%.0f ft", ft_from_m(height_m));
    return text;
}

// A requirement's height is a gate's, put into metres and back.
double gate_ft(const Requirement& asked) { return std::round(ft_from_m(asked.height_m)); }

bool went_around(const Flown& f) { return f.review.summary.end == End::went_around; }

// ---- at the gates ----

template <class Value>
Found at_gate(const Flown& f, const Requirement& asked, Value value) {
    const GateValue* gate = gate_at(f.review, gate_ft(asked));
    if (gate != nullptr) return figure(value(*gate));
    if (went_around(f)) return not_due("gone around before the gate");
    return missed("the gate was not reached");
}

Found stable_at_one(const Flown& f, const Requirement& asked) {
    const Stability* stability = stability_at(f.review, gate_ft(asked));
    if (stability == nullptr) return missed("the gate was not reached");
    return answer(stability->stable(), stability_words(*stability));
}

Found stable_down(const Flown& f, const Requirement& asked) {
    const auto& gates = f.review.summary.gates;
    for (std::size_t i = 0; i < gates.size(); ++i) {
        if (gates[i].height_ft > gate_ft(asked)) continue;
        const std::string where = feet(m_from_ft(gates[i].height_ft));
        if (!gates[i].reached) return missed(where + " was not reached");
        const Stability& stability = f.review.stability[i];
        if (!stability.stable()) return missed(stability_words(stability) + " at " + where);
    }
    if (f.review.summary.end != End::reached_floor) return missed("50 ft was not reached near the runway");
    return answer(true, "stable");
}

Found stable_down_or_around(const Flown& f, const Requirement& asked) {
    if (went_around(f) && f.review.decision == Decision::right) return answer(true, "rightly gone around");
    return stable_down(f, asked);
}

bool began_below_the_gate(const Flown& f) {
    return std::ranges::none_of(f.review.summary.gates, [&](const GateValue& gate) {
        return gate.height_ft == f.criteria.decision_gate_ft;
    });
}

std::string decision_told(Decision decision) {
    switch (decision) {
    case Decision::right: return "right";
    case Decision::miss: return "continued though not stable";
    case Decision::cautious: return "gone around though stable";
    case Decision::none: break;
    }
    return "the gate was not reached";
}

Found decided_right(const Flown& f, const Requirement&) {
    if (began_below_the_gate(f)) return not_due("begun below the gate");
    return answer(f.review.decision == Decision::right, decision_told(f.review.decision));
}

Found decided_without_miss(const Flown& f, const Requirement&) {
    if (began_below_the_gate(f)) return not_due("begun below the gate");
    return answer(f.review.decision != Decision::miss, decision_told(f.review.decision));
}

// ---- on the way ----

Found speed_range(const Flown& f, const Requirement&) {
    const Extremes speed = speed_extremes_mps(f.scenario, f.points);
    return {Kind::figure, speed.least, speed.most, {}};
}

Found change_at_end(const Flown& f, const Requirement&) {
    if (f.review.aim.ducking_known) return figure(f.review.aim.ducking_rad);
    const GateValue* end = gate_at(f.review, 50.0);
    if (end == nullptr) return missed("50 ft was not reached");
    return figure(end->mean.path_rad - f.review.start.mean.path_rad);
}

Found no_power(const Flown& f, const Requirement& asked) {
    constexpr double closed = 0.02;  // a lever against its stop, whatever the hand does
    const double largest = largest_lever_below(f.points, asked.height_m);
    return answer(largest <= closed, largest <= closed ? "power off" : "power was used");
}

Found first_answer(const Flown& f, const Requirement&) {
    if (f.review.path_answers.empty()) return not_due("the path was never left");
    const PathAnswer& first = f.review.path_answers.front();
    if (first.wrong_way_first) return missed("the wrong way");
    return first.reaction_s < 0.0 ? missed("no input") : figure(first.reaction_s);
}

Found straight_touchdown(const Flown& f, const Requirement&) {
    if (f.review.touchdown.known) return figure(f.review.touchdown.from_aim_m);
    return went_around(f) ? not_due("gone around") : missed("50 ft was not reached near the runway");
}

Found clear_of_leader(const Flown& f, const Requirement&) {
    if (!f.scenario.lesson.traffic.there()) return not_due("no one ahead");
    return figure(least_above_leader_m(f.scenario, f.points));
}

// ---- flap ----

Found flap_set(const Flown& f, const Requirement& asked) {
    const Configuration& configuration = f.review.configuration;
    const double height_m = configuration.landing_height_m;
    if (height_m < 0.0) return missed("never set");
    const bool whole = configuration.landing_at_start && configuration.steps.empty();
    return answer(whole || height_m >= asked.height_m,
                  whole ? "set from the start" : "set at " + feet(height_m));
}

Found bump(const Flown& f, const Requirement&) {
    const auto& steps = f.review.configuration.steps;
    if (steps.empty()) return missed("no flap step was made");
    double largest_m = 0.0;
    for (const FlapStep& step : steps) largest_m = std::max(largest_m, step.balloon_m);
    return figure(largest_m);
}

// ---- going around ----

Found full_power(const Flown& f, const Requirement&) {
    const GoAroundFigures& around = f.review.go_around;
    if (!around.flown) return not_due("not gone around");
    return around.full_power_s < 0.0 ? missed("never full") : figure(around.full_power_s);
}

Found flap_in_stages(const Flown& f, const Requirement&) {
    const GoAroundFigures& around = f.review.go_around;
    if (!around.flown) return not_due("not gone around");
    if (around.flap_before_climb) return missed("raised while still sinking");
    return answer(!around.flap_all_at_once, around.flap_all_at_once ? "raised all at once" : "in stages");
}

Found slowest_around(const Flown& f, const Requirement&) {
    const GoAroundFigures& around = f.review.go_around;
    if (!around.flown) return not_due("not gone around");
    return figure(around.slowest_mps - f.scenario.lesson.target_cas_mps);
}

using F = const Flown&;
using R = const Requirement&;

// In the order of Requirement::Kind.
constexpr std::array<Found (*)(F, R), requirement_kind_count> finders{
    stable_at_one,
    stable_down,
    stable_down_or_around,
    decided_right,
    decided_without_miss,
    [](F f, R) { return figure(f.review.summary.path_share); },
    [](F f, R) { return figure(f.review.summary.speed_share); },
    [](F f, R r) { return at_gate(f, r, [](const GateValue& gate) { return gate.mean.path_rad; }); },
    [](F f, R r) { return at_gate(f, r, [](const GateValue& gate) { return gate.mean.speed_mps; }); },
    [](F f, R r) { return at_gate(f, r, [](const GateValue& gate) { return gate.mean.sink_mps; }); },
    speed_range,
    [](F f, R) { return figure(speed_held_s(f.scenario, f.points, f.review.configuration.steps)); },
    [](F f, R) { return figure(f.review.summary.path_rad.bias); },
    change_at_end,
    [](F f, R) { return figure(path_crossings_per_min(f.criteria, f.points)); },
    [](F f, R r) { return figure_or(lowest_angle_rad(f.scenario, f.points, r.height_m), "begun below it"); },
    [](F f, R) { return figure_or(lost_before_path_m(f.points), "the path was never met"); },
    [](F f, R) { return figure(f.review.controls.lever_reversals_per_min()); },
    no_power,
    flap_set,
    [](F f, R r) { return at_gate(f, r, [](const GateValue& gate) { return std::abs(gate.stick); }); },
    bump,
    [](F f, R) { return figure(f.review.configuration.over_flap_speed_s); },
    first_answer,
    straight_touchdown,
    clear_of_leader,
    full_power,
    flap_in_stages,
    slowest_around,
};

}  // namespace

Found find(const Flown& flown, const Requirement& requirement) {
    return finders[static_cast<std::size_t>(requirement.kind)](flown, requirement);
}

}  // namespace slopewise
