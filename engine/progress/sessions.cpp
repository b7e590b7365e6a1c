#include "progress/sessions.h"

namespace slopewise {
namespace {

std::vector<bool> begins_after(std::span<const AttemptRow> rows, std::int64_t gap_s) {
    std::vector<bool> begins(rows.size(), false);
    std::int64_t last_s = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const std::int64_t now_s = rows[i].started_unix_s;
        begins[i] = i == 0 || (now_s > 0 && last_s > 0 && now_s - last_s > gap_s);
        if (now_s > 0) last_s = now_s;
    }
    return begins;
}

}  // namespace

std::vector<bool> session_begins(std::span<const AttemptRow> rows) {
    return begins_after(rows, session_gap_s);
}

std::vector<bool> long_gaps(std::span<const AttemptRow> rows) {
    return begins_after(rows, refresher_after_s);
}

StopHint stop_hint(std::span<const AttemptRow> rows) {
    const std::vector<bool> begins = session_begins(rows);
    std::size_t first = rows.size();
    while (first > 0 && !begins[first - 1]) --first;
    if (first > 0) --first;
    double flown_s = 0.0;
    int worse = 0;
    for (std::size_t i = first; i < rows.size(); ++i) {
        flown_s += rows[i].duration_s;
        const bool worse_now = i > first && rows[i].path_rad.rms > rows[i - 1].path_rad.rms;
        worse = worse_now ? worse + 1 : 0;
    }
    if (worse >= worsening_in_a_row) return StopHint::worsening;
    if (static_cast<int>(rows.size() - first) >= session_cap_attempts) return StopHint::attempts;
    return flown_s >= session_cap_s ? StopHint::minutes : StopHint::none;
}

bool refresher_due(std::span<const AttemptRow> rows, std::int64_t now_unix_s) {
    for (std::size_t i = rows.size(); i-- > 0;)
        if (rows[i].started_unix_s > 0) return now_unix_s - rows[i].started_unix_s > refresher_after_s;
    return false;
}

}  // namespace slopewise
