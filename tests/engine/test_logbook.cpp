// The logbook's texts: an attempt, its row, its journal, a student's file. What comes back is what went in,
// and nothing damaged passes for whole.
#include <limits>
#include <string>

#include "data/recording_file.h"
#include "logbook/attempt_id.h"
#include "logbook/index_row.h"
#include "logbook/journal.h"
#include "logbook/student_file.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// A calm approach flown by hands that move a little all the time, from 1 NM.
Recording flown(const Scenario& scenario, std::int64_t ticks) {
    Recording recording = begin_recording(scenario.lesson);
    recording.circumstances.student = "Kestrel \"7\"";
    recording.circumstances.started_unix_s = 1764000000;
    Attempt attempt = begin_attempt(scenario);
    for (std::int64_t i = 0; i < ticks; ++i) {
        Controls controls = quantize(scenario.start_trim.controls);
        controls.stick = static_cast<std::int16_t>(controls.stick + 40 * ((i / 7) % 5));
        tick(scenario, attempt, controls);
        record(recording, controls, attempt);
    }
    return recording;
}

KeptAttempt kept(std::int64_t ticks = 30 * 120) {
    const Scenario scenario = shipped_scenario("final_calm");
    return kept_from(attempt_id(1764000000123, 0x7f3a09bc), flown(scenario, ticks), scenario);
}

std::string problem_of(const std::string& text) {
    const Result<KeptAttempt> result = read_kept_attempt(text, "x");
    return result.ok() ? "read" : to_text(result.problems.front());
}

bool same(const Recording& a, const Recording& b) { return recording_text(a) == recording_text(b); }

}  // namespace

TEST_CASE("logbook: an identity sorts by time, and other texts are none") {
    CHECK(attempt_id(1764000000123, 0x7f3a09bc) == "1764000000123-7f3a09bc");
    CHECK(attempt_id(7, 1) < attempt_id(1764000000123, 0));
    CHECK(is_attempt_id(attempt_id(0, 0)));
    for (const char* bad : {"", "1764000000123-7f3a09b", "1764000000123-7F3A09BC", "1764000000123_7f3a09bc",
                            "../../00000123-7f3a09bc", "1764000000123-7f3a09bcx"})
        CHECK_FALSE(is_attempt_id(bad));
}

TEST_CASE("logbook: a kept attempt comes back as it was, the track within half a unit") {
    const KeptAttempt was = kept();
    const std::string text = kept_attempt_text(was);
    CHECK(text.find('\n') == std::string::npos);
    const Result<KeptAttempt> read = read_kept_attempt(text + "\n", "x");
    REQUIRE_MESSAGE(read.ok(), (read.ok() ? "" : to_text(read.problems.front())));
    const KeptAttempt& is = *read.value;
    CHECK(is.id == was.id);
    CHECK(is.cut_off);
    CHECK(is.end == End::none);
    CHECK(same(is.recording, was.recording));
    REQUIRE(is.track.points.size() == was.track.points.size());
    CHECK(is.track.scored == was.track.scored);
    for (std::size_t i = 0; i < is.track.points.size(); ++i) {
        const TrackPoint &a = is.track.points[i], &b = was.track.points[i];
        CHECK_NEAR(a.time_s, b.time_s, 0.00051);              // half a millisecond
        CHECK_NEAR(a.eye_height_m, b.eye_height_m, 0.00051);  // half a millimetre
        CHECK_NEAR(a.path_error_rad, b.path_error_rad, 5.1e-7);
        CHECK_NEAR(a.cas_mps, b.cas_mps, 0.00051);
        CHECK_NEAR(a.stick, b.stick, 5.1e-5);
        CHECK(a.white_count == b.white_count);
        CHECK(a.flap_setting == b.flap_setting);
    }
    CHECK(kept_attempt_text(is) == text);
}

TEST_CASE("logbook: one byte changed anywhere in a kept attempt is found") {
    const std::string text = kept_attempt_text(kept(8 * 120));
    for (std::size_t i = 0; i < text.size(); i += 1 + text.size() / 400) {
        std::string damaged = text;
        damaged[i] = damaged[i] == '7' ? '3' : '7';
        CHECK_FALSE(read_kept_attempt(damaged, "x").ok());
    }
    for (std::size_t length = 0; length < text.size(); length += 1 + text.size() / 100)
        CHECK_FALSE(read_kept_attempt(text.substr(0, length), "x").ok());
}

TEST_CASE("logbook: what is refused says why") {
    const std::string text = kept_attempt_text(kept(8 * 120));
    CHECK(problem_of("hello").find("is no kept attempt") != std::string::npos);
    std::string newer = text;
    newer.replace(newer.find("attempt\":1"), 10, "attempt\":2");
    CHECK(problem_of(newer).find("another version") != std::string::npos);
    std::string damaged = text;
    damaged.back() = ' ';
    CHECK(problem_of(damaged).find("is damaged: its sum does not agree") != std::string::npos);
}

TEST_CASE("logbook: an attempt that no longer flies the same is measured by the track that was kept") {
    const Scenario scenario = shipped_scenario("final_calm");
    KeptAttempt attempt = kept(60 * 120);
    const ReviewedFlight same_as_ever = review_kept(attempt, scenario, Criteria{});
    CHECK(same_as_ever.first_diverged_tick == -1);
    attempt.recording.hashes[20] ^= 1;  // as if a newer model flew it otherwise from second 21 on
    for (TrackPoint& point : attempt.track.points) point.cas_mps += 1.0;
    const ReviewedFlight parted = review_kept(attempt, scenario, Criteria{});
    CHECK(parted.first_diverged_tick == 21 * 120);
    CHECK_NEAR(parted.review.summary.speed_mps.bias, same_as_ever.review.summary.speed_mps.bias + 1.0, 1e-9);
}

TEST_CASE("logbook: a row comes back exactly, and another version's is made again") {
    const Scenario scenario = shipped_scenario("final_calm");
    KeptAttempt attempt = kept(60 * 120);
    IndexRow was = index_row(attempt, review_kept(attempt, scenario, Criteria{}));
    was.deleted_unix_s = 5;
    was.row.priority_fault = "late_power";
    const std::string line = index_row_text(was);
    CHECK(line.find('\n') == std::string::npos);
    const std::optional<IndexRow> is = read_index_row(line);
    REQUIRE(is);
    CHECK(index_row_text(*is) == line);
    CHECK(is->student == "Kestrel \"7\"");
    CHECK(is->row.path_rad.bias == was.row.path_rad.bias);
    CHECK(is->row.path_rad.rms == was.row.path_rad.rms);
    CHECK(is->row.decision == was.row.decision);
    CHECK_FALSE(read_index_row("0" + line.substr(1)));
    CHECK_FALSE(read_index_row(line.substr(0, line.size() / 2)));
    CHECK_FALSE(read_index_row(line + "\tmore"));
    CHECK_FALSE(read_index_row(""));
    IndexRow odd = was;
    odd.student = "tab\there\nand there";
    CHECK(read_index_row(index_row_text(odd))->student == "tab here and there");
    odd.row.path_rad.bias = std::numeric_limits<double>::quiet_NaN();
    CHECK_FALSE(read_index_row(index_row_text(odd)));
}

TEST_CASE("logbook: a piece of a journal that says it goes on for longer than a flight may is left out") {
    const Recording begun = begin_recording(shipped_scenario("final_calm").lesson);
    const Result<Recording> read = read_journal({journal_head(begun), "h 1\nt 999999960\n"}, "journal");
    CHECK((!read.ok() || read.value->ticks == 0));
}

TEST_CASE("logbook: a journal cut anywhere gives the flight up to its last whole second") {
    const Scenario scenario = shipped_scenario("final_calm");
    Recording whole = begin_recording(scenario.lesson);
    whole.circumstances.student = "Kestrel";
    std::vector<std::string> pieces{journal_head(whole)};
    JournalMark mark = journal_mark(whole);
    Attempt attempt = begin_attempt(scenario);
    std::vector<Recording> at_second;
    at_second.push_back(whole);
    for (int i = 0; i < 20 * 120; ++i) {
        Controls controls = quantize(scenario.start_trim.controls);
        controls.stick = static_cast<std::int16_t>(controls.stick + i % 90);
        tick(scenario, attempt, controls);
        record(whole, controls, attempt);
        if (whole.hashes.size() == mark.hashes) continue;
        pieces.emplace_back();
        journal_piece(whole, mark, pieces.back());
        at_second.push_back(whole);
    }
    REQUIRE(pieces.size() == 21);
    for (std::size_t count = 1; count <= pieces.size(); ++count) {
        std::vector<std::string> cut(pieces.begin(), pieces.begin() + static_cast<std::ptrdiff_t>(count));
        Result<Recording> read = read_journal(cut, "journal");
        REQUIRE(read.ok());
        CHECK(same(*read.value, at_second[count - 1]));
        if (count > 1) CHECK(replay(*read.value, scenario).first_diverged_tick == -1);
        // Half of the next piece changes nothing.
        if (count == pieces.size()) continue;
        cut.push_back(pieces[count].substr(0, pieces[count].size() / 2));
        read = read_journal(cut, "journal");
        REQUIRE(read.ok());
        CHECK(same(*read.value, at_second[count - 1]));
    }
    std::vector<std::string> gap = pieces;
    gap.erase(gap.begin() + 5);
    CHECK(read_journal(gap, "journal").value->ticks == 4 * 120);
    CHECK_FALSE(read_journal({}, "journal").ok());
    CHECK_FALSE(read_journal({"no head"}, "journal").ok());
}

TEST_CASE("logbook: the head of a student's file comes back, with a name and without") {
    for (const char* name : {"Kestrel \"7\"", "Wren \xC3\xA9", ""}) {
        std::string head = student_file_head(name);
        CHECK(head.ends_with("}\n"));
        head.pop_back();
        const Result<std::string> read = read_student_file_head(head, "x");
        REQUIRE(read.ok());
        CHECK(*read.value == name);
    }
}

TEST_CASE("logbook: a student's file loses a damaged line alone, and says which") {
    KeptAttempt one = kept(8 * 120), two = kept(9 * 120);
    two.id = attempt_id(1764000900000, 2);
    std::string damaged = kept_attempt_text(one);
    damaged[damaged.size() / 2] = damaged[damaged.size() / 2] == '1' ? '2' : '1';
    const std::string text = student_file_head("Kestrel \"7\"") + kept_attempt_text(one) + "\n" + damaged +
                             "\n\n" + kept_attempt_text(two) + "\n";
    std::vector<std::string> ids;
    const auto note = [&](const KeptAttempt& attempt) { ids.push_back(attempt.id); };
    const StudentFile file = read_student_file(text, "kestrel.jsonl", note);
    CHECK(file.student == "Kestrel \"7\"");
    REQUIRE(ids.size() == 2);
    CHECK(ids[1] == two.id);
    REQUIRE(file.problems.size() == 1);
    CHECK(to_text(file.problems[0]) == "kestrel.jsonl:3: is damaged: its sum does not agree");
    CHECK(read_student_file("x\n" + text, "f", note).problems.front().what ==
          "is no student's file of Slopewise");
    const StudentFile newer = read_student_file("{\"slopewise_student\":2,\"student\":\"A\"}\n", "f", note);
    CHECK(newer.problems.front().what == "was written by a newer version of Slopewise");
}
