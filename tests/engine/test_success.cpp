// The success criterion: what one flight met of it, in words, and in how many flights.
#include "base/units.h"
#include "lesson/approach_choice.h"
#include "success/flown_measures.h"
#include "tests/check.h"
#include "tests/engine/lesson_flights.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Kind = Requirement::Kind;

Requirement least(Kind kind, double value, double height_ft = 0.0) {
    return {kind, value, no_limit, m_from_ft(height_ft)};
}
Requirement most(Kind kind, double value, double height_ft = 0.0) {
    return {kind, -no_limit, value, m_from_ft(height_ft)};
}
Requirement at(Kind kind, double height_ft = 0.0) {
    return {kind, -no_limit, no_limit, m_from_ft(height_ft)};
}

// A good pilot's final from 3 NM, held to these.
JudgedFlight judged(std::vector<Requirement> requirements, double offset_deg = 0.0) {
    Lesson lesson = shipped_scenario("final_calm").lesson;
    lesson.start.offset_rad = rad_from_deg(offset_deg);
    lesson.success = {std::move(requirements), 1, 1};
    return fly_lesson(lesson, PilotSkill{}, 1).judged;
}

// A point a second, a quarter of a degree of path error for each unit, a foot of height for each second left.
std::vector<TrackPoint> points_with(std::initializer_list<double> quarter_degrees) {
    std::vector<TrackPoint> points;
    for (const double error : quarter_degrees) {
        TrackPoint point;
        point.time_s = static_cast<double>(points.size());
        point.distance_m = 3000.0;
        point.path_error_rad = error * rad_from_deg(0.25);
        point.path_offset_m = point.path_error_rad * point.distance_m;
        point.eye_height_m = point.wheel_height_m = m_from_ft(500.0 - point.time_s);
        points.push_back(point);
    }
    return points;
}

}  // namespace

TEST_CASE("requirements: each kind has its own name and tells its limits in pilot units") {
    for (std::size_t i = 0; i < requirement_kinds.size(); ++i) {
        CHECK(!requirement_kinds[i].name.empty());
        for (std::size_t j = 0; j < i; ++j) CHECK(requirement_kinds[i].name != requirement_kinds[j].name);
    }
    CHECK(requirement_words(least(Kind::path_share, 0.8)) == "time in path tolerance: at least 80 %");
    CHECK(requirement_words(at(Kind::stable_to_50_ft, 300)) == "stable from 300 ft down to 50 ft");
    CHECK(requirement_words({Kind::speed_always, mps_from_kt(-5), mps_from_kt(10), 0.0}) ==
          "speed beside target all the way: \u22125.0 to +10.0 kt");
    CHECK(requirement_words(most(Kind::path_crossings, 2)) == "crossings of the path: at most 2.0 a minute");
    CHECK(runs_words({{}, 3, 4}) == "3 of the last 4 unaided runs");
}

TEST_CASE("success: a good flight meets what it is held to, with the figure in words") {
    const JudgedFlight flight = judged({least(Kind::path_share, 0.8), at(Kind::stable_to_50_ft, 300),
                                        at(Kind::right_decision), at(Kind::go_around_flap)});
    CHECK(flight.met());
    CHECK(judged_words(flight.requirements[0]) ==
          "time in path tolerance: at least 80 %. It was 100 %: met.");
    CHECK(flight.requirements[1].verdict == Verdict::met);
    CHECK(flight.requirements[2].figure == "right");
    CHECK(flight.requirements[3].verdict == Verdict::not_due);
}

TEST_CASE("success: one requirement missed is enough to miss the whole, and nothing due is nothing met") {
    const JudgedFlight flight = judged({least(Kind::path_share, 0.8), most(Kind::touchdown, -5000.0)});
    CHECK(flight.requirements[0].verdict == Verdict::met);
    CHECK(flight.requirements[1].verdict == Verdict::not_met);
    CHECK_FALSE(flight.met());
    CHECK_FALSE(judged({at(Kind::go_around_flap)}).met());
    CHECK_FALSE(judged({}).met());
}

TEST_CASE("success: a limit is met at the limit itself") {
    const Requirement exact{Kind::path_bias, 0.0, 0.0, 0.0};
    JudgedFlight flight = judged({exact});
    CHECK(flight.requirements[0].verdict == Verdict::not_met);  // no flight has none at all
    flight = judged({most(Kind::flap_speed, 0.0)});
    CHECK(flight.requirements[0].verdict == Verdict::met);  // exactly none
}

TEST_CASE("success: so many of the last so many unaided runs") {
    const Success success{{}, 3, 4};
    CHECK_FALSE(judge_runs(success, {true, true}).reached);
    CHECK(judge_runs(success, {true, true, true}).reached);
    CHECK(judge_runs(success, {true, true, false, true}).reached);
    const JudgedRuns old = judge_runs(success, {true, true, true, false, false});
    CHECK(old.met == 2);
    CHECK(old.counted == 4);
    CHECK_FALSE(old.reached);
    CHECK(runs_judged_words(success, old) ==
          "Met in 2 of the last 4 unaided runs; 3 of the last 4 are asked for.");
    CHECK(runs_judged_words(success, judge_runs(success, {})) ==
          "No unaided run yet; 3 of the last 4 unaided runs are asked for.");
    CHECK_FALSE(judge_runs({}, {true}).reached);  // a lesson that asks for nothing
}

TEST_CASE("success measures: crossings count from side to side, not unsteadiness about the path") {
    const Criteria criteria;
    CHECK_NEAR(path_crossings_per_min(criteria, points_with({1, 0.2, -0.2, 0.3, 1})), 0.0, 1e-12);
    CHECK_NEAR(path_crossings_per_min(criteria, points_with({1, 0, -1, 0, 1})), 2 * 60.0 / 4.0, 1e-9);
    CHECK_NEAR(path_crossings_per_min(criteria, points_with({1})), 0.0, 1e-12);
}

TEST_CASE("success measures: height lost before the path was met, and none told where it never was") {
    // 10 minutes of arc is two thirds of a quarter of a degree
    CHECK_NEAR(ft_from_m(*lost_before_path_m(points_with({-3, -2, -1, -0.5}))), 3.0, 1e-9);
    CHECK_NEAR(*lost_before_path_m(points_with({0, -3})), 0.0, 1e-12);
    CHECK_FALSE(lost_before_path_m(points_with({-3, -2})).has_value());
}

TEST_CASE("success measures: the lowest angle counts only above a height") {
    const Scenario scenario = shipped_scenario("final_calm");
    const auto points = points_with({0, -1, -8});
    CHECK_NEAR(deg_from_rad(*lowest_angle_rad(scenario, points, m_from_ft(498.5))), 2.75, 1e-9);
    CHECK_NEAR(deg_from_rad(*lowest_angle_rad(scenario, points, 0.0)), 1.0, 1e-9);
    CHECK_FALSE(lowest_angle_rad(scenario, points, m_from_ft(600.0)).has_value());
}
