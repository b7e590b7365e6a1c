#include "record/recording.h"

namespace slopewise {

Recording begin_recording(const Lesson& lesson) {
    Recording recording;
    recording.lesson = lesson;
    return recording;
}

void record(Recording& recording, const Controls& controls, const Attempt& attempt) {
    if (attempt.tick == recording.ticks) return;  // at rest: nothing moved
    if (recording.changes.empty() || !(recording.changes.back().controls == controls)) {
        recording.changes.push_back({recording.ticks, controls});
    }
    recording.ticks = attempt.tick;
    recording.final_hash = state_hash(attempt);
    if (attempt.tick % hash_interval_ticks == 0) recording.hashes.push_back(recording.final_hash);
}

Replay replay(const Recording& recording, const Scenario& scenario) {
    return replay(recording, scenario, [](const Attempt&, const Events&) {});
}

Replay replay(const Recording& recording, const Scenario& scenario, const ReplayWatcher& each) {
    Replay result{begin_attempt(scenario), -1};
    Attempt& attempt = result.attempt;
    std::size_t next_change = 0;
    Controls controls = attempt.controls;
    const auto check = [&](std::uint64_t expected) {
        if (result.first_diverged_tick < 0 && state_hash(attempt) != expected)
            result.first_diverged_tick = attempt.tick;
    };
    each(attempt, Events{});
    for (std::int64_t i = 0; i < recording.ticks; ++i) {
        if (next_change < recording.changes.size() && recording.changes[next_change].tick == i) {
            controls = recording.changes[next_change++].controls;
        }
        each(attempt, tick(scenario, attempt, controls));
        const auto second = static_cast<std::size_t>(attempt.tick / hash_interval_ticks);
        const bool whole =
            attempt.tick % hash_interval_ticks == 0 && second >= 1 && second <= recording.hashes.size();
        if (whole) check(recording.hashes[second - 1]);
    }
    check(recording.final_hash);
    return result;
}

}  // namespace slopewise
