// The command line, called as its main() calls it: keys, exit codes, and what it says when something is
// wrong.
#include <fstream>
#include <initializer_list>
#include <sstream>

#include "tests/cli/ask.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::string written(const std::string& name, const std::string& text) {
    std::ofstream(name) << text;
    return name;
}

}  // namespace

TEST_CASE("cli: on the 3-degree path a mile out the lights show two white and two red") {
    const cli::Outcome lights =
        slopewise_with({"lights", "--distance-nm", "1", "--eye-ft", "318.4", "--json"});
    REQUIRE(lights.exit_code == cli::good);
    CHECK(number_after(lights.out, "white_count") == 2);
    // The unit nearest the runway comes first, set to the nominal slope and 30 minutes (FAA AC 150/5345-28 as
    // given by a maker's manual).
    CHECK_NEAR(number_after(lights.out, "setting_deg"), 3.5, 1e-9);
    CHECK(number_after(lights.out, "white_fraction") == 0.0);
}

TEST_CASE("cli: another nominal angle moves the settings with it") {
    const cli::Outcome lights =
        slopewise_with({"lights", "--distance-nm", "1", "--eye-ft", "424.9", "--nominal-deg", "4", "--json"});
    REQUIRE(lights.exit_code == cli::good);
    CHECK(number_after(lights.out, "white_count") == 2);
    CHECK_NEAR(number_after(lights.out, "setting_deg"), 4.5, 1e-9);
}

TEST_CASE("cli: density altitude at 2,000 ft and 35 C is 4,703 ft") {
    // Computed from the US Standard Atmosphere 1976 formula; 5 ft covers the rounding of the published
    // figure.
    const cli::Outcome air = slopewise_with(
        {"atmosphere", "--pressure-altitude-ft", "2000", "--oat-c", "35", "--cas-kt", "65", "--json"});
    REQUIRE(air.exit_code == cli::good);
    CHECK_NEAR(number_after(air.out, "density_altitude_ft"), 4703.0, 5.0);
    const double ratio = number_after(air.out, "density_ratio");
    // At this speed compressibility is under 0.05 kt, so TAS = CAS / sqrt(density ratio).
    CHECK_NEAR(number_after(air.out, "tas_kt"), 65.0 / std::sqrt(ratio), 0.05);
    const cli::Outcome without =
        slopewise_with({"atmosphere", "--pressure-altitude-ft", "0", "--oat-c", "15", "--json"});
    CHECK(without.out.find("tas_kt") == std::string::npos);
    CHECK_NEAR(number_after(without.out, "density_ratio"), 1.0, 1e-9);
}

TEST_CASE("cli: the good pilot flies shipped lessons in tolerance, calm and in 15 kt, and the same again") {
    for (const std::string_view lesson : {"final_calm", "final_headwind"}) {
        const cli::Outcome flown =
            slopewise_with({"fly", lesson, "--pilot", "good", "--seed", "3", "--json"});
        REQUIRE(flown.exit_code == cli::good);
        CHECK(flown.out == slopewise_with({"fly", lesson, "--pilot", "good", "--seed", "3", "--json"}).out);
        CHECK(flown.out != slopewise_with({"fly", lesson, "--pilot", "good", "--seed", "4", "--json"}).out);
        for (const char* share : {"path", "speed", "sink", "all"})
            CHECK_MESSAGE(flown.out.find(share) != std::string::npos, share);
    }
}

TEST_CASE("cli: the track is written with the caution, units in its header, and a row a tenth of a second") {
    const std::string file = scratch("test_cli_track.csv");
    REQUIRE(slopewise_with({"fly", "final_calm", "--pilot", "good", "--seed", "1", "--json", "--track", file})
                .exit_code == cli::good);
    std::ifstream track(file);
    std::string caution, header, row;
    std::getline(track, caution);
    std::getline(track, header);
    CHECK(caution.starts_with("# Ground study aid."));
    CHECK(header.starts_with("time_s,distance_to_aim_nm,"));
    int rows = 0;
    while (std::getline(track, row)) ++rows;
    CHECK(rows > 1500);
}

TEST_CASE("cli: check says good of a good file, and every problem of a bad one with its line") {
    CHECK(slopewise_with({"check", "assets/lessons/final_calm.json"}).exit_code == cli::good);
    std::stringstream shipped;
    shipped << std::ifstream("assets/lessons/final_headwind.json").rdbuf();
    std::string text = shipped.str();
    text.replace(text.find("\"headwind_kt\": 15"), 17, "\"headwind_kt\": 600");
    text.replace(text.find("\"title\""), 7, "\"titel\"");
    const cli::Outcome bad = slopewise_with({"check", written(scratch("test_cli_bad.json"), text)});
    CHECK(bad.exit_code == cli::bad_input);
    CHECK(bad.error.find("/wind/headwind_kt is 600; allowed: -15 to 40") != std::string::npos);
    CHECK(bad.error.find("/title is missing") != std::string::npos);
    CHECK(bad.error.find("nearest: \"title\"") != std::string::npos);
}

TEST_CASE("cli: wrong usage is told from bad input, each in words") {
    struct Row {
        std::initializer_list<std::string_view> words;
        int exit_code;
        const char* says;
    };
    const Row rows[] = {
        {{}, cli::wrong_usage, "slopewise"},
        {{"land"}, cli::wrong_usage, "land"},
        {{"lights", "--eye-ft", "300"}, cli::wrong_usage, "--distance-nm"},
        {{"lights", "--distance-nm", "1", "--eye-ft", "300", "--colour"}, cli::wrong_usage, "--colour"},
        {{"lights", "--distance-nm", "abc", "--eye-ft", "300"}, cli::bad_input, "0.01 to 20"},
        {{"lights", "--distance-nm", "nan", "--eye-ft", "300"}, cli::bad_input, "0.01 to 20"},
        {{"lights", "--distance-nm", "1", "--eye-ft", "300", "--nominal-deg", "9"},
         cli::bad_input,
         "2.5 to 4.5"},
        {{"brief", "no_such_lesson"}, cli::bad_input, "no_such_lesson"},
        {{"fly", "final_calm", "--pilot", "ace", "--seed", "1"}, cli::bad_input, "good"},
        {{"check", "no_such_file.json"}, cli::bad_input, "no_such_file.json"},
    };
    for (const Row& row : rows) {
        const cli::Outcome outcome = slopewise_with(row.words);
        CHECK(outcome.exit_code == row.exit_code);
        CHECK_MESSAGE(outcome.error.find(row.says) != std::string::npos, outcome.error);
    }
}

TEST_CASE("cli: help is there for the program and for each command") {
    CHECK(slopewise_with({"--help"}).exit_code == cli::good);
    for (const std::string_view command : {"check", "lights", "atmosphere", "brief", "fly"}) {
        const cli::Outcome help = slopewise_with({command, "--help"});
        CHECK(help.exit_code == cli::good);
        CHECK(help.out.find(command) != std::string::npos);
    }
}
