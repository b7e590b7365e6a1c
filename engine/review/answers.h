// How the hands answered: to a path error, and to a change of the lights.
#pragma once

#include <vector>

#include "review/criteria.h"
#include "review/deviations.h"

namespace slopewise {

// An input: the lever or the stick moved so far from where it stood. The stick counts from its mean over the
// second before, so that a pressure held is not taken for a movement.
inline constexpr double lever_input = 0.02;
inline constexpr double stick_input = 0.05;

// One time out of the answer band, from leaving it to coming back.
struct PathAnswer {
    std::size_t begin = 0;
    bool high = false;
    double reaction_s = -1.0;  // to the first right-way input; -1: none came
    bool wrong_way_first = false;
    double settling_s = -1.0;  // until back in the band; -1: never
    bool overshot = false;     // left the band on the other side within 20 s of coming back
};

// One change of the lights to a picture that asks for something: more white than red, or more red.
struct LightAnswer {
    std::size_t begin = 0;
    int white_count = 0;       // after it
    double reaction_s = -1.0;  // to the first input either way, within five seconds; -1: none
    bool wrong_way_first = false;
};

inline constexpr double light_answer_s = 5.0;
inline constexpr double overshoot_s = 20.0;

bool within_answer_band(const Criteria& criteria, const TrackPoint& point);

std::vector<PathAnswer> path_answers(const Criteria& criteria, TrackPoints points);

// `units` make the picture.
std::vector<LightAnswer> light_answers(const Criteria& criteria, TrackPoints points, int units);

// The answers together.
struct Answers {
    int path_errors = 0, path_answered = 0, path_wrong_way = 0, overshoots = 0;
    double path_reaction_s = 0.0;  // mean of those answered
    double path_settling_s = 0.0;  // mean of those that came back
    int path_settled = 0;
    int light_changes = 0, lights_answered = 0, lights_wrong_way = 0;
    double light_reaction_s = 0.0;
};
Answers answers_of(const std::vector<PathAnswer>& path, const std::vector<LightAnswer>& lights);

}  // namespace slopewise
