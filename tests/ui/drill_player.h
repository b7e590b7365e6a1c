// The program without a window, played by the model students of the drills: cards by its actions and its
// frame's time, flights tick by tick.
#pragma once

#include <string>
#include <string_view>

#include "tests/students/drill_students.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/drive_drills.h"
#include "ui/make_view.h"

namespace slopewise::test {

struct DrillPlayer {
    TestHost host;
    App app = make_app(shipped(), host);

    // Opens a drill from the list and begins it with this seed.
    void begin(std::string_view id, std::uint64_t seed = 1);
    void go_on() { apply(app, DoWithDrill{DoWithDrill::Wish::go_on}, host); }
    std::string text() const { return make_view(app).mirror.screen; }

    // Lets time pass for the cards, as frames of a thirtieth of a second.
    void wait(double seconds);
    // Answers the present card as the student says, and waits until it is revealed.
    void answer_card(Answerer answerer, Random& random);
    // Plays all cards to the result.
    const DrillResult& play_cards(Answerer answerer, std::uint64_t seed);
    // Flies to the result; ten minutes at most.
    const DrillResult& fly(StudentHands hands);
};

}  // namespace slopewise::test
