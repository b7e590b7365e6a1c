// The measures of an approach on tracks made by hand, whose answers can be worked out on paper.
#include "base/units.h"
#include "review/review.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "tests/steady_approach.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

const Scenario& calm() {
    static const Scenario scenario = shipped_scenario("final_calm");
    return scenario;
}

Track track_of(std::vector<TrackPoint> points) {
    Track track{std::move(points), 0};
    track.scored = track.points.size();
    return track;
}

Review review_of(const std::vector<TrackPoint>& points, End end = End::reached_floor) {
    return slopewise::review_of(calm(), Criteria{}, track_of(points), end);
}

std::size_t at_ft(const std::vector<TrackPoint>& points, double ft) {
    return first_below(points, m_from_ft(ft));
}

}  // namespace

TEST_CASE("spread: the slope of a straight line is its slope") {
    const std::vector<double> times{0, 1, 2, 5}, values{1, 3, 5, 11};
    CHECK_NEAR(slope_of(times, values), 2.0, 1e-12);
    CHECK(slope_of(std::vector<double>{1}, std::vector<double>{4}) == 0.0);
}

TEST_CASE("control activity: a movement counts when it turns back by more than the least") {
    const std::vector<double> values{0.0, 0.05, 0.04, 0.06, 0.02, 0.01, 0.05};
    CHECK(reversals(values, 0.03) == std::vector<std::size_t>{4, 6});  // from 0.06 down, from 0.01 up
    CHECK(reversals(std::vector<double>{}, 0.03).empty());
}

TEST_CASE(
    "stability: improving is said of what is off by more than half its limit, and only while it shrinks") {
    const Review review = review_of(steady_approach(calm(), 900.0));
    GateValue gate = review.summary.gates[0];
    const auto words = [&] { return stability_words(stability_at(calm(), Criteria{}, gate)); };
    CHECK(words() == "stable");
    gate.mean.speed_mps = mps_from_kt(6);  // of 10 allowed
    gate.speed_trend_mps2 = -0.1;
    CHECK(words() == "stable, improving");
    gate.speed_trend_mps2 = 0.1;
    CHECK(words() == "stable");
    gate.speed_trend_mps2 = -0.1;
    gate.mean.path_rad = rad_from_deg(-0.4);  // of 0.5 allowed; not coming back
    gate.path_trend_radps = rad_from_deg(-0.01);
    CHECK(words() == "stable");
    gate.path_trend_radps = rad_from_deg(0.01);
    CHECK(words() == "stable, improving");
    gate.mean.speed_mps = mps_from_kt(4);  // small: its trend counts no more
    gate.speed_trend_mps2 = 0.1;
    CHECK(words() == "stable, improving");
}

TEST_CASE("review: a steady approach on the path is stable at every gate and needs no answer") {
    const Review review = review_of(steady_approach(calm(), 900.0));
    REQUIRE(review.summary.gates.size() == 4);
    for (const Stability& stability : review.stability) CHECK(stability_words(stability) == "stable");
    CHECK(review.decision == Decision::right);
    CHECK_NEAR(review.energy.share[0], 1.0, 1e-9);
    CHECK(review.path_answers.empty());
    CHECK(review.controls.stick_reversals == 0);
    CHECK(review.bands[4].points > 100);
    // The eye's straight path is the nominal one, and leads to the aim point.
    for (std::size_t i = 0; i < 4; ++i) CHECK_NEAR(review.aim.long_m[i], 0.0, 1e-6);
    CHECK_NEAR(review.aim.ducking_rad, 0.0, 1e-12);
    // The wheels are 2 m below the eye: they meet the runway 2 / tan 3 degrees short of it.
    REQUIRE(review.touchdown.known);
    CHECK_NEAR(review.touchdown.from_aim_m, -2.0 / std::tan(rad_from_deg(3.0)), 1e-6);
}

TEST_CASE("review: where it began is what was then, and means of the first two seconds") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 0; i <= 20; ++i) points[i].cas_mps = mps_from_kt(60.0 + static_cast<double>(i));
    points[20].time_s = 2.0;  // a track counts ticks, and has it exactly
    points[0].white_count = 3;
    points[0].flap_setting = 1;
    const GateValue start = review_of(points).start;
    CHECK(start.reached);
    CHECK_NEAR(start.height_ft, 900.0, 1e-9);
    CHECK(start.time_s == 0.0);
    CHECK_NEAR(kt_from_mps(start.cas_mps), 70.0, 1e-9);  // of 60 to 80
    CHECK(start.white_count == 3);
    CHECK(start.flap_setting == 1);
    CHECK(start.path_trend_radps == 0.0);
}

TEST_CASE("stability: each criterion by itself makes the gate unstable, and is named") {
    const auto words_with = [](auto change) {
        std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
        for (TrackPoint& p : points)
            if (ft_from_m(p.wheel_height_m) < 500.0) change(p);
        return stability_words(*stability_at(review_of(points), 300.0));
    };
    CHECK(words_with([](TrackPoint& p) { p.path_error_rad = rad_from_deg(0.6), p.path_offset_m = 20.0; }) ==
          "not stable: high");
    CHECK(words_with([](TrackPoint& p) { p.path_error_rad = rad_from_deg(-0.6), p.path_offset_m = -20.0; }) ==
          "not stable: low");
    CHECK(words_with([](TrackPoint& p) {
              p.path_error_rad = rad_from_deg(0.6), p.path_offset_m = 9.0;
          }).starts_with("stable"));
    CHECK(words_with([](TrackPoint& p) { p.cas_mps += mps_from_kt(11.0); }) == "not stable: fast");
    CHECK(words_with([](TrackPoint& p) { p.cas_mps -= mps_from_kt(6.0); }) == "not stable: slow");
    CHECK(words_with([](TrackPoint& p) { p.sink_mps += mps_from_fpm(210.0); }) ==
          "not stable: sinking too fast");
    CHECK(words_with([](TrackPoint& p) { p.sink_mps -= mps_from_fpm(210.0); }) ==
          "not stable: sinking too little");
    CHECK(words_with([](TrackPoint& p) { p.sink_mps += mps_from_fpm(500.0); }) ==
          "not stable: sinking too fast, sink excessive");
    CHECK(words_with([](TrackPoint& p) { p.power = 0.0; }) == "not stable: power at idle");
    CHECK(words_with([](TrackPoint& p) { p.flap_setting = 1; }) == "not stable: flap not set");
    const auto in_last_seconds = [](const TrackPoint& p) { return ft_from_m(p.wheel_height_m) < 330.0; };
    CHECK(words_with([&](TrackPoint& p) { p.pitch_rad = in_last_seconds(p) ? rad_from_deg(4.5) : 0.0; }) ==
          "not stable: nose not settled");
    CHECK(words_with([&](TrackPoint& p) { p.lever = in_last_seconds(p) ? 0.55 : 0.3; }) ==
          "not stable: power not settled");
}

TEST_CASE("decision: right, miss and cautious, by what the gate was and what was done within three seconds") {
    GateValue gate;
    gate.reached = true;
    gate.time_s = 100.0;
    const Criteria criteria;
    Stability stable, unstable;
    unstable.missing[0] = true;
    CHECK(decision_at(criteria, gate, stable, End::reached_floor, 130.0) == Decision::right);
    CHECK(decision_at(criteria, gate, unstable, End::reached_floor, 130.0) == Decision::miss);
    CHECK(decision_at(criteria, gate, unstable, End::went_around, 102.9) == Decision::right);
    CHECK(decision_at(criteria, gate, unstable, End::went_around, 103.1) == Decision::miss);
    CHECK(decision_at(criteria, gate, stable, End::went_around, 102.9) == Decision::cautious);
    gate.reached = false;
    CHECK(decision_at(criteria, gate, unstable, End::went_around, 90.0) == Decision::none);
}

TEST_CASE("energy: the quadrant is that of the two signs, and low and slow is timed") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 100; i < 150; ++i) {
        points[i].path_error_rad = rad_from_deg(-0.8);
        points[i].path_offset_m = -40.0;
        points[i].cas_mps -= mps_from_kt(8.0);
    }
    const Review review = review_of(points);
    const double each = 1.0 / static_cast<double>(points.size());
    CHECK_NEAR(review.energy.share[static_cast<std::size_t>(Quadrant::low_slow)], 50 * each, 1e-9);
    CHECK_NEAR(review.energy.low_and_slow_s, 5.0, 1e-6);
    Deviations off;
    off.path_rad = 0.1;
    off.speed_mps = -1.0;
    CHECK(quadrant_of(off) == Quadrant::high_slow);
    off.speed_mps = 1.0;
    CHECK(quadrant_of(off) == Quadrant::high_fast);
    off.path_rad = -0.1;
    CHECK(quadrant_of(off) == Quadrant::low_fast);
}

TEST_CASE("answers: the first input after a path error, its way, and the time until the path is back") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 200; i < 320; ++i)
        points[i].path_error_rad = rad_from_deg(-0.4), points[i].path_offset_m = -10.0;
    for (std::size_t i = 215; i < points.size(); ++i) points[i].lever -= 0.03;  // the wrong way, after 1.5 s
    for (std::size_t i = 240; i < points.size(); ++i) points[i].lever += 0.08;  // right, after 4 s
    for (std::size_t i = 400; i < 410; ++i)
        points[i].path_error_rad = rad_from_deg(0.4), points[i].path_offset_m = 10.0;
    const Review review = review_of(points);
    REQUIRE(review.path_answers.size() == 2);
    const PathAnswer& low = review.path_answers[0];
    CHECK_FALSE(low.high);
    CHECK(low.wrong_way_first);
    CHECK_NEAR(low.reaction_s, 4.0, 1e-6);
    CHECK_NEAR(low.settling_s, 12.0, 1e-6);
    CHECK(low.overshot);  // high within twenty seconds of being back
    CHECK(review.path_answers[1].reaction_s == -1.0);
    CHECK(review.answers.path_wrong_way == 1);

    // A school that corrects the path with the nose looks at the stick alone.
    Criteria nose;
    nose.convention = Convention::pitch_for_path;
    CHECK(path_answers(nose, points)[0].reaction_s == -1.0);
}

TEST_CASE("answers: a change of the lights to two and two asks for nothing, to red it asks for more height") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 200; i < 300; ++i) points[i].white_count = 1;
    for (std::size_t i = 208; i < points.size(); ++i) points[i].stick = -0.1;  // pushed
    const Review review = review_of(points);
    REQUIRE(review.light_answers.size() == 1);
    CHECK_NEAR(review.light_answers[0].reaction_s, 0.8, 1e-6);
    CHECK(review.light_answers[0].wrong_way_first);
}

TEST_CASE("configuration: landing flap late, too fast, with a balloon and no trim") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    const std::size_t step = at_ft(points, 400.0);
    for (std::size_t i = 0; i < step; ++i) points[i].flap_setting = 1, points[i].flap_position = 1.0;
    for (std::size_t i = step; i < step + 60; ++i)
        points[i].path_offset_m = 0.2 * static_cast<double>(i - step);
    for (std::size_t i = step; i < step + 10; ++i) points[i].cas_mps = mps_from_kt(90.0);
    const Configuration flap = review_of(points).configuration;
    REQUIRE(flap.steps.size() == 1);
    CHECK(flap.steps[0].too_fast);  // 90 kt, and the limit is 85
    CHECK_NEAR(flap.steps[0].balloon_m, 0.2 * 59, 1e-9);
    CHECK(flap.steps[0].retrim_s == -1.0);
    CHECK_NEAR(ft_from_m(flap.landing_height_m), 400.0, 1.0);
    CHECK_NEAR(flap.over_flap_speed_s, 1.0, 1e-6);
    CHECK_FALSE(flap.landing_at_start);
}

TEST_CASE("go-around: from the first push of the lever, with what followed") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    const std::size_t begin = at_ft(points, 300.0);
    for (std::size_t i = begin; i < points.size(); ++i) {
        const auto since = static_cast<double>(i - begin);
        points[i].lever = std::min(1.0, 0.3 + 0.07 * since);  // full after one second
        points[i].wheel_height_m = points[begin].wheel_height_m + std::max(-5.0, since - 10.0);
        points[i].sink_mps = since < 20 ? 1.0 : -2.0;
        if (since >= 15) points[i].flap_setting = 0;  // all of it, still sinking
    }
    Track track = track_of(points);
    track.scored = begin + 1;
    const GoAroundFigures around = go_around_of(track, End::went_around);
    CHECK(around.flown);
    CHECK_NEAR(around.full_power_s, 1.0, 1e-6);
    CHECK_NEAR(around.lowest_m, points[begin].wheel_height_m - 5.0, 1e-9);
    CHECK_NEAR(around.first_flap_s, 1.5, 1e-6);
    CHECK(around.flap_before_climb);
    CHECK(around.flap_all_at_once);
    CHECK_FALSE(go_around_of(track, End::reached_floor).flown);
}

TEST_CASE("aim point, touchdown, trends: none where nothing sinks or too little was flown") {
    std::vector<TrackPoint> level = steady_approach(calm(), 900.0);
    for (TrackPoint& p : level) p.sink_mps = 0.0;
    const Review review = review_of(level);
    CHECK_FALSE(review.touchdown.known);
    CHECK_FALSE(review.aim.known[0]);
    CHECK(review.aim.wander_m == 0.0);
    CHECK(slope_of(std::vector<double>{1, 1}, std::vector<double>{4, 5}) == 0.0);

    std::vector<TrackPoint> early = steady_approach(calm(), 900.0);
    early.resize(at_ft(early, 150.0));
    const Review short_of = review_of(early, End::none);
    CHECK_FALSE(short_of.aim.ducking_known);
    CHECK_FALSE(short_of.aim.known[3]);
    CHECK(stability_at(short_of, 50.0) == nullptr);
    CHECK(gate_at(short_of, 50.0) == nullptr);
    CHECK_FALSE(short_of.touchdown.known);
}

TEST_CASE("answers: straight through the band to the other side is back at once, and out again") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 200; i < 240; ++i) {
        points[i].path_error_rad = rad_from_deg(i < 220 ? -0.4 : 0.4);
        points[i].path_offset_m = i < 220 ? -10.0 : 10.0;
    }
    const Review review = review_of(points);
    REQUIRE(review.path_answers.size() == 2);
    CHECK_NEAR(review.path_answers[0].settling_s, 2.0, 1e-6);
    CHECK(review.path_answers[0].overshot);

    // A school that corrects with power alone does not look at the stick.
    for (std::size_t i = 205; i < points.size(); ++i) points[i].stick = 0.2;
    Criteria power;
    power.convention = Convention::power_for_path;
    CHECK(path_answers(power, points)[0].reaction_s == -1.0);
    CHECK(path_answers(Criteria{}, points)[0].reaction_s > 0.0);
}

TEST_CASE("configuration: a step that was trimmed for tells how soon, and not what came later") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 0; i < 60; ++i) points[i].flap_setting = 1, points[i].flap_position = 1.0;
    for (std::size_t i = 90; i < points.size(); ++i) points[i].trim = 0.05;
    const Configuration flap = review_of(points).configuration;
    CHECK_NEAR(flap.steps[0].retrim_s, 3.0, 1e-6);
    for (std::size_t i = 90; i < 300; ++i) points[i].trim = 0.0;  // 24 s after: too late to count
    CHECK(review_of(points).configuration.steps[0].retrim_s == -1.0);
}

TEST_CASE("stability: landing flap is not asked for where a school does not ask for it") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (TrackPoint& p : points) p.flap_setting = 1;
    Criteria criteria;
    criteria.landing_flap = false;
    const Track track = track_of(points);
    CHECK(stability_at(slopewise::review_of(calm(), criteria, track, End::reached_floor), 300.0)->stable());
}

TEST_CASE("go-around: said with the lever still low, flap in stages, and only the first minute looked at") {
    std::vector<TrackPoint> points = steady_approach(calm(), 1500.0);
    const std::size_t begin = 100;
    for (std::size_t i = begin; i < points.size(); ++i) {
        const auto since = static_cast<double>(i - begin);
        points[i].sink_mps = -2.0;
        if (since >= 100) points[i].flap_setting = 1;
        if (since >= 200) points[i].flap_setting = 0;
        points[i].cas_mps = since > 610 ? 0.0 : 35.0;
    }
    Track track = track_of(points);
    track.scored = begin + 1;
    const GoAroundFigures around = go_around_of(track, End::went_around);
    CHECK(around.full_power_s == -1.0);
    CHECK_NEAR(around.first_flap_s, 10.0, 1e-6);
    CHECK_FALSE(around.flap_before_climb);
    CHECK_FALSE(around.flap_all_at_once);
    CHECK(around.slowest_mps > 30.0);
    CHECK_NEAR(around.flown_on_s, 60.0, 0.11);

    // Full power from the first point of a track that begins with it.
    for (TrackPoint& p : track.points) p.lever = 1.0;
    track.scored = 50;
    CHECK(go_around_of(track, End::went_around).point == 0);
    track.scored = 301;  // held for longer than the time in which a go-around is recognised
    CHECK(track.points[go_around_of(track, End::went_around).point].time_s > 19.0);
}

TEST_CASE("aim point: a path that falls short of it is told by how much, and ducking by its sign") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (TrackPoint& p : points)
        if (ft_from_m(p.wheel_height_m) < 250.0) p.sink_mps *= 1.2, p.path_error_rad = rad_from_deg(-0.5);
    for (TrackPoint& p : points)
        if (ft_from_m(p.wheel_height_m) < 120.0) p.path_error_rad = rad_from_deg(-0.9);
    const AimDrift aim = review_of(points).aim;
    CHECK_NEAR(aim.long_m[0], 0.0, 1e-6);
    const std::size_t at_100 = at_ft(points, 100.0);
    CHECK_NEAR(aim.long_m[3], points[at_100].distance_m / 1.2 - points[at_100].distance_m, 1.0);
    CHECK_NEAR(deg_from_rad(aim.ducking_rad), -0.4, 1e-9);
    CHECK(aim.wander_m > 10.0);
}

TEST_CASE(
    "gates: a flight that began on the ground and came down past them later had none, however it ended") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    points.front().wheel_height_m = 0.0;
    const Review review = review_of(points);
    CHECK(review.summary.gates.empty());
    CHECK_FALSE(review.aim.ducking_known);
    CHECK(gate_at(review, 200.0) == nullptr);
}
