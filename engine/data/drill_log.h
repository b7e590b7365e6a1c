// The results of drills as they are kept: a line of JSON each, with the student's name.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "drill/result.h"

namespace slopewise {

struct KeptDrillResult {
    std::string student;  // empty: nobody was named
    DrillResult result;
};

// A page may keep about five million bytes in all; this is a small share of it and holds some hundred
// results.
inline constexpr std::size_t most_drill_log_bytes = 200'000;

// Oldest first. Where all together are longer than `most_bytes`, the oldest are left out.
std::string drill_log_text(std::span<const KeptDrillResult> kept,
                           std::size_t most_bytes = most_drill_log_bytes);

// What could be read of such a text, and the problems of each line that could not: one that is damaged costs
// itself alone. Of a text longer than `most_drill_log_bytes` its end is read.
struct DrillLog {
    std::vector<KeptDrillResult> kept;
    std::vector<Problem> problems;
};
DrillLog read_drill_log(std::string_view text);

}  // namespace slopewise
