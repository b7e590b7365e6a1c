// The speed held by attitude after each flap step: what to do now, and what the track says of it. The path
// does not count.
#pragma once

#include <string>
#include <vector>

#include "drill/drill.h"
#include "review/track.h"

namespace slopewise {

// Where the student stands in it.
struct SpeedHoldState {
    enum class Task { set_flap, hold, hands_off, done };

    Task task = Task::hold;  // first at the flap it begins with
    double held_s = 0.0;     // without a break
    double hands_off_s = 0.0;
    double asked_s = 0.0;  // since hands off was asked for

    friend bool operator==(const SpeedHoldState&, const SpeedHoldState&) = default;
};

// A stick let go: as near the trimmed position as hands that rest on it may be.
inline constexpr double hands_off_stick = 0.03;

// Who does not let go within so many times the time asked for is taken on to the next step all the same.
inline constexpr double most_hands_off_tries = 3.0;

// One tick on, with the state and controls that the attempt has now.
void advance(SpeedHoldState& state, const SpeedHold& settings, const Scenario& scenario,
             const Attempt& attempt);

// "Set flap: landing", "Hold 65 kt: 23 of 60 s", "Hands off: 4 of 10 s", "Done".
std::string speed_hold_words(const SpeedHoldState& state, const SpeedHold& settings, const Scenario& scenario,
                             const Attempt& attempt);

// held_s: the longest unbroken time in the band after the worst step. bump_ft: most height gained within six
// seconds of a step over where the five seconds before it led. retrim_s: of the slowest step, known where
// every step was re-trimmed. hands_off_kt: change of speed with the stick let go, of the worst step, known
// where it was let go for long enough after each. Nothing is known before landing flap was set.
std::vector<Figure> speed_hold_figures(const SpeedHold& settings, const Scenario& scenario,
                                       const Track& track);

}  // namespace slopewise
