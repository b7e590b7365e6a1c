// Who has which control: what flies, and what is said.
#include "drill/shared_controls.h"

#include "tests/check.h"

using namespace slopewise;

namespace {

// Every control of the two differs.
constexpr Controls student_hands{1000, 20000, 300, 1, false}, partner_hands{-2000, 50000, -700, 2, false};

}  // namespace

TEST_CASE("shared controls: each control comes from the one who has it") {
    CHECK(merged_controls(ControlShare::both, student_hands, partner_hands) == student_hands);
    CHECK(merged_controls(ControlShare::none, student_hands, partner_hands) == partner_hands);
    const Controls power = merged_controls(ControlShare::power, student_hands, partner_hands);
    CHECK(power == Controls{-2000, 20000, -700, 1, false});
    const Controls pitch = merged_controls(ControlShare::pitch, student_hands, partner_hands);
    CHECK(pitch == Controls{1000, 50000, 300, 2, false});
}

TEST_CASE("shared controls: who has any control may say the go-around, who has none may not") {
    Controls says = student_hands;
    says.go_around = true;
    CHECK(merged_controls(ControlShare::power, says, partner_hands).go_around);
    CHECK(merged_controls(ControlShare::pitch, says, partner_hands).go_around);
    CHECK_FALSE(merged_controls(ControlShare::none, says, partner_hands).go_around);
    Controls partner_says = partner_hands;
    partner_says.go_around = true;
    CHECK(merged_controls(ControlShare::power, student_hands, partner_says).go_around);
    CHECK_FALSE(merged_controls(ControlShare::both, student_hands, partner_says).go_around);
}

TEST_CASE("shared controls: a hand-over holds only when it has been answered") {
    SharedControls shared;
    offer_controls(shared, ControlShare::power, 120);
    CHECK(shared.share == ControlShare::none);
    CHECK(shared.waiting);
    CHECK(accept_controls(shared, 200));
    CHECK(shared.share == ControlShare::power);
    const std::vector<ControlCall> said{{120, Speaker::partner, "You have power."},
                                        {200, Speaker::student, "I have power."},
                                        {200, Speaker::partner, "You have power."}};
    CHECK(shared.calls == said);
    CHECK_FALSE(accept_controls(shared, 300));  // nothing was offered
    CHECK(shared.calls == said);
}

TEST_CASE("shared controls: taking back asks nobody, and withdraws an offer") {
    SharedControls shared;
    shared.share = ControlShare::both;
    offer_controls(shared, ControlShare::pitch, 10);
    take_back_controls(shared, 20);
    CHECK(shared.share == ControlShare::none);
    CHECK_FALSE(accept_controls(shared, 30));
    REQUIRE(shared.calls.size() == 3);
    CHECK(shared.calls[1] == ControlCall{20, Speaker::partner, "I have control."});
    CHECK(shared.calls[2] == ControlCall{20, Speaker::student, "You have control."});
    take_back_controls(shared, 40);  // has it already
    CHECK(shared.calls.size() == 3);
}

TEST_CASE("shared controls: an offer not yet answered is withdrawn by taking back") {
    SharedControls shared;
    offer_controls(shared, ControlShare::both, 10);
    take_back_controls(shared, 20);
    CHECK_FALSE(shared.waiting);
    CHECK(shared.calls.back() == ControlCall{20, Speaker::student, "You have control."});
    CHECK_FALSE(accept_controls(shared, 30));
    CHECK(shared.share == ControlShare::none);
}

TEST_CASE("shared controls: a student gives everything up in words") {
    SharedControls shared;
    shared.share = ControlShare::pitch;
    give_up_controls(shared, 7);
    CHECK(shared.share == ControlShare::none);
    const std::vector<ControlCall> said{{7, Speaker::student, "You have control."},
                                        {7, Speaker::partner, "I have control."}};
    CHECK(shared.calls == said);
    give_up_controls(shared, 8);
    CHECK(shared.calls == said);
}

TEST_CASE("shared controls: offering nothing is taking back, offering what one has says nothing") {
    SharedControls shared;
    shared.share = ControlShare::power;
    offer_controls(shared, ControlShare::power, 1);
    CHECK(shared.calls.empty());
    CHECK_FALSE(shared.waiting);
    offer_controls(shared, ControlShare::none, 2);
    CHECK(shared.share == ControlShare::none);
    CHECK(shared.calls.front().words == "I have control.");
}
