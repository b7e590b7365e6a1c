// Each detector by itself, on a steady approach with one thing wrong; and the faults that no model pilot has.
#include <algorithm>

#include "base/units.h"
#include "review/diagnosis/diagnosis.h"
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

// The ids of what is found, the priority first.
std::vector<std::string> found_in(const std::vector<TrackPoint>& points, End end = End::reached_floor,
                                  std::size_t scored = 0, double panel_share = -1.0) {
    const Track track{points, scored > 0 ? scored : points.size()};
    const Criteria criteria;
    const Review review = review_of(calm(), criteria, track, end);
    std::vector<std::string> ids;
    for (const Finding& finding :
         diagnose(approach_of(calm(), criteria, track, review, panel_share)).findings)
        ids.emplace_back(finding.fault->id);
    return ids;
}

using Ids = std::vector<std::string>;

// The same with every point below a height changed.
template <class Change>
Ids found_below(double ft, Change change) {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (TrackPoint& p : points)
        if (ft_from_m(p.wheel_height_m) < ft) change(p);
    return found_in(points);
}

double height_ft_of(const TrackPoint& p) { return ft_from_m(p.wheel_height_m); }

}  // namespace

TEST_CASE("detectors: a steady approach has no fault") {
    CHECK(found_in(steady_approach(calm(), 900.0)).empty());
}

TEST_CASE("detectors: excessive sink is one of five seconds on end") {
    const auto sinks_for = [](std::size_t count) {
        std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
        for (std::size_t i = 100; i < 100 + count; ++i) points[i].sink_mps = mps_from_fpm(1100.0);
        return found_in(points);
    };
    CHECK(sinks_for(60) == Ids{"excessive_sink"});
    CHECK(sinks_for(40).empty());
}

TEST_CASE("detectors: low and slow for eight seconds, even with the nose where it belongs") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 100; i < 200; ++i) {
        points[i].path_error_rad = rad_from_deg(-0.7);
        points[i].path_offset_m = -30.0;
        points[i].cas_mps -= mps_from_kt(7.0);
        points[i].pitch_rad = -1.0;
        points[i].lever = 0.3 + 0.001 * static_cast<double>(i);
    }
    CHECK(found_in(points).front() == "low_and_slow");
}

TEST_CASE("detectors: diving at the aim point, high with the nose down and the speed away") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (std::size_t i = 100; i < 150; ++i) {
        points[i].path_error_rad = rad_from_deg(0.6);
        points[i].path_offset_m = 20.0;
        points[i].cas_mps += mps_from_kt(12.0);
        points[i].pitch_rad = rad_from_deg(-8.0);
        if (i >= 105) points[i].lever = 0.2;  // answered in half a second
    }
    CHECK(found_in(points) == Ids{"diving"});
}

TEST_CASE("detectors: idle power below 500 ft, but not a moment of it") {
    CHECK(found_below(450.0, [](TrackPoint& p) { p.power = height_ft_of(p) > 330.0 ? 0.0 : 0.3; }) ==
          Ids{"idle_power"});
    CHECK(found_below(450.0, [](TrackPoint& p) { p.power = height_ft_of(p) > 435.0 ? 0.0 : 0.3; }).empty());
}

TEST_CASE("detectors: fast to be safe is a steady eight knots, not five") {
    CHECK(found_below(900.0, [](TrackPoint& p) { p.cas_mps += mps_from_kt(8.0); }) == Ids{"too_fast"});
    CHECK(found_below(900.0, [](TrackPoint& p) { p.cas_mps += mps_from_kt(5.0); }).empty());
}

TEST_CASE("detectors: a low picture is steadily low, within the gate's limit") {
    const Ids found = found_below(900.0, [](TrackPoint& p) {
        p.path_error_rad = rad_from_deg(-0.45);
        p.path_offset_m = -p.distance_m * rad_from_deg(0.45);
        p.lever += p.time_s > 1.0 ? 0.03 : 0.0;  // the power was answered
    });
    CHECK(found == Ids{"low_picture"});
}

TEST_CASE("detectors: flattening is above the path at 50 ft with the speed gone") {
    const Ids found = found_below(180.0, [](TrackPoint& p) {
        const double share = (180.0 - height_ft_of(p)) / 130.0;
        p.path_error_rad = rad_from_deg(1.2) * share;
        p.path_offset_m = 4.0 * share;
        p.cas_mps -= mps_from_kt(6.0) * share;
    });
    CHECK(found == Ids{"flattening"});
}

TEST_CASE("detectors: the lights misread, twice the wrong way") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (const std::size_t begin : {100u, 250u}) {
        for (std::size_t i = begin; i < begin + 80; ++i) points[i].white_count = 1;
        for (std::size_t i = begin + 10; i < begin + 80; ++i) points[i].lever = 0.25;
    }
    CHECK(found_in(points) == Ids{"lights_misread"});
    for (std::size_t i = 250; i < 400; ++i) points[i].lever = i < 330 ? 0.35 : 0.3;  // once right
    CHECK(found_in(points).empty());
}

TEST_CASE("detectors: corrections not taken off, twice out on the other side") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    const auto error = [&](std::size_t from, double deg) {
        for (std::size_t i = from; i < from + 50; ++i) {
            points[i].path_error_rad = rad_from_deg(deg);
            points[i].path_offset_m = deg * 20.0;
            points[i].lever = deg > 0 ? 0.25 : 0.35;
        }
    };
    error(100, 0.3);
    error(200, -0.3);
    CHECK(found_in(points).empty());  // once may happen
    error(300, 0.3);
    CHECK(found_in(points) == Ids{"over_correcting"});
}

TEST_CASE("detectors: flap that balloons, is too fast, or is raised low") {
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    const std::size_t step = 60;
    for (std::size_t i = 0; i < step; ++i) points[i].flap_setting = 1, points[i].flap_position = 1.0;
    for (std::size_t i = step; i < step + 60; ++i) points[i].path_offset_m = m_from_ft(50.0);
    points[step].path_offset_m = 0.0;
    CHECK(found_in(points) == Ids{"balloon"});
    for (std::size_t i = step; i < step + 30; ++i) points[i].cas_mps = mps_from_kt(88.0);
    CHECK(found_in(points) == Ids{"flap_too_fast", "balloon"});

    const Ids raised = found_below(600.0, [](TrackPoint& p) {
        p.path_error_rad = rad_from_deg(-0.1);
        if (height_ft_of(p) > 560.0) p.flap_setting = 1;
    });
    CHECK(raised == Ids{"flap_raised_low"});
}

TEST_CASE("detectors: a stick held to the end is not trimmed") {
    CHECK(found_below(900.0, [](TrackPoint& p) { p.stick = 0.1; }) == Ids{"not_trimming"});
    CHECK(found_below(900.0, [](TrackPoint& p) { p.stick = 0.06; }).empty());
}

TEST_CASE(
    "detectors: each thing unstable at the gate and continued is pressing on, but not the hands alone") {
    const auto presses = [](auto change) {
        const Ids found = found_below(450.0, change);
        return std::ranges::find(found, "pressed_on") != found.end();
    };
    CHECK(presses([](TrackPoint& p) { p.sink_mps = mps_from_fpm(900.0); }));
    CHECK(presses([](TrackPoint& p) { p.power = 0.0; }));
    CHECK(presses([](TrackPoint& p) { p.flap_setting = 1; }));
    CHECK(presses([](TrackPoint& p) { p.cas_mps += mps_from_kt(13.0); }));
    CHECK(presses([](TrackPoint& p) { p.cas_mps -= mps_from_kt(7.0); }));
    CHECK(presses([](TrackPoint& p) { p.path_error_rad = rad_from_deg(0.7), p.path_offset_m = 20.0; }));
    CHECK_FALSE(presses([](TrackPoint& p) { p.lever = height_ft_of(p) < 310.0 ? 0.6 : 0.3; }));
    CHECK_FALSE(presses([](TrackPoint& p) { p.cas_mps += mps_from_kt(11.0); }));  // hardly out
}

TEST_CASE("detectors: what was flown too little of is not spoken of") {
    CHECK(found_in(steady_approach(calm(), 120.0)).empty());
    std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
    for (TrackPoint& p : points) p.flap_setting = 1;
    points.resize(100);  // flap not set, but 400 ft not reached
    CHECK(found_in(points, End::none).empty());
}

TEST_CASE(
    "detectors: ducking under begins at 200 ft; who is leaving the path before that is not aiming wrong") {
    const auto ducks = [](double leaving_deg) {
        const Ids found = found_below(350.0, [&](TrackPoint& p) {
            const double leaving = std::max(0.0, 260.0 - height_ft_of(p)) / 60.0;
            const double ducking = std::max(0.0, 200.0 - height_ft_of(p)) / 150.0;
            p.path_error_rad = rad_from_deg(-leaving_deg * leaving - 0.9 * ducking);
            p.path_offset_m = -10.0 * ducking;
            p.sink_mps *= 1.3;
        });
        return std::ranges::count(found, "ducking_under") == 1;
    };
    CHECK(ducks(0.0));
    CHECK_FALSE(ducks(0.27));
}

TEST_CASE("detectors: flap raised high, or with full power, is no fault") {
    const auto raised = [](double error_deg, double lever) {
        const Ids found = found_below(600.0, [&](TrackPoint& p) {
            p.path_error_rad = rad_from_deg(error_deg);
            p.lever = lever;
            if (height_ft_of(p) > 560.0) p.flap_setting = 1;
            if (height_ft_of(p) < 500.0) p.flap_setting = 1;
        });
        return std::ranges::count(found, "flap_raised_low");
    };
    CHECK(raised(-0.1, 0.3) == 1);
    CHECK(raised(0.1, 0.3) == 0);
    CHECK(raised(-0.1, 1.0) == 0);
}

TEST_CASE("detectors: the eyes are spoken of only where they were measured, and long enough") {
    const auto with_share = [](double share, double from_ft = 900.0) {
        return found_in(steady_approach(calm(), from_ft), End::reached_floor, 0, share);
    };
    CHECK(with_share(-1.0).empty());
    CHECK(with_share(0.25).empty());
    CHECK(with_share(0.34).empty());
    CHECK(with_share(0.36) == Ids{"staring_inside"});
    CHECK(with_share(0.36, 100.0).empty());  // hardly ten seconds
}

TEST_CASE("detectors: hardly a look inside is a fault where the speed drifts, and only there") {
    const auto drifting = [](std::size_t points_off, double share) {
        std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
        for (std::size_t i = 100; i < 100 + points_off; ++i)
            points[i].cas_mps += mps_from_kt(i % 2 == 0 ? -6.0 : 6.0);
        return found_in(points, End::reached_floor, 0, share);
    };
    CHECK(drifting(0, 0.01).empty());
    CHECK(drifting(90, 0.01).empty());  // nine seconds
    CHECK(drifting(110, 0.01) == Ids{"never_inside"});
    CHECK(drifting(110, 0.06).empty());
    CHECK(drifting(110, -1.0).empty());
}

TEST_CASE("detectors: a go-around with full power late or flap before the climb is one by halves") {
    const auto around = [](double full_after_s, double flap_after_s) {
        std::vector<TrackPoint> points = steady_approach(calm(), 900.0);
        const std::size_t begin = first_below(points, m_from_ft(310.0));
        for (std::size_t i = begin; i < points.size(); ++i) {
            const double since_s = points[i].time_s - points[begin].time_s;
            points[i].lever = since_s >= full_after_s ? 1.0 : 0.5;
            points[i].sink_mps = since_s > 3.0 ? -2.0 : 2.0;
            if (since_s >= flap_after_s) points[i].flap_setting = 1;
        }
        return found_in(points, End::went_around, begin + 1);
    };
    CHECK(around(1.0, 8.0).empty());
    CHECK(around(4.0, 8.0) == Ids{"partial_go_around"});
    CHECK(around(1.0, 2.0) == Ids{"partial_go_around"});
}
