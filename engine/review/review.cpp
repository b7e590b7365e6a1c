#include "review/review.h"

namespace slopewise {
namespace {

// The index of a reached gate, or the number of gates.
std::size_t index_of(const Review& review, double height_ft) {
    const auto& gates = review.summary.gates;
    std::size_t i = 0;
    while (i < gates.size() && !(gates[i].height_ft == height_ft && gates[i].reached)) ++i;
    return i;
}

}  // namespace

Review review_of(const Scenario& scenario, const Criteria& criteria, const Track& track, End end) {
    const TrackPoints points = scored_points(track);
    Review review;
    review.summary = summarise(scenario, track, end);
    review.start = start_value(scenario, points);
    for (const GateValue& gate : review.summary.gates) {
        review.stability.push_back(gate.reached ? stability_at(scenario, criteria, gate) : Stability{});
        if (gate.height_ft == criteria.decision_gate_ft)
            review.decision =
                decision_at(criteria, gate, review.stability.back(), end, review.summary.last.time_s);
    }
    review.bands = bands_of(scenario, points);
    review.energy = energy_of(scenario, points);
    review.controls = control_activity(points, std::vector<bool>(points.size(), true));
    review.path_answers = path_answers(criteria, points);
    review.light_answers = light_answers(criteria, points, scenario.lights.pattern);
    review.answers = answers_of(review.path_answers, review.light_answers);
    review.configuration = configuration_of(scenario, points);
    review.aim = aim_drift(scenario, points);
    review.touchdown = touchdown_of(scenario, points, end);
    review.go_around = go_around_of(track, end);
    return review;
}

const GateValue* gate_at(const Review& review, double height_ft) {
    const std::size_t i = index_of(review, height_ft);
    return i < review.summary.gates.size() ? &review.summary.gates[i] : nullptr;
}

const Stability* stability_at(const Review& review, double height_ft) {
    const std::size_t i = index_of(review, height_ft);
    return i < review.stability.size() ? &review.stability[i] : nullptr;
}

}  // namespace slopewise
