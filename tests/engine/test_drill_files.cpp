// Drill files with something wrong in them, and the whole of what is said about each.
#include <string>

#include "data/catalog.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::string shipped_text(std::string_view name) {
    for (const DataFile& file : shipped_files())
        if (file.name == name) return std::string(file.text);
    return {};
}

struct Row {
    const char* file;
    const char* was;
    const char* is;
    const char* says;  // all of it
};

std::string told(const Row& row) {
    std::string text = shipped_text("assets/drills/" + std::string(row.file) + ".json");
    const std::size_t at = text.find(row.was);
    REQUIRE(at != std::string::npos);
    text.replace(at, std::string_view(row.was).size(), row.is);
    std::string all;
    for (const Problem& problem : read_entry({"x.json", text}).problems) all += to_text(problem) + "\n";
    return all;
}

constexpr Row rows[] = {
    {"read_the_lights", "\"items\": 40", "\"items\": 40", ""},
    {"read_the_lights", "\"items\": 40", "\"items\": 0",
     "x.json:13: /items is 0; allowed: 1 to 200\n"
     "x.json:14: /judged_over is 20; allowed: 1 to 1\n"},
    {"read_the_lights", "\"most_exposure_s\": 2", "\"most_exposure_s\": 0.2",
     "x.json:17: /settings/most_exposure_s is 0.2; allowed: not less than least_exposure_s, 0.5\n"},
    {"read_the_lights", "\"most_error_deg\": 0.9", "\"most_error_deg\": 0.1",
     "x.json:20: /settings/most_error_deg is 0.1; allowed: 0.6 to 2\n"},
    {"read_the_lights", "\"measure\": \"median_s\"", "\"measure\": \"mean_s\"",
     "x.json:24: /criteria/1/measure is \"mean_s\", which is no measure\n"},
    {"read_the_lights", "\"below\": 1.5", "\"below\": 1.5, \"at_least\": 1",
     "x.json:24: /criteria/1/measure has 2 limits; allowed: one of at_least, at_most, below, within\n"},
    {"read_the_lights", "\"below\": 1.5, ", "",
     "x.json:24: /criteria/1/measure has 0 limits; allowed: one of at_least, at_most, below, within\n"},
    {"read_the_lights", "\"sure\": \"recalled\"", "\"sure\": \"common practice, no source\"",
     "x.json:11: /source stands there; allowed: none: it is common practice\n"},
    {"read_the_lights", "\"measure\": \"median_s\", ", "", "x.json:24: /criteria/1/measure is missing\n"},
    {"read_the_lights", "\"sure\": \"common practice, no source\"", "\"sure\": \"recalled\"",
     "x.json:23: /criteria/0/source is missing\n"},
    {"read_the_picture", "\"horizon\": true", "\"horizont\": true",
     "x.json:18: /settings/horizont is not a known key; nearest: \"horizon\"\n"},
    {"read_the_picture", "[2, 1.5, 1, 0.7, 0.5]", "[]",
     "x.json:15: /settings/distances_nm has 0 entries; allowed: 1 to 40\n"},
    {"read_the_picture", "[2, 1.5, 1, 0.7, 0.5]",
     "[1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, "
     "1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1]",
     "x.json:15: /settings/distances_nm has 41 entries; allowed: 1 to 40\n"},
    {"read_the_picture", "[2, 1.5, 1, 0.7, 0.5]", "2",
     "x.json:15: /settings/distances_nm is a number; allowed: a list\n"},
    {"read_the_picture", "[2, 1.5, 1, 0.7, 0.5]", "[2, 0.2]",
     "x.json:15: /settings/distances_nm holds something else; allowed: numbers, 0.25 to 10\n"},
    {"read_the_picture", "[2, 1.5, 1, 0.7, 0.5]", "[2, 11]",
     "x.json:15: /settings/distances_nm holds something else; allowed: numbers, 0.25 to 10\n"},
    {"read_the_picture", "[2, 1.5, 1, 0.7, 0.5]", "[2, \"far\"]",
     "x.json:15: /settings/distances_nm holds something else; allowed: numbers, 0.25 to 10\n"},
    {"find_the_fault", "\"pilot\": \"over_control\"", "\"pilot\": \"under_control\"",
     "x.json:21: /settings/flights/2/pilot is \"under_control\", which is no model pilot\n"},
    {"find_the_fault", "\"pilot\": \"over_control\", ", "",
     "x.json:21: /settings/flights/2/pilot is missing\n"},
    {"find_the_fault", "[\"over_controlling\", \"chasing_needle\", \"not_trimming\"]", "\"all\"",
     "x.json:16: /settings/throughout is a text; allowed: a list\n"},
    {"find_the_fault", "\"diving\"", "\"driving\"",
     "x.json:17: /settings/others holds \"driving\", which is no fault\n"},
    {"go_around", "\"latest_call_s\": 30", "\"latest_call_s\": 3",
     "x.json:16: /settings/latest_call_s is 3; allowed: not less than earliest_call_s, 8\n"},
};

}  // namespace

TEST_CASE("drill files: what is wrong with one is told, each thing once, and nothing else") {
    for (const Row& row : rows) {
        CAPTURE(row.is);
        CHECK(told(row) == row.says);
    }
}

TEST_CASE("drill files: they stand in the order they are learned in, whatever their files are called") {
    for (std::size_t i = 0; i < shipped().drills.size(); ++i)
        CHECK(shipped().drills[i].place == static_cast<int>(i) + 1);
    CHECK(shipped().drills.front().id == "read_the_lights");
}

TEST_CASE("drill files: every shipped drill is found by its id, under the name of its kind") {
    for (const Drill& drill : shipped().drills) {
        CHECK(find_drill(shipped(), drill.id) == &drill);
        CHECK(drill.id == drill_kind_names[static_cast<std::size_t>(kind_of(drill))]);
        CHECK(is_flown(drill) == (drill.items == 1));
    }
    CHECK(find_drill(shipped(), "juggling") == nullptr);
}
