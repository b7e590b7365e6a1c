// Each faulty model pilot shows its own fault in the track, measured against the good pilot's same measure.
#include <algorithm>
#include <vector>

#include "base/units.h"
#include "flight/model_pilot.h"
#include "lesson/approach_choice.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr std::uint64_t seeds = 12;

Flight fly_as(std::string_view name, const Scenario& scenario, std::uint64_t seed) {
    ModelPilot pilot = pilot_for(scenario, *pilot_skill(name), seed);
    constexpr std::int64_t twenty_minutes = 20 * 60 * 120;
    return fly_with(scenario, twenty_minutes, [&](const Attempt& attempt) {
        return fly(pilot, sight_of(scenario, attempt), time_s(attempt));
    });
}

std::vector<Flight> flights_of(std::string_view name, const Scenario& scenario) {
    std::vector<Flight> flights;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) flights.push_back(fly_as(name, scenario, seed));
    return flights;
}

Scenario of(const Lesson& lesson) { return scenario_of(shipped(), lesson); }

Lesson calm_lesson() { return shipped_scenario("final_calm").lesson; }

Lesson windy_lesson(double headwind_kt, int distance_nm = 3) {
    return lesson_of({distance_nm, StartSide::on, headwind_kt}, calm_lesson());
}

// The two airs that every fault is looked for in: calm and a 10 kt headwind.
std::vector<Scenario> calm_and_headwind() { return {shipped_scenario("final_calm"), of(windy_lesson(10.0))}; }

// The same from 1 NM, for faults that show near the ground: a third of the flying.
std::vector<Scenario> calm_and_headwind_near() {
    return {of(windy_lesson(0.0, 1)), of(windy_lesson(10.0, 1))};
}

// The mean over the seeds of a measure of one flight's track.
template <class Measure>
double mean_of(const std::vector<Flight>& flights, Measure&& measure) {
    double sum = 0.0;
    for (const Flight& flight : flights) sum += measure(flight.track.points);
    return sum / static_cast<double>(flights.size());
}

// The share of the seeds whose track shows it.
template <class Shows>
double share_of(const std::vector<Flight>& flights, Shows&& shows) {
    return mean_of(flights, [&](const auto& points) { return shows(points) ? 1.0 : 0.0; });
}

using Points = std::vector<TrackPoint>;

double error_deg(const TrackPoint& point) { return deg_from_rad(point.path_error_rad); }
double height_ft(const TrackPoint& point) { return ft_from_m(point.wheel_height_m); }
double speed_error_kt(const TrackPoint& point) {
    return kt_from_mps(point.cas_mps) - 65.0;  // the target of every lesson flown here
}

// From the path error's first passing 0.3 degrees to the first lever move that mends it: 0.01 of the travel,
// more than the hand's last digit and less than any decision.
double power_delay_s(const Points& points) {
    const auto off =
        std::ranges::find_if(points, [](const TrackPoint& p) { return std::abs(error_deg(p)) > 0.3; });
    if (off == points.end()) return 0.0;
    const double way = off->path_error_rad > 0.0 ? -1.0 : 1.0;
    for (auto point = off; point != points.end(); ++point)
        if (way * (point->lever - off->lever) > 0.01) return point->time_s - off->time_s;
    return points.back().time_s - off->time_s;
}

// How often the stick turns back by more than 0.03 of its travel: three times the tremor of the good hand's
// stick at most, so that tremor alone does not count.
double reversals_per_minute(const Points& points) {
    double extreme = points.front().stick;
    int way = 0, count = 0;
    for (const TrackPoint& p : points) {
        if (way >= 0 && p.stick < extreme - 0.03) {
            count += way > 0;
            way = -1;
            extreme = p.stick;
        } else if (way <= 0 && p.stick > extreme + 0.03) {
            count += way < 0;
            way = 1;
            extreme = p.stick;
        }
        extreme = way > 0 ? std::max(extreme, p.stick) : way < 0 ? std::min(extreme, p.stick) : extreme;
    }
    return 60.0 * count / (points.back().time_s - points.front().time_s);
}

double pitch_scatter_deg(const Points& points) {
    std::vector<double> pitch;
    for (const TrackPoint& p : points) pitch.push_back(deg_from_rad(p.pitch_rad));
    return spread_of(pitch).scatter;
}

// Of the pitch with the airspeed two seconds before: the nose takes about so long to follow the stick that
// chases the needle.
double pitch_speed_correlation(const Points& points) {
    std::vector<double> pitch, speed, sum;
    for (std::size_t i = 20; i < points.size(); ++i) {
        pitch.push_back(points[i].pitch_rad);
        speed.push_back(points[i - 20].cas_mps);
    }
    const Spread a = spread_of(pitch), b = spread_of(speed);
    if (a.scatter == 0.0 || b.scatter == 0.0) return 0.0;
    double product = 0.0;
    for (std::size_t i = 0; i < pitch.size(); ++i) product += (pitch[i] - a.bias) * (speed[i] - b.bias);
    return product / static_cast<double>(pitch.size()) / (a.scatter * b.scatter);
}

// Seconds low, slow and with the nose above the briefed attitude, the lever where it was two seconds before.
double stretching_s(const Points& points, double briefed_pitch_rad) {
    int count = 0;
    for (std::size_t i = 20; i < points.size(); ++i) {
        const TrackPoint& p = points[i];
        count += error_deg(p) < -0.5 && speed_error_kt(p) < -5.0 && p.pitch_rad > briefed_pitch_rad &&
                 std::abs(p.lever - points[i - 20].lever) < 0.01;
    }
    return 0.1 * count;
}

double lowest_below_deg(const Points& points, double ft) {
    double lowest = 10.0;
    for (const TrackPoint& p : points)
        if (height_ft(p) < ft) lowest = std::min(lowest, error_deg(p));
    return lowest;
}

double landing_flap_below_ft(const Points& points, int landing) {
    for (const TrackPoint& p : points)
        if (p.flap_setting == landing) return height_ft(p);
    return 0.0;
}

struct LampAnswer {
    bool changed = false, jerked = false;
};

// Whether the lights changed below 200 ft, and the stick went past 0.2 within half a second of it.
LampAnswer lamp_answer(const Points& points) {
    LampAnswer answer;
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (height_ft(points[i]) >= 200.0 || points[i].white_count == points[i - 1].white_count) continue;
        answer.changed = true;
        for (std::size_t j = i; j < std::min(i + 6, points.size()); ++j)
            answer.jerked |= std::abs(points[j].stick) > 0.2;
    }
    return answer;
}

double share_jerked(const std::vector<Flight>& flights, int& changed) {
    int jerked = 0;
    changed = 0;
    for (const Flight& flight : flights) {
        const LampAnswer answer = lamp_answer(flight.track.points);
        changed += answer.changed;
        jerked += answer.jerked;
    }
    return changed > 0 ? static_cast<double>(jerked) / changed : 0.0;
}

double lowest_gate_deg(const Flight& flight) {
    double lowest = 0.0;
    for (const GateValue& gate : flight.summary.gates)
        if (gate.reached) lowest = std::min(lowest, deg_from_rad(gate.mean.path_rad));
    return lowest;
}

int count_end(const std::vector<Flight>& flights, End end) {
    return static_cast<int>(
        std::ranges::count_if(flights, [&](const Flight& f) { return f.attempt.end == end; }));
}

}  // namespace

TEST_CASE("model pilot: the good one is in tolerance in headwinds of 0 to 20 kt") {
    for (const double headwind_kt : {0.0, 10.0, 20.0}) {
        CAPTURE(headwind_kt);
        double path = 1.0, speed = 1.0;
        const auto flights = flights_of("good", of(windy_lesson(headwind_kt)));
        for (const Flight& flight : flights) {
            path = std::min(path, flight.summary.path_share);
            speed = std::min(speed, flight.summary.speed_share);
        }
        MESSAGE("worst path share ", path, " speed share ", speed);
        CHECK(count_end(flights, End::reached_floor) == static_cast<int>(seeds));
        CHECK(path >= 0.95);  // a twentieth is left for the settling of the start
        CHECK(speed >= 0.95);
    }
}

TEST_CASE("model pilot: the good one reaches the floor on the path in light turbulence") {
    Lesson lesson = calm_lesson();
    lesson.turbulence_w20_mps = mps_from_kt(10.0);
    double path = 1.0;
    int floors = 0;
    for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
        lesson.seed = seed;
        const Flight flight = fly_as("good", of(lesson), seed);
        path = std::min(path, flight.summary.path_share);
        floors += flight.attempt.end == End::reached_floor;
    }
    MESSAGE("worst path share ", path, " floors ", floors);
    CHECK(floors == static_cast<int>(seeds));
    CHECK(path >= 0.85);  // gusts may cost a tenth more than still air
}

TEST_CASE("model pilot: late_power lets the error stand before the lever moves") {
    for (const StartSide side : {StartSide::above, StartSide::below}) {
        const Scenario scenario = of(lesson_of({2, side, 0.0}, calm_lesson()));
        const double late = mean_of(flights_of("late_power", scenario), power_delay_s);
        const double good = mean_of(flights_of("good", scenario), power_delay_s);
        MESSAGE("delay s ", late, " good ", good);
        CHECK(late > 4.0);  // a habit, not a reaction: eight looks of the good pilot's
        CHECK(good < 2.0);  // four looks
    }
}

TEST_CASE("model pilot: over_control turns the stick back and forth") {
    for (const Scenario& scenario : calm_and_headwind()) {
        const double over = mean_of(flights_of("over_control", scenario), reversals_per_minute);
        const double good = mean_of(flights_of("good", scenario), reversals_per_minute);
        MESSAGE("reversals/min ", over, " good ", good);
        CHECK(over > 10.0);  // one in six seconds, should the good hand show none
        CHECK(over >= 3.0 * good);
    }
}

TEST_CASE("model pilot: needle_chasing pitches with the airspeed error") {
    for (const Scenario& scenario : calm_and_headwind()) {
        const auto chasing = flights_of("needle_chasing", scenario);
        const auto good = flights_of("good", scenario);
        const double scatter = mean_of(chasing, pitch_scatter_deg), steady = mean_of(good, pitch_scatter_deg);
        const double together = mean_of(chasing, pitch_speed_correlation);
        const double good_together = mean_of(good, pitch_speed_correlation);
        MESSAGE("scatter deg ", scatter, " good ", steady, " corr ", together, " good ", good_together);
        CHECK(scatter >= 2.0 * steady);
        CHECK(together > 0.3);  // a third of a perfect match: the nose lags the needle by its own inertia
    }
}

TEST_CASE("model pilot: low_stretch is low, slow and nose up with the lever left alone") {
    for (const double headwind_kt : {0.0, 10.0}) {
        const Scenario scenario = of(lesson_of({2, StartSide::below, headwind_kt}, calm_lesson()));
        const double briefed_rad = plan_of(scenario).pitch_rad;
        const auto stretching = [&](const Points& points) { return stretching_s(points, briefed_rad); };
        const double low = mean_of(flights_of("low_stretch", scenario), stretching);
        const double good = mean_of(flights_of("good", scenario), stretching);
        MESSAGE("stretching s ", low, " good ", good);
        CHECK(low > 3.0);  // longer than a glance
        CHECK(good < 0.5);
    }
}

TEST_CASE("model pilot: duck_under leaves the path near the ground") {
    for (const Scenario& scenario : calm_and_headwind_near()) {
        const auto below = [](const Points& points) { return lowest_below_deg(points, 150.0); };
        const double duck = mean_of(flights_of("duck_under", scenario), below);
        const double good = mean_of(flights_of("good", scenario), below);
        MESSAGE("lowest below 150 ft deg ", duck, " good ", good);
        CHECK(duck < -0.4);
        CHECK(good > -0.3);
    }
}

TEST_CASE("model pilot: late_flap lowers landing flap below 300 ft") {
    for (const double headwind_kt : {0.0, 10.0}) {
        Lesson lesson = windy_lesson(headwind_kt, 2);
        lesson.start.flap = 1;
        const Scenario scenario = of(lesson);
        const auto flap_ft = [&](const Points& points) {
            return landing_flap_below_ft(points, landing_flap(scenario.aircraft));
        };
        const double late = mean_of(flights_of("late_flap", scenario), flap_ft);
        const double good = mean_of(flights_of("good", scenario), flap_ft);
        MESSAGE("flap ft ", late, " good ", good);
        CHECK(late < 300.0);
        CHECK(late > 50.0);  // but it is lowered before the floor
        CHECK(good > 500.0);
    }
}

TEST_CASE("model pilot: light_chasing jerks the stick when the lights change near the ground") {
    for (const Scenario& scenario : calm_and_headwind_near()) {
        int changed = 0, good_changed = 0;
        const double chasing = share_jerked(flights_of("light_chasing", scenario), changed);
        const double good = share_jerked(flights_of("good", scenario), good_changed);
        MESSAGE("jerked ", chasing, " of ", changed, " good ", good, " of ", good_changed);
        CHECK(changed >= 5);  // fewer would prove nothing
        CHECK(chasing >= 0.6);
    }
}

TEST_CASE("model pilot: ignores_wind sinks below the path in a headwind") {
    const Scenario scenario = shipped_scenario("final_headwind");
    double least = -10.0, good_most = 0.0;
    for (const Flight& flight : flights_of("ignores_wind", scenario))
        least = std::max(least, lowest_gate_deg(flight));
    for (const Flight& flight : flights_of("good", scenario))
        good_most = std::min(good_most, lowest_gate_deg(flight));
    MESSAGE("lowest gate deg, the mildest seed ", least, " good, the worst seed ", good_most);
    CHECK(least < -0.5);
    CHECK(good_most > -0.5);
}

TEST_CASE("model pilot: presses_on goes on from where the good one goes around") {
    for (const double headwind_kt : {0.0, 10.0}) {
        Lesson lesson = lesson_of({1, StartSide::on, headwind_kt}, calm_lesson());
        lesson.start.offset_rad = rad_from_deg(1.2);
        const Scenario scenario = of(lesson);
        const auto pressed = flights_of("presses_on", scenario), good = flights_of("good", scenario);
        double at_gate = 0.0;
        for (const Flight& flight : pressed)
            for (const TrackPoint& p : flight.track.points)
                if (height_ft(p) <= 300.0) {
                    at_gate += error_deg(p) / static_cast<double>(seeds);
                    break;
                }
        MESSAGE("at 300 ft deg ", at_gate, " around ", count_end(pressed, End::went_around), " good ",
                count_end(good, End::went_around));
        CHECK(at_gate > 0.5);
        CHECK(count_end(pressed, End::went_around) == 0);
        CHECK(count_end(good, End::went_around) == static_cast<int>(seeds));
    }
}
