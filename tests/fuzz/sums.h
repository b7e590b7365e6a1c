// Sums that agree with bytes that were changed, so that what stands behind a sum is met too.
#pragma once

#include <string>
#include <string_view>

namespace slopewise::test {

// The text with 16 digits after `before` replaced by the sum of all from `from` on; as it is where these do
// not stand there.
std::string with_sum(std::string_view text, std::string_view before, std::string_view from);

// Of a kept attempt, and of a line of rows in a student's file.
std::string attempt_with_sum(std::string_view text);
std::string rows_with_sum(std::string_view line);

}  // namespace slopewise::test
