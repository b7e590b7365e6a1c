#include "question/tally.h"

#include <cstdio>
#include <utility>

#include "debrief/table.h"
#include "review/track_csv.h"

namespace slopewise {
namespace {

struct Cell {
    const char* name;
    const char* meaning;
    std::string (*text)(const AskedQuestion& asked, std::size_t choice);
};

// "2026-11-26T14:05:00" of the clock on the wall, by the civil calendar of whole days since 1970 (Hinnant's
// days-to-civil algorithm, from memory).
std::string local_time(const AskedQuestion& asked) {
    if (asked.asked_unix_s <= 0) return "";
    constexpr std::int64_t day_s = 86400;
    const std::int64_t local_s = asked.asked_unix_s + asked.ahead_of_utc_s;
    const std::int64_t days = local_s / day_s + 719468, second = local_s % day_s;
    const std::int64_t era = days / 146097, of_era = days % 146097;
    const std::int64_t year_of_era = (of_era - of_era / 1460 + of_era / 36524 - of_era / 146096) / 365;
    const std::int64_t of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    const std::int64_t shifted = (5 * of_year + 2) / 153;  // months from March
    const std::int64_t day = of_year - (153 * shifted + 2) / 5 + 1;
    const std::int64_t month = shifted < 10 ? shifted + 3 : shifted - 9;
    const std::int64_t year = year_of_era + era * 400 + (month <= 2 ? 1 : 0);
    char text[80];
    std::snprintf(text, sizeof text, "%04lld-%02lld-%02lldT%02lld:%02lld:%02lld",
                  static_cast<long long>(year), static_cast<long long>(month), static_cast<long long>(day),
                  static_cast<long long>(second / 3600), static_cast<long long>(second / 60 % 60),
                  static_cast<long long>(second % 60));
    return text;
}

std::string count_of(const std::vector<int>& hands, std::size_t choice) {
    return choice < hands.size() ? std::to_string(hands[choice]) : "";
}

constexpr Cell cells[] = {
    {"asked_local", "when it was revealed, by the clock on the wall: year-month-dayThour:minute:second",
     [](const AskedQuestion& a, std::size_t) { return local_time(a); }},
    {"set", "the set of questions",
     [](const AskedQuestion& a, std::size_t) { return csv_cell(a.set_title); }},
    {"set_id", "its identity", [](const AskedQuestion& a, std::size_t) { return csv_cell(a.set_id); }},
    {"question_number", "the question's place in the set, from 1",
     [](const AskedQuestion& a, std::size_t) { return std::to_string(a.number); }},
    {"kind", "what is asked: energy_state, lights, where_hit, stable, first_action or moves_first",
     [](const AskedQuestion& a, std::size_t) { return csv_cell(a.kind); }},
    {"question", "its words", [](const AskedQuestion& a, std::size_t) { return csv_cell(a.words); }},
    {"choice_number", "the choice's place, from 1",
     [](const AskedQuestion&, std::size_t i) { return std::to_string(i + 1); }},
    {"choice", "its words", [](const AskedQuestion& a, std::size_t i) { return csv_cell(a.choices[i]); }},
    {"right", "1: the flight says it is right; 0: it is not",
     [](const AskedQuestion& a, std::size_t i) {
         return std::string(static_cast<int>(i) == a.right ? "1" : "0");
     }},
    {"hands_first", "hands for it when everyone decided alone",
     [](const AskedQuestion& a, std::size_t i) { return count_of(a.first, i); }},
    {"hands_second", "hands for it after talking it over; empty: not counted again",
     [](const AskedQuestion& a, std::size_t i) { return count_of(a.second, i); }}};

}  // namespace

std::string tally_csv(std::span<const AskedQuestion> asked) {
    std::string text = std::string("# ") + file_caution + "\n";
    const char* between = "";
    for (const Cell& cell : cells) text += std::exchange(between, ",") + std::string(cell.name);
    text += "\n";
    for (const AskedQuestion& one : asked) {
        for (std::size_t i = 0; i < one.choices.size(); ++i) {
            between = "";
            for (const Cell& cell : cells) text += std::exchange(between, ",") + cell.text(one, i);
            text += "\n";
        }
    }
    return text;
}

std::string tally_dictionary() {
    std::string text = std::string("# ") + file_caution + "\nfile,column,meaning\n";
    for (const Cell& cell : cells)
        text += std::string("class-answers.csv,") + cell.name + "," + csv_cell(cell.meaning) + "\n";
    return text;
}

}  // namespace slopewise
