// Whether a flight met what its lesson asks for, requirement by requirement, and whether enough flights did.
#pragma once

#include <string>
#include <vector>

#include "review/review.h"

namespace slopewise {

// Not due: the flight never came to where it could be met or missed, such as a go-around's flap where none
// was flown.
enum class Verdict { met, not_met, not_due };
inline constexpr std::array<std::string_view, 3> verdict_words{"met", "not met", "not asked for"};

struct JudgedRequirement {
    Requirement requirement;
    Verdict verdict = Verdict::not_due;
    std::string figure;  // what was flown, in words: "84 %", "not stable: low"
};

struct JudgedFlight {
    std::vector<JudgedRequirement> requirements;

    // Something was asked for, and nothing of it was missed.
    bool met() const;
};

// `review` and the scored `track` are of a flight of this scenario, judged at the gates by these criteria.
JudgedFlight judge_flight(const Scenario& scenario, const Criteria& criteria, const Track& track,
                          const Review& review);

// "time in path tolerance: at least 80 %. It was 84 %: met."
std::string judged_words(const JudgedRequirement& judged);

struct JudgedRuns {
    int met = 0, counted = 0;  // of the last so many that the lesson counts
    bool reached = false;      // as many were met as it asks for
};

// `met`: of the unaided runs of the lesson, the oldest first.
JudgedRuns judge_runs(const Success& success, const std::vector<bool>& met);

// "Met in 2 of the last 3 unaided runs; 3 of the last 4 are asked for."
std::string runs_judged_words(const Success& success, const JudgedRuns& runs);

}  // namespace slopewise
