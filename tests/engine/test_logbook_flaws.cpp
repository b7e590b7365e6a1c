// The logbook's smaller texts with something wrong in them: identities, rows, journals, a student's file.
#include <string>
#include <vector>

#include "data/recording_file.h"
#include "logbook/attempt_id.h"
#include "logbook/index_row.h"
#include "logbook/journal.h"
#include "logbook/student_file.h"
#include "logbook/text_sum.h"
#include "tests/check.h"
#include "tests/engine/mutation.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

IndexRow full_row() {
    IndexRow row{attempt_id(1764000000123, 7), "Kestrel", true, 5, {}};
    row.row.lesson = "final_calm";
    row.row.started_unix_s = 1764000000;
    row.row.duration_s = 61.5;
    row.row.path_rad = {0.001, -0.002, 0.003};
    row.row.speed_mps = {1.0, 2.0, 3.0};
    row.row.decision = Decision::cautious;
    row.row.priority_fault = "late_power";
    return row;
}

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells{""};
    for (const char c : line) {
        if (c == '\t') cells.emplace_back();
        else cells.back() += c;
    }
    return cells;
}

std::string joined(const std::vector<std::string>& cells) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) line += (i > 0 ? "\t" : "") + cells[i];
    return line;
}

const std::string& head() {
    static const std::string text = journal_head(begin_recording(shipped_scenario("final_calm").lesson));
    return text;
}

std::int64_t ticks_of(std::vector<std::string> pieces) {
    pieces.insert(pieces.begin(), head());
    const Result<Recording> read = read_journal(pieces, "journal");
    REQUIRE(read.ok());
    return read.value->ticks;
}

std::string told(const std::vector<Problem>& problems) {
    std::string all;
    for (const Problem& problem : problems) all += to_text(problem) + "\n";
    return all;
}

}  // namespace

TEST_CASE("logbook flaws: an identity is of its length, its digits and its hyphen, and of nothing else") {
    const std::string good = attempt_id(1764000000123, 0x7f3a09bc);
    for (std::size_t i = 0; i < good.size(); ++i) {
        for (const char c : std::string("/:`gG-_ \n\xFF")) {
            if (i == 13 && c == '-') continue;
            std::string bad = good;
            bad[i] = c;
            CHECK_MESSAGE(!is_attempt_id(bad), bad);
        }
    }
    CHECK_FALSE(is_attempt_id("176400000012a-7f3a09bc"));  // hexadecimal only after the hyphen
    CHECK_FALSE(is_attempt_id(good.substr(1)));
    CHECK_FALSE(is_attempt_id(good + "0"));
}

TEST_CASE("logbook flaws: a row with a cell that is no number, too many, too few or no identity is none") {
    const std::string line = index_row_text(full_row());
    const std::vector<std::string> cells = cells_of(line);
    REQUIRE(cells.size() == 27);
    REQUIRE(read_index_row(line));
    // The last four: decision, fault, share of the path help, criterion.
    const std::size_t fault = cells.size() - 3, decision = fault - 1;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        CAPTURE(i);
        std::vector<std::string> shorter(cells.begin(), cells.begin() + static_cast<std::ptrdiff_t>(i));
        CHECK_FALSE(read_index_row(joined(shorter)));
        if (i == 2 || i == 5 || i == fault) continue;  // texts: the student, the lesson, the fault
        for (const char* bad : {"", "x", "1x", " 1", "99999999999999999999999"}) {
            std::vector<std::string> damaged = cells;
            damaged[i] = bad;
            CHECK_FALSE(read_index_row(joined(damaged)));
        }
    }
    for (const char* bad : {"-1", "4"}) {
        std::vector<std::string> damaged = cells;
        damaged[decision] = bad;
        CHECK_FALSE(read_index_row(joined(damaged)));
    }
    IndexRow odd = full_row();
    odd.student = "a\tb\nc\rd";
    CHECK(read_index_row(index_row_text(odd))->student == "a b c d");
}

TEST_CASE("logbook flaws: a row changed at random is none, or one that is written and read again the same") {
    const std::string line = index_row_text(full_row());
    Random random{59};
    int read = 0;
    for (int i = 0; i < 5000; ++i) {
        const std::optional<IndexRow> row = read_index_row(mutated(line, random));
        if (!row) continue;
        ++read;
        CHECK(is_attempt_id(row->id));
        const std::string again = index_row_text(*row);
        const std::optional<IndexRow> once_more = read_index_row(again);
        REQUIRE(once_more);
        CHECK(index_row_text(*once_more) == again);
    }
    CHECK(read > 200);
    CHECK(read < 4800);
}

TEST_CASE("logbook flaws: a piece of a journal that is not whole or cannot be flown ends it") {
    CHECK(ticks_of({"c 0 1 2 3 2 0\nh aa\nt 120\n"}) == 120);
    CHECK(ticks_of({"c 0 1 2 3 2 0\nc 7 -32767 65535 -32767 3 1\nh aa\nt 120"}) == 120);
    for (const char* bad : {
             "",
             "\n",
             "x 1\n",
             "h a\n\nt 120\n",  // nothing, or no line of ours
             "h a\n",
             "h a",
             "t 120\n",
             "t 0\n",
             "h\nt 120\n",  // not whole
             "h zz\nt 120\n",
             "h 1 2\nt 120\n",
             "ha\nt 120\n",                   // no hash
             "h 11112222333344445\nt 120\n",  // more than 64 bits
             "h a\nt 119\n",
             "h a\nt -1\n",
             "h a\nt 240\n",  // not as long as its hashes
             "h a\nt 120 1\n",
             "h a\nt\n",
             "h a\nt x\n",  // no length
             "c 0 1 2 3 2\nh a\nt 120\n",
             "c 0 1 2 3 2 0 9\nh a\nt 120\n",
             "c\nh a\nt 120\n",
             "c -1 1 2 3 2 0\nh a\nt 120\n",                // before it
             "c 120 1 2 3 2 0\nh a\nt 120\n",               // after it
             "c 9 1 2 3 2 0\nc 9 1 2 3 2 0\nh a\nt 120\n",  // twice at once
             "c 9 1 2 3 2 0\nc 8 1 2 3 2 0\nh a\nt 120\n",  // backwards
             "c 0 1 2 3 4 0\nh a\nt 120\n",
             "c 0 1 2 3 255 0\nh a\nt 120\n",  // no such flap
             "c 0 -32768 2 3 2 0\nh a\nt 120\n",
             "c 0 1 2 -32768 2 0\nh a\nt 120\n",
             "c 0 32768 2 3 2 0\nh a\nt 120\n",
             "c 0 1 65536 3 2 0\nh a\nt 120\n",
             "c 0 1 -1 3 2 0\nh a\nt 120\n",
         }) {
        CAPTURE(bad);
        CHECK(ticks_of({bad}) == 0);
    }
    CHECK(ticks_of({"h aa\nt 120\n", "h zz\nt 240\n", "h bb\nt 240\n"}) == 120);  // nothing after it counts
    CHECK(ticks_of({"h a\nt 130\n", "t 135\n"}) == 135);
    CHECK(ticks_of({"h a\nt 130\n", "t 125\n"}) == 130);  // back in time
}

TEST_CASE("logbook flaws: what a journal keeps of a go-around comes back") {
    Recording recording = begin_recording(shipped_scenario("final_calm").lesson);
    JournalMark mark = journal_mark(recording);
    Controls controls{-5, 65535, 7, 3, true};
    recording.changes.push_back({4, controls});
    recording.hashes.push_back(0xab);
    recording.ticks = 120;
    std::string piece;
    journal_piece(recording, mark, piece);
    CHECK(piece == "c 4 -5 65535 7 3 1\nh ab\nt 120\n");
    const Result<Recording> read = read_journal({head(), piece}, "journal");
    REQUIRE(read.ok());
    REQUIRE(read.value->changes.size() == 1);
    CHECK(read.value->changes[0].controls == controls);
    CHECK(read.value->final_hash == 0xab);
}

TEST_CASE(
    "logbook flaws: a journal changed at random is refused, or gives a recording that a file can hold") {
    std::vector<std::string> pieces{head()};
    for (int second = 1; second <= 4; ++second)
        pieces.push_back("c " + std::to_string(120 * second - 60) +
                         " 40 30000 -20 2 0\nh 1a2b3c4d5e6f7081\nt " + std::to_string(120 * second) + "\n");
    REQUIRE(read_journal(pieces, "journal").value->ticks == 480);
    Random random{60};
    int shorter = 0;
    for (int i = 0; i < 3000; ++i) {
        CAPTURE(i);
        std::vector<std::string> damaged = pieces;
        std::string& piece = damaged[pick(random, damaged.size())];
        piece = mutated(piece, random);
        const Result<Recording> read = read_journal(damaged, "journal");
        CHECK(read.ok() == read.problems.empty());
        if (!read.ok()) continue;
        if (read.value->ticks < 480) ++shorter;
        const std::string text = recording_text(*read.value);
        const Result<Recording> again = read_recording(text, "x");
        REQUIRE_MESSAGE(again.ok(), told(again.problems));
        CHECK(recording_text(*again.value) == text);
    }
    CHECK(shorter > 500);
}

TEST_CASE("logbook flaws: a journal of nothing says what it needs") {
    CHECK(told(read_journal({}, "journal").problems) == "journal: is empty; allowed: a journal's head\n");
}

TEST_CASE("logbook flaws: the first line of a student's file that is wrong is told once") {
    const auto told_of = [](const std::string& line) {
        return told(read_student_file_head(line, "x").problems);
    };
    const std::string begin = "{\"slopewise_student\":";
    CHECK(told_of(begin + "1}") == "");
    CHECK(told_of("{}") == "x:1: is no student's file of Slopewise\n");
    CHECK(told_of(begin + "2}") == "x:1: was written by a newer version of Slopewise; allowed: format 1\n");
    CHECK(told_of(begin + "0}") == "x:1: /slopewise_student is 0; allowed: 1 to 1\n");
    CHECK(told_of(begin + "\"1\"}") == "x:1: /slopewise_student is a text; allowed: a number\n");
    CHECK(told_of(begin + "1").starts_with("x:1: is not JSON"));
    CHECK(told_of(begin + "1,\"student\":\"\"}") == "x:1: /student is 0 bytes long; allowed: 1 to 200\n");
    CHECK(told_of(begin + "1,\"student\":7}") == "x:1: /student is a number; allowed: a text\n");
    CHECK(told_of(begin + "1,\"pupil\":\"A\"}") == "x:1: /pupil is not a known key\n");
    CHECK(told_of(begin + "1" + std::string(5000, ' ') + "}") ==
          "x: is 5023 bytes long; allowed: 4096 bytes\n");
    Random random{61};
    for (int i = 0; i < 2000; ++i) {
        const std::string line = mutated(begin + "1,\"student\":\"Kestrel 7\"}", random);
        const Result<std::string> read = read_student_file_head(line, "x");
        CHECK(read.ok() == read.problems.empty());
        if (!read.ok() || read.value->empty()) continue;
        const std::string head_line = student_file_head(*read.value);
        CHECK(*read_student_file_head(head_line, "x").value == *read.value);
    }
}

TEST_CASE("logbook flaws: any bytes given as a name make a first line that is read") {
    for (const char* name : {"a\\b", "\x01\x1F", "line\nfeed", "\xFF\xC3", "\"}"}) {
        const std::string line = student_file_head(name);
        CHECK(line.find('\n') == line.size() - 1);
        CHECK(read_student_file_head(line, "x").ok());
    }
}

TEST_CASE(
    "logbook flaws: a student's file with the line ends of another system is read, and may end anyhow") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight flight = fly_with(scenario, 120, [](const Attempt& attempt) { return attempt.controls; });
    const std::string attempt =
        kept_attempt_text(kept_from(attempt_id(1764000000123, 7), flight.recording, scenario));
    const std::string first = "{\"slopewise_student\":1,\"student\":\"Kestrel\"}";
    int read = 0;
    const auto count = [&](const KeptAttempt&) { ++read; };
    for (const std::string end : {"\n", "\r\n"}) {
        for (const std::string last : {"", "\n", "\r\n\r\n"}) {
            read = 0;
            const StudentFile file =
                read_student_file(first + end + attempt + end + attempt + last, "x", count);
            CHECK(told(file.problems) == "");
            CHECK(file.student == "Kestrel");
            CHECK(read == 2);
        }
    }
    CHECK(read_student_file(first, "x", count).problems.empty());  // no line end, no attempt
    CHECK(told(read_student_file("", "x", count).problems) == "x:1: is no student's file of Slopewise\n");
}

TEST_CASE("logbook flaws: the rows of a student's file are read whole, or told as damaged") {
    CHECK(student_rows_line({}) == "");
    const IndexRow row = full_row();
    const IndexRow* const list[] = {&row};
    const std::string line = student_rows_line(list);
    const std::string key = "\",\"rows\":", opening = line.substr(0, line.find(key) - text_sum_digits);
    for (const std::string end : {"", "\n", "\r\n"}) {
        const auto read = read_student_rows(line.substr(0, line.size() - 1) + end, "x");
        REQUIRE(read.ok());
        REQUIRE(read.value->size() == 1);
        CHECK(index_row_text(read.value->front()) == index_row_text(row));
    }
    // Of another version: none, so that the attempts are flown again.
    const auto newer = read_student_rows("{\"slopewise_rows\":2}", "x");
    CHECK((newer.ok() && newer.value->empty()));
    const auto told_of = [](const std::string& text) { return told(read_student_rows(text, "x").problems); };
    const std::string damaged = "x:2: /rows are damaged: their sum does not agree\n";
    CHECK(told_of(line + std::string(most_kept_attempt_bytes, ' ')) == damaged);
    CHECK(told_of(opening + "0123") == damaged);
    std::string other_key = line;
    other_key.replace(other_key.find(key), key.size(), "\",\"cows\":");
    CHECK(told_of(other_key) == damaged);
    std::string changed = line;
    changed[line.size() / 2] ^= 1;
    CHECK(told_of(changed) == damaged);
    // Under a sum that agrees, as another program may make them.
    const auto with_sum = [&](const std::string& rest) {
        return opening + text_sum(rest) + key + "[" + rest;
    };
    CHECK(told_of(with_sum("]")).starts_with("x:1: is not JSON"));
    CHECK(told_of(with_sum("7]}")).find("/rows") != std::string::npos);
    const auto older = read_student_rows(with_sum("\"of another version\"]}"), "x");
    CHECK((older.ok() && older.value->empty()));
}
