#include "lockstep/following.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "data/recording_file.h"
#include "logbook/journal.h"

namespace slopewise {

Following follow(Recording led, const Attempt& start) {
    Following following;
    following.led = std::move(led);
    following.held = start.controls;
    return following;
}

bool learn(Following& following, std::string_view text) {
    Recording& led = following.led;
    const std::optional<JournalPiece> piece = read_journal_piece(text);
    if (!piece || piece->ticks < led.ticks || piece->ticks > most_recording_ticks) return false;
    if (!piece->changes.empty() && piece->changes.front().tick < led.ticks) return false;
    const auto seconds = static_cast<std::size_t>(piece->ticks / hash_interval_ticks);
    if (led.hashes.size() + piece->hashes.size() != seconds) return false;
    led.changes.insert(led.changes.end(), piece->changes.begin(), piece->changes.end());
    led.hashes.insert(led.hashes.end(), piece->hashes.begin(), piece->hashes.end());
    led.ticks = piece->ticks;
    return true;
}

std::int64_t ticks_behind(const Following& following, const Attempt& attempt) {
    if (attempt.at_rest) return 0;  // nothing moves any more, whatever is told
    return std::max<std::int64_t>(following.led.ticks - attempt.tick, 0);
}

Controls led_controls(Following& following, const Attempt& attempt) {
    const auto& changes = following.led.changes;
    if (following.next_change < changes.size() && changes[following.next_change].tick == attempt.tick)
        following.held = changes[following.next_change++].controls;
    return following.held;
}

void compare(Following& following, const Attempt& attempt) {
    if (following.first_diverged_tick >= 0 || attempt.tick % hash_interval_ticks != 0) return;
    const auto second = static_cast<std::size_t>(attempt.tick / hash_interval_ticks);
    if (second == 0 || second > following.led.hashes.size()) return;
    if (state_hash(attempt) != following.led.hashes[second - 1]) following.first_diverged_tick = attempt.tick;
}

}  // namespace slopewise
