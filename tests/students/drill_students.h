// Model students of the drills: the right skill with a little noise, and one systematic fault each. They know
// nothing of where a drill comes from or who shows it, so that the engine's tests and the program's use them.
#pragma once

#include "base/random.h"
#include "drill/flown_drill.h"
#include "drill/quiz.h"

namespace slopewise::test {

// ---- cards ----

using Answerer = SaidAnswer (*)(const Quiz& quiz, const Card& card, Random& random);

namespace says {
SaidAnswer right(const Quiz& quiz, const Card& card, Random& random);
SaidAnswer right_with_slips(const Quiz& quiz, const Card& card,
                            Random& random);  // one card in a hundred wrong
SaidAnswer right_but_slowly(const Quiz& quiz, const Card& card, Random& random);
SaidAnswer red_for_white(const Quiz& quiz, const Card& card, Random& random);
SaidAnswer sees_angle(const Quiz& quiz, const Card& card, Random& random);  // to an eighth of a degree
SaidAnswer high_is_normal(const Quiz& quiz, const Card& card,
                          Random& random);  // half a degree high is on the path
SaidAnswer marks_still_point(const Quiz& quiz, const Card& card, Random& random);  // to a twelfth of a degree
SaidAnswer marks_aim_point(const Quiz& quiz, const Card& card, Random& random);    // where one should go
SaidAnswer marks_too_far(const Quiz& quiz, const Card& card, Random& random);      // 0.4 degrees flatter
SaidAnswer pull_is_climb(const Quiz& quiz, const Card& card, Random& random);
SaidAnswer nose_for_all(const Quiz& quiz, const Card& card,
                        Random& random);                                    // the path by the nose, whatever
SaidAnswer presses_on(const Quiz& quiz, const Card& card, Random& random);  // calls everything stable
SaidAnswer calls_all_off(const Quiz& quiz, const Card& card, Random& random);
SaidAnswer sees_fault(const Quiz& quiz, const Card& card, Random& random);
SaidAnswer sees_late(const Quiz& quiz, const Card& card, Random& random);  // names it, long after it showed
SaidAnswer names_another(const Quiz& quiz, const Card& card, Random& random);
}  // namespace says

// ---- flown ----

// What a model student holds and has in mind.
struct Student {
    ControlPositions held;
    double pitch_rad = 0.0;
    ModelPilot pilot;
};

// Holds the controls, or tells a command, once a tick.
using StudentHands = Controls (*)(FlownDrill& flown, const Attempt& attempt, Student& student);

namespace flies {
Controls speed_by_attitude(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls speed_untrimmed(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls speed_ballooning(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls path_by_power(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls path_by_big_power(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls lever_untouched(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls go_around(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls go_around_half_power(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls go_around_flap_first(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls go_around_late(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls go_around_untrimmed(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls tells_well(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls tells_nose_only(FlownDrill& flown, const Attempt& attempt, Student& student);
Controls tells_nothing(FlownDrill& flown, const Attempt& attempt, Student& student);
}  // namespace flies

}  // namespace slopewise::test
