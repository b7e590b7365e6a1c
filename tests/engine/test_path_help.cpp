// The path help: when it comes, when it goes, what it shows. The rules are named R1, R2 and R4, as the design
// numbers them; each test says where its rule comes from.
#include "help/path_help.h"

#include <cmath>

#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr int second = 120;  // ticks

// Off by an angle at 1,000 ft with nothing done about it, unless said otherwise.
PathTruth off_by(double error_deg, double height_ft = 1000.0, double offset_rate_mps = 0.0) {
    PathTruth truth;
    truth.error_rad = rad_from_deg(error_deg);
    truth.height_m = m_from_ft(height_ft);
    const double distance_m = truth.height_m / std::tan(rad_from_deg(3.0));
    truth.motion = {distance_m * std::tan(truth.error_rad), offset_rate_mps};
    return truth;
}

void advance_for(PathHelp& help, const PathTruth& truth, int ticks, bool key_held = false) {
    for (int i = 0; i < ticks; ++i) advance_help(help, truth, key_held);
}

PathHelp of_stage(int stage) {
    PathHelp help;
    help.plan = {true, stage, false};
    return help;
}

// How long it takes to come uncalled, in ticks; -1: not within ten seconds.
int comes_after(const HelpPlan& plan, const PathTruth& truth) {
    PathHelp help;
    help.plan = plan;
    for (int i = 1; i <= 10 * second; ++i) {
        advance_help(help, truth, false);
        if (help.shown()) return i;
    }
    return -1;
}

}  // namespace

// Rule R1: Huet, Jacobs, Camachon, Goulon & Montagne 2009, Human Factors 51(6): feedback that the student
// controls served novices on final better than imposed feedback, and that better than none (read in
// abstract). Three seconds: common practice, no source.
TEST_CASE(
    "R1: the path help is off until it is called, lasts three seconds of a held key, and calls are counted") {
    PathHelp help;
    advance_for(help, off_by(2.0), 60 * second);
    CHECK_FALSE(help.shown());
    CHECK(help.calls == 0);

    advance_for(help, off_by(0.0), 1, true);
    CHECK(help.shown());
    CHECK(help.call == HelpCall::answered);
    advance_for(help, off_by(0.0), 3 * second - 1, true);
    CHECK(help.shown());
    advance_for(help, off_by(0.0), 1, true);
    CHECK_FALSE(help.shown());
    advance_for(help, off_by(0.0), 5 * second, true);  // held on: the same call
    CHECK_FALSE(help.shown());
    CHECK(help.calls == 1);
    CHECK(help.shown_ticks == 3 * second);

    advance_for(help, off_by(0.0), 1);
    advance_for(help, off_by(0.0), second, true);
    CHECK(help.calls == 2);
    advance_for(help, off_by(0.0), 1);  // let go early
    CHECK_FALSE(help.shown());
    CHECK_NEAR(shown_s(help), 4.0, 1e-9);  // ticks are counted whole; the tolerance is of the division
}

// Rule R1: Huet et al. 2009, as above: a key that is not held calls nothing, and after scoring there is
// nothing to help.
TEST_CASE("R1: after scoring no call is answered") {
    PathHelp help;
    PathTruth after = off_by(1.0);
    after.scored = false;
    advance_for(help, after, second, true);
    CHECK_FALSE(help.shown());
    CHECK(help.calls == 0);
    advance_for(help, off_by(1.0), second, true);  // still the same press
    CHECK(help.calls == 0);
}

// Rule R2: Lintern 1980, Human Factors 22 (recalled): help by displacement was the useful form in landing;
// the triggers of the stages are common practice, no source.
TEST_CASE("R2: uncalled it comes after 1.5 s beyond the stage's angle, and at the last stage never") {
    constexpr int due = second * 3 / 2 + 1;  // more than 1.5 s
    CHECK(comes_after({true, 0, false}, off_by(0.34)) == -1);
    CHECK(comes_after({true, 0, false}, off_by(0.36)) == due);
    CHECK(comes_after({true, 1, false}, off_by(-0.49)) == -1);
    CHECK(comes_after({true, 1, false}, off_by(-0.51)) == due);
    CHECK(comes_after({true, 2, false}, off_by(0.74)) == -1);
    CHECK(comes_after({true, 2, false}, off_by(0.76)) == due);
    CHECK(comes_after({true, 3, false}, off_by(3.0)) == -1);
    CHECK(comes_after({true, 3, false}, off_by(3.0, 250.0)) == -1);
}

// Rule R2: Lintern 1980, as above; 300 and 30 ft are common practice, no source.
TEST_CASE("R2: below 300 ft more than 30 ft off is enough, whatever the angle") {
    // At 290 ft on 3 degrees 32 ft are 0.33 degrees, less than any stage's angle (290 / tan 3 deg = 5534 ft).
    PathTruth near = off_by(0.33, 290.0);
    CHECK(ft_from_m(near.motion.offset_m) > 31.0);
    CHECK(comes_after({true, 2, false}, near) == second * 3 / 2 + 1);
    near.height_m = m_from_ft(301.0);
    CHECK(comes_after({true, 2, false}, near) == -1);
    CHECK(comes_after({true, 2, false}, off_by(0.29, 290.0)) == -1);  // 28 ft
}

// Rule R2: Kaul, Collyer & Lintern 1980, NAVTRAEQUIPCEN: no error is shown while the path is returned to at
// an appropriate closure (read in abstract). The 5 and 25 s are common practice, no source.
TEST_CASE("R2: it stays away, and goes, while the path is returned to within 5 to 25 s") {
    const double offset_m = off_by(1.0).motion.offset_m;
    CHECK(comes_after({true, 0, false}, off_by(1.0, 1000.0, -offset_m / 24.0)) == -1);
    CHECK(comes_after({true, 0, false}, off_by(1.0, 1000.0, -offset_m / 6.0)) == -1);
    CHECK(comes_after({true, 0, false}, off_by(1.0, 1000.0, -offset_m / 26.0)) > 0);  // too slowly
    CHECK(comes_after({true, 0, false}, off_by(1.0, 1000.0, -offset_m / 4.0)) > 0);   // too fast
    CHECK(comes_after({true, 0, false}, off_by(1.0, 1000.0, 1.0)) > 0);               // away from it

    PathHelp help = of_stage(0);
    advance_for(help, off_by(1.0), 2 * second);
    CHECK(help.shown());
    advance_for(help, off_by(1.0, 1000.0, -offset_m / 12.0), 1);
    CHECK_FALSE(help.shown());
    advance_for(help, off_by(1.0), 2 * second);
    CHECK(help.shown());
    advance_for(help, off_by(0.26), second);
    CHECK(help.shown());  // it came, and stays until the path is near
    advance_for(help, off_by(0.24), 1);
    CHECK_FALSE(help.shown());
}

// Rule R2: Sigrist et al. 2015 (read in abstract): a guide that is the plainer the larger the deviation. The
// angles are common practice, no source.
TEST_CASE("R2: the larger the error the plainer it is, in full from 0.75 degrees on") {
    for (const auto& [error_deg, opacity] :
         {std::pair{0.40, 0.30}, {0.50, 0.50}, {-0.60, 0.70}, {0.75, 1.0}, {2.0, 1.0}}) {
        CAPTURE(error_deg);
        PathHelp help = of_stage(0);
        advance_for(help, off_by(error_deg), 2 * second);
        CHECK_NEAR(help.opacity, opacity, 1e-12);  // one subtraction and one division
    }
    PathHelp called;
    advance_for(called, off_by(0.0), 1, true);
    CHECK(called.opacity == called_opacity);
    advance_for(called, off_by(1.0), 1, true);
    CHECK(called.opacity == 1.0);
}

// Rule R2: Kaul, Collyer & Lintern 1980: a weighted sum of displacement and descent-rate error (read in
// abstract).
TEST_CASE(
    "R2: what it shows is nothing on the path, nothing while returning as one should, and grows with going "
    "away") {
    CHECK(offset_ahead_m({0.0, 0.0}) == 0.0);
    CHECK(offset_ahead_m({24.0, -2.0}) == 0.0);
    CHECK(offset_ahead_m({24.0, 0.0}) == 24.0);
    CHECK(offset_ahead_m({24.0, 1.0}) == 36.0);
    CHECK(offset_ahead_m({24.0, -4.0}) == -24.0);  // about to go through it
    CHECK(time_to_path_s({24.0, -2.0}) == 12.0);
    CHECK(std::isinf(time_to_path_s({24.0, 2.0})));
    CHECK(std::isinf(time_to_path_s({0.0, -1.0})));

    PathHelp help;
    advance_for(help, off_by(0.5, 1000.0, 1.0), 1, true);
    CHECK(help.ahead_m == doctest::Approx(off_by(0.5).motion.offset_m + 12.0));
    advance_for(help, off_by(0.5), 1);
    CHECK(help.ahead_m == 0.0);
}

// Geometry: at 35 m/s over the ground a 3 degree path falls 35 x 0.052408 = 1.834 m in a second.
TEST_CASE("R2: the rate towards the path is what the path falls less what the aeroplane does") {
    TrackPoint now;
    now.path_offset_m = -10.0;
    now.ground_speed_mps = 35.0;
    now.sink_mps = 1.0;
    const PathMotion motion = path_motion(now, rad_from_deg(3.0));
    CHECK(motion.offset_m == -10.0);
    CHECK_NEAR(motion.offset_rate_mps, 0.834, 0.001);  // worked to a millimetre
    CHECK(returns_properly(motion));                   // in 12 s
}

// That rate is a derivative: of the offset as flown, in a whole approach of the model pilot.
TEST_CASE("R2: the rate is the change of the offset in flight") {
    const Scenario scenario = shipped_scenario("from_above");
    const Flight flight = fly_good(scenario, 3);
    const double path_rad = scenario.surroundings.runway.lights.nominal_path_rad;
    const std::vector<TrackPoint>& points = flight.track.points;
    for (std::size_t i = 50; i + 1 < flight.track.scored; ++i) {
        const double change_mps = (points[i + 1].path_offset_m - points[i - 1].path_offset_m) /
                                  (points[i + 1].time_s - points[i - 1].time_s);
        // The eye's own motion as the nose moves is left out: under 0.15 m/s in this approach, as measured.
        CHECK_NEAR(path_motion(points[i], path_rad).offset_rate_mps, change_mps, 0.15);
    }
}

// Rule R4: near the ground the aim point and small power are what is taught, and there is no room to follow a
// cue (Airplane Flying Handbook on the last part of final, recalled; the 200 ft are common practice, no
// source).
TEST_CASE(
    "R4: below 200 ft there is no path help, neither called nor by itself, and a call there is not counted") {
    PathHelp help = of_stage(0);
    advance_for(help, off_by(2.0, 201.0), 2 * second);
    CHECK(help.shown());
    advance_for(help, off_by(2.0, 199.0), 1);
    CHECK_FALSE(help.shown());
    advance_for(help, off_by(2.0, 199.0), 60 * second, true);
    CHECK_FALSE(help.shown());
    CHECK(help.calls == 0);
    CHECK(help.call == HelpCall::too_low);

    PathHelp called;
    advance_for(called, off_by(0.0, 201.0), 60, true);
    CHECK(called.shown());
    advance_for(called, off_by(0.0, 199.0), 1, true);  // passed while it was shown
    CHECK_FALSE(called.shown());
    CHECK(called.calls == 1);
}

// Rule R5: Park, Shea & Wright 2000 (recalled): trials without help between those with it keep what guidance
// gives.
TEST_CASE("R5: on an unaided run no help comes, and none is given when called") {
    PathHelp help;
    help.plan = {true, 0, true};
    advance_for(help, off_by(2.0), 10 * second);
    CHECK_FALSE(help.shown());
    advance_for(help, off_by(2.0), second, true);
    CHECK_FALSE(help.shown());
    CHECK(help.call == HelpCall::unaided_run);
    CHECK(help.calls == 0);
    CHECK_FALSE(may_come_by_itself(help.plan));
}
