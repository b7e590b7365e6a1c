// A text that is kept and grows: a line for each thing, of which the oldest go when it becomes too long.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise {

// The lines, oldest first, each with its newline; of all that are longer together than `most_bytes`, the
// newest.
std::string newest_lines(std::span<const std::string> lines, std::size_t most_bytes);

// The lines of such a text, oldest first, without their newlines. Of a text longer than `most_bytes` its end
// is read, from the first line that is whole.
std::vector<std::string_view> log_lines(std::string_view text, std::size_t most_bytes);

}  // namespace slopewise
