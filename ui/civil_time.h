// Dates and times of day in words, from seconds since 1970 UTC and how far the clock on the wall is ahead of
// it.
#pragma once

#include <cstdint>
#include <string>

namespace slopewise {

// "26 Nov 2026": the Gregorian calendar, any year.
std::string date_words(std::int64_t unix_s, std::int64_t ahead_of_utc_s);

// "14:05".
std::string clock_words(std::int64_t unix_s, std::int64_t ahead_of_utc_s);

// "26 Nov 2026, 14:05"; "time not known" for 0.
std::string when_words(std::int64_t unix_s, std::int64_t ahead_of_utc_s);

}  // namespace slopewise
