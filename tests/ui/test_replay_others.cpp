// A replay of a recording that no longer flies the same, and one beside another attempt.
#include <algorithm>
#include <cmath>
#include <string>

#include "lesson/demonstrate.h"
#include "tests/ui/flown_replay.h"
#include "ui/views.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Wish = DriveReplay::Wish;

// A recording whose model has changed since: the stored hashes from the fifth second on are of another.
Recording changed_since(Recording recording) {
    for (std::size_t i = 4; i < recording.hashes.size(); ++i) recording.hashes[i] ^= 1;
    return recording;
}

}  // namespace

TEST_CASE("replay: a recording that no longer flies the same says from when, and its kept track is shown") {
    Flown flown;
    const Recording changed = changed_since(flown.app.flight->recording);
    Track kept = flown.app.flight->track;
    for (TrackPoint& point : kept.points) {  // as another model flew it
        point.cas_mps += 3.0;
        point.eye_height_m += 5.0;
        point.wheel_height_m += 5.0;
    }
    open_replay(flown.app, changed, &kept);
    CHECK(flown.text().find(
              "This recording no longer flies the same from 5 s on (this version's model differs). "
              "Shown is the track as it was flown.") != std::string::npos);
    // At a point of the track, and half-way to the next, the seat stands where the track says.
    for (const double tick : {480.0, 486.0}) {
        flown.wish(Wish::seek, tick);
        const View view = make_view(flown.app);
        const std::size_t i = 40;
        const double share = (tick - 480.0) / 12.0;
        const auto expected = [&](double TrackPoint::*what) {
            return kept.points[i].*what + share * (kept.points[i + 1].*what - kept.points[i].*what);
        };
        const Scenario& scenario = flown.app.replay->seat.scenario;
        const Point3 aim = aim_point(scenario.surroundings.runway);
        const CameraView& camera = view.flight.scene.camera;
        CHECK_NEAR(camera.x_m, aim.x_m - expected(&TrackPoint::distance_m), 1e-9);  // rounding alone
        CHECK_NEAR(camera.z_m, aim.z_m + expected(&TrackPoint::eye_height_m), 1e-9);
        CHECK_NEAR(view.flight.instruments.airspeed_kt, kt_from_mps(expected(&TrackPoint::cas_mps)), 1e-9);
        CHECK_NEAR(view.flight.instruments.altitude_ft, ft_from_m(expected(&TrackPoint::wheel_height_m)),
                   1e-9);
        // Levers in 16-bit steps.
        CHECK_NEAR(view.flight.instruments.lever_percent, 100 * expected(&TrackPoint::lever), 0.004);
        CHECK_NEAR(view.replay.now.airspeed_kt, kt_from_mps(expected(&TrackPoint::cas_mps)), 1e-9);
    }
    CHECK(flown.app.replay->flight.along_track);
    flown.wish(Wish::end);
    CHECK_NEAR(flown.app.replay->tick, kept.points.back().time_s * 120.0, 0.5);
}

TEST_CASE("replay: without a kept track it says that what is shown was not what was flown") {
    Flown flown;
    open_replay(flown.app, changed_since(flown.app.flight->recording), nullptr);
    CHECK(flown.text().find("No track was kept with it: shown is what its controls do now") !=
          std::string::npos);
    CHECK_FALSE(flown.app.replay->flight.along_track);
}

TEST_CASE("replay: a recording that flies the same is flown, whatever track was kept") {
    Flown flown;
    const ReplaySession& session = flown.open();
    CHECK_FALSE(session.flight.along_track);
    CHECK(make_view(flown.app).replay.trouble.empty());
    CHECK(session.flight.track.points.size() == flown.app.flight->track.points.size());
    CHECK(session.flight.track.scored == flown.app.flight->track.scored);
}

TEST_CASE("replay: compared with another attempt, that one stands at the same distance to the aim point") {
    Flown flown, other(0.3);
    open_replay(flown.app, flown.app.flight->recording, nullptr,
                ComparedAttempt{other.app.flight->recording, "attempt 2", nullptr});
    flown.wish(Wish::seek, 2000);
    const View view = make_view(flown.app);
    REQUIRE(view.replay.other_is_there);
    CHECK_NEAR(view.replay.other_now.distance_nm, view.replay.now.distance_nm, 1e-9);
    // Looked up here in the other's own track: the points either side hold it between them.
    const auto& points = other.app.flight->track.points;
    const auto after = std::find_if(points.begin(), points.end(), [&](const TrackPoint& p) {
        return nm_from_m(p.distance_m) < view.replay.now.distance_nm;
    });
    REQUIRE(after != points.end());
    const double a = ft_from_m(std::prev(after)->eye_height_m), b = ft_from_m(after->eye_height_m);
    CHECK(view.replay.other_now.height_ft >= std::min(a, b) - 1e-9);
    CHECK(view.replay.other_now.height_ft <= std::max(a, b) + 1e-9);
    const double higher_ft = view.replay.other_now.height_ft - view.replay.now.height_ft;
    REQUIRE(std::abs(higher_ft) > 1.0);
    const std::string words =
        std::to_string(std::lround(std::abs(higher_ft))) + (higher_ft > 0 ? " ft higher" : " ft lower");
    CHECK(view.replay.compared.find("Dashed: attempt 2, at the same distance to the aim point: " + words) !=
          std::string::npos);
    CHECK(view.mirror.screen.find(words) != std::string::npos);
}

TEST_CASE("replay: an attempt that never was at this distance is not drawn there") {
    Flown near_one;
    TestHost host;
    App far_one = make_app(shipped(), host);
    apply(far_one, ChooseDistance{3}, host);
    apply(far_one, StartFlight{}, host);
    for (int i = 0; i < 1200; ++i) tick_session(*far_one.flight, quantize(far_one.hands.at));
    open_replay(far_one, far_one.flight->recording, nullptr,
                ComparedAttempt{near_one.app.flight->recording, "attempt 2", nullptr});
    const View view = make_view(far_one);
    CHECK_FALSE(view.replay.other_is_there);
    CHECK(view.replay.compared.find("never was") != std::string::npos);
}

TEST_CASE("replay: a recording of a runway that is not known here opens nothing and says so") {
    Flown flown;
    Recording recording = flown.app.flight->recording;
    recording.lesson.runway_id = "nowhere";
    open_replay(flown.app, recording, nullptr);
    CHECK(flown.app.screen == Screen::summary);
    CHECK_FALSE(flown.app.replay.has_value());
    CHECK(flown.app.notice.find("cannot be replayed here") != std::string::npos);
}
