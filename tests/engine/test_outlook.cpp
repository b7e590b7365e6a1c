// How a lesson says what the outside looks like, and a runway what lies around it.
#include <doctest/doctest.h>

#include <string>

#include "data/catalog.h"
#include "data/read_outlook.h"
#include "tests/fixtures.h"

using namespace slopewise;

namespace {

struct ReadBack {
    Outlook outlook;
    std::vector<Problem> problems;
};

ReadBack read(const std::string& text) {
    ReadBack back;
    const Result<JsonNode> json = parse_json(text, "t.json");
    REQUIRE(json.ok());
    back.outlook = read_outlook(Fields(*json.value, "t.json", "", back.problems));
    return back;
}

}  // namespace

TEST_CASE("outlook: what is left out is a clear day") {
    const ReadBack back = read("{}");
    CHECK(back.problems.empty());
    CHECK(back.outlook.light == Daylight::day);
    CHECK(back.outlook.ground_lights);
    CHECK(back.outlook.visibility_m == 30000.0);
    CHECK_FALSE(back.outlook.overcast);
    CHECK_FALSE(back.outlook.rain);
}

TEST_CASE("outlook: every field is read") {
    const ReadBack back = read(
        R"({"light": "night", "ground_lights": false, "visibility_km": 4.5, "overcast": true, "rain": true})");
    CHECK(back.problems.empty());
    CHECK(back.outlook.light == Daylight::night);
    CHECK_FALSE(back.outlook.ground_lights);
    CHECK(back.outlook.visibility_m == 4500.0);
    CHECK(back.outlook.overcast);
    CHECK(back.outlook.rain);
}

TEST_CASE("outlook: a wrong light, a visibility out of range and a word for a flag are each reported") {
    const ReadBack back = read(R"({"light": "noon", "visibility_km": 0.5, "rain": "yes", "fog": true})");
    REQUIRE(back.problems.size() == 4);
    CHECK(back.problems[0].path == "/light");
    CHECK(back.problems[0].allowed == "\"day\", \"low_sun\", \"dusk\", \"night\"");
    CHECK(back.problems[1].path == "/visibility_km");
    CHECK(back.problems[1].allowed == "1 to 50");
    CHECK(back.problems[2].path == "/rain");
    CHECK(back.problems[2].allowed == "true or false");
    CHECK(back.problems[3].path == "/fog");
}

TEST_CASE("outlook: the shipped airfields differ in size, slope and country") {
    const Runway* small = find_runway(test::shipped(), "hazelcombe");
    const Runway* large = find_runway(test::shipped(), "sandholm");
    REQUIRE(small != nullptr);
    REQUIRE(large != nullptr);
    CHECK(small->aim_distance_m == 150.0);  // CS ADR-DSN.L.540 Table L-1: under 800 m
    CHECK(large->aim_distance_m == 400.0);  // from 2,400 m
    CHECK(small->countryside.kind == Countryside::Kind::woodland);
    CHECK(large->countryside.kind == Countryside::Kind::coast);
    CHECK(find_runway(test::shipped(), "hazelcombe_uphill")->slope == 0.02);
    CHECK(find_runway(test::shipped(), "larkmoor_downhill")->slope == -0.015);
}
