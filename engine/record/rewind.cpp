#include "record/rewind.h"

#include <algorithm>

namespace slopewise {
namespace {

FlownMoment first_moment(const Attempt& attempt) {
    return {attempt, attempt.flight, settled_instruments(attempt.flight), -1};
}

// What is seen follows the attempt that has just been advanced.
void follow(FlownMoment& moment, const Scenario& scenario) {
    moment.instruments = advance_instruments(moment.instruments, moment.attempt.flight);
    if (stall_warning(scenario, moment.attempt)) moment.stalled_tick = moment.attempt.tick;
}

}  // namespace

Rewind make_rewind(const Recording& recording, const Scenario& scenario) {
    return make_rewind(recording, scenario, [](const Attempt&, const Events&) {});
}

Rewind make_rewind(const Recording& recording, const Scenario& scenario, const ReplayWatcher& each) {
    Rewind rewind{recording, scenario, {}, 0, -1};
    rewind.each_second.reserve(static_cast<std::size_t>(recording.ticks / hash_interval_ticks) + 1);
    FlownMoment moment;
    const Replay flown = replay(recording, scenario, [&](const Attempt& attempt, const Events& events) {
        each(attempt, events);
        if (rewind.each_second.empty()) {
            moment = first_moment(attempt);
            rewind.each_second.push_back(moment);
            return;
        }
        if (attempt.tick == moment.attempt.tick) return;  // at rest
        moment.before = moment.attempt.flight;
        moment.attempt = attempt;
        follow(moment, scenario);
        if (attempt.tick % hash_interval_ticks == 0) rewind.each_second.push_back(moment);
    });
    rewind.last_tick = flown.attempt.tick;
    rewind.first_diverged_tick = flown.first_diverged_tick;
    return rewind;
}

FlownMoment moment_at(const Rewind& rewind, std::int64_t tick) {
    const std::int64_t wanted = std::clamp<std::int64_t>(tick, 0, rewind.last_tick);
    FlownMoment moment = rewind.each_second[static_cast<std::size_t>(wanted / hash_interval_ticks)];
    const auto& changes = rewind.recording.changes;
    auto next = std::upper_bound(changes.begin(), changes.end(), moment.attempt.tick,
                                 [](std::int64_t at, const auto& change) { return at < change.tick; });
    Controls controls = controls_at(rewind, moment.attempt.tick);
    while (moment.attempt.tick < wanted) {
        if (next != changes.end() && next->tick == moment.attempt.tick) controls = (next++)->controls;
        moment.before = moment.attempt.flight;
        slopewise::tick(rewind.scenario, moment.attempt, controls);
        follow(moment, rewind.scenario);
    }
    return moment;
}

Controls controls_at(const Rewind& rewind, std::int64_t tick) {
    const auto& changes = rewind.recording.changes;
    const auto after = std::upper_bound(changes.begin(), changes.end(), tick,
                                        [](std::int64_t at, const auto& change) { return at < change.tick; });
    return after == changes.begin() ? rewind.each_second.front().attempt.controls
                                    : std::prev(after)->controls;
}

}  // namespace slopewise
