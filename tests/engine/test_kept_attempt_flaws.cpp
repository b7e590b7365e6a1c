// Kept attempts with something wrong in them under a sum that agrees, as a hand or another program may make
// them: each is told by its place, with what is allowed there, and what is read can be measured.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>

#include "base/hash.h"
#include "data/recording_file.h"
#include "debrief/sheet.h"
#include "logbook/attempt_id.h"
#include "logbook/kept_attempt.h"
#include "tests/check.h"
#include "tests/engine/mutation.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Two seconds of flight: 21 points of a track.
KeptAttempt kept() {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_with(scenario, 2 * hash_interval_ticks, [](const Attempt& attempt) {
        Controls controls = attempt.controls;
        controls.stick = static_cast<std::int16_t>(40 * (attempt.tick / 30));
        return controls;
    });
    return kept_from(attempt_id(1764000000123, 0x7f3a09bc), flight.recording, scenario);
}

// What the sum is of.
std::string summed_part(const std::string& text) { return text.substr(text.find("\"id\":")); }

std::string with_sum(const std::string& summed) {
    Hash hash;
    for (const char c : summed) hash.add(std::uint64_t{static_cast<unsigned char>(c)});
    char sum[20];
    std::snprintf(sum, sizeof sum, "%016llx", static_cast<unsigned long long>(hash.value()));
    return "{\"slopewise_attempt\":1,\"sum\":\"" + std::string(sum) + "\"," + summed;
}

std::string told(const std::vector<Problem>& problems) {
    std::string all;
    for (const Problem& problem : problems) all += to_text(problem) + "\n";
    return all;
}

struct Row {
    std::string was, is;
    std::string says;  // all of it
};

std::string told_of(const std::string& summed, const Row& row) {
    const std::size_t at = summed.find(row.was);
    REQUIRE_MESSAGE(at != std::string::npos, row.was << " does not stand there");
    std::string edited = summed;
    edited.replace(at, row.was.size(), row.is);
    return told(read_kept_attempt(with_sum(edited), "x").problems);
}

// A track's first row with one of its figures replaced; their places are those of the columns.
std::string with_figure(const std::string& summed, std::size_t column, const std::string& value) {
    std::size_t begin = summed.find("\"rows\":[[") + 9;
    for (std::size_t i = 0; i < column; ++i) begin = summed.find(',', begin) + 1;
    std::string edited = summed;
    return edited.replace(begin, summed.find_first_of(",]", begin) - begin, value);
}

std::vector<std::string> column_names(const std::string& summed) {
    const std::size_t begin = summed.find("\"columns\":[\"") + 12, end = summed.find("\"]", begin);
    std::vector<std::string> names{""};
    for (std::size_t i = begin; i < end; ++i) {
        if (summed[i] == ',') names.emplace_back();
        else if (summed[i] != '"') names.back() += summed[i];
    }
    return names;
}

bool can_be_flown_and_drawn(const Track& track) {
    for (const TrackPoint& p : track.points) {
        const bool sound = p.flap_setting >= 0 && p.flap_setting <= 3 && p.flap_position >= 0.0 &&
                           p.flap_position <= 3.0 && p.white_count >= -1 && p.white_count <= 4 &&
                           std::abs(p.stick) <= 1.0 && std::isfinite(p.distance_m) &&
                           std::isfinite(p.cas_mps);
        if (!sound) return false;
    }
    return track.scored <= track.points.size();
}

}  // namespace

TEST_CASE("kept flaws: a text that is none, is too large, or breaks off in its sum is refused") {
    const std::string text = kept_attempt_text(kept());
    const auto told_of_text = [](const std::string& wrong) {
        return told(read_kept_attempt(wrong, "x").problems);
    };
    CHECK(with_sum(summed_part(text)) == text);
    CHECK(read_kept_attempt(text + "\r\n\r\n", "x").ok());
    const std::string format = "; allowed: an attempt of format 1\n";
    for (const char* none : {"", "\n", "\r\n", "{", "{\"slopewise_student\":1}"})
        CHECK(told_of_text(none) == "x: is no kept attempt" + format);
    CHECK(told_of_text(text + std::string(std::size_t{32} << 20, ' ')) ==
          "x: is too large; allowed: at most 32 MiB\n");
    CHECK(told_of_text("{\"slopewise_attempt\":1}") ==
          "x: was written by another version of Slopewise" + format);
    CHECK(told_of_text(text.substr(0, 40)) == "x: is damaged" + format);
    CHECK(told_of_text(text.substr(0, 46) + "'," + text.substr(48)) == "x: is damaged" + format);
    CHECK(told_of_text(text + " ") == "x: is damaged: its sum does not agree\n");
    CHECK(told_of_text(with_sum("")).starts_with("x:1: is not JSON"));
    CHECK(told_of_text(with_sum("\"id\":tru")).starts_with("x:1: is not JSON"));
}

TEST_CASE("kept flaws: an identity is read from where it stands, or it is told that there is none") {
    const std::string summed = summed_part(kept_attempt_text(kept()));
    CHECK(*kept_attempt_id(with_sum(summed), "x").value == "1764000000123-7f3a09bc");
    const std::string none =
        "x: /id is no identity of an attempt; allowed: 13 digits, a hyphen, 8 hexadecimal digits\n";
    for (const char* wrong : {"\"end\":\"none\"}", "\"id\":\"Heron\"}", "\"id\":\"1764000000123"})
        CHECK(told(kept_attempt_id(with_sum(wrong), "x").problems) == none);
}

TEST_CASE("kept flaws: what is wrong is told once, by its place, and nothing else") {
    const std::string summed = summed_part(kept_attempt_text(kept()));
    const std::string ends = "\"none\", \"reached_floor\", \"went_around\", \"ground_short\", \"overflew\"";
    const Row rows[] = {
        {"", "", ""},
        {"\"1764000000123-", "\"x764000000123-",
         "x:1: /id is no identity of an attempt; allowed: 13 digits, a hyphen, 8 hexadecimal digits\n"},
        {"\"1764000000123-7f3a09bc\"", "7", "x:1: /id is a number; allowed: a text\n"},
        {"\"1764000000123-7f3a09bc\"", "\"\"", "x:1: /id is 0 bytes long; allowed: 1 to 40\n"},
        {"\"cut_off\":true", "\"cut_off\":1", "x:1: /cut_off is a number; allowed: true or false\n"},
        {"\"cut_off\":true,", "", ""},  // optional
        {"\"end\":\"none\"", "\"end\":\"landed\"", "x:1: /end is \"landed\"; allowed: " + ends + "\n"},
        {"\"end\":\"none\"", "\"end\":\"none\",\"note\":1", "x:1: /note is not a known key\n"},
        {"\"end\":\"none\"", "\"end\":\"none\",\"end\":\"none\"",
         "x:1: key \"end\" stands twice; allowed: each key once\n"},
        {"\"recording\":", "\"recorded\":",
         "x:1: /recording is missing\nx:1: /recorded is not a known key; nearest: \"recording\"\n"},
        {"\"recording\":", "\"recording\":3,\"r\":",
         "x:1: /recording is a number; allowed: an object\nx:1: /r is not a known key\n"},
        {"\"kind\":\"recording\"", "\"kind\":\"lesson\"",
         "x:1: /recording/kind is \"lesson\"; allowed: \"recording\"\n"},
        {"\"aircraft\":\"tourer\",", "", "x:1: /recording/lesson/aircraft is missing\n"},
        {"\"ticks\":240", "\"ticks\":-1",
         "x:1: /recording/ticks is -1; allowed: 0 to 144000\n"
         "x:1: /recording/hashes has 2 entries; allowed: 0, one for every 120 ticks\n"},
        {"\"track\":{", "\"track\":5,\"t\":{",
         "x:1: /track is a number; allowed: an object\nx:1: /t is not a known key\n"},
    };
    for (const Row& row : rows) CHECK(told_of(summed, row) == row.says);
}

TEST_CASE("kept flaws: a track of other columns, of no rows or of bad ones is told by its place") {
    const std::string summed = summed_part(kept_attempt_text(kept()));
    const std::string time = "; allowed: a whole number, 0 to 1200000\n";
    const Row rows[] = {
        {"\"scored\":21", "\"scored\":22",
         "x:1: /track/rows are 21; allowed: 1 to 12002, no fewer than were scored\n"},
        {"\"scored\":21", "\"scored\":1.5",
         "x:1: /track/scored is 1.5; allowed: a whole number, 1 to 12002\n"},
        {"\"scored\":21", "\"scored\":0", "x:1: /track/scored is 0; allowed: 1 to 12002\n"},
        {"\"columns\":[\"time_ms\"", "\"columns\":[\"time_s\"",
         "x:1: /track/columns names \"time_s\"; allowed: time_ms\n"},
        {"\"white\"]", "\"white\",\"black\"]", "x:1: /track/columns has 24; allowed: 23\n"},
        {",\"white\"]", "]", "x:1: /track/columns has 22; allowed: 23\n"},
        {"\"columns\":[", "\"columns\":7,\"c\":[",
         "x:1: /track/columns is a number; allowed: a list\nx:1: /track/c is not a known key\n"},
        {"\"rows\":[", "\"rows\":null,\"r\":[",
         "x:1: /track/rows is null; allowed: a list\nx:1: /track/r is not a known key\n"},
        {"\"rows\":[[", "\"rows\":[[],[",
         "x:1: /track/rows/0 is not a row of a track; allowed: 23 whole numbers\n"},
        {"\"rows\":[[", "\"rows\":[7,[",
         "x:1: /track/rows/0 is not a row of a track; allowed: 23 whole numbers\n"},
        {"\"rows\":[[0,", "\"rows\":[[null,", "x:1: /track/rows/0 has a bad time_ms" + time},
        {"\"rows\":[[0,", "\"rows\":[[0.5,", "x:1: /track/rows/0 has a bad time_ms" + time},
        {"\"rows\":[[0,", "\"rows\":[[-1,", "x:1: /track/rows/0 has a bad time_ms" + time},
        {"],[100,", "],[1e7,", "x:1: /track/rows/1 has a bad time_ms" + time},
        {"\"rows\":[[0,", "\"rows\":[[101,", "x:1: /track/rows/1 is earlier than the row before\n"},
        {"\"rows\":[[0,", "\"rows\":[[100,", ""},  // two at one time
    };
    for (const Row& row : rows) CHECK(told_of(summed, row) == row.says);

    std::string empty = summed;
    empty.erase(empty.find("\"rows\":[") + 8);
    CHECK(told(read_kept_attempt(with_sum(empty + "]}}"), "x").problems) ==
          "x:1: /track/rows are 0; allowed: 1 to 12002, no fewer than were scored\n");
    std::string many = "\"rows\":[";
    const std::size_t row = summed.find("\"rows\":[") + 8;
    for (int i = 0; i < 12000; ++i) many += summed.substr(row, summed.find("],", row) + 2 - row);
    CHECK(told_of(summed, {"\"rows\":[", many, ""}) ==
          "x:1: /track/rows are 12021; allowed: 1 to 12002, no fewer than were scored\n");
}

TEST_CASE("kept flaws: every figure of a track has its range, and a lever never points out of its table") {
    const std::string summed = summed_part(kept_attempt_text(kept()));
    const std::vector<std::string> names = column_names(summed);
    REQUIRE(names.size() == 23);
    const auto told_with = [&](std::size_t column, const std::string& value) {
        return told(read_kept_attempt(with_sum(with_figure(summed, column, value)), "x").problems);
    };
    for (std::size_t i = 0; i < names.size(); ++i) {
        for (const char* value : {"1e13", "-1e13", "0.25", "\"1\"", "1e300"})
            CHECK(told_with(i, value).starts_with("x:1: /track/rows/0 has a bad " + names[i] +
                                                  "; allowed: a whole number, "));
    }
    struct Limits {
        const char* name;
        int least, most;
    };
    for (const Limits& of : {Limits{"flap_lever", 0, 3},
                             {"go_around_said", 0, 1},
                             {"white", -1, 4},
                             {"flap_1e4", 0, 30000},
                             {"lever_1e4", 0, 10000},
                             {"stick_1e4", -10000, 10000},
                             {"trim_1e4", -10000, 10000},
                             {"lamp_4_1e4", -10000, 10000}}) {
        CAPTURE(of.name);
        const auto column =
            static_cast<std::size_t>(std::find(names.begin(), names.end(), of.name) - names.begin());
        REQUIRE(column < names.size());
        CHECK(told_with(column, std::to_string(of.least)) == "");
        CHECK(told_with(column, std::to_string(of.most)) == "");
        CHECK(told_with(column, std::to_string(of.least - 1)) != "");
        CHECK(told_with(column, std::to_string(of.most + 1)) != "");
    }
    const KeptAttempt said = *read_kept_attempt(with_sum(with_figure(summed, 21, "1")), "x").value;
    CHECK(said.track.points[0].go_around_said);
    CHECK(summed_part(kept_attempt_text(said)) == with_figure(summed, 21, "1"));
}

TEST_CASE("kept flaws: of one that parts from its recording and has no track, the new flight is measured") {
    KeptAttempt attempt = kept();
    attempt.recording.hashes[1] ^= 1;
    attempt.track = {};
    const ReviewedFlight flight = review_kept(attempt, shipped_scenario("final_calm"), Criteria{});
    CHECK(flight.first_diverged_tick == 2 * hash_interval_ticks);
    CHECK(flight.track.points.size() == 21);
}

TEST_CASE(
    "kept flaws: changed at random, one is refused with words and a place, or is whole and can be measured") {
    const std::string summed = summed_part(kept_attempt_text(kept()));
    Random random{58};
    int read = 0, measured = 0;
    for (int i = 0; i < 3000; ++i) {
        const std::string text = with_sum(mutated(summed, random));
        CAPTURE(i);
        Result<KeptAttempt> result = read_kept_attempt(text, "x");
        for (const Problem& problem : result.problems) {
            const bool placed = problem.file == "x" && problem.line >= 1 && !problem.what.empty();
            CHECK_MESSAGE(placed, to_text(problem));
        }
        CHECK(result.ok() == result.problems.empty());
        if (!result.ok()) continue;
        ++read;
        CHECK(is_attempt_id(result.value->id));
        CHECK(can_be_flown_and_drawn(result.value->track));
        const std::string again = kept_attempt_text(*result.value);
        const Result<KeptAttempt> once_more = read_kept_attempt(again, "x");
        REQUIRE(once_more.ok());
        CHECK(kept_attempt_text(*once_more.value) == again);
        const Lesson& lesson = result.value->recording.lesson;
        if (!check_lesson(shipped(), lesson, "x").empty()) continue;
        ++measured;
        result.value->recording.final_hash ^= 1;  // so that the track that was kept is measured
        CHECK(sheet_html(review_kept(*result.value, scenario_of(shipped(), lesson), Criteria{}), {}).size() >
              1000);
    }
    CHECK(read > 100);  // so that both answers are tried
    CHECK(read < 2700);
    CHECK(measured > 50);
}
