// What a school sets: read, written, and worded.
#include "data/school_file.h"

#include <string>

#include "base/pressure_units.h"
#include "data/criteria_file.h"
#include "flight/performance.h"
#include "review/diagnosis/correction.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::string aircraft_text(std::string_view id) {
    for (const DataFile& file : shipped_files())
        if (file.text.find("\"id\": \"" + std::string(id) + "\"") != std::string_view::npos &&
            file.text.find("\"kind\": \"aircraft\"") != std::string_view::npos)
            return std::string(file.text);
    return {};
}

// Nothing in it as usual.
std::string everything() {
    return R"({"kind": "school", "name": "Kiebitz-Flugschule Süd", "gust_percent": 100, "runway_unit": "ft",
"pressure_unit": "inHg", "stick_hand": "left",
"flap_schedule": [{"by_ft": 1000, "setting": 1}, {"by_ft": 500, "setting": 2}],
"criteria": {"kind": "criteria", "convention": "pitch_for_path", "at_300_ft": {"path_deg": 0.3}},
"aircraft": )" +
           aircraft_text("tourer") + "}";
}

std::vector<std::string> problems_of(std::string_view text) {
    std::vector<std::string> lines;
    const Result<School> read = read_school(text, "school.json");
    CHECK_FALSE(read.ok());
    for (const Problem& problem : read.problems) lines.push_back(to_text(problem));
    return lines;
}

}  // namespace

TEST_CASE("school: all of it is read, and what a file leaves out is as usual") {
    const Result<School> read = read_school(everything(), "school.json");
    REQUIRE_MESSAGE(read.ok(), (read.problems.empty() ? "" : to_text(read.problems.front())));
    const School& school = *read.value;
    CHECK(school.name == "Kiebitz-Flugschule Süd");
    CHECK(school.gust_share == 1.0);
    CHECK(school.runway_unit == RunwayUnit::feet);
    CHECK(school.pressure_unit == PressureUnit::inches_of_mercury);
    CHECK(school.stick_hand == StickHand::left);
    REQUIRE(school.flap_step_count == 2);
    CHECK_NEAR(ft_from_m(school.flap_schedule[0].by_height_m), 1000.0, 1e-9);
    CHECK(school.flap_schedule[1].setting == 2);
    CHECK(school.criteria.convention == Convention::pitch_for_path);
    CHECK_NEAR(deg_from_rad(school.criteria.decision.path_rad), 0.3, 1e-9);
    REQUIRE(school.aircraft);
    CHECK(school.aircraft->aircraft.name == tourer().name);

    const Result<School> usual = read_school(R"({"kind": "school"})", "empty.json");
    REQUIRE(usual.ok());
    CHECK(usual.value->name.empty());
    CHECK(usual.value->gust_share == 0.5);
    CHECK(usual.value->runway_unit == RunwayUnit::metres);
    CHECK(usual.value->flap_step_count == 0);
    CHECK_FALSE(usual.value->aircraft);
    CHECK(criteria_text(usual.value->criteria) == criteria_text(Criteria{}));
}

TEST_CASE("school: written and read again it is the same, its aircraft to the last digit") {
    for (const std::string& text : {everything(), std::string(R"({"kind": "school"})")}) {
        const School was = *read_school(text, "a.json").value;
        const std::string written = school_text(was);
        const Result<School> again = read_school(written, "b.json");
        REQUIRE(again.ok());
        CHECK(school_text(*again.value) == written);
        CHECK(again.value->name == was.name);
        if (!was.aircraft) continue;
        const Aircraft &a = was.aircraft->aircraft, &b = again.value->aircraft->aircraft;
        CHECK(a.wing.zero_lift_drag == b.wing.zero_lift_drag);
        CHECK(a.pitch.neutral_alpha_rad == b.pitch.neutral_alpha_rad);
        CHECK(a.flaps[1].drag_increment == b.flaps[1].drag_increment);
        CHECK(a.approach_speed_mps == b.approach_speed_mps);
    }
}

TEST_CASE(
    "school: every problem is told with its line, what it is and what is allowed, and nothing is taken") {
    const std::vector<std::string> bad = problems_of(R"({"kind": "school",
"gust_percent": 140,
"runway_unit": "yd",
"stick_hand": "both",
"flap_schedule": [{"by_ft": 500, "setting": 1}, {"by_ft": 800, "setting": 2}],
"criteria": {"kind": "criteria", "at_300_ft": {"path_deg": 9}},
"colour": "blue"})");
    REQUIRE(bad.size() == 6);
    CHECK(bad[0] == "school.json:6: /criteria/at_300_ft/path_deg is 9; allowed: 0.1 to 2");
    CHECK(bad[1] == "school.json:2: /gust_percent is 140; allowed: 0 to 100");
    CHECK(bad[2] == "school.json:3: /runway_unit is \"yd\"; allowed: \"m\", \"ft\"");
    CHECK(bad[3] == "school.json:4: /stick_hand is \"both\"; allowed: \"right\", \"left\"");
    CHECK(bad[4].find("school.json:5: /flap_schedule has a step that is not lower with more flap") == 0);
    CHECK(bad[5] == "school.json:7: /colour is not a known key");
    CHECK(problems_of(R"({"kind": "school", "aircraft": "tourer"})").front() ==
          "school.json:1: /aircraft is a text; allowed: an object");
    CHECK(problems_of("no JSON").size() == 1);
    CHECK(problems_of(R"({"kind": "lesson"})").front().find("allowed: \"school\"") != std::string::npos);

    const std::vector<std::string> same_flap = problems_of(R"({"kind": "school",
"flap_schedule": [{"by_ft": 800, "setting": 1}, {"by_ft": 500, "setting": 1}]})");
    REQUIRE(same_flap.size() == 1);
    CHECK(same_flap[0].find("has a step that is not lower with more flap") != std::string::npos);

    std::string aircraft = everything();
    aircraft.replace(aircraft.find("\"span_m\""), 8, "\"spam_m\"");
    const std::vector<std::string> bad_aircraft = problems_of(aircraft);
    REQUIRE(bad_aircraft.size() >= 2);
    CHECK(bad_aircraft[0].find("/aircraft/wing/span_m is missing") != std::string::npos);
}

TEST_CASE("school: its name has 60 characters at most, counted as they are read, on one line") {
    const auto named = [](const std::string& name) {
        return R"({"kind": "school", "name": ")" + name + "\"}";
    };
    std::string sixty;
    for (int i = 0; i < 60; ++i) sixty += "\u00e9";
    CHECK(read_school(named(sixty), "a.json").ok());
    CHECK(problems_of(named(sixty + "e")).front() ==
          "school.json:1: /name is 61 characters long; allowed: at most 60 characters on one line");
    for (const char* control : {"a\\nb", "a\\u007fb"})
        CHECK(problems_of(named(control)).front().find("control character") != std::string::npos);
    CHECK(problems_of(R"({"kind": "school", "name": 7})").front() ==
          "school.json:1: /name is a number; allowed: a text");
    CHECK(read_school(named(""), "a.json").value->name.empty());
}

TEST_CASE("school: within other settings each bad value has its default, alone") {
    const std::string text =
        R"({"kind": "school", "name": "North field", "gust_percent": 500, "runway_unit": "ft",
"aircraft": {"kind": "aircraft"}})";
    const Result<JsonNode> node = parse_json(text, "kept");
    std::vector<Problem> problems;
    const School school = read_school(Fields(*node.value, "kept", "", problems), "kept", problems);
    CHECK(problems.size() > 2);
    CHECK(school.name == "North field");
    CHECK(school.gust_share == 0.5);
    CHECK(school.runway_unit == RunwayUnit::feet);
    CHECK_FALSE(school.aircraft);
}

// Airplane Flying Handbook (FAA-H-8083-3): one half of the gust factor is added; wind 15 kt gusting to 25 has
// a gust factor of 10 kt, so 5 kt are added (arithmetic of the rule).
TEST_CASE("school: half the gust factor is added to the target speed, or the share that a school sets") {
    Lesson lesson;
    CHECK(gust_allowance_mps(lesson, 0.5) == 0.0);
    lesson.air_event_count = 3;
    lesson.air_events[0].kind = AirEvent::Kind::gust;
    lesson.air_events[0].along_mps = mps_from_kt(10.0);
    lesson.air_events[1].kind = AirEvent::Kind::gust;
    lesson.air_events[1].along_mps = mps_from_kt(-6.0);
    lesson.air_events[2].kind = AirEvent::Kind::shear;  // no gust, and so no factor
    lesson.air_events[2].along_mps = mps_from_kt(20.0);
    CHECK_NEAR(kt_from_mps(gust_allowance_mps(lesson, School{}.gust_share)), 5.0, 1e-9);
    CHECK_NEAR(kt_from_mps(gust_allowance_mps(lesson, 1.0)), 10.0, 1e-9);
    CHECK(gust_allowance_mps(lesson, 0.0) == 0.0);
}

// Standard pressure: 1013.25 hPa is 29.92 inHg (ICAO Doc 7488; FAA AIM 7-2-2).
TEST_CASE("units: hectopascals and inches of mercury") {
    CHECK(pa_from_hpa(1013.25) == 101325.0);
    CHECK(hpa_from_pa(101325.0) == 1013.25);
    CHECK_NEAR(inhg_from_pa(101325.0), 29.92, 0.005);  // as it is rounded on a subscale
    CHECK_NEAR(pa_from_inhg(inhg_from_pa(98765.4)), 98765.4, 1e-9);
}

// Which control leads is the school's to say; both conventions move both (Airplane Flying Handbook).
TEST_CASE(
    "correction: a school that mends the path with pitch hears the nose first, and only there another word") {
    int other = 0;
    for (const Fault& fault : faults()) {
        CAPTURE(fault.id);
        CHECK(correction_of(fault, Convention::power_for_path) == fault.correction);
        CHECK(correction_of(fault, Convention::both) == fault.correction);
        const std::string_view by_pitch = correction_of(fault, Convention::pitch_for_path);
        CHECK_FALSE(by_pitch.empty());
        if (by_pitch == fault.correction) continue;
        ++other;
        CHECK(by_pitch.find("Power first") == std::string_view::npos);
        CHECK((by_pitch.find("nose") != std::string_view::npos ||
               by_pitch.find("Nose") != std::string_view::npos));
    }
    CHECK(other == 5);
}
