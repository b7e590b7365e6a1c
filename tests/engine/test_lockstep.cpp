// A flight followed as its leader flies it: the same bits, and what is told when it is not the same.
#include "lockstep/following.h"

#include "data/recording_file.h"
#include "logbook/journal.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// A leader who flies as the good pilot did, and tells what he flew whenever he is asked.
struct Leader {
    const Scenario& scenario;
    Recording flown;  // before, by the pilot
    Attempt attempt = begin_attempt(scenario);
    Recording recording = begin_recording(scenario.lesson);
    JournalMark told;

    Leader(const Scenario& of, Recording by) : scenario(of), flown(std::move(by)) {}

    void fly(int ticks) {
        for (int i = 0; i < ticks; ++i) {
            Controls held = attempt.controls;
            for (const Recording::Change& change : flown.changes)
                if (change.tick == attempt.tick) held = change.controls;
            tick(scenario, attempt, held);
            record(recording, held, attempt);
        }
    }
    std::string piece() {
        std::string text;
        journal_piece(recording, told, text);
        return text;
    }
};

void fly_after(const Scenario& scenario, Following& following, Attempt& attempt) {
    while (ticks_behind(following, attempt) > 0) {
        const Controls held = led_controls(following, attempt);
        tick(scenario, attempt, held);
        compare(following, attempt);
    }
}

}  // namespace

TEST_CASE(
    "lockstep: told two, five or 300 ticks at a time, the follower's flight is the leader's to the bit") {
    const Scenario scenario = shipped_scenario("wind_gradient");
    const Recording by = fly_good(scenario, 4).recording;
    for (const int ticks : {2, 5, 300}) {
        Leader leader(scenario, by);
        leader.fly(1000);  // the follower comes late, and by what a file would hold
        const Result<Recording> read = read_recording(recording_text(leader.recording), "x");
        REQUIRE(read.ok());
        leader.told = journal_mark(leader.recording);
        Attempt attempt = begin_attempt(scenario);
        Following following = follow(*read.value, attempt);
        for (int told = 0; told < 3000; told += ticks) {
            leader.fly(ticks);
            REQUIRE(learn(following, leader.piece()));
            fly_after(scenario, following, attempt);
            REQUIRE(attempt.tick == leader.attempt.tick);
            REQUIRE(state_hash(attempt) == state_hash(leader.attempt));
        }
        CHECK(following.first_diverged_tick == -1);
        CHECK(following.led.hashes.size() == static_cast<std::size_t>(leader.attempt.tick / 120));
    }
}

TEST_CASE("lockstep: a flight in other air is told of at its first second") {
    const Scenario scenario = shipped_scenario("final_calm");
    Leader leader(scenario, fly_good(scenario, 4).recording);
    Scenario other = scenario;
    other.surroundings.runway.elevation_m += 1.0;
    Attempt attempt = begin_attempt(other);
    Following following = follow(leader.recording, attempt);
    leader.fly(119);
    REQUIRE(learn(following, leader.piece()));
    fly_after(other, following, attempt);
    CHECK(following.first_diverged_tick == -1);  // not yet known
    leader.fly(200);
    REQUIRE(learn(following, leader.piece()));
    fly_after(other, following, attempt);
    CHECK(following.first_diverged_tick == 120);
}

TEST_CASE("lockstep: a piece that is damaged, missing its turn or too long changes nothing") {
    const Scenario scenario = shipped_scenario("final_calm");
    Leader leader(scenario, fly_good(scenario, 4).recording);
    Attempt attempt = begin_attempt(scenario);
    Following following = follow(leader.recording, attempt);
    leader.fly(250);
    const std::string first = leader.piece();
    leader.fly(250);
    const std::string second = leader.piece();
    CHECK_FALSE(learn(following, second));  // the first is missing
    for (const char* bad :
         {"", "t", "t -5\n", "t 120\n", "c 0 0 0 0 0 0\n", "c -3 0 0 0 0 0\nt 5\n", "c 0 0 0 0 9 0\nt 5\n",
          "c 4 0 0 0 0 0\nc 4 0 0 0 0 0\nt 5\n", "c 7 0 0 0 0 0\nt 5\n", "h zz\nt 120\n", "\n", "x\n",
          "c 0 0 0 0 0 0\nt 99999999999999999999\n"})
        CHECK_MESSAGE(!learn(following, bad), bad);
    std::string too_long;
    for (std::int64_t i = 0; i <= most_recording_ticks / 120; ++i) too_long += "h 1\n";
    CHECK_FALSE(learn(following, too_long + "t " + std::to_string(most_recording_ticks + 120) + "\n"));
    CHECK(following.led.ticks == 0);
    CHECK(following.led.changes.empty());
    CHECK(following.led.hashes.empty());
    CHECK(learn(following, first));
    CHECK_FALSE(learn(following, first));  // a second time
    CHECK(learn(following, second));
    CHECK_FALSE(learn(following, "t 490\n"));  // back from where it was
    CHECK(following.led.ticks == 500);
    CHECK(ticks_behind(following, attempt) == 500);
}

TEST_CASE("lockstep: at the start, and further on than the leader has told, nothing is compared") {
    const Scenario scenario = shipped_scenario("final_calm");
    Leader leader(scenario, fly_good(scenario, 4).recording);
    leader.fly(120);
    Attempt attempt = begin_attempt(scenario);
    attempt.flight.x_m += 1.0;  // another flight than the leader's from the start
    Following following = follow(leader.recording, attempt);
    compare(following, attempt);
    CHECK(following.first_diverged_tick == -1);
    attempt.tick = 240;
    compare(following, attempt);
    CHECK(following.first_diverged_tick == -1);
    attempt.tick = 120;
    compare(following, attempt);
    CHECK(following.first_diverged_tick == 120);  // there the leader told how it was
}

TEST_CASE("lockstep: a flight that stands at rest owes nothing, whatever its leader tells") {
    const Scenario scenario = shipped_scenario("final_calm");
    Attempt attempt = begin_attempt(scenario);
    Following following = follow(begin_recording(scenario.lesson), attempt);
    REQUIRE(learn(following, "t 60\n"));
    CHECK(ticks_behind(following, attempt) == 60);
    attempt.at_rest = true;
    CHECK(ticks_behind(following, attempt) == 0);
}
