// Data files: every shipped one loads, and a bad one is told with every problem it has.
#include <string>

#include "data/catalog.h"
#include "data/fields.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::string text_of(std::string_view name) {
    for (const DataFile& file : shipped_files())
        if (file.name == name) return std::string(file.text);
    FAIL("no shipped file " << name);
    return {};
}

// The shipped text with one piece of it replaced; the piece must be there.
std::string changed(std::string_view name, std::string_view piece, std::string_view by) {
    std::string text = text_of(name);
    const std::size_t at = text.find(piece);
    REQUIRE_MESSAGE(at != std::string::npos, piece);
    return text.replace(at, piece.size(), by);
}

// All problems of a text, a line each.
std::string problems_of(const std::string& text) {
    std::string all;
    for (const Problem& problem : read_entry({"x.json", text}).problems) all += to_text(problem) + "\n";
    return all;
}

constexpr const char* lesson = "assets/lessons/final_calm.json";
constexpr const char* runway = "assets/runways/larkmoor.json";
constexpr const char* aircraft = "assets/aircraft/tourer.json";

}  // namespace

TEST_CASE("data: every shipped file loads, and together they make a catalog") {
    REQUIRE(!shipped_files().empty());
    for (const DataFile& file : shipped_files()) {
        const Result<DataEntry> entry = read_entry(file);
        for (const Problem& problem : entry.problems) MESSAGE(to_text(problem));
        CHECK(entry.ok());
    }
    CHECK(load_catalog(shipped_files()).ok());
    CHECK(shipped().lessons.size() >= 5);
}

TEST_CASE("data: a bad file is told by file, line, path, what it is and what is allowed") {
    struct Row {
        std::string text;
        const char* says;
    };
    const Row rows[] = {
        {"", "x.json:1: is not JSON at \"\"\n"},
        {"[1, 2]", "x.json:1: / is a list; allowed: an object\n"},
        {"{\"kind\": \"boat\"}",
         "x.json:1: /kind is \"boat\"; allowed: \"aircraft\", \"runway\", \"lesson\", \"drill\", "
         "\"questions\"\n"},
        {"{}", "x.json:1: /kind is missing\n"},
        {"{\"kind\": \"lesson\", \"kind\": \"lesson\"}",
         "x.json:1: key \"kind\" stands twice; allowed: each key once\n"},
        {"{\n\n  \"kind\": lesson }", "x.json:3: is not JSON at \"\"kind\": l\"\n"},
        {changed(lesson, "\"distance_nm\": 3", "\"distance_nm\": 30"),
         "x.json:8: /start/distance_nm is 30; allowed: 0.25 to 10\n"},
        {changed(lesson, "\"headwind_kt\": 0", "\"headwind_kt\": 600"),
         "x.json:11: /wind/headwind_kt is 600; allowed: -15 to 40\n"},
        {changed(lesson, "\"headwind_kt\": 0", "\"headwind_kt\": \"strong\""),
         "x.json:11: /wind/headwind_kt is a text; allowed: a number\n"},
        {changed(lesson, "\"flap\": 2", "\"flap\": 1.5"),
         "x.json:8: /start/flap is 1.5; allowed: a whole number, 0 to 3\n"},
        {changed(lesson, "\"target_speed_kt\"", "\"target_sped_kt\""),
         "x.json:1: /target_speed_kt is missing\n"
         "x.json:9: /target_sped_kt is not a known key; nearest: \"target_speed_kt\"\n"},
        {changed(lesson, "\"wind\": { \"headwind_kt\": 0 }",
                 "\"wind\": { \"table\": [{ \"height_ft\": 500, \"headwind_kt\": 9 }, { \"height_ft\": 30, "
                 "\"headwind_kt\": 8 }] }"),
         "x.json:11: /wind/table/1/height_ft is 30; allowed: above the row before\n"},
        {changed(lesson, "\"wind\": { \"headwind_kt\": 0 }", "\"wind\": { \"table\": [] }"),
         "x.json:11: /wind/table has 0 entries; allowed: 2 to 8\n"},
        {changed(runway, "\"left\"", "\"middle\""),
         "x.json:10: /lights/side is \"middle\"; allowed: \"left\", \"right\", \"both\"\n"},
        {changed(runway, "\"length_m\": 1500", "\"length_m\": 1000, \"aim_distance_m\": 600"),
         "x.json:6: /aim_distance_m is 600; allowed: at most half of /length_m\n"},
        {changed(runway, "\"nominal_path_deg\": 3", "\"nominal_path_deg\": 6"),
         "x.json:10: /lights/nominal_path_deg is 6; allowed: 2.5 to 4.5\n"},
        {changed(aircraft, "\"mass_kg\": 1100", "\"mass_kg\": -5"),
         "x.json:7: /mass_kg is -5; allowed: 800 to 1110\n"},
        {changed(aircraft, "\"name\": \"half\"", "\"name\": \"\""),
         "/flaps/1/name is 0 bytes long; allowed: 1 to 20\n"},
    };
    for (const Row& row : rows) {
        const std::string said = problems_of(row.text);
        CHECK_MESSAGE(said.find(row.says) != std::string::npos, said);
    }
}

TEST_CASE("data: all problems of a file are told at once") {
    std::string text = changed(lesson, "\"distance_nm\": 3", "\"distance_nm\": 30");
    text.replace(text.find("\"path_deg\": 0.5"), 15, "\"path_deg\": 50 ");
    text.replace(text.find("\"aim\""), 5, "\"goal\"");
    const std::string said = problems_of(text);
    for (const char* problem : {"/start/distance_nm is 30", "/tolerances/path_deg is 50", "/aim is missing",
                                "/goal is not a known key"})
        CHECK_MESSAGE(said.find(problem) != std::string::npos, said);
}

TEST_CASE("data: nothing is read that is too long or too deep") {
    CHECK(problems_of(std::string((1u << 20) + 1, ' ')).find("allowed: 1 MiB") != std::string::npos);
    CHECK(problems_of(std::string(100000, '[')).find("is nested too deep; allowed: 32 levels") !=
          std::string::npos);
}

TEST_CASE("catalog: a lesson that names what is not there, or cannot be flown, is told with what is") {
    const auto catalog_with = [](const std::string& lesson_text) {
        const std::string plane = text_of(aircraft), strip = text_of(runway);
        const DataFile files[] = {{"a.json", plane}, {"r.json", strip}, {"l.json", lesson_text}};
        std::string all;
        for (const Problem& problem : load_catalog(files).problems) all += to_text(problem) + "\n";
        return all;
    };
    CHECK(catalog_with(text_of(lesson)) == "");
    CHECK(catalog_with(changed(lesson, "\"tourer\"", "\"glider\"")) ==
          "l.json: /aircraft is \"glider\", which is not known; allowed: \"tourer\"\n");
    CHECK(catalog_with(changed(lesson, "\"larkmoor\"", "\"nowhere\"")) ==
          "l.json: /runway is \"nowhere\", which is not known; allowed: \"larkmoor\"\n");
    CHECK(catalog_with(changed(lesson, "\"flap\": 2", "\"flap\": 3")) ==
          "l.json: /start/flap is 3; allowed: 0 to 2 with this aircraft\n");
    CHECK(catalog_with(changed(lesson, "\"speed_kt\": 65", "\"speed_kt\": 45"))
              .find("/start cannot be flown: the speed is below the stall") != std::string::npos);
    CHECK(catalog_with(changed(lesson, "\"descent_deg\": 3", "\"descent_deg\": 8"))
              .find("/start cannot be flown: idle is still too much power") != std::string::npos);
}

TEST_CASE("catalog: two files of one kind with the same id are told apart") {
    const std::string strip = text_of(runway);
    const DataFile files[] = {{"a.json", strip}, {"b.json", strip}};
    const Result<Catalog> catalog = load_catalog(files);
    REQUIRE_FALSE(catalog.ok());
    CHECK(to_text(catalog.problems.front()) ==
          "b.json: /id is \"larkmoor\", which another file has; allowed: an id of its own");

    // Of two lessons only the first is checked: what is wrong with both is told once.
    const std::string lost = changed(lesson, "\"larkmoor\"", "\"nowhere\""), plane = text_of(aircraft);
    const DataFile lessons[] = {{"p.json", plane}, {"r.json", strip}, {"1.json", lost}, {"2.json", lost}};
    std::string said;
    for (const Problem& problem : load_catalog(lessons).problems) said += to_text(problem) + "\n";
    CHECK(said ==
          "2.json: /id is \"final_calm\", which another file has; allowed: an id of its own\n"
          "1.json: /runway is \"nowhere\", which is not known; allowed: \"larkmoor\"\n");
}
