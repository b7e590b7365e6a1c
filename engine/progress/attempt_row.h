// One attempt as the logbook's trend sees it.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "debrief/reviewed_flight.h"
#include "record/circumstances.h"

namespace slopewise {

// What an attempt says to the learning curve. Success is all criteria at the decision gate and the right
// decision there. Failure is a miss, and an approach that was not made stable, even though rightly gone
// around from, at the gate or above it: at the gate that counts as a right decision, but the curve asks how
// often an approach succeeds.
// (Left out, students who truly fail 40 % and go around from half of those would pass the curve within 30
// tries 63 times in 100, not 24: tests/engine/test_learning_curve.) Nothing is gained by pressing on, which
// fails as well. Left out is what says nothing of it: a right go-around from an approach that was set up
// unstable close to the gate, a cautious one from a stable approach, and what never came to the gate for
// another reason. Common practice, no source.
enum class LearningResult { left_out, success, failure };
inline constexpr std::array<std::string_view, 3> learning_result_words{"left out", "passed", "not passed"};

struct AttemptRow {
    std::string lesson;
    std::int64_t started_unix_s = 0;  // 0: not known
    bool unaided = true;
    double duration_s = 0.0;
    double start_offset_rad = 0.0;
    double headwind_mps = 0.0;  // mean of the approach
    bool lights_hidden = false, airspeed_hidden = false;
    Spread path_rad, speed_mps;
    bool gate_reached = false, stable_at_gate = false;
    bool set_up_unstable = false;  // begun out of the gate's limits, less than 300 ft above it
    bool went_around = false;
    Decision decision = Decision::none;
    std::string priority_fault;  // id; empty: none
    double path_share = 0.0;     // of the time in tolerance of the path, 0 to 1
    bool criterion_met = false;  // what its lesson asks for; false where it asks for nothing

    // All criteria at the decision gate, and the right decision there.
    bool passed() const { return gate_reached && stable_at_gate && decision == Decision::right; }
    LearningResult learning_result() const;
};

// The attempts that the learning curve counts (unaided, not left out), and where each stands among all.
struct LearningRow {
    std::vector<std::size_t> at;
    std::vector<bool> passes;
};
LearningRow learning_row(std::span<const AttemptRow> rows);

// So close above the decision gate there is no room to mend a start (common practice, no source).
inline constexpr double room_to_mend_ft = 300.0;

AttemptRow attempt_row(const ReviewedFlight& flight, const Circumstances& circumstances);

}  // namespace slopewise
