// The commands that look at the engine's parts: light kinds and faults, the performance sheet, series of
// flights, recordings flown again.
#include <fstream>
#include <initializer_list>
#include <sstream>
#include <vector>

#include "tests/cli/ask.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("cli: every kind of lights shows its picture of the path, and of four degrees") {
    struct Row {
        const char *kind, *on_path, *at_four_degrees;
    };
    // AIM 2-1-2: PAPI two and two, VASI red over white on the path; all white above.
    const Row rows[] = {{"papi", "2 white 2 red", "4 white"},
                        {"papi_harmonised", "2 white 2 red", "4 white"},
                        {"apapi", "1 white 1 red", "2 white"},
                        {"vasi", "red over white", "white over white"}};
    for (const Row& row : rows) {
        CAPTURE(row.kind);
        CHECK(
            has(slopewise_with({"lights", "--distance-nm", "2", "--eye-ft", "636.9", "--kind", row.kind}).out,
                row.on_path));
        CHECK(
            has(slopewise_with({"lights", "--distance-nm", "2", "--eye-ft", "849.8", "--kind", row.kind}).out,
                row.at_four_degrees));
    }
}

TEST_CASE("cli: a unit that is out is missing, one set too high turns red, and wet lenses pale the red") {
    const auto lights = [](std::initializer_list<std::string_view> more) {
        std::vector<std::string_view> words{"lights", "--distance-nm", "1", "--eye-ft", "318.4"};
        words.insert(words.end(), more.begin(), more.end());
        return cli::run(words).out;
    };
    CHECK(has(lights({"--out", "4"}), "1 white 2 red"));
    CHECK(has(lights({"--misaimed", "3", "--too-high-minutes", "20"}), "1 white 3 red"));
    // 60 % of the way to white at the worst: the code's own figure, the failing direction from UK CAP 637.
    CHECK(has(lights({"--condensation-percent", "100"}), "60 % white"));
    CHECK(has(lights({"--side", "both"}), "unit 8"));
}

TEST_CASE("cli: the lights reach about 5 miles by day and up to 20 by night, as the AIM says") {
    // AIM 2-1-2: a PAPI is visible "from about 5 miles during the day and up to 20 miles at night": statute
    // miles, without the visibility they hold for. By day in ordinary clear air (25 to 50 km) ours must come
    // within a mile of 5; on the clearest night (100 km) between 15 and 20.
    const auto range_miles = [](const char* when, const char* visibility_km) {
        const double nm =
            number_after(slopewise_with({"lights", "--distance-nm", "3", "--eye-ft", "955", "--visibility-km",
                                         visibility_km, "--background", when, "--json"})
                             .out,
                         "range_nm");
        return nm * 1852.0 / 1609.344;
    };
    CHECK_NEAR(range_miles("day", "25"), 5.0, 1.0);
    CHECK_NEAR(range_miles("day", "50"), 5.0, 1.0);
    CHECK(range_miles("night", "100") > 15.0);
    CHECK(range_miles("night", "100") <= 20.0);
    CHECK(range_miles("night", "25") > range_miles("dusk", "25"));
    CHECK(range_miles("dusk", "25") > range_miles("day", "25"));
    CHECK(range_miles("day", "5") < range_miles("day", "25"));
}

TEST_CASE("cli: the performance sheet hangs together, and says what it cannot read") {
    for (const char* aircraft : {"trainer", "tourer", "heavy_single"}) {
        CAPTURE(aircraft);
        const cli::Outcome sheet = slopewise_with({"performance", aircraft, "--json"});
        REQUIRE(sheet.exit_code == cli::good);
        CHECK(number_after(sheet.out, "vs0_kt") < number_after(sheet.out, "vs1_kt"));
        CHECK(number_after(sheet.out, "vs1_kt") < number_after(sheet.out, "best_glide_kt"));
        CHECK(number_after(sheet.out, "landing_flap_idle_glide_deg") >
              number_after(sheet.out, "best_glide_deg"));
        CHECK(number_after(sheet.out, "maximum_climb_fpm") > 300.0);
        CHECK(number_after(sheet.out, "go_around_landing_flap_climb_fpm") > 100.0);
        CHECK(number_after(sheet.out, "power_percent") > 15.0);
        CHECK(number_after(sheet.out, "power_percent") < 60.0);
    }
    const double low =
        number_after(slopewise_with({"performance", "tourer", "--json"}).out, "maximum_climb_fpm");
    const double high = number_after(slopewise_with({"performance", "tourer", "--pressure-altitude-ft",
                                                     "8000", "--warmer-c", "20", "--json"})
                                         .out,
                                     "maximum_climb_fpm");
    CHECK(high < 0.7 * low);
    CHECK(has(slopewise_with({"performance", "none.json"}).error, "\"tourer\""));
    CHECK(has(slopewise_with({"performance", "tourer", "--mass-kg", "5000"}).error, "--mass-kg is \"5000\""));
    CHECK(slopewise_with({"performance", "assets/lessons/final_calm.json"}).exit_code == cli::bad_input);
}

TEST_CASE("cli: an aircraft whose stated stall speed its own lift does not give is told") {
    std::string text = read("assets/aircraft/tourer.json");
    text.replace(text.find("\"max_lift\": 1.48"), 16, "\"max_lift\": 1.48, \"stall_speed_kt\": 45");
    std::ofstream(scratch("test_cli_stall.json")) << text;
    const cli::Outcome bad = slopewise_with({"performance", scratch("test_cli_stall.json")});
    CHECK(bad.exit_code == cli::bad_input);
    CHECK(has(bad.error, "/flaps/1/stall_speed_kt is 45.0; allowed: within 1 kt of"));
}

TEST_CASE("cli: a series is one line of JSON a flight, each that of its seed alone") {
    const cli::Outcome series =
        slopewise_with({"fly", "final_calm", "--runs", "3", "--seed", "7", "--pilot", "late_power"});
    REQUIRE(series.exit_code == cli::good);
    std::stringstream lines(series.out);
    std::string line;
    int seed = 7;
    while (std::getline(lines, line)) {
        CHECK(line.starts_with("{\"lesson\":\"final_calm\",\"pilot\":\"late_power\",\"seed\":" +
                               std::to_string(seed)));
        const std::string alone =
            slopewise_with({"fly", "final_calm", "--seed", std::to_string(seed), "--pilot", "late_power"})
                .out;
        const std::size_t at = line.find("\"state_hash\":\"") + 14;
        CHECK(has(alone, line.substr(at, 16)));
        ++seed;
    }
    CHECK(seed == 10);
    CHECK(slopewise_with({"fly", "final_calm", "--runs", "2", "--track", "x.csv"}).exit_code ==
          cli::wrong_usage);
    CHECK(has(slopewise_with({"fly", "final_calm", "--pilot", "best"}).error, "\"late_power\""));
}

TEST_CASE("cli: a recording flies again identically, and one that was altered says where it differs") {
    const std::string file = scratch("test_cli_recording.json");
    REQUIRE(slopewise_with({"fly", "from_below", "--seed", "2", "--record", file}).exit_code == cli::good);
    CHECK(slopewise_with({"replay", file}).out.starts_with("identical: "));
    CHECK(has(slopewise_with({"replay", file, "--json"}).out, "\"identical\": true"));

    // One step of the stick in the row that begins nearest after tick 600 must show within a second.
    std::string text = read(file);
    std::size_t row = text.find("\"controls\":");
    int tick = 0;
    while (tick < 600) {
        row = text.find('[', row + 1);
        if (text[row + 1] == '[') continue;
        tick = std::stoi(text.substr(row + 1));
    }
    const std::size_t stick = text.find(',', row) + 1;
    text.replace(stick, text.find(',', stick) - stick, "12345");
    std::ofstream(file) << text;
    const cli::Outcome altered = slopewise_with({"replay", file, "--json"});
    CHECK(altered.exit_code == cli::bad_input);
    const double first = number_after(altered.out, "first_tick_that_differs");
    CHECK(first > tick);
    CHECK(first <= tick + 120);
}
