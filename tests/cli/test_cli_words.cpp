// What the command line says to a person: answers as plain text, and every way of asking wrongly.
#include <fstream>
#include <initializer_list>

#include "tests/cli/ask.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// A shipped lesson with one piece of its text exchanged, in a file.
std::string altered_lesson(const std::string& was, const std::string& is) {
    std::string text = read("assets/lessons/final_calm.json");
    const std::size_t at = text.find(was);
    REQUIRE_MESSAGE(at != std::string::npos, was << " does not stand there");
    text.replace(at, was.size(), is);
    const std::string name = scratch("test_cli_words.json");
    std::ofstream(name) << text;
    return name;
}

}  // namespace

TEST_CASE("cli: the briefing in words has the figures of the briefing in JSON") {
    const cli::Outcome words = slopewise_with({"brief", "final_calm"});
    REQUIRE(words.exit_code == cli::good);
    // 65 kt calibrated at 300 ft in standard air is 65.3 kt true, 346 ft/min at 3 degrees (1.5 x 3 % rule:
    // 344).
    CHECK(has(words.out, "target speed"));
    CHECK(has(words.out, "65 kt"));
    CHECK(has(words.out, "2 white 2 red"));
    CHECK(has(words.out, "955 ft above the aim point"));  // 3 NM times tan 3 degrees
    const cli::Outcome json = slopewise_with({"brief", "final_calm", "--json"});
    CHECK(has(json.out, "\"target_speed_kt\": 65"));
    CHECK(has(json.out, "\"white_count_on_path\": 2"));
}

TEST_CASE("cli: a briefing names the hazard of the air ahead by its F-factor") {
    const std::string lesson = altered_lesson(
        "\"wind\":",
        R"("air": {"events": [{"type": "shear", "at_distance_nm": 1, "along_kt": -20, "length_ft": 1000}]}, "wind":)");
    const cli::Outcome words = slopewise_with({"brief", lesson});
    REQUIRE_MESSAGE(words.exit_code == cli::good, words.error);
    CHECK(has(words.out, "F-factor 0."));
}

TEST_CASE("cli: the sheets in words carry the figures of the sheets in JSON") {
    const cli::Outcome air =
        slopewise_with({"atmosphere", "--pressure-altitude-ft", "2000", "--oat-c", "35", "--cas-kt", "65"});
    CHECK(has(air.out, "density altitude"));
    CHECK(has(air.out, "4703 ft"));  // the same as published for the JSON answer
    CHECK(has(air.out, "kt at 65 kt calibrated"));

    const cli::Outcome sheet = slopewise_with({"performance", "tourer"});
    REQUIRE(sheet.exit_code == cli::good);
    CHECK(has(sheet.out, "stall, landing flap (Vs0)"));
    CHECK(has(sheet.out, "% power"));
    CHECK(has(sheet.out, "The flight manual is what counts"));

    const cli::Outcome lights = slopewise_with({"lights", "--distance-nm", "1", "--eye-ft", "318.4",
                                                "--visibility-km", "10", "--background", "night"});
    CHECK(has(lights.out, "can be seen for"));
    CHECK(has(lights.out, "(MEHT)"));
}

TEST_CASE("cli: a lesson file that cannot be flown says which of its values is to blame") {
    const auto error_of = [](const std::string& was, const std::string& is) {
        const cli::Outcome outcome = slopewise_with({"brief", altered_lesson(was, is)});
        CHECK(outcome.exit_code == cli::bad_input);
        return outcome.error;
    };
    CHECK(has(error_of("\"tourer\"", "\"glider\""), "/aircraft is \"glider\""));
    CHECK(
        has(error_of("\"flap\": 2", "\"flap\": 3"), "/start/flap is 3; allowed: 0 to 2 with this aircraft"));
    CHECK(has(error_of("\"start\":", "\"mass_kg\": 5000, \"start\":"), "/mass_kg is 5000; allowed: "));
    CHECK(has(error_of("\"start\":", "\"mass_kg\": 300, \"start\":"), "/mass_kg is 300; allowed: "));
    CHECK(has(error_of("{", "["), "is not JSON"));
    CHECK(
        has(error_of("{ \"headwind_kt\": 0 }", "{ \"table\": [{ \"height_ft\": 30, \"headwind_kt\": 8 }] }"),
            "/wind/table has 1"));
    CHECK(
        slopewise_with({"brief", altered_lesson("\"start\":", "\"mass_kg\": 1000, \"start\":")}).exit_code ==
        cli::good);
    CHECK(has(error_of("\"target_speed_kt\": 65", "\"target_speed_kt\": 36"),
              "/target_speed_kt cannot be flown"));
    CHECK(has(error_of("\"speed_kt\": 65", "\"speed_kt\": 36"), "/start cannot be flown"));
    const cli::Outcome aircraft = slopewise_with({"brief", "assets/aircraft/tourer.json"});
    CHECK(has(aircraft.error, "/kind is not a lesson"));
}

TEST_CASE("cli: what is asked wrongly is told with what would be right") {
    const auto error_of = [](std::initializer_list<std::string_view> words) {
        const cli::Outcome outcome = slopewise_with(words);
        CHECK(outcome.exit_code == cli::wrong_usage);
        return outcome.error;
    };
    CHECK(has(error_of({"brief", "final_calm", "--jsn"}), "no option --jsn; allowed: --json"));
    CHECK(has(error_of({"brief", "final_calm", "--json=yes"}), "--json has a value; allowed: --json alone"));
    CHECK(has(error_of({"brief", "final_calm", "--json", "--json"}), "--json stands twice"));
    CHECK(has(error_of({"fly", "final_calm", "--seed"}), "--seed has no value"));
    CHECK(has(error_of({"fly", "final_calm", "--seed", "--json"}), "--seed has no value"));
    CHECK(
        has(error_of({"brief", "final_calm", "--first", "--second"}), "no option --first"));  // one is enough
    CHECK(has(error_of({"brief"}), "no LESSON given"));
    CHECK(has(error_of({"brief", "a", "b"}), "\"b\" is one word too many"));
    CHECK(has(error_of({"lights", "--distance-nm", "1"}), "--eye-ft is missing"));
    const cli::Outcome seed = slopewise_with({"fly", "final_calm", "--seed", "first"});
    CHECK(seed.exit_code == cli::bad_input);
    CHECK(has(seed.error, "--seed is \"first\"; allowed: a whole number"));
}

TEST_CASE("cli: a number is a whole word within its range, and may be negative") {
    const auto error_of = [](std::string_view number) {
        return slopewise_with({"lights", "--distance-nm", "1", "--eye-ft", number}).error;
    };
    for (const std::string_view number : {"300", "300.5", "3e2", ".5", "0"}) CHECK(error_of(number).empty());
    for (const std::string_view number : {"", "x", "300ft", "300 ", "nan", "inf", "1e999", "-1e9"}) {
        CAPTURE(number);
        CHECK(has(error_of(number), "--eye-ft is \"" + std::string(number) + "\"; allowed: "));
    }
    CHECK(slopewise_with({"fly", "final_calm", "--seed=5"}).exit_code == cli::good);
    CHECK(slopewise_with({"brief", "-"}).exit_code == cli::bad_input);  // a word, and no file of that name
    CHECK(slopewise_with({"atmosphere", "--pressure-altitude-ft", "-500", "--oat-c", "-.5"}).exit_code ==
          cli::good);
    CHECK(has(slopewise_with({"atmosphere", "--pressure-altitude-ft", "high", "--oat-c", "cold"}).error,
              "--pressure-altitude-ft is \"high\""));  // the first mistake is the one that is told
    for (const std::string_view seed : {"-1", "5x", "4294967296", ""})
        CHECK(has(slopewise_with({"fly", "final_calm", "--seed", seed}).error, "allowed: a whole number"));
    CHECK(has(slopewise_with({"fly", "final_calm", "--runs", "0"}).error,
              "allowed: a whole number, 1 to 10000"));
    CHECK(slopewise_with({"fly", "no_such_lesson"}).exit_code == cli::bad_input);
}

TEST_CASE("cli: a flight in words tells what was out of tolerance and which gates were not reached") {
    const std::string high = altered_lesson("\"offset_deg\": 0", "\"offset_deg\": 2");
    const cli::Outcome around = slopewise_with({"fly", high, "--pilot", "good"});
    REQUIRE(around.exit_code == cli::good);
    CHECK(has(around.out, "out of tolerance"));
    CHECK(has(around.out, "not reached"));
    CHECK(has(slopewise_with({"fly", high, "--json"}).out, "\"reached\": false"));
}

TEST_CASE("cli: the seed shapes the air only when asked to") {
    const std::string rough = altered_lesson("\"wind\":", R"("air": {"turbulence_w20_kt": 20}, "wind":)");
    const auto hash_of = [](const std::string& out) { return out.substr(out.find("\"state_hash\""), 34); };
    const std::string same = hash_of(slopewise_with({"fly", rough, "--seed", "5", "--json"}).out);
    const std::string varied =
        hash_of(slopewise_with({"fly", rough, "--seed", "5", "--vary-air", "--json"}).out);
    CHECK(same != varied);
}

TEST_CASE("cli: files that cannot be read or written are named") {
    CHECK(has(slopewise_with({"replay", "build/no_such_file.json"}).error, "build/no_such_file.json"));
    CHECK(has(slopewise_with({"replay", "assets/lessons/final_calm.json"}).error, "allowed: \"recording\""));
    const cli::Outcome track = slopewise_with({"fly", "final_calm", "--track", "build/no/such/folder.csv"});
    CHECK(track.exit_code == cli::bad_input);
    CHECK(has(track.error, "--track build/no/such/folder.csv cannot be written"));
    CHECK(has(slopewise_with({"fly", "final_calm", "--record", "build/no/such/folder.json"}).error,
              "--record build/no/such/folder.json cannot be written"));
    CHECK(slopewise_with({"performance", "assets/aircraft/trainer.json"}).exit_code == cli::good);

    // A recording of a lesson whose aircraft this program does not have.
    const std::string file = scratch("test_cli_words_other.json");
    REQUIRE(slopewise_with({"fly", "final_calm", "--record", file}).exit_code == cli::good);
    std::string text = read(file);
    text.replace(text.find("\"tourer\""), 8, "\"glider\"");
    std::ofstream(file) << text;
    CHECK(has(slopewise_with({"replay", file}).error, "is \"glider\""));
}

TEST_CASE("cli: an altered recording says in words where it differs") {
    const std::string file = scratch("test_cli_words_recording.json");
    REQUIRE(slopewise_with({"fly", "final_calm", "--record", file}).exit_code == cli::good);
    std::string text = read(file);
    const std::size_t first = text.find('[', text.find("\"controls\":") + 12);
    const std::size_t stick = text.find(',', first) + 1;
    text.replace(stick, text.find(',', stick) - stick, "9999");
    std::ofstream(file) << text;
    const cli::Outcome altered = slopewise_with({"replay", file});
    CHECK(altered.exit_code == cli::bad_input);
    CHECK(has(altered.error, "differs, first seen at tick "));
}
