#include "data/recording_file.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_recording(std::string_view text) {
    const Result<Recording> read = read_recording(text, "x");
    if (!demand_answer(read)) return;
    const std::string written = recording_text(*read.value);
    const Result<Recording> again = read_recording(written, "x");
    demand(again.ok(), "a recording that was written is read: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(recording_text(*again.value) == written, "a recording is written the same again");
    Recording flown = *read.value;
    if (!check_lesson(shipped(), flown.lesson, "x").empty()) return;
    fly_lesson(flown.lesson, text);
    // By its own controls, as far as a while goes.
    flown.ticks = std::min<std::int64_t>(flown.ticks, 2000);
    flown.hashes.resize(static_cast<std::size_t>(flown.ticks / hash_interval_ticks));
    const Replay replayed = replay(flown, scenario_of(shipped(), flown.lesson));
    demand(replayed.attempt.tick <= flown.ticks, "a recording is flown as long as it says");
}

std::vector<std::string> seeds_of_recording() { return {recording_text(short_recording())}; }

}  // namespace slopewise::test
