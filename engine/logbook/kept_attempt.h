// An attempt as it is kept: the recording, exactly; the track beside it, for the day when a newer model no
// longer flies the recording the same; and a sum by which damage is found.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "debrief/reviewed_flight.h"

namespace slopewise {

struct KeptAttempt {
    std::string id;        // of all attempts everywhere; see attempt_id.h
    bool cut_off = false;  // it did not come to its end: left, or the program was closed
    End end = End::none;
    Recording recording;
    Track track;
};

// One line of JSON, UTF-8, ending without a line feed.
std::string kept_attempt_text(const KeptAttempt& attempt);

// At most 32 MiB. Refused, with every problem: damage (the sum differs), another kind of file, one written by
// a newer program, a bad recording or track.
Result<KeptAttempt> read_kept_attempt(std::string_view text, const std::string& file);

// Its identity alone, its sum checked but nothing else read: quick. Refused when it is damaged.
Result<std::string> kept_attempt_id(std::string_view text, const std::string& file);

// Of a recording alone: its track and its end come from flying it again. `scenario` is of its lesson.
KeptAttempt kept_from(std::string id, Recording recording, const Scenario& scenario);

// Flown again and measured. One that no longer flies the same is measured by the track that was kept, and
// first_diverged_tick says where they part. `scenario` is of the recording's lesson.
ReviewedFlight review_kept(const KeptAttempt& attempt, const Scenario& scenario, const Criteria& criteria);

// Whether a text begins as a kept attempt does.
bool looks_like_kept_attempt(std::string_view text);

inline constexpr int kept_attempt_format = 1;
inline constexpr std::size_t most_kept_attempt_bytes = std::size_t{32} << 20;

}  // namespace slopewise
