// One line of the logbook's list: what is shown of an attempt without opening it. It is made from the
// attempt, never the other way, so a lost or older row is only made anew.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "logbook/kept_attempt.h"
#include "progress/attempt_row.h"

namespace slopewise {

struct IndexRow {
    std::string id;
    std::string student;  // empty: no name given
    bool cut_off = false;
    std::int64_t deleted_unix_s = 0;  // 0: it stands; else it can still be brought back
    AttemptRow row;
};

IndexRow index_row(const KeptAttempt& attempt, const ReviewedFlight& flight);

// One line, fields between tabs; numbers exactly, as their bits.
std::string index_row_text(const IndexRow& row);

// Nothing when it is damaged or of another version: the row is to be made from its attempt again.
std::optional<IndexRow> read_index_row(std::string_view line);

}  // namespace slopewise
