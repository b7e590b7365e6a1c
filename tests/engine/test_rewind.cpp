// A recording kept for rewinding: any tick, in any order, is the same as flown from the start.
#include "record/rewind.h"

#include <vector>

#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// The hash of the state after every tick of a replay from the start.
std::vector<std::uint64_t> hashes_of(const Recording& recording, const Scenario& scenario) {
    std::vector<std::uint64_t> hashes;
    replay(recording, scenario,
           [&](const Attempt& attempt, const Events&) { hashes.push_back(state_hash(attempt)); });
    return hashes;
}

std::uint64_t hash_at(const Rewind& rewind, std::int64_t tick) {
    return state_hash(attempt_at(rewind, tick));
}

}  // namespace

TEST_CASE("rewind: any tick is the same bits as flown from the start, forwards, backwards and by leaps") {
    for (const char* lesson : {"final_calm", "wind_gradient"}) {
        const Scenario scenario = shipped_scenario(lesson);
        const Flight flight = fly_good(scenario, 4);
        const std::vector<std::uint64_t> hashes = hashes_of(flight.recording, scenario);
        const Rewind rewind = make_rewind(flight.recording, scenario);
        REQUIRE(rewind.last_tick == flight.attempt.tick);
        REQUIRE(hashes.size() == static_cast<std::size_t>(rewind.last_tick) + 1);
        CHECK(rewind.first_diverged_tick == -1);
        int differ = 0;
        const auto compare = [&](std::int64_t tick) {
            differ += hash_at(rewind, tick) != hashes[static_cast<std::size_t>(tick)] ? 1 : 0;
            differ += attempt_at(rewind, tick).tick != tick ? 1 : 0;
        };
        for (std::int64_t tick = 0; tick <= rewind.last_tick; tick += 37) compare(tick);
        for (std::int64_t tick = rewind.last_tick; tick >= 0; tick -= 101) compare(tick);
        for (std::int64_t i = 0; i < 200; ++i) compare(i * 7919 % (rewind.last_tick + 1));
        for (std::int64_t tick = 118; tick <= 122; ++tick) compare(tick);  // about a kept second
        compare(rewind.last_tick);
        CHECK(differ == 0);
    }
}

TEST_CASE("rewind: before the start is the start, after the end the end") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_good(scenario, 4);
    const Rewind rewind = make_rewind(flight.recording, scenario);
    CHECK(hash_at(rewind, -500) == state_hash(begin_attempt(scenario)));
    CHECK(hash_at(rewind, rewind.last_tick + 500) == state_hash(flight.attempt));

    Recording nothing = begin_recording(scenario.lesson);
    nothing.final_hash = state_hash(begin_attempt(scenario));
    const Rewind empty = make_rewind(nothing, scenario);
    CHECK(empty.last_tick == 0);
    CHECK(empty.first_diverged_tick == -1);
    CHECK(hash_at(empty, 3) == state_hash(begin_attempt(scenario)));
    CHECK(controls_at(empty, 0) == begin_attempt(scenario).controls);
}

TEST_CASE("rewind: the controls are those recorded, holding from their tick on") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_good(scenario, 4);
    const Rewind rewind = make_rewind(flight.recording, scenario);
    const auto& changes = flight.recording.changes;
    REQUIRE(changes.size() > 10);
    for (std::size_t i = 1; i < changes.size(); ++i) {
        CHECK(controls_at(rewind, changes[i].tick) == changes[i].controls);
        CHECK(controls_at(rewind, changes[i].tick - 1) == changes[i - 1].controls);
    }
    CHECK(controls_at(rewind, rewind.last_tick) == changes.back().controls);
}

TEST_CASE("rewind: the vertical speed shown and the state a tick before are those of the flight itself") {
    const Scenario scenario = shipped_scenario("wind_gradient");
    const Flight flight = fly_good(scenario, 4);
    Instruments shown = settled_instruments(begin_attempt(scenario).flight);
    std::vector<Instruments> live;
    std::vector<FlightState> states;
    replay(flight.recording, scenario, [&](const Attempt& attempt, const Events&) {
        if (attempt.tick > 0) shown = advance_instruments(shown, attempt.flight);
        live.push_back(shown);
        states.push_back(attempt.flight);
    });
    const Rewind rewind = make_rewind(flight.recording, scenario);
    for (std::int64_t tick = 1; tick <= rewind.last_tick; tick += 173) {
        const FlownMoment moment = moment_at(rewind, tick);
        const auto at = static_cast<std::size_t>(tick);
        CHECK(moment.instruments.vertical_speed_mps == live[at].vertical_speed_mps);
        CHECK(moment.before.x_m == states[at - 1].x_m);
        CHECK(moment.before.pitch_rad == states[at - 1].pitch_rad);
    }
}

TEST_CASE("rewind: the last stall warning so far is known at every moment") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_with(scenario, 120 * 30, [](const Attempt& attempt) {  // pulled into the stall
        Controls controls = attempt.controls;
        controls.stick = attempt.tick > 600 && attempt.tick < 1200 ? std::int16_t{30000} : std::int16_t{0};
        controls.throttle = 0;
        return controls;
    });
    std::int64_t last = -1;
    std::vector<std::int64_t> expected;
    replay(flight.recording, scenario, [&](const Attempt& attempt, const Events&) {
        if (attempt.tick > 0 && stall_warning(scenario, attempt)) last = attempt.tick;
        expected.push_back(last);
    });
    REQUIRE(last > 600);
    const Rewind rewind = make_rewind(flight.recording, scenario);
    int differ = 0;
    for (std::int64_t tick = rewind.last_tick; tick >= 0; tick -= 11)
        differ += moment_at(rewind, tick).stalled_tick != expected[static_cast<std::size_t>(tick)] ? 1 : 0;
    CHECK(differ == 0);
}

TEST_CASE("rewind: a recording that no longer flies the same says from which tick") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_good(scenario, 4);
    Scenario other = scenario;
    other.surroundings.runway.elevation_m += 1.0;
    CHECK(make_rewind(flight.recording, other).first_diverged_tick == hash_interval_ticks);

    Recording damaged = flight.recording;
    damaged.hashes[9] ^= 1;
    CHECK(make_rewind(damaged, scenario).first_diverged_tick == 10 * hash_interval_ticks);
}

TEST_CASE("rewind: a recording that goes on after the aircraft has come to rest ends there") {
    const Scenario scenario = shipped_scenario("final_calm");
    Flight flight = fly_good(scenario, 4);
    ControlPositions hands = positions_of(flight.attempt.controls);
    hands.throttle = 0.0;
    while (!flight.attempt.at_rest) {
        tick(scenario, flight.attempt, quantize(hands));
        record(flight.recording, quantize(hands), flight.attempt);
    }
    Recording longer = flight.recording;
    longer.ticks += 5 * hash_interval_ticks;
    const Rewind rewind = make_rewind(longer, scenario);
    CHECK(rewind.last_tick == flight.recording.ticks);
    CHECK(rewind.first_diverged_tick == -1);
    CHECK(rewind.each_second.size() == flight.recording.hashes.size() + 1);
    CHECK(hash_at(rewind, longer.ticks) == state_hash(flight.attempt));
}
