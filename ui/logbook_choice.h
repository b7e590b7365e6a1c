// What is chosen in the logbook and on the progress sheet, and the clock as they were opened.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "ui/logbook.h"

namespace slopewise {

struct LogbookChoice {
    std::string attempt;              // id; empty or gone: the newest
    std::string lesson;               // of the progress sheet; empty: all
    std::int64_t now_unix_s = 0;      // when it was opened
    std::int64_t ahead_of_utc_s = 0;  // the clock on the wall, then; told of attempts at any time of the year
    bool writes_by_finger = false;    // a name is written in the machine's own window
};

// The attempt that is chosen when one goes: that flown before it, else that after it, else none.
std::string neighbour_of(const Logbook& logbook, std::string_view student, std::string_view id);

}  // namespace slopewise
