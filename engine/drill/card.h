// One card of a drill: what is shown, what is asked, which answers are possible, what was right.
#pragma once

#include <string>
#include <vector>

#include "world/runway.h"

namespace slopewise {

// What is seen through the windscreen and what is known of it.
struct Picture {
    Point3 eye;  // where it stands still
    double pitch_rad = 0.0;
    double path_rad = 0.0;  // of the flight, negative down
    double ground_speed_mps = 0.0;
    double cas_mps = 0.0;
    int flap = 0;
    double clip_s = 0.0;  // it moves straight for so long before; 0: a still
    bool lights_shown = false;
    bool horizon_shown = true;
    bool airspeed_shown = false;
};

// The eye after a time (s) of the clip; it stays where it stops.
Point3 eye_at(const Picture& picture, double time_s);

enum class AnswerKind {
    choice,             // one of the choices
    place,              // a point along the runway
    moment_and_choice,  // a time of the approach played, and one of the choices
};

struct Card {
    AnswerKind kind = AnswerKind::choice;
    Picture picture;
    double exposure_s = 0.0;  // shown for so long; 0: until answered
    std::string question;
    std::vector<std::string> facts;  // shown with it: "Airspeed 72 kt"
    std::string spoken;              // for a screen reader, instead of the picture
    std::vector<std::string> choices;

    // What was right. Not to be shown before the answer: `card_view` sees to that.
    int right = 0;                  // of the choices
    double truth_rad = 0.0;         // of the eye from the path, or of the flight path
    double truth_m = 0.0;           // beyond the aim point, negative short
    double distance_m = 0.0;        // to the aim point
    bool throughout = false;        // any moment of the flight is right
    std::vector<double> moments_s;  // when the evidence was there
    std::string reveal;

    // For some: which control was moved; which flight is played.
    int control_step = -1;
    int flight = -1;
};

}  // namespace slopewise
