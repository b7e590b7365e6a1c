// Sessions and the hints about them: when to stop for today, when a refresher is due.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "progress/attempt_row.h"

namespace slopewise {

// Attempts more than this apart are of different sessions (common practice, no source).
inline constexpr std::int64_t session_gap_s = 4 * 3600;
// Visual approach skill fades within months and is brought back by rehearsal; a refresher after two weeks is
// common practice, no source. Trends are not joined across so long a gap.
inline constexpr std::int64_t refresher_after_s = 14 * 24 * 3600;
// Short sessions teach more than long ones; the figures are common practice, no source.
inline constexpr double session_cap_s = 20.0 * 60.0;
inline constexpr int session_cap_attempts = 10;
inline constexpr int worsening_in_a_row = 3;

// True at the first attempt of each session, and at that after a gap long enough for a refresher. Attempts
// whose time is not known are of the session before them.
std::vector<bool> session_begins(std::span<const AttemptRow> rows);
std::vector<bool> long_gaps(std::span<const AttemptRow> rows);

enum class StopHint { none, minutes, attempts, worsening };
inline constexpr std::array<std::string_view, 4> stop_hint_words{
    "", "Twenty minutes flown in this session: stop for today.",
    "Ten approaches flown in this session: stop for today.",
    "Three approaches in a row each worse than the one before: stop for today."};

// Of the last session.
StopHint stop_hint(std::span<const AttemptRow> rows);

// Whether a refresher is due at a time; false where the last attempt's time is not known.
bool refresher_due(std::span<const AttemptRow> rows, std::int64_t now_unix_s);

}  // namespace slopewise
