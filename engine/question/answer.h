// What can be answered to a question, and what is right: worked out from the flight as it stands.
#pragma once

#include <string>
#include <vector>

#include "question/question.h"
#include "review/criteria.h"
#include "review/track.h"

namespace slopewise {

// A flight as far as it is flown.
struct FlownSoFar {
    const Scenario& scenario;
    const Attempt& attempt;
    const Track& track;
    const Criteria& criteria;  // the school's
};

// One's own words, or the usual ones of the kind: "High or low? Fast or slow?"
std::string asked_words(const Question& question);

// In their order; the same from the beginning of the question's flight to its end.
std::vector<std::string> answer_choices(const Question& question, const Scenario& scenario,
                                        Convention convention);

struct Answer {
    int right = 0;       // of the choices
    std::string reveal;  // why, with figures
    std::string close;   // for the instructor: why it could be argued about; empty when it is clear
};
Answer work_out(const Question& question, const FlownSoFar& flown);

// "At the aim point" is nearer than this to where the eye's straight path meets its level: what the FAA's
// commercial standards allow a landing beyond its point (FAA-S-ACS-7, 200 ft, from memory).
inline constexpr double at_aim_point_m = m_from_ft(200.0);

// What is first seen to answer, against the same flight with the control left alone: our figures, no source,
// each about what a glance at a dial can tell.
inline constexpr double noticed_speed_mps = mps_from_kt(3.0);
inline constexpr double noticed_sink_mps = mps_from_fpm(100.0);
inline constexpr double answers_within_s = 10.0;

// The controls with the question's step made.
ControlPositions stepped(const Question& question, const Scenario& scenario, ControlPositions hands);

}  // namespace slopewise
