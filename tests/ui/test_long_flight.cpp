// A flight that never ends by itself.
#include "data/recording_file.h"
#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("long flight: after twenty minutes a flight is stopped, and what is kept of it can be read") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, StartFlight{}, host);
    take_all_controls(*app.flight);
    ControlPositions hands = app.flight->scenario.start_trim.controls;
    hands.throttle = 1.0;  // up and away
    std::int64_t ticks = 0;
    bool at_rest = false;
    while (!at_rest && ticks < most_recording_ticks + 10) {
        at_rest = tick_session(*app.flight, quantize(hands)).came_to_rest;
        if (!at_rest) ++ticks;
    }
    CHECK(at_rest);
    CHECK(ticks == most_recording_ticks);
    const Result<KeptAttempt> read = read_kept_attempt(kept_attempt_text(kept_of(*app.flight)), "x");
    REQUIRE_MESSAGE(read.ok(), to_text(read.problems.front()));
    CHECK(read.value->recording.ticks == most_recording_ticks);
}
