// What a flight shows for one requirement, by reviews made for the purpose: each answer that a student may be
// told, also those that no good pilot's flight brings about.
#include "success/found.h"

#include "base/units.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Kind = Requirement::Kind;

// A flight of one point that came down to its floor, stable at 500, 300 and 200 ft.
struct Shown {
    Scenario scenario = shipped_scenario("final_calm");
    Criteria criteria;
    std::vector<TrackPoint> points{TrackPoint{}};
    Review review;

    Shown() {
        for (const double height_ft : {500.0, 300.0, 200.0}) {
            GateValue gate;
            gate.height_ft = height_ft;
            gate.reached = true;
            review.summary.gates.push_back(gate);
        }
        review.stability.resize(review.summary.gates.size());
        review.summary.end = End::reached_floor;
        review.decision = Decision::right;
    }

    void go_around() { review.summary.end = End::went_around; }

    Found of(Kind kind, double height_ft = 0.0) const {
        return find({scenario, criteria, points, review}, {kind, -no_limit, no_limit, m_from_ft(height_ft)});
    }
};

void check_answer(const Found& found, Found::Kind kind, const std::string& words) {
    CHECK(found.kind == kind);
    CHECK(found.words == words);
}
void check_yes(const Found& found, const std::string& words) { check_answer(found, Found::Kind::yes, words); }
void check_no(const Found& found, const std::string& words) { check_answer(found, Found::Kind::no, words); }
void check_not_due(const Found& found, const std::string& words) {
    check_answer(found, Found::Kind::not_due, words);
}
void check_figure(const Found& found, double value) {
    CHECK(found.kind == Found::Kind::figure);
    CHECK(found.least == value);
    CHECK(found.most == value);
}

}  // namespace

TEST_CASE("found: the figures of a gate, and why there are none of one that was not reached") {
    Shown shown;
    shown.review.summary.gates[1].mean.path_rad = 0.01;
    check_figure(shown.of(Kind::path_at_gate, 300), 0.01);
    shown.review.summary.gates[1].reached = false;
    check_no(shown.of(Kind::path_at_gate, 300), "the gate was not reached");
    check_no(shown.of(Kind::stable_at_gate, 300), "the gate was not reached");
    shown.go_around();
    check_not_due(shown.of(Kind::path_at_gate, 300), "gone around before the gate");
}

TEST_CASE("found: stable all the way down asks for every gate from there on, and for the floor") {
    Shown shown;
    check_yes(shown.of(Kind::stable_at_gate, 300), "stable");
    shown.review.stability[0].missing[static_cast<std::size_t>(Unstable::fast)] = true;
    check_no(shown.of(Kind::stable_at_gate, 500), "not stable: fast");
    check_no(shown.of(Kind::stable_to_50_ft, 500), "not stable: fast at 500 ft");
    check_yes(shown.of(Kind::stable_to_50_ft, 300), "stable");
    shown.review.summary.end = End::overflew;
    check_no(shown.of(Kind::stable_to_50_ft, 300), "50 ft was not reached near the runway");
    shown.review.summary.gates[2].reached = false;
    check_no(shown.of(Kind::stable_to_50_ft, 300), "200 ft was not reached");
}

TEST_CASE("found: stable down or rightly gone around; a go-around that was not asked for is neither") {
    Shown shown;
    check_yes(shown.of(Kind::stable_or_around, 300), "stable");
    shown.go_around();
    check_yes(shown.of(Kind::stable_or_around, 300), "rightly gone around");
    shown.review.decision = Decision::cautious;
    check_no(shown.of(Kind::stable_or_around, 300), "50 ft was not reached near the runway");
}

TEST_CASE("found: the decision is told, cautious is no miss, and a flight begun below the gate has none") {
    struct Row {
        Decision decision;
        Found::Kind right, no_miss;
        const char* words;
    };
    using enum Found::Kind;
    Shown shown;
    for (const Row& row :
         {Row{Decision::right, yes, yes, "right"}, Row{Decision::miss, no, no, "continued though not stable"},
          Row{Decision::cautious, no, yes, "gone around though stable"},
          Row{Decision::none, no, yes, "the gate was not reached"}}) {
        shown.review.decision = row.decision;
        check_answer(shown.of(Kind::right_decision), row.right, row.words);
        check_answer(shown.of(Kind::no_miss), row.no_miss, row.words);
    }
    shown.review.summary.gates.erase(shown.review.summary.gates.begin(),
                                     shown.review.summary.gates.begin() + 2);
    check_not_due(shown.of(Kind::right_decision), "begun below the gate");
    check_not_due(shown.of(Kind::no_miss), "begun below the gate");
}

TEST_CASE("found: the change of the path near the ground, from the start where it began below 200 ft") {
    Shown shown;
    check_no(shown.of(Kind::path_change_at_end), "50 ft was not reached");
    GateValue end;
    end.height_ft = 50.0;
    end.reached = true;
    end.mean.path_rad = -0.01;
    shown.review.summary.gates.push_back(end);
    shown.review.start.mean.path_rad = 0.02;
    check_figure(shown.of(Kind::path_change_at_end), -0.01 - 0.02);
    shown.review.aim.ducking_known = true;
    shown.review.aim.ducking_rad = -0.004;
    check_figure(shown.of(Kind::path_change_at_end), -0.004);
}

TEST_CASE("found: what counts only above or below a height, and a path that was never met") {
    Shown shown;
    shown.points[0].wheel_height_m = m_from_ft(100.0);
    shown.points[0].path_error_rad = -rad_from_deg(2.0);
    shown.points[0].lever = 0.5;
    check_no(shown.of(Kind::path_angle, 200), "begun below it");
    check_no(shown.of(Kind::level_until_path), "the path was never met");
    check_no(shown.of(Kind::power_off_below, 200), "power was used");
    check_yes(shown.of(Kind::power_off_below, 50), "power off");
    shown.points[0].path_error_rad = 0.0;
    check_figure(shown.of(Kind::level_until_path), 0.0);
    check_figure(shown.of(Kind::path_angle, 50), shown.scenario.surroundings.runway.lights.nominal_path_rad);
}

TEST_CASE("found: the first answer to a path error counts, if it came and went the right way") {
    Shown shown;
    check_not_due(shown.of(Kind::first_input), "the path was never left");
    shown.review.path_answers.resize(2);
    check_no(shown.of(Kind::first_input), "no input");
    shown.review.path_answers[0].reaction_s = 1.5;
    check_figure(shown.of(Kind::first_input), 1.5);
    shown.review.path_answers[0].wrong_way_first = true;
    check_no(shown.of(Kind::first_input), "the wrong way");
}

TEST_CASE("found: a touchdown point, if the approach came down to where it is worked out") {
    Shown shown;
    check_no(shown.of(Kind::touchdown), "50 ft was not reached near the runway");
    shown.go_around();
    check_not_due(shown.of(Kind::touchdown), "gone around");
    shown.review.touchdown.known = true;
    shown.review.touchdown.from_aim_m = -20.0;
    check_figure(shown.of(Kind::touchdown), -20.0);
}

TEST_CASE("found: above the leader's path as far as its touchdown, and nothing due with no one ahead") {
    Shown shown;
    check_not_due(shown.of(Kind::above_leader), "no one ahead");
    Traffic& leader = shown.scenario.lesson.traffic;
    leader.ahead_m = 3000.0;
    leader.touchdown_m = 400.0;  // with no slope to its path, it came along the ground
    const double aim_m = shown.scenario.surroundings.runway.aim_distance_m;
    shown.points.resize(2);
    shown.points[0].distance_m = aim_m - 399.0;
    shown.points[0].wheel_height_m = 30.0;
    shown.points[1].distance_m = aim_m - 401.0;  // lower, but beyond its touchdown
    shown.points[1].wheel_height_m = 5.0;
    const double ground_m = ground_height_m(shown.scenario.surroundings.runway, leader.touchdown_m);
    check_figure(shown.of(Kind::above_leader), 30.0 - ground_m);
}

TEST_CASE("found: landing flap by a height, set from the start, or never") {
    Shown shown;
    Configuration& configuration = shown.review.configuration;
    check_no(shown.of(Kind::landing_flap_by, 500), "never set");
    configuration.landing_height_m = m_from_ft(450.0);
    check_no(shown.of(Kind::landing_flap_by, 500), "set at 450 ft");
    check_yes(shown.of(Kind::landing_flap_by, 400), "set at 450 ft");
    configuration.landing_at_start = true;
    check_yes(shown.of(Kind::landing_flap_by, 500), "set from the start");
    configuration.steps.resize(2);  // taken away and set again: the last time counts
    check_no(shown.of(Kind::landing_flap_by, 500), "set at 450 ft");
}

TEST_CASE("found: the largest bump of the flap steps, and that none was made") {
    Shown shown;
    check_no(shown.of(Kind::flap_bump), "no flap step was made");
    shown.review.configuration.steps.resize(2);
    shown.review.configuration.steps[0].balloon_m = 7.0;
    shown.review.configuration.steps[1].balloon_m = 3.0;
    check_figure(shown.of(Kind::flap_bump), 7.0);
}

TEST_CASE("found: how a go-around was flown, if one was") {
    Shown shown;
    for (const Kind kind : {Kind::go_around_power, Kind::go_around_flap, Kind::go_around_speed})
        check_not_due(shown.of(kind), "not gone around");
    GoAroundFigures& around = shown.review.go_around;
    around.flown = true;
    check_no(shown.of(Kind::go_around_power), "never full");
    around.full_power_s = 2.0;
    check_figure(shown.of(Kind::go_around_power), 2.0);
    around.slowest_mps = shown.scenario.lesson.target_cas_mps - 3.0;
    CHECK_NEAR(shown.of(Kind::go_around_speed).least, -3.0, 1e-12);
    check_yes(shown.of(Kind::go_around_flap), "in stages");
    around.flap_all_at_once = true;
    check_no(shown.of(Kind::go_around_flap), "raised all at once");
    around.flap_before_climb = true;
    check_no(shown.of(Kind::go_around_flap), "raised while still sinking");
}
