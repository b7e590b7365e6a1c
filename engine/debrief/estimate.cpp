#include "debrief/estimate.h"

#include "base/units.h"

namespace slopewise {
namespace {

std::string estimate_words(const Estimate& estimate, bool with_gate) {
    constexpr const char* paths[] = {"low", "on the path", "high"};
    constexpr const char* speeds[] = {"slow", "on speed", "fast"};
    std::string words = std::string(paths[static_cast<std::size_t>(estimate.path)]) + ", " +
                        speeds[static_cast<std::size_t>(estimate.speed)];
    if (with_gate) words += estimate.stable_at_gate ? ", stable" : ", not stable";
    return words;
}

}  // namespace

Estimate truth_of(const ReviewedFlight& flight) {
    constexpr double on_speed_mps = mps_from_kt(3.0);
    const Summary& summary = flight.review.summary;
    Estimate truth;
    if (summary.path_rad.bias > flight.criteria.answer_rad) truth.path = Estimate::Path::high;
    if (summary.path_rad.bias < -flight.criteria.answer_rad) truth.path = Estimate::Path::low;
    if (summary.speed_mps.bias > on_speed_mps) truth.speed = Estimate::Speed::fast;
    if (summary.speed_mps.bias < -on_speed_mps) truth.speed = Estimate::Speed::slow;
    const Stability* stability = stability_at(flight.review, flight.criteria.decision_gate_ft);
    truth.stable_at_gate = stability != nullptr && stability->stable();
    return truth;
}

bool gate_is_known(const ReviewedFlight& flight) {
    return gate_at(flight.review, flight.criteria.decision_gate_ft) != nullptr;
}

EstimateScore score_of(const Estimate& estimate, const ReviewedFlight& flight) {
    const Estimate truth = truth_of(flight);
    EstimateScore score;
    score.path_right = estimate.path == truth.path;
    score.speed_right = estimate.speed == truth.speed;
    score.gate_known = gate_is_known(flight);
    score.stable_right = estimate.stable_at_gate == truth.stable_at_gate;
    return score;
}

std::string estimate_sentence(const Estimate& estimate, const ReviewedFlight& flight) {
    const EstimateScore score = score_of(estimate, flight);
    return "You said: " + estimate_words(estimate, score.gate_known) +
           ". It was: " + estimate_words(truth_of(flight), score.gate_known) + ". " +
           std::to_string(score.right()) + " of " + std::to_string(score.asked()) + ".";
}

}  // namespace slopewise
