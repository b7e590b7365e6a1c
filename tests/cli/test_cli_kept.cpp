// Files that the page hands over, with something wrong in them, given to the command line.
#include "cli/data_files.h"
#include "logbook/attempt_id.h"
#include "logbook/student_file.h"
#include "tests/cli/ask.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Two seconds of the first shipped lesson, the controls left alone.
KeptAttempt kept() {
    const Scenario scenario = scenario_of(cli::shipped_catalog(), cli::shipped_catalog().lessons.front());
    Recording recording = begin_recording(scenario.lesson);
    Attempt attempt = begin_attempt(scenario);
    for (std::int64_t i = 0; i < 2 * hash_interval_ticks; ++i) {
        tick(scenario, attempt, attempt.controls);
        record(recording, attempt.controls, attempt);
    }
    return kept_from(attempt_id(1764000000123, 7), std::move(recording), scenario);
}

// Of a runway that no data file has.
KeptAttempt elsewhere() {
    KeptAttempt attempt = kept();
    attempt.recording.lesson.runway_id = "nowhere_7";
    return attempt;
}

const std::string file = scratch("test_cli_kept.jsonl");

// What `slopewise review` says against a file of this text.
std::string refused(const std::string& text) {
    std::ofstream(file) << text;
    const cli::Outcome outcome = slopewise_with({"review", file});
    CHECK(outcome.exit_code == cli::bad_input);
    CHECK(outcome.out.empty());
    return outcome.error;
}

}  // namespace

TEST_CASE("cli: an attempt that is damaged or of an unknown runway is refused, and says so") {
    const std::string good = kept_attempt_text(kept());
    std::ofstream(file) << good << "\n";
    CHECK(slopewise_with({"review", file}).exit_code == cli::good);
    CHECK(has(refused(good + " \n"), "is damaged: its sum does not agree"));
    CHECK(has(refused(kept_attempt_text(elsewhere())), "nowhere_7"));
}

TEST_CASE("cli: a student's file without one good attempt, or with a bad one beside it, is not reviewed") {
    const std::string good = kept_attempt_text(kept()) + "\n", head = student_file_head("Kestrel");
    std::ofstream(file) << head << good;
    CHECK(slopewise_with({"review", file}).exit_code == cli::good);
    CHECK(has(refused(head), "holds no attempt; allowed: one"));
    CHECK(has(refused(head + "damaged\n" + good), "test_cli_kept.jsonl:2: is no kept attempt"));
    CHECK(has(refused(head + kept_attempt_text(elsewhere()) + "\n" + good), "nowhere_7"));
}
