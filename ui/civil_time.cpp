#include "ui/civil_time.h"

#include <array>
#include <chrono>
#include <cstdio>

namespace slopewise {
namespace {

constexpr std::array<const char*, 12> months{"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                             "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

std::chrono::sys_seconds on_the_wall(std::int64_t unix_s, std::int64_t ahead_of_utc_s) {
    return std::chrono::sys_seconds{std::chrono::seconds{unix_s + ahead_of_utc_s}};
}

}  // namespace

std::string date_words(std::int64_t unix_s, std::int64_t ahead_of_utc_s) {
    using namespace std::chrono;
    const year_month_day date{floor<days>(on_the_wall(unix_s, ahead_of_utc_s))};
    char words[32];
    std::snprintf(words, sizeof words, "%u %s %d", static_cast<unsigned>(date.day()),
                  months[static_cast<unsigned>(date.month()) - 1], static_cast<int>(date.year()));
    return words;
}

std::string clock_words(std::int64_t unix_s, std::int64_t ahead_of_utc_s) {
    using namespace std::chrono;
    const sys_seconds now = on_the_wall(unix_s, ahead_of_utc_s);
    const auto minutes_of_day = static_cast<int>(floor<minutes>(now - floor<days>(now)).count());
    char words[16];
    std::snprintf(words, sizeof words, "%02d:%02d", minutes_of_day / 60, minutes_of_day % 60);
    return words;
}

std::string when_words(std::int64_t unix_s, std::int64_t ahead_of_utc_s) {
    if (unix_s == 0) return "time not known";
    return date_words(unix_s, ahead_of_utc_s) + ", " + clock_words(unix_s, ahead_of_utc_s);
}

}  // namespace slopewise
