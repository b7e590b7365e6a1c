// What stands on the boards before a class: stills that differ in one thing, the flow of the ground, the
// outlines and the headwind's figures.
#include <doctest/doctest.h>

#include <cmath>
#include <set>

#include "base/units.h"
#include "board/ground_flow.h"
#include "board/stills.h"
#include "review/aim_point.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "world/sight.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

const Scenario& base() {
    static const Scenario scenario = shipped_scenario("final_calm");
    return scenario;
}

// Thirty-three metres a second down a path that meets the level runway so far beyond its aim point (m).
MovingEye toward(double distance_m, double height_m, double beyond_m) {
    const Point3 aim = aim_point(plain_runway());
    constexpr double forward_mps = 33.0;
    return {{aim.x_m - distance_m, 0.0, aim.z_m + height_m},
            forward_mps,
            -forward_mps * height_m / (distance_m + beyond_m)};
}

MovingEye later(MovingEye moving, double time_s) {
    moving.eye.x_m += moving.forward_mps * time_s;
    moving.eye.z_m += moving.up_mps * time_s;
    return moving;
}

}  // namespace

TEST_CASE("stills: of a set one thing differs, seen from one mile, and the order does not tell") {
    std::set<std::vector<int>> orders;
    for (std::size_t i = 0; i < still_set_count; ++i) {
        const auto set = static_cast<StillSet>(i);
        CAPTURE(i);
        const std::vector<BoardStill> stills = make_stills(base(), set);
        REQUIRE(stills.size() == 3);
        std::vector<int> order;
        std::set<double> paths, widths, slopes;
        std::set<std::pair<int, bool>> hours;
        for (const BoardStill& still : stills) {
            const Runway& runway = still.scenario.surroundings.runway;
            const PathDeviation seen = path_deviation(runway, still.eye);
            order.push_back(still.which);
            CHECK_NEAR(seen.distance_m, m_from_nm(1.0), 1e-9);  // rounding
            paths.insert(std::round(deg_from_rad(seen.elevation_rad) * 1e6));
            widths.insert(runway.width_m);
            slopes.insert(runway.slope);
            hours.insert(
                {int(still.scenario.lesson.outlook.light), still.scenario.lesson.outlook.ground_lights});
            CHECK(still.pitch_rad == stills.front().pitch_rad);
            CHECK(runway.length_m == 1500.0);
            CHECK(runway.designator == base().surroundings.runway.designator);
            // The lights stand on this runway, not on the one it was made from.
            CHECK_NEAR(still.scenario.lights.units[0].lens.y_m, make_lights(runway).units[0].lens.y_m, 0.0);
        }
        CHECK(paths.size() == (set == StillSet::paths ? 3u : 1u));
        CHECK(widths.size() == (set == StillSet::widths ? 3u : 1u));
        CHECK(slopes.size() == (set == StillSet::slopes ? 3u : 1u));
        CHECK(hours.size() == (set == StillSet::lights ? 3u : 1u));
        CHECK(order != std::vector<int>{0, 1, 2});
        CHECK(order != std::vector<int>{2, 1, 0});
        orders.insert(order);
    }
    CHECK(orders.size() == still_set_count);
}

TEST_CASE("stills: each path is the one it is said to be") {
    for (const BoardStill& still : make_stills(base(), StillSet::paths)) {
        const PathDeviation seen = path_deviation(still.scenario.surroundings.runway, still.eye);
        CHECK_NEAR(deg_from_rad(seen.elevation_rad), still_paths_deg[std::size_t(still.which)], 1e-9);
    }
}

// Closed forms, both small-angle. The height of the outline grows as the angle between path and surface and
// its width as the runway's, so the usual ratio is kept where angle / width is; and a slope adds its own
// angle (1 % is 0.573 degrees, atan 0.01). At 1 NM the near end stands nearer than the far one by nearly half
// the way, which is what the tolerance is for.
TEST_CASE("outline: who copies the usual shape ends low over a narrow or rising runway, high otherwise") {
    const Runway usual = standard_runway(base().surroundings.runway);
    const auto copied_deg = [&](double width_m, double slope) {
        Runway runway = usual;
        runway.width_m = width_m;
        runway.slope = slope;
        return deg_from_rad(path_of_usual_shape_rad(runway, usual, still_distance_m));
    };
    CHECK_NEAR(copied_deg(30.0, 0.0), 3.0, 1e-9);  // the usual runway itself
    constexpr double tolerance_deg = 0.05;
    CHECK_NEAR(copied_deg(18.0, 0.0), 3.0 * 18.0 / 30.0, tolerance_deg);
    CHECK_NEAR(copied_deg(45.0, 0.0), 3.0 * 45.0 / 30.0, tolerance_deg);
    CHECK_NEAR(copied_deg(30.0, 0.02), 3.0 - deg_from_rad(std::atan(0.02)), tolerance_deg);
    CHECK_NEAR(copied_deg(30.0, -0.02), 3.0 + deg_from_rad(std::atan(0.02)), tolerance_deg);
}

// Height over width of the far end, as angles: V3 and V4 of our own list, computed from the definition of
// Mertens (FAA-AM-79-25): 100 x 5,000 ft with its aim point 1,000 ft in, at 3 degrees.
TEST_CASE("outline: the corners and the form ratio of a runway are those of the closed forms") {
    Runway runway = plain_runway();
    runway.width_m = m_from_ft(100.0);
    runway.length_m = m_from_ft(5000.0);
    runway.aim_distance_m = m_from_ft(1000.0);
    const auto at = [&](double nm) {
        const double to_aim_m = m_from_nm(nm);
        return Point3{runway.aim_distance_m - to_aim_m, 0.0, to_aim_m * std::tan(rad_from_deg(3.0))};
    };
    const auto corners = runway_outline(runway, at(1.0));
    CHECK_NEAR(deg_from_rad(-corners[0].up_rad), 3.590, 0.005);  // as printed there
    CHECK_NEAR(deg_from_rad(-corners[2].up_rad), 1.810, 0.005);
    CHECK_NEAR(deg_from_rad(corners[1].right_rad - corners[0].right_rad), 1.126, 0.005);
    CHECK_NEAR(deg_from_rad(corners[2].right_rad - corners[3].right_rad), 0.568, 0.005);
    CHECK_NEAR(form_ratio(runway, at(1.0)), 3.13, 0.0313);  // one per cent
    CHECK_NEAR(form_ratio(runway, at(3.0)), 2.77, 0.0277);
}

TEST_CASE("flow: the point that stands still is where the flight would hit, and nothing else stands still") {
    for (const double beyond_m : {-200.0, 0.0, 150.0}) {
        const MovingEye moving = toward(1000.0, 52.4, beyond_m);
        CAPTURE(beyond_m);
        const auto hit = point_of_impact(plain_runway(), moving);
        REQUIRE(hit.has_value());
        // As the debrief works it out of a track.
        CHECK_NEAR(hit->x_m - plain_runway().aim_distance_m,
                   impact_beyond_aim_m(52.4, 1000.0, moving.forward_mps, -moving.up_mps), 1e-9);
        const GroundFlow there = flow_of(moving, *hit);
        CHECK_NEAR(there.up_radps, 0.0, 1e-15);  // rounding
        CHECK_NEAR(there.right_radps, 0.0, 1e-15);
        const auto flows = ground_flow(plain_runway(), moving, rad_from_deg(9.0), rad_from_deg(8.0), 9, 7);
        REQUIRE(flows.size() == 63);
        int nearer = 0, beyond = 0;
        for (const GroundFlow& flow : flows) {
            if (std::abs(flow.place.x_m - hit->x_m) < 1.0) continue;  // beside it: moves sideways alone
            (flow.beyond ? beyond : nearer) += 1;
            if (flow.seen.right_rad == 0.0) CHECK(flow.up_radps * (flow.beyond ? 1.0 : -1.0) > 0.0);
            if (flow.seen.right_rad != 0.0) CHECK(flow.right_radps * flow.seen.right_rad > 0.0);
        }
        CHECK(nearer > 9);
        CHECK(beyond > 9);
    }
}

// The bearing rate of a fixed point is V sin(a) / R, a the angle between it and the way of flight (plane
// geometry; Gibson's optical flow, from memory).
TEST_CASE("flow: the rates are those of the closed form, and of the same picture a moment later") {
    const MovingEye moving = toward(900.0, 60.0, -120.0);
    for (const GroundFlow& flow :
         ground_flow(plain_runway(), moving, rad_from_deg(12.0), rad_from_deg(10.0), 6, 5)) {
        const double x = flow.place.x_m - moving.eye.x_m, y = flow.place.y_m - moving.eye.y_m,
                     z = flow.place.z_m - moving.eye.z_m;
        const double range_m = std::sqrt(x * x + y * y + z * z),
                     speed = std::hypot(moving.forward_mps, moving.up_mps);
        const double along = (x * moving.forward_mps + z * moving.up_mps) / (range_m * speed);
        const double wanted = speed * std::sqrt(1.0 - along * along) / range_m;
        const double aside = flow.right_radps * std::cos(flow.seen.up_rad);
        CHECK_NEAR(std::hypot(aside, flow.up_radps), wanted, 1e-9);  // the root of a small difference

        constexpr double step_s = 1e-3;
        const GroundFlow before = flow_of(later(moving, -step_s), flow.place),
                         after = flow_of(later(moving, step_s), flow.place);
        // The middle difference errs by the third derivative: (V/R)^3 step^2, below 1e-9 from 250 m on.
        CHECK_NEAR(flow.up_radps, (after.seen.up_rad - before.seen.up_rad) / (2 * step_s), 1e-8);
        CHECK_NEAR(flow.right_radps, (after.seen.right_rad - before.seen.right_rad) / (2 * step_s), 1e-8);
    }
}

TEST_CASE("flow: on a runway that rises the flight hits its surface, and level flight hits nothing") {
    Runway rising = plain_runway();
    rising.slope = 0.02;
    const MovingEye moving = toward(1500.0, 90.0, 0.0);
    const auto hit = point_of_impact(rising, moving);
    REQUIRE(hit.has_value());
    CHECK_NEAR(hit->z_m, 0.02 * hit->x_m, 1e-12);
    CHECK_NEAR((hit->z_m - moving.eye.z_m) / (hit->x_m - moving.eye.x_m), moving.up_mps / moving.forward_mps,
               1e-12);
    MovingEye level = moving;
    level.up_mps = 0.0;
    CHECK_FALSE(point_of_impact(plain_runway(), level).has_value());
    const auto short_of = point_of_impact(rising, toward(1500.0, 90.0, -500.0));
    REQUIRE(short_of.has_value());
    CHECK(short_of->x_m < 0.0);
    CHECK(short_of->z_m == 0.0);
    const MovingEye buried{{-500.0, 0.0, -1.0}, 30.0, -1.0};
    CHECK_FALSE(point_of_impact(rising, buried).has_value());
    CHECK(ground_flow(rising, buried, 0.1, 0.1, 3, 3).empty());
}

TEST_CASE("flow: what does not come down ahead hits nothing, and nothing it sees lies beyond") {
    MovingEye moving = toward(1500.0, 90.0, 0.0);
    REQUIRE(point_of_impact(plain_runway(), moving).has_value());
    moving.forward_mps = 0.0;  // straight down
    CHECK_FALSE(point_of_impact(plain_runway(), moving).has_value());
    moving = toward(1500.0, 90.0, 0.0);
    moving.up_mps = 1.0;
    const auto flows = ground_flow(plain_runway(), moving, rad_from_deg(9.0), rad_from_deg(8.0), 3, 3);
    REQUIRE(flows.size() == 9);
    for (const GroundFlow& flow : flows) CHECK_FALSE(flow.beyond);
}

TEST_CASE("flow: lower than the plane of a runway that falls, the flight hits the level ground before it") {
    Runway falling = plain_runway();
    falling.slope = -0.02;
    // A kilometre out its plane lies 20 m above the threshold; the eye is 10 m above, and sinks one in
    // twenty.
    const auto hit = point_of_impact(falling, {{-1000.0, 0.0, 10.0}, 30.0, -1.5});
    REQUIRE(hit.has_value());
    CHECK_NEAR(hit->x_m, -1000.0 + 10.0 * 20.0, 1e-9);  // rounding
    CHECK(hit->z_m == 0.0);
}
