// What classes answered, as it is kept: a line of JSON for each question that was revealed.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "question/tally.h"

namespace slopewise {

// A small share of what a page may keep; it holds some six hundred questions.
inline constexpr std::size_t most_tally_bytes = 300'000;

// Oldest first. Where all together are longer than `most_bytes`, the oldest are left out.
std::string tally_log_text(std::span<const AskedQuestion> asked, std::size_t most_bytes = most_tally_bytes);

// What could be read, and the problems of each line that could not: one that is damaged costs itself alone.
struct TallyLog {
    std::vector<AskedQuestion> asked;
    std::vector<Problem> problems;
};
TallyLog read_tally_log(std::string_view text);

}  // namespace slopewise
