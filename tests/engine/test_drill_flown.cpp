// The flown drills: what their figures are made of, and that they hand the controls over as they say.
#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "drill/go_around_steps.h"
#include "drill/path_power.h"
#include "tests/check.h"
#include "tests/engine/drill_answerers.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::vector<TrackPoint> path_of(std::initializer_list<double> errors_deg) {
    std::vector<TrackPoint> points;
    for (const double error_deg : errors_deg) {
        TrackPoint point;
        point.time_s = static_cast<double>(points.size());
        point.path_error_rad = rad_from_deg(error_deg);
        points.push_back(point);
    }
    return points;
}

double value_of(const std::vector<Figure>& figures, Measure measure) {
    const Figure* found = find_figure(figures, measure);
    REQUIRE(found != nullptr);
    return found->value;
}

// A go-around as a track: the call at 10 s; then the times of its steps.
struct Around {
    double begun_s = 11.0, full_s = 12.0, climb_s = 15.0, flap_s = 18.0, second_flap_s = 24.0, trim_s = 26.0;
};
Track track_of(const Around& around) {
    Track track;
    for (int i = 0; i <= 500; ++i) {
        TrackPoint p;
        p.time_s = 0.1 * i;
        p.wheel_height_m = 100.0;
        p.cas_mps = mps_from_kt(65.0);
        p.go_around_said = p.time_s >= around.begun_s;
        p.lever = p.time_s >= around.full_s ? 1.0 : 0.4;
        p.sink_mps = p.time_s >= around.climb_s ? -2.0 : 1.7;
        p.flap_setting = p.time_s >= around.second_flap_s ? 0 : (p.time_s >= around.flap_s ? 1 : 2);
        p.trim = p.time_s >= around.trim_s ? -0.1 : 0.0;
        track.points.push_back(p);
        if (p.time_s < around.begun_s + 0.05) track.scored = track.points.size();
    }
    return track;
}

}  // namespace

TEST_CASE("path by power: a crossing goes from a tenth of a degree on one side to as much on the other") {
    CHECK(path_crossings(path_of({0.5, 0.05, -0.05, 0.05, 0.4})) == 0);
    CHECK(path_crossings(path_of({0.5, 0.0, -0.2})) == 1);
    CHECK(path_crossings(path_of({0.5, -0.2, -0.05, 0.05, -0.3, 0.2})) == 2);
    CHECK(path_crossings(path_of({})) == 0);
}

TEST_CASE("go-around: the steps are timed from the call, and counted while they stand in their order") {
    const GoAroundSteps steps = go_around_steps(track_of({}), End::went_around, 10.0);
    CHECK_NEAR(steps.begun_s, 1.0, 0.051);  // a tenth of a second between points
    CHECK_NEAR(steps.power_s, 2.0, 0.051);
    CHECK_NEAR(steps.climb_s, 5.0, 0.051);
    CHECK_NEAR(steps.flap_s, 8.0, 0.051);
    CHECK_NEAR(steps.trim_s, 16.0, 0.051);
    CHECK(steps.flap_stages == 2);
    CHECK(steps.in_order == 4);
    CHECK_FALSE(steps.flap_sinking);
    CHECK_FALSE(steps.flap_all_at_once);

    Around flap_first;
    flap_first.flap_s = 13.0;
    CHECK(go_around_steps(track_of(flap_first), End::went_around, 10.0).in_order == 2);
    CHECK(go_around_steps(track_of(flap_first), End::went_around, 10.0).flap_sinking);
    Around at_once;
    at_once.second_flap_s = at_once.flap_s;
    CHECK(go_around_steps(track_of(at_once), End::went_around, 10.0).flap_all_at_once);
    Around no_trim;
    no_trim.trim_s = 1000.0;
    const GoAroundSteps untrimmed = go_around_steps(track_of(no_trim), End::went_around, 10.0);
    CHECK(untrimmed.in_order == 3);
    CHECK(untrimmed.trim_s == -1.0);
    CHECK_FALSE(go_around_steps(track_of({}), End::reached_floor, 10.0).figures.flown);
}

TEST_CASE("go-around: who never climbs has no time of climbing, and only the power in order") {
    Around no_climb;
    no_climb.climb_s = 1000.0;
    const auto figures =
        go_around_drill_figures(shipped_scenario("final_calm"), track_of(no_climb), End::went_around, 10.0);
    CHECK(find_figure(figures, Measure::climb_s) == nullptr);
    CHECK(value_of(figures, Measure::steps_in_order) == 1.0);
    CHECK(value_of(figures, Measure::flap_out_of_turn) == 1.0);  // raised while sinking
}

TEST_CASE("go-around: begun before the call is not an answer to it") {
    const Scenario scenario = shipped_scenario("final_calm");
    CHECK(go_around_drill_figures(scenario, track_of({}), End::went_around, 30.0).empty());
    const auto figures = go_around_drill_figures(scenario, track_of({}), End::went_around, 10.0);
    CHECK_NEAR(value_of(figures, Measure::decision_s), 1.0, 0.051);
    CHECK(value_of(figures, Measure::flap_out_of_turn) == 0.0);
}

TEST_CASE("flown drills: the call comes at the seed's time, the same for everyone who has it") {
    const Drill& drill = *find_drill(shipped(), "go_around");
    const Scenario base = shipped_scenario("final_calm");
    const FlownDrill flown = begin_flown(drill, base, 3);
    CHECK(flown.call_s == begin_flown(drill, base, 3).call_s);
    CHECK(flown.call_s != begin_flown(drill, base, 4).call_s);
    Attempt attempt = begin_attempt(flown.scenario);
    attempt.tick = static_cast<std::int64_t>(flown.call_s * 120.0) - 2;
    CHECK_FALSE(flown_view(flown, attempt).called);
    attempt.tick += 4;
    CHECK(flown_view(flown, attempt).called);
    CHECK(flown_view(flown, attempt).say == "Go around!");
}

TEST_CASE("flown drills: a go-around drill is over on the ground, whether it rolls or stands, call or none") {
    const FlownDrill flown =
        begin_flown(*find_drill(shipped(), "go_around"), shipped_scenario("final_calm"), 3);
    Attempt attempt = begin_attempt(flown.scenario);
    CHECK_FALSE(is_finished(flown, attempt));
    attempt.on_ground = true;
    CHECK(is_finished(flown, attempt));
    attempt.on_ground = false;
    attempt.at_rest = true;
    CHECK(is_finished(flown, attempt));
}

TEST_CASE("path by power: at its first moment there are no crossings a minute yet") {
    const FlownDrill flown =
        begin_flown(*find_drill(shipped(), "path_by_power"), shipped_scenario("final_calm"), 1);
    const Attempt attempt = begin_attempt(flown.scenario);
    const auto figures = path_power_figures(flown.scenario, begin_track(flown.scenario, attempt));
    CHECK(find_figure(figures, Measure::path_percent) != nullptr);
    CHECK(find_figure(figures, Measure::crossings_per_min) == nullptr);
}

TEST_CASE("flown drills: with power alone the student's lever flies, and the stick is the partner's") {
    FlownDrill flown =
        begin_flown(*find_drill(shipped(), "path_by_power"), shipped_scenario("final_calm"), 1);
    CHECK(flown.sharing.share == ControlShare::power);
    CHECK(flown.sharing.calls.front().words == "You have power.");
    const Attempt attempt = begin_attempt(flown.scenario);
    const Controls student{32000, 12345, -32000, 2, false};
    const Controls flies = flown_controls(flown, attempt, student);
    CHECK(flies.throttle == 12345);
    CHECK(std::abs(flies.stick) < 10000);
    CHECK(std::abs(flies.trim) < 20000);
    CHECK(flown_view(flown, attempt).share == "You have power");
}

TEST_CASE("flown drills: the command pilot does what is told and nothing else") {
    FlownDrill flown =
        begin_flown(*find_drill(shipped(), "student_tells"), shipped_scenario("final_calm"), 1);
    Attempt attempt = begin_attempt(flown.scenario);
    const auto fly_seconds = [&](int seconds) {
        for (int i = 0; i < 120 * seconds; ++i)
            tick(flown.scenario, attempt, flown_controls(flown, attempt, Controls{}));
    };
    const ControlPositions start = flown.follower.hands;
    fly_seconds(5);
    CHECK(flown.follower.hands.throttle == start.throttle);
    CHECK(flown.follower.hands.trim == start.trim);
    tell(flown, attempt, Command::more_power);
    CHECK_NEAR(flown.follower.hands.throttle, start.throttle + 0.04, 1e-12);
    tell(flown, attempt, Command::less_power);
    for (int i = 0; i < 3; ++i) tell(flown, attempt, Command::nose_up);
    fly_seconds(5);
    CHECK(flown.follower.hands.stick > 0.0);  // held, for nobody said trim
    const double held = flown.follower.hands.stick;
    tell(flown, attempt, Command::trim);
    fly_seconds(5);
    CHECK(flown.follower.hands.trim > start.trim);
    CHECK(flown.follower.hands.stick < held);
    CHECK(flown.told.size() == 6);
    tell(flown, attempt, Command::go_around);
    fly_seconds(1);
    CHECK(attempt.end == End::went_around);
    CHECK(flown.follower.hands.throttle == 1.0);
    tell(flown, attempt, Command::flap);
    CHECK(flown.follower.hands.flap == 1);
}

TEST_CASE("flown drills: the command pilot's lever and flap stop at their ends, and full power stays on") {
    FlownDrill flown =
        begin_flown(*find_drill(shipped(), "student_tells"), shipped_scenario("final_calm"), 1);
    const Attempt attempt = begin_attempt(flown.scenario);
    const auto tell_often = [&](Command command) {
        for (int i = 0; i < 40; ++i) tell(flown, attempt, command);  // 0.04 of the lever each
    };
    tell_often(Command::more_power);
    CHECK(flown.follower.hands.throttle == 1.0);
    tell_often(Command::less_power);
    CHECK(flown.follower.hands.throttle == 0.0);
    flown.follower.hands.flap = 0;
    tell(flown, attempt, Command::flap);
    CHECK(flown.follower.hands.flap == 1);
    tell_often(Command::flap);
    CHECK(flown.follower.hands.flap == landing_flap(flown.scenario.aircraft));
    tell(flown, attempt, Command::go_around);
    tell(flown, attempt, Command::less_power);
    CHECK(flown.follower.hands.throttle == 1.0);
    tell(flown, attempt, Command::more_power);
    CHECK(flown.follower.hands.throttle == 1.0);
}

TEST_CASE("flown drills: the last command is shown, and only where the student tells") {
    const Scenario base = shipped_scenario("final_calm");
    FlownDrill telling = begin_flown(*find_drill(shipped(), "student_tells"), base, 1);
    const Attempt attempt = begin_attempt(telling.scenario);
    CHECK(flown_view(telling, attempt).say == "Tell the pilot what to do");
    tell(telling, attempt, Command::nose_down);
    CHECK(flown_view(telling, attempt).say == "Nose down a little");
    FlownDrill flying = begin_flown(*find_drill(shipped(), "path_by_power"), base, 1);
    tell(flying, attempt, Command::go_around);
    CHECK(flying.told.empty());
    CHECK_FALSE(flying.follower.going_around);
}

TEST_CASE("student tells: left before the gate there is nothing to say of it") {
    FlownDrill flown =
        begin_flown(*find_drill(shipped(), "student_tells"), shipped_scenario("final_calm"), 1);
    const Flight flight = fly_with(flown.scenario, 5 * 120, [&](const Attempt& attempt) {
        return flown_controls(flown, attempt, Controls{});
    });
    const DrillResult result = result_of(flown, flight.track, flight.attempt, Criteria{});
    CHECK_FALSE(result.finished);
    CHECK(value_of(result.figures, Measure::commands) == 0.0);
    CHECK(find_figure(result.figures, Measure::stable_at_gate) == nullptr);
    CHECK(find_figure(result.figures, Measure::misses) == nullptr);
}

TEST_CASE("speed by attitude: the tasks follow one another to the last flap step") {
    const FlownRun run = fly_drill("speed_by_attitude", 1, flies::speed_by_attitude);
    CHECK(run.flown.speed_hold.task == SpeedHoldState::Task::done);
    CHECK(run.attempt.controls.flap == landing_flap(run.flown.scenario.aircraft));
    CHECK(run.attempt.end == End::none);  // high enough for all of it
    MESSAGE("took ", time_s(run.attempt), " s, ended at ", ft_from_m(run.track.points.back().wheel_height_m),
            " ft");
}

TEST_CASE("speed by attitude: nothing is known before landing flap was set") {
    const Scenario scenario = shipped_scenario("final_calm");
    const SpeedHold settings = std::get<SpeedHold>(find_drill(shipped(), "speed_by_attitude")->settings);
    const Flight flight = fly_with(scenario, 1200, [&](const Attempt&) {
        return quantize(scenario.start_trim.controls);  // landing flap from the start: no step
    });
    CHECK(speed_hold_figures(settings, scenario, flight.track).empty());
}

TEST_CASE("speed by attitude: flap is waited for, and after the last task there is no other") {
    const FlownDrill flown =
        begin_flown(*find_drill(shipped(), "speed_by_attitude"), shipped_scenario("final_calm"), 1);
    const SpeedHold& settings = std::get<SpeedHold>(flown.drill.settings);
    Attempt attempt = begin_attempt(flown.scenario);
    tick(flown.scenario, attempt, quantize(flown.scenario.start_trim.controls));
    for (const auto task : {SpeedHoldState::Task::set_flap, SpeedHoldState::Task::done}) {
        SpeedHoldState state{task};
        advance(state, settings, flown.scenario, attempt);
        CHECK(state.task == task);
    }
}

TEST_CASE("speed by attitude: flap steps right after one another at the very start and end are measured") {
    const FlownDrill flown =
        begin_flown(*find_drill(shipped(), "speed_by_attitude"), shipped_scenario("final_calm"), 1);
    SpeedHold settings = std::get<SpeedHold>(flown.drill.settings);
    // One step each second, for four seconds in all: less than is looked at before and after a step.
    const auto figures = [&](int steps) {
        const Flight flight = fly_with(flown.scenario, 4 * 120, [&](const Attempt& attempt) {
            ControlPositions hands = flown.scenario.start_trim.controls;
            hands.flap += std::min(steps, static_cast<int>(time_s(attempt)));
            return quantize(hands);
        });
        return speed_hold_figures(settings, flown.scenario, flight.track);
    };
    CHECK(figures(1).empty());  // one short of landing flap
    const auto both = figures(2);
    CHECK(value_of(both, Measure::held_s) <= 3.0);  // the last step is at two seconds of four
    CHECK(value_of(both, Measure::bump_ft) >= 0.0);
    CHECK(find_figure(both, Measure::retrim_s) == nullptr);
    CHECK(find_figure(both, Measure::hands_off_kt) == nullptr);  // ten seconds are asked for
    settings.hands_off_s = 0.0;  // any moment is long enough, and nothing changes within it
    CHECK(value_of(figures(2), Measure::hands_off_kt) == 0.0);
}
