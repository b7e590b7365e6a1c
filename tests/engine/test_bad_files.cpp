// A table of files with something wrong in them, and the whole of what is said about each.
#include <string>

#include "data/catalog.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr std::string_view lesson = "assets/lessons/final_calm.json";
constexpr std::string_view runway = "assets/runways/larkmoor.json";
constexpr std::string_view aircraft = "assets/aircraft/tourer.json";

struct Edit {
    std::string_view was;
    std::string_view is;
};

std::string edited(std::string_view name, std::initializer_list<Edit> edits) {
    std::string text;
    for (const DataFile& file : shipped_files()) {
        if (file.name == name) text = file.text;
    }
    for (const Edit& edit : edits) {
        const std::size_t at = text.find(edit.was);
        if (at == std::string::npos) {
            FAIL_CHECK("\"" << std::string(edit.was) << "\" does not stand in " << std::string(name));
            continue;
        }
        text.replace(at, edit.was.size(), edit.is);
    }
    return text;
}

std::string told(const std::vector<Problem>& problems) {
    std::string all;
    for (const Problem& problem : problems) all += to_text(problem) + "\n";
    return all;
}

struct Row {
    std::string_view file;
    std::initializer_list<Edit> edits;
    const char* says;  // all of it
};

void check_rows(std::span<const Row> rows) {
    for (const Row& row : rows)
        CHECK(told(read_entry({"x.json", edited(row.file, row.edits)}).problems) == std::string(row.says));
}

}  // namespace

TEST_CASE("bad files: what is wrong with a lesson is told, each thing once, and nothing else") {
    const Row rows[] = {
        {lesson, {}, ""},
        {lesson,
         {{"\"id\": \"final_calm\"", "\"id\": \"\""}},
         "x.json:3: /id is 0 bytes long; allowed: 1 to 40\n"},
        {lesson, {{"\"id\": \"final_calm\"", "\"id\": 5"}}, "x.json:3: /id is a number; allowed: a text\n"},
        {lesson,
         {{"\"distance_nm\": 3", "\"distance_nm\": 0.2"}},
         "x.json:8: /start/distance_nm is 0.2; allowed: 0.25 to 10\n"},
        {lesson,
         {{"\"offset_deg\": 0", "\"offset_deg\": -2.5"}},
         "x.json:8: /start/offset_deg is -2.5; allowed: -2 to 9\n"},
        {lesson, {{"\"offset_deg\": 0, ", ""}}, ""},  // optional
        {lesson,
         {{"\"descent_deg\": 3", "\"descent_deg\": -1"}},
         "x.json:8: /start/descent_deg is -1; allowed: 0 to 8\n"},
        {lesson, {{"\"speed_kt\": 65, ", ""}}, "x.json:8: /start/speed_kt is missing\n"},
        {lesson, {{"\"flap\": 2", "\"flap\": 4"}}, "x.json:8: /start/flap is 4; allowed: 0 to 3\n"},
        {lesson,
         {{"\"flap\": 2", "\"flap\": \"landing\""}},
         "x.json:8: /start/flap is a text; allowed: a number\n"},
        {lesson,
         {{"\"target_speed_kt\": 65", "\"target_speed_kt\": 200"}},
         "x.json:9: /target_speed_kt is 200; allowed: 35 to 150\n"},
        {lesson,
         {{"\"qnh_hpa\": 1013.25", "\"qnh_hpa\": 101325"}},
         "x.json:10: /weather/qnh_hpa is 101325; allowed: 900 to 1100\n"},
        {lesson,
         {{"\"warmer_than_standard_c\": 0", "\"warmer_than_standard_c\": 80"}},
         "x.json:10: /weather/warmer_than_standard_c is 80; allowed: -50 to 50\n"},
        {lesson, {{"\"wind\": { \"headwind_kt\": 0 },", ""}}, "x.json:1: /wind is missing\n"},
        {lesson, {{"{ \"headwind_kt\": 0 }", "[]"}}, "x.json:11: /wind is a list; allowed: an object\n"},
        {lesson,
         {{"\"headwind_kt\": 0", "\"headwind_kt\": 10, \"roughness_m\": 0"}},
         "x.json:11: /wind/roughness_m is 0; allowed: 0.0002 to 1\n"},
        {lesson,
         {{"\"headwind_kt\": 0", "\"headwind_kn\": 0"}},
         "x.json:11: /wind/headwind_kt is missing\n"
         "x.json:11: /wind/headwind_kn is not a known key; nearest: \"headwind_kt\"\n"},
        {lesson,
         {{"\"headwind_kt\": 0", "\"table\": [{ \"height_ft\": 30, \"headwind_kt\": 8 }]"}},
         "x.json:11: /wind/table has 1 entries; allowed: 2 to 8\n"},
        {lesson,
         {{"\"headwind_kt\": 0",
           "\"table\": [{ \"height_ft\": 30, \"headwind_kt\": 8 },\n{ \"height_ft\": 30, "
           "\"headwind_kt\": 88 }], \"headwind_kt\": 3"}},
         "x.json:12: /wind/table/1/headwind_kt is 88; allowed: -15 to 40\n"
         "x.json:12: /wind/table/1/height_ft is 30; allowed: above the row before\n"
         "x.json:12: /wind/headwind_kt is not a known key\n"},
        {lesson,
         {{"\"path_floor_ft\": 30", "\"path_floor_ft\": 130"}},
         "x.json:12: /tolerances/path_floor_ft is 130; allowed: 0 to 100\n"},
        {lesson,
         {{"\"sink_fpm\": 200", "\"sink_fpm\": 20"}},
         "x.json:12: /tolerances/sink_fpm is 20; allowed: 50 to 1000\n"},
        {lesson,
         {{"\"kind\": \"lesson\"", "\"kind\": \"runway\""}},  // the wrong kind of file altogether
         "x.json:1: /name is missing\nx.json:1: /designator is missing\nx.json:1: /length_m is missing\n"
         "x.json:1: /width_m is missing\nx.json:1: /elevation_ft is missing\nx.json:1: /slope_percent is "
         "missing\n"
         "x.json:1: /lights is missing\n"
         "x.json:4: /title is not a known key\nx.json:5: /aim is not a known key\n"
         "x.json:6: /aircraft is not a known key\nx.json:7: /runway is not a known key\n"
         "x.json:8: /start is not a known key\nx.json:9: /target_speed_kt is not a known key\n"
         "x.json:10: /weather is not a known key\nx.json:11: /wind is not a known key\n"
         "x.json:12: /tolerances is not a known key\n"},
    };
    check_rows(rows);
}

TEST_CASE("bad files: what is wrong with a runway is told, each thing once, and nothing else") {
    const Row rows[] = {
        {runway, {}, ""},
        {runway,
         {{"\"length_m\": 1500", "\"length_m\": 200"}},
         "x.json:6: /length_m is 200; allowed: 300 to 5000\n"},
        {runway, {{"\"width_m\": 30", "\"width_m\": 5"}}, "x.json:7: /width_m is 5; allowed: 9 to 80\n"},
        {runway,
         {{"\"designator\": \"27\"", "\"designator\": \"27LR\""}},
         "x.json:5: /designator is 4 bytes long; allowed: 1 to 3\n"},
        {runway,
         {{"\"slope_percent\": 0", "\"slope_percent\": 5"}},
         "x.json:9: /slope_percent is 5; allowed: -4 to 4\n"},
        {runway,
         {{"\"papi\"", "\"lamps\""}},
         "x.json:10: /lights/type is \"lamps\"; allowed: \"papi\", \"papi_harmonised\", \"apapi\", "
         "\"vasi\"\n"},
        {runway,
         {{"\"nominal_path_deg\": 3", "\"nominal_path_deg\": 2.4"}},
         "x.json:10: /lights/nominal_path_deg is 2.4; allowed: 2.5 to 4.5\n"},
        {runway,
         {{"\"side\": \"left\"", "\"side\": \"left\", \"spacing_m\": 12, \"edge_gap_m\": 5"}},
         "x.json:10: /lights/edge_gap_m is 5; allowed: 9 to 30\n"
         "x.json:10: /lights/spacing_m is 12; allowed: 6 to 9.3\n"},
        {runway,
         {{"\"length_m\": 1500", "\"length_m\": 500, \"aim_distance_m\": 300"}},
         "x.json:6: /aim_distance_m is 300; allowed: at most half of /length_m\n"},
        {runway,
         {{"\"length_m\": 1500", "\"length_m\": 30, \"aim_distance_m\": 300"}},
         "x.json:6: /length_m is 30; allowed: 300 to 5000\n"},  // nothing about half of a length that is not
                                                                // known
        {runway,  // both at once, though one hangs on a number beside the other
         {{"\"length_m\": 1500", "\"length_m\": 500, \"aim_distance_m\": 300"},
          {"\"width_m\": 30", "\"width_m\": 5"}},
         "x.json:7: /width_m is 5; allowed: 9 to 80\n"
         "x.json:6: /aim_distance_m is 300; allowed: at most half of /length_m\n"},
        {runway,
         {{"\"elevation_ft\": 120", "\"elevation_m\": 37"}},
         "x.json:1: /elevation_ft is missing\n"
         "x.json:8: /elevation_m is not a known key; nearest: \"elevation_ft\"\n"},
    };
    check_rows(rows);
}

TEST_CASE("bad files: what is wrong with an aircraft is told, each thing once, and nothing else") {
    const Row rows[] = {
        {aircraft, {}, ""},
        {aircraft,
         {{"\"area_m2\": 16.3", "\"area_m2\": 163"}},
         "x.json:9: /wing/area_m2 is 163; allowed: 5 to 60\n"},
        {aircraft,
         {{"\"oswald_efficiency\": 0.76", "\"oswald_efficiency\": 1.1"}},
         "x.json:15: /wing/oswald_efficiency is 1.1; allowed: 0.4 to 1\n"},
        {aircraft,
         {{"\"separation_drag\": 0.6", "\"separation_drag\": -0.1"}},
         "x.json:16: /wing/separation_drag is -0.1; allowed: 0 to 3\n"},
        {aircraft,
         {{"\"idle_percent\": 4", "\"idle_percent\": 40"}},
         "x.json:22: /engine/idle_percent is 40; allowed: 0 to 20\n"},
        {aircraft,
         {{"\"lag_s\": 0.7", "\"lag_s\": 0"}},
         "x.json:23: /engine/lag_s is 0; allowed: 0.1 to 5\n"},
        {aircraft,
         {{"\"short_period_damping\": 0.7", "\"short_period_damping\": 0"}},
         "x.json:34: /pitch/short_period_damping is 0; allowed: 0.2 to 1.5\n"},
        {aircraft,
         {{"\"wheels_down_m\": 1.3", "\"wheels_down_m\": 0"}},
         "x.json:40: /geometry/wheels_down_m is 0; allowed: 0.2 to 5\n"},
        {aircraft,
         {{"\"max_lift\": 1.48", "\"max_lft\": 1.48"}},
         "x.json:45: /flaps/1/max_lift is missing\n"
         "x.json:45: /flaps/1/max_lft is not a known key; nearest: \"max_lift\"\n"},
        {aircraft,
         {{"\"drag_increment\": 0.042", "\"drag_increment\": 0.42"}},
         "x.json:46: /flaps/2/drag_increment is 0.42; allowed: 0 to 0.3\n"},
        {aircraft,
         {{"\"flap_travel_s\": 3", "\"flap_travel_s\": 0.1"}},
         "x.json:48: /flap_travel_s is 0.1; allowed: 0.5 to 20\n"},
    };
    check_rows(rows);
}

TEST_CASE("bad files: the problems of many files come together, each under its own file") {
    const std::string bad_plane = edited(aircraft, {{"\"mass_kg\": 1100", "\"mass_kg\": 11"}});
    const std::string bad_runway = edited(runway, {{"\"width_m\": 30", "\"width_m\": 300"}});
    const std::string good_lesson = edited(lesson, {});
    const std::string not_json = "{";
    const DataFile files[] = {{"plane.json", bad_plane},
                              {"runway.json", bad_runway},
                              {"lesson.json", good_lesson},
                              {"x.json", not_json}};
    const Result<Catalog> catalog = load_catalog(files);
    CHECK(!catalog.ok());
    CHECK(told(catalog.problems) ==
          "plane.json:7: /mass_kg is 11; allowed: 800 to 1110\n"
          "runway.json:7: /width_m is 300; allowed: 9 to 80\n"
          "x.json:1: is not JSON at \"{\"\n"
          "lesson.json: /aircraft is \"tourer\", which is not known\n"
          "lesson.json: /runway is \"larkmoor\", which is not known\n");
}
