// A class's table and its printed pages from the command line.
#include "cli/data_files.h"
#include "logbook/attempt_id.h"
#include "logbook/student_file.h"
#include "tests/cli/ask.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Ten seconds of a shipped lesson, the controls left alone; ended where it stands, as one that came to its
// end.
std::string student_text(const std::string& name, int attempts, bool cut_off = false) {
    const Lesson& lesson = *find_lesson(cli::shipped_catalog(), "last_half_mile");
    const Scenario scenario = scenario_of(cli::shipped_catalog(), lesson);
    std::string text = student_file_head(name);
    for (int i = 0; i < attempts; ++i) {
        Recording recording = begin_recording(lesson);
        recording.circumstances.student = name;
        recording.circumstances.started_unix_s = 1795701900 + 600 * i;
        Attempt attempt = begin_attempt(scenario);
        // Each a little more powerful, so that they differ.
        Controls held = attempt.controls;
        held.throttle = static_cast<std::uint16_t>(held.throttle + 500 * i);
        while (attempt.end == End::none && attempt.tick < 120 * 60) {
            tick(scenario, attempt, held);
            record(recording, held, attempt);
        }
        KeptAttempt kept = kept_from(attempt_id(1000LL * recording.circumstances.started_unix_s,
                                                static_cast<std::uint32_t>(name.size())),
                                     std::move(recording), scenario);
        kept.cut_off = cut_off;
        text += kept_attempt_text(kept) + "\n";
    }
    return text;
}

std::string file_of(const std::string& name, const std::string& text) {
    const std::string file = scratch(name);
    std::ofstream(file) << text;
    return file;
}

// A school's file with the tourer as its own aircraft, some of its text changed.
std::string school_with(const std::string& name,
                        std::initializer_list<std::pair<const char*, const char*>> changes) {
    std::string own;
    for (const DataFile& file : cli::shipped_files())
        if (file.name.ends_with("tourer.json")) own = file.text;
    for (const auto& [was, is] : changes) {
        REQUIRE(has(own, was));
        own.replace(own.find(was), std::string_view(was).size(), is);
    }
    return file_of(name, R"({"kind":"school","aircraft":)" + own + "}");
}

std::string last_line(const std::string& text) {
    const std::size_t end = text.find_last_not_of('\n');
    return text.substr(text.rfind('\n', end) + 1, end - text.rfind('\n', end));
}

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    std::stringstream rest(line);
    for (std::string cell; std::getline(rest, cell, ',');) cells.push_back(cell);
    return cells;
}

}  // namespace

TEST_CASE("cli: the figures of evidence are those of progress over the same file") {
    const std::string file = file_of("heron.jsonl", student_text("Heron", 4));
    const cli::Outcome table = slopewise_with({"evidence", file});
    REQUIRE(table.exit_code == cli::good);
    const std::vector<std::string> row = cells_of(last_line(table.out));
    const std::vector<std::string> last =
        cells_of(last_line(slopewise_with({"progress", "--csv", file}).out));
    REQUIRE(row.size() == 11);
    CHECK(row[0] == "Heron");
    CHECK(row[3] == "4");
    CHECK(row[5] == last[13]);  // median_bias_deg
    CHECK(row[6] == last[14]);  // median_scatter_deg
    CHECK(row[7] == "2026-11-26");
}

TEST_CASE("cli: evidence reads the good files and names the bad one with its line") {
    const std::string good = file_of("kestrel.jsonl", student_text("Kestrel", 1));
    const std::string bad = file_of("letter.jsonl", "A letter.\n");
    const cli::Outcome table = slopewise_with({"evidence", good, bad, scratch("nowhere.jsonl")});
    CHECK(table.exit_code == cli::bad_input);
    CHECK(has(table.out, "\nKestrel,"));
    CHECK(has(table.error, "letter.jsonl:1: is no attempt of Slopewise"));
    CHECK(has(table.error, "nowhere.jsonl"));
    CHECK(slopewise_with({"evidence", bad}).out.empty());
}

TEST_CASE("cli: evidence passes over the rest of a letter, and needs no line end at a file's end") {
    const std::string letter = file_of("letter.jsonl", "A letter.\nAnother line.\n");
    const std::string problems = slopewise_with({"evidence", letter}).error;
    CHECK(has(problems, "letter.jsonl:1:"));
    CHECK_FALSE(has(problems, "letter.jsonl:2:"));
    std::string text = student_text("Heron", 1);
    text.pop_back();
    const cli::Outcome table = slopewise_with({"evidence", file_of("heron.jsonl", text)});
    CHECK(table.exit_code == cli::good);
    CHECK(last_line(table.out).starts_with("Heron,"));
}

TEST_CASE("cli: evidence of attempts that were all cut off says that there is nothing to show") {
    const cli::Outcome table =
        slopewise_with({"evidence", file_of("heron.jsonl", student_text("Heron", 1, true))});
    CHECK(table.exit_code == cli::bad_input);
    CHECK(table.out.empty());
    CHECK(has(table.error, "none of these attempts came to its end"));
}

TEST_CASE("cli: evidence sorts by a column, and refuses one that there is not") {
    const std::string heron = file_of("heron.jsonl", student_text("Heron", 1));
    const std::string kestrel = file_of("kestrel.jsonl", student_text("Kestrel", 2));
    CHECK(last_line(slopewise_with({"evidence", heron, kestrel}).out).starts_with("Kestrel,"));
    CHECK(last_line(slopewise_with({"evidence", "--sort", "attempts", "--falling", heron, kestrel}).out)
              .starts_with("Heron,"));
    const cli::Outcome refused = slopewise_with({"evidence", "--sort", "rank", heron});
    CHECK(refused.exit_code == cli::bad_input);
    CHECK(has(refused.error, "spread"));
}

TEST_CASE("cli: handout and lesson plan are whole pages, of the school's file and the aircraft asked for") {
    const std::string school = file_of("school.json", R"({"kind":"school","name":"Marsh <b>& Co</b>"})");
    for (const cli::Outcome& page : {slopewise_with({"handout", "--school", school}),
                                     slopewise_with({"handout", "--plan", "--school", school})}) {
        CHECK_MESSAGE(page.exit_code == cli::good, page.error);
        CHECK(page.out.starts_with("<!doctype html>"));
        CHECK(page.out.ends_with("</html>\n"));
        CHECK(has(page.out, "Marsh &lt;b&gt;&amp; Co&lt;/b&gt;"));
    }
    CHECK(slopewise_with({"handout", "--aircraft", "nothing"}).exit_code == cli::bad_input);
    CHECK(slopewise_with({"handout", "--runway", "nowhere"}).exit_code == cli::bad_input);
    CHECK(slopewise_with({"handout", "--school", scratch("none.json")}).exit_code == cli::bad_input);
}

TEST_CASE("cli: a handout is of the school's own aircraft, unless another is asked for") {
    const std::string school = school_with("own.json", {{"\"Four-seat tourer\"", "\"Marsh Four\""},
                                                        {"\"id\": \"tourer\"", "\"id\": \"marsh\""}});
    const std::string usual = slopewise_with({"handout", "--school", school}).out;
    CHECK(has(usual, "Marsh Four"));
    CHECK(slopewise_with({"handout", "--school", school, "--aircraft", "marsh"}).out == usual);
    const cli::Outcome other = slopewise_with({"handout", "--school", school, "--aircraft", "tourer"});
    CHECK(has(other.out, "Four-seat tourer"));
    CHECK_FALSE(has(other.out, "Marsh Four"));
    const std::string bad = file_of("bad.json", R"({"kind":"school","colour":1})");
    const cli::Outcome refused = slopewise_with({"handout", "--school", bad});
    CHECK(refused.exit_code == cli::bad_input);
    CHECK(has(refused.error, "/colour is not a known key"));
}

TEST_CASE("cli: no handout is made for an airfield where the school's aircraft cannot hold the path") {
    // Enough power for 3 degrees at sea level and too little at 5500 ft, where the engine gives less and the
    // same airspeed is a greater true one; found by trial, it holds from 42 to 53 kW.
    const std::string weak =
        school_with("weak.json", {{"\"rated_power_kw\": 134", "\"rated_power_kw\": 48"}});
    CHECK(slopewise_with({"handout", "--school", weak}).exit_code == cli::good);
    const cli::Outcome refused = slopewise_with({"handout", "--school", weak, "--runway", "drymesa"});
    CHECK(refused.exit_code == cli::bad_input);
    CHECK(refused.out.empty());
    CHECK(has(refused.error, "it cannot be flown there: full power is too little"));
}
