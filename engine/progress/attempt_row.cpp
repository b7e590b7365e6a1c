#include "progress/attempt_row.h"

#include <algorithm>
#include <cmath>

#include "success/judge.h"

namespace slopewise {
namespace {

bool fails(const Lesson& lesson, Failure::Kind kind) {
    const auto end = lesson.failures.begin() + lesson.failure_count;
    return std::any_of(lesson.failures.begin(), end, [&](const Failure& one) { return one.kind == kind; });
}

bool set_up_unstable(const ReviewedFlight& flight) {
    const GateValue& start = flight.review.start;
    const Criteria& criteria = flight.criteria;
    const GateCriteria& limits = criteria_at(criteria, criteria.decision_gate_ft);
    if (start.height_ft >= criteria.decision_gate_ft + room_to_mend_ft) return false;
    const bool path_out =
        std::abs(start.mean.path_rad) > limits.path_rad && std::abs(start.mean.path_m) > limits.path_floor_m;
    return path_out || start.mean.speed_mps > limits.fast_mps || start.mean.speed_mps < -limits.slow_mps;
}

}  // namespace

LearningResult AttemptRow::learning_result() const {
    if (passed()) return LearningResult::success;
    if (decision == Decision::miss) return LearningResult::failure;
    if (!went_around || set_up_unstable || decision == Decision::cautious) return LearningResult::left_out;
    return LearningResult::failure;
}

LearningRow learning_row(std::span<const AttemptRow> rows) {
    LearningRow row;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const LearningResult result = rows[i].learning_result();
        if (!rows[i].unaided || result == LearningResult::left_out) continue;
        row.at.push_back(i);
        row.passes.push_back(result == LearningResult::success);
    }
    return row;
}

AttemptRow attempt_row(const ReviewedFlight& flight, const Circumstances& circumstances) {
    const Lesson& lesson = flight.scenario.lesson;
    const TrackPoints points = scored_points(flight.track);
    AttemptRow row;
    row.lesson = lesson.id;
    row.started_unix_s = circumstances.started_unix_s;
    row.unaided = circumstances.aids.unaided();
    row.duration_s = flight.track.points.back().time_s;
    row.start_offset_rad = lesson.start.offset_rad;
    for (const TrackPoint& p : points)
        row.headwind_mps += p.headwind_mps / static_cast<double>(points.size());
    row.lights_hidden = circumstances.aids.lights_hidden || fails(lesson, Failure::Kind::lights_out);
    row.airspeed_hidden = circumstances.aids.airspeed_hidden || fails(lesson, Failure::Kind::airspeed_blank);
    row.path_rad = flight.review.summary.path_rad;
    row.speed_mps = flight.review.summary.speed_mps;
    row.path_share = flight.review.summary.path_share;
    row.criterion_met = judge_flight(flight.scenario, flight.criteria, flight.track, flight.review).met();
    const Stability* stability = stability_at(flight.review, flight.criteria.decision_gate_ft);
    row.gate_reached = stability != nullptr;
    row.stable_at_gate = stability != nullptr && stability->stable();
    row.set_up_unstable = set_up_unstable(flight);
    row.went_around = flight.review.summary.end == End::went_around;
    row.decision = flight.review.decision;
    if (const Finding* priority = flight.diagnosis.priority()) row.priority_fault = priority->fault->id;
    return row;
}

}  // namespace slopewise
