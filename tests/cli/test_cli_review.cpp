// The debrief on the command line: review of a recording, and progress over several.
#include <filesystem>
#include <fstream>
#include <initializer_list>

#include "cli/data_files.h"
#include "data/recording_file.h"
#include "logbook/attempt_id.h"
#include "logbook/student_file.h"
#include "tests/cli/ask.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

const std::string recording = scratch("test_cli_review.json");

void record(std::string_view lesson, std::string_view pilot) {
    REQUIRE(slopewise_with({"fly", lesson, "--pilot", pilot, "--record", recording}).exit_code == cli::good);
}

// The circumstances put into the recording file, as a program that knows them writes them.
void add_circumstances(const std::string& json) {
    std::string text = read(recording);
    text.insert(text.find("\"ticks\""), "\"circumstances\":" + json + ",");
    std::ofstream(recording) << text;
}

}  // namespace

TEST_CASE("cli: review tells the decision and one fault with its card") {
    record("from_above", "presses_on");
    const cli::Outcome text = slopewise_with({"review", recording});
    CHECK(text.exit_code == cli::good);
    CHECK(text.error.empty());
    CHECK(has(text.out, "not stable: high"));
    CHECK(has(text.out, "Pressing on from an unstable gate"));
    CHECK(has(text.out, "correction "));
    const cli::Outcome json = slopewise_with({"review", recording, "--json"});
    CHECK(has(json.out, "\"decision\": \"miss\""));
    CHECK(has(json.out, "\"id\": \"pressed_on\""));
    CHECK(has(json.out, "Not an approved training device"));

    record("final_calm", "good");
    CHECK(has(slopewise_with({"review", recording}).out, "No fault stands out."));
    CHECK(has(slopewise_with({"review", recording, "--json"}).out, "\"priority_fault\": null"));

    // What the recording says of the eyes is heard.
    add_circumstances(R"({"aids":{"panel_percent":50}})");
    CHECK(has(slopewise_with({"review", recording}).out, "Staring inside"));
}

TEST_CASE("cli: review holds to the criteria of a file, and tells what is wrong with one") {
    record("from_above", "good");
    std::ofstream(scratch("test_cli_criteria.json"))
        << R"({"kind":"criteria","at_300_ft":{"path_deg":0.1,"path_floor_ft":0}})";
    const cli::Outcome strict =
        slopewise_with({"review", recording, "--criteria", scratch("test_cli_criteria.json"), "--json"});
    CHECK(strict.exit_code == cli::good);
    CHECK(has(strict.out, "\"gate_path_deg\": 0.1"));
    std::ofstream(scratch("test_cli_criteria.json")) << R"({"kind":"criteria","at_300_ft":{"path_deg":7}})";
    const cli::Outcome bad =
        slopewise_with({"review", recording, "--criteria", scratch("test_cli_criteria.json")});
    CHECK(bad.exit_code == cli::bad_input);
    CHECK(has(bad.error, "/at_300_ft/path_deg is 7; allowed: 0.1 to 2"));
    CHECK(slopewise_with({"review", recording, "--criteria", "none.json"}).exit_code == cli::bad_input);
}

TEST_CASE("cli: review writes its tables and its sheet, or says why not") {
    record("from_above", "late_power");
    add_circumstances(
        R"({"student":"Code 7","device":"keyboard","aids":{"guide_s":4,"guide_calls":1,"lights_hidden":true,"panel_percent":20,"longest_peek_s":1.5},"estimate":{"path":"high","speed":"on","stable_at_gate":true}})");
    const cli::Outcome done =
        slopewise_with({"review", recording, "--csv", scratch(), "--html", scratch("test_cli_sheet.html")});
    CHECK(done.exit_code == cli::good);
    CHECK(has(done.out, "You said: "));
    for (const char* name : {"setup", "run", "gates", "bands", "answers", "track", "dictionary"})
        CHECK(read(scratch(std::string(name) + ".csv")).starts_with("# Ground study aid."));
    const std::string sheet = read(scratch("test_cli_sheet.html"));
    CHECK(has(sheet, "Code 7"));
    CHECK(has(sheet,
              "Aids: the path guide (4 s, called 1 times). The lights were hidden. Eyes outside; inside 20 % "
              "of the "
              "time, at most 1.5 s at once."));
    const cli::Outcome nowhere = slopewise_with({"review", recording, "--csv", "build/no_such_folder"});
    CHECK(nowhere.exit_code == cli::bad_input);
    CHECK(nowhere.error ==
          "slopewise review: --csv build/no_such_folder is no folder; allowed: a folder that is there, to "
          "write into\n");
    CHECK(slopewise_with({"review", recording, "--csv", recording}).exit_code == cli::bad_input);  // a file
    CHECK(slopewise_with({"review", recording, "--html", "build/no_such_folder/a.html"}).exit_code ==
          cli::bad_input);
}

TEST_CASE("cli: review tells on the sheet of every aid, and of a table that cannot be written") {
    record("from_below", "low_stretch");
    CHECK(has(slopewise_with({"review", recording}).out, "also seen"));
    add_circumstances(
        R"({"version":"Slopewise 9","aids":{"side_profile":true,"lamp_shapes":true,"airspeed_hidden":true}})");
    const std::string sheet_file = scratch("test_cli_sheet.html");
    REQUIRE(slopewise_with({"review", recording, "--html", sheet_file, "--student", "Code 8"}).exit_code ==
            cli::good);
    const std::string sheet = read(sheet_file);
    CHECK(has(sheet, "Aids: shapes in the lights and the side profile. Covered: airspeed."));
    CHECK(has(sheet, "Slopewise 9"));
    CHECK(has(sheet, "Code 8"));
    for (const std::string name : {"gates", "track"}) {
        const std::string folder = scratch("test_cli_no_" + name);
        std::filesystem::create_directories(folder + "/" + name + ".csv");  // a folder where a file belongs
        const cli::Outcome failed = slopewise_with({"review", recording, "--csv", folder});
        CHECK(failed.exit_code == cli::bad_input);
        CHECK(has(failed.error, folder + "/" + name + ".csv cannot be written"));
    }
}

TEST_CASE("cli: review names what is wrong in a recording, and its gates that were not reached") {
    std::ofstream(scratch("test_cli_bad.json")) << R"({"kind":"recording","format":1})";
    CHECK(has(slopewise_with({"review", scratch("test_cli_bad.json")}).error, "/ticks"));
    record("final_calm", "good");
    std::string text = read(recording);
    text.replace(text.find("\"larkmoor\""), 10, "\"nowhere_\"");
    std::ofstream(scratch("test_cli_bad.json")) << text;
    CHECK(has(slopewise_with({"review", scratch("test_cli_bad.json")}).error, "nowhere_"));

    // The same, broken off after ten seconds.
    text = read(recording);
    text.replace(text.find("\"ticks\":18607"), 13, "\"ticks\":1200");
    const std::size_t hashes = text.find("\"hashes\":["), end = text.find(']', hashes);
    std::string ten;
    for (int i = 0; i < 10; ++i) ten += std::string(i > 0 ? "," : "") + "\"0000000000000000\"";
    text.replace(hashes + 10, end - hashes - 10, ten);
    const std::size_t controls = text.find("\"controls\":["), late = text.find("[1200,", controls);
    text.replace(late - 1, text.rfind(']') - late + 1, "");
    std::ofstream(scratch("test_cli_bad.json")) << text;
    const cli::Outcome broken_off = slopewise_with({"review", scratch("test_cli_bad.json")});
    REQUIRE(broken_off.exit_code == cli::good);
    CHECK_FALSE(has(broken_off.out, "at 300 ft    "));
    CHECK(has(slopewise_with({"review", scratch("test_cli_bad.json"), "--json"}).out, "\"stability\": []"));
}

TEST_CASE("cli: review says so where a recording no longer flies the same, and shows the new flight") {
    record("from_above", "good");
    std::string text = read(recording);
    const std::size_t hash = text.find("\"hashes\":[\"") + 11;
    text[hash] = text[hash] == '0' ? '1' : '0';
    std::ofstream(recording) << text;
    const cli::Outcome outcome = slopewise_with({"review", recording, "--json"});
    CHECK(has(outcome.error, "no longer flies the same, first seen at tick 120"));
    CHECK(has(outcome.out, "\"flown_again_the_same\": false"));
    CHECK(slopewise_with({"review", "no_such_recording.json"}).exit_code == cli::bad_input);
}

TEST_CASE("cli: progress over recordings, in the order of their times") {
    record("final_calm", "good");
    add_circumstances(R"({"started_unix_s":1764000200})");
    std::ofstream(scratch("test_cli_later.json")) << read(recording);
    record("from_above", "presses_on");
    add_circumstances(R"({"started_unix_s":1764000000,"aids":{"guide_s":2}})");
    const std::string later = scratch("test_cli_later.json");
    const std::initializer_list<std::string_view> both{"progress", later, recording, "--json"};
    const cli::Outcome json = slopewise_with(both);
    REQUIRE(json.exit_code == cli::good);
    CHECK(json.out.find("from_above") < json.out.find("final_calm"));
    CHECK(has(json.out, "\"pass_score\": 0.348"));
    CHECK(has(json.out, "\"signal_at_attempt\": null"));
    CHECK(has(json.out, "0 of 7 items: evidence not yet complete"));
    const cli::Outcome text =
        slopewise_with({"progress", scratch("test_cli_later.json"), recording, "--limit", "3"});
    CHECK(has(text.out, "(aided)"));
    CHECK(has(text.out, "limit 3.0"));
    CHECK(has(text.out, "Decisions at the gate: 1 right, 1 missed, 0 cautious."));
    CHECK(has(slopewise_with({"progress", recording, "--csv"}).out, "lesson,attempt,started_unix_s,unaided"));
    const cli::Outcome bad = slopewise_with({"progress", recording, "none_1.json", "none_2.json"});
    CHECK(bad.exit_code == cli::bad_input);
    CHECK(has(bad.error, "none_1.json"));
    CHECK(has(bad.error, "none_2.json"));
    CHECK(has(bad.error, "slopewise progress: these are left out of what is shown"));
    CHECK(has(bad.out, "from_above"));  // the good one is shown
    const cli::Outcome none = slopewise_with({"progress", "none_1.json"});
    CHECK(none.exit_code == cli::bad_input);
    CHECK(none.out.empty());
    CHECK(slopewise_with({"progress", recording, "--limit", "9"}).exit_code == cli::bad_input);
    // Ten of the same in a row: the learning curve signals, and the session has been long enough.
    const std::string one = scratch("test_cli_later.json");
    const cli::Outcome many = slopewise_with({"progress", one, one, one, one, one, one, one, one, one, one});
    CHECK(has(many.out, "It signalled at attempt 8."));
    CHECK(has(many.out, "stop for today"));
    CHECK(has(slopewise_with({"progress", one, one, one, one, one, one, one, one, "--json"}).out,
              "\"signal_at_attempt\": 8"));

    // A relapse after it, of recordings that tell no time and stand in the order given.
    record("from_above", "presses_on");
    const std::string& miss = recording;
    const cli::Outcome relapsed =
        slopewise_with({"progress", one, one, one, one, one, one, one, one, miss, miss, miss});
    CHECK(has(relapsed.out, "A relapse showed at attempt 11."));
}

TEST_CASE("cli: what the page hands over is reviewed to the same figures as its recording") {
    record("from_above", "late_power");
    const Result<Recording> flown = read_recording(read(recording), recording);
    REQUIRE(flown.ok());
    const Scenario scenario = scenario_of(cli::shipped_catalog(), flown.value->lesson);
    KeptAttempt kept = kept_from(attempt_id(1764000000000, 1), *flown.value, scenario);
    const std::string attempt = scratch("test_cli_attempt.jsonl"),
                      student = scratch("test_cli_student.jsonl");
    std::ofstream(attempt) << kept_attempt_text(kept) << "\n";
    for (const char* how : {"--json", "--csv"}) {
        const std::string_view answer = how == std::string_view("--csv") ? "progress" : "review";
        CHECK(slopewise_with({answer, attempt, how}).out == slopewise_with({answer, recording, how}).out);
    }

    KeptAttempt later = kept, cut = kept;
    later.id = attempt_id(1764000600000, 2);
    cut.id = attempt_id(1764000700000, 3);
    cut.cut_off = true;
    std::ofstream(student) << student_file_head("Kestrel") << kept_attempt_text(kept) << "\n"
                           << kept_attempt_text(later) << "\n"
                           << kept_attempt_text(cut) << "\n";
    CHECK(slopewise_with({"progress", student, "--csv"}).out ==
          slopewise_with({"progress", recording, recording, "--csv"}).out);
    const cli::Outcome three = slopewise_with({"review", student});
    CHECK(three.exit_code == cli::bad_input);
    CHECK(has(three.error, "holds 3 attempts; allowed: one attempt or recording"));

    std::ofstream(student, std::ios::app) << "damaged\n";
    const cli::Outcome damaged = slopewise_with({"progress", student, "--csv"});
    CHECK(damaged.exit_code == cli::bad_input);
    CHECK(has(damaged.error, "test_cli_student.jsonl:5: is no kept attempt"));
    CHECK(has(damaged.out, "from_above"));

    std::ofstream(attempt) << kept_attempt_text(cut) << "\n";
    const cli::Outcome nothing = slopewise_with({"progress", attempt});
    CHECK(nothing.exit_code == cli::bad_input);
    CHECK(has(nothing.error, "came to its end"));

    kept.recording.hashes[20] ^= 1;
    std::ofstream(attempt) << kept_attempt_text(kept) << "\n";
    const cli::Outcome parted = slopewise_with({"review", attempt});
    CHECK(parted.exit_code == cli::good);
    CHECK(has(parted.error, "tick 2520; what follows is of the track that was kept with it"));
}
