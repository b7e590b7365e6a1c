// Lessons and recordings as files: nothing is lost on the way out and back, and a bad file is told.
#include <string>

#include "base/units.h"
#include "data/read_lesson.h"
#include "data/recording_file.h"
#include "data/write_lesson.h"
#include "lesson/approach_choice.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Lesson read_back(const Lesson& lesson) {
    const Result<JsonNode> parsed = parse_json(lesson_text(lesson), "x.json");
    REQUIRE(parsed.ok());
    Result<Lesson> read = read_lesson(*parsed.value, "x.json");
    for (const Problem& problem : read.problems) FAIL_CHECK(to_text(problem));
    REQUIRE(read.ok());
    return std::move(*read.value);
}

// A lesson with everything in it, from text as a file would have it.
Lesson full_lesson() {
    const char* text =
        R"({"kind": "lesson", "id": "full", "title": "Full", "aim": "All.", "aircraft": "tourer",
        "runway": "larkmoor", "mass_kg": 1037.3,
        "start": {"distance_nm": 2.7, "offset_deg": -0.37, "descent_deg": 2.9, "speed_kt": 68.1, "flap": 1},
        "target_speed_kt": 66.7, "weather": {"warmer_than_standard_c": -7.3, "qnh_hpa": 987.1},
        "wind": {"table": [{"height_ft": 33, "headwind_kt": 7.7}, {"height_ft": 1001, "headwind_kt": 19.9}]},
        "outlook": {"light": "dusk", "ground_lights": false, "visibility_km": 7.3, "overcast": true, "rain": true},
        "air": {"turbulence_w20_kt": 17.3, "seed": 99, "events": [
            {"type": "gust", "at_time_s": 20.3, "along_kt": 7.1, "up_fpm": -313, "length_ft": 111},
            {"type": "sink_patch", "at_distance_nm": 1.1, "up_fpm": -431, "length_ft": 1700},
            {"type": "shear", "at_distance_nm": 0.7, "along_kt": -9.3, "length_ft": 650}]},
        "failures": [{"type": "airspeed_blank", "at_time_s": 31.7},
            {"type": "power_partial", "at_distance_nm": 0.9, "power_left_percent": 43},
            {"type": "light_misaimed", "at_height_ft": 333, "too_high_minutes": 17, "unit": 3},
            {"type": "light_out", "at_time_s": 1, "unit": 4},
            {"type": "condensation", "at_time_s": 2, "degree_percent": 70}],
        "side_profile": true,
        "tolerances": {"path_deg": 0.47, "path_floor_ft": 29, "slow_kt": 4.7, "fast_kt": 9.1, "sink_fpm": 190}})";
    const Result<JsonNode> parsed = parse_json(text, "full.json");
    REQUIRE(parsed.ok());
    Result<Lesson> lesson = read_lesson(*parsed.value, "full.json");
    for (const Problem& problem : lesson.problems) FAIL_CHECK(to_text(problem));
    REQUIRE(lesson.ok());
    return std::move(*lesson.value);
}

std::string problem_of(const std::string& text) {
    const Result<Recording> result = read_recording(text, "x.json");
    return result.ok() ? "read" : to_text(result.problems.front());
}

std::string edited(std::string text, const std::string& was, const std::string& is) {
    const std::size_t at = text.find(was);
    REQUIRE_MESSAGE(at != std::string::npos, was << " does not stand there");
    return text.replace(at, was.size(), is);
}

// Ten seconds with two changes of the controls.
Recording short_recording() {
    const Scenario scenario = shipped_scenario("final_calm");
    return fly_with(scenario, 1200,
                    [](const Attempt& attempt) {
                        Controls controls = attempt.controls;
                        if (attempt.tick == 300) controls.stick = 4000;
                        if (attempt.tick == 700) controls.stick = -900;
                        return controls;
                    })
        .recording;
}

}  // namespace

TEST_CASE("lesson files: a lesson written and read again flies the same, bit for bit") {
    std::vector<Lesson> lessons = shipped().lessons;
    lessons.push_back(full_lesson());
    REQUIRE(lessons.back().side_profile);
    for (const int distance_nm : choice_distances_nm) {
        for (const StartSide side : {StartSide::above, StartSide::on, StartSide::below})
            lessons.push_back(lesson_of({distance_nm, side, 7.0}, shipped().lessons.front()));
    }
    for (const Lesson& lesson : lessons) {
        CAPTURE(lesson.id);
        CAPTURE(lesson.title);
        const Lesson again = read_back(lesson);
        CHECK(lesson_text(again) == lesson_text(lesson));
        const auto hash_of = [](const Lesson& flown) {
            return fly_with(scenario_of(shipped(), flown), 6000, [](const Attempt& a) { return a.controls; })
                .recording.final_hash;
        };
        CHECK(hash_of(again) == hash_of(lesson));
        CHECK(again.outlook == lesson.outlook);
        CHECK(again.side_profile == lesson.side_profile);
        CHECK(again.tolerances.path_rad == lesson.tolerances.path_rad);
        CHECK(again.tolerances.sink_mps == lesson.tolerances.sink_mps);
    }
}

TEST_CASE("lesson files: any number that came in pilot units goes out in them and back with all its bits") {
    Lesson lesson = shipped_scenario("final_calm").lesson;
    Random random{20};
    const auto between = [&](double low, double high) { return low + (high - low) * next_uniform(random); };
    for (int i = 0; i < 500; ++i) {
        lesson.start.distance_m = m_from_nm(between(0.3, 9.0));
        lesson.start.offset_rad = rad_from_deg(between(-2.0, 3.0));
        lesson.start.cas_mps = mps_from_kt(between(35.0, 200.0));
        lesson.wind.headwind_mps = mps_from_kt(between(-15.0, 40.0));
        lesson.weather.qnh_pa = 100.0 * between(900.0, 1100.0);
        lesson.outlook.visibility_m = 1000.0 * between(1.0, 50.0);
        lesson.failures[0] = {.kind = Failure::Kind::light_misaimed,
                              .amount = rad_from_minutes(between(-60.0, 60.0))};
        lesson.failures[1] = {.kind = Failure::Kind::power_partial, .amount = between(0.0, 100.0) / 100.0};
        lesson.failure_count = 2;
        const Lesson again = read_back(lesson);
        CHECK(again.start.distance_m == lesson.start.distance_m);
        CHECK(again.start.offset_rad == lesson.start.offset_rad);
        CHECK(again.start.cas_mps == lesson.start.cas_mps);
        CHECK(again.wind.headwind_mps == lesson.wind.headwind_mps);
        CHECK(again.weather.qnh_pa == lesson.weather.qnh_pa);
        CHECK(again.outlook.visibility_m == lesson.outlook.visibility_m);
        CHECK(again.failures[0].amount == lesson.failures[0].amount);
        CHECK(again.failures[1].amount == lesson.failures[1].amount);
    }
}

TEST_CASE("lesson files: a wind over a named terrain is kept as the terrain's roughness") {
    Lesson lesson = shipped_scenario("final_headwind").lesson;
    lesson.wind = {.kind = Wind::Kind::logarithmic, .headwind_mps = 5.0, .roughness_m = 0.1};
    std::string text = lesson_text(lesson);
    const std::size_t at = text.find("\"roughness_m\"");
    REQUIRE(at != std::string::npos);
    for (const Terrain& terrain : terrains) {
        std::string named = text;
        named.replace(at, named.find_first_of(",\n", at) - at,
                      "\"terrain\": \"" + std::string(terrain.name) + "\"");
        const Result<JsonNode> parsed = parse_json(named, "x.json");
        REQUIRE(parsed.ok());
        const Result<Lesson> read = read_lesson(*parsed.value, "x.json");
        REQUIRE(read.ok());
        CHECK(read.value->wind.roughness_m == terrain.roughness_m);
        CHECK(read_back(*read.value).wind.roughness_m == terrain.roughness_m);
    }
}

TEST_CASE("recording files: what was recorded comes back whole and flies the same") {
    const Recording recording = short_recording();
    const Result<Recording> again = read_recording(recording_text(recording), "x.json");
    REQUIRE(again.ok());
    CHECK(again.value->ticks == recording.ticks);
    CHECK(again.value->final_hash == recording.final_hash);
    CHECK(again.value->hashes == recording.hashes);
    REQUIRE(again.value->changes.size() == recording.changes.size());
    for (std::size_t i = 0; i < recording.changes.size(); ++i) {
        CHECK(again.value->changes[i].tick == recording.changes[i].tick);
        CHECK(again.value->changes[i].controls == recording.changes[i].controls);
    }
    CHECK(replay(*again.value, scenario_of(shipped(), again.value->lesson)).first_diverged_tick == -1);
}

TEST_CASE("recording files: what is wrong is told by its place, and nothing is taken from a bad file") {
    const std::string text = recording_text(short_recording());
    CHECK(problem_of(text) == "read");
    CHECK(problem_of(edited(text, "\"format\":1", "\"format\":2")) ==
          "x.json:1: /format is 2; allowed: 1 to 1");
    CHECK(problem_of(edited(text, "\"kind\":\"recording\"", "\"kind\":\"lesson\"")) ==
          "x.json:1: /kind is \"lesson\"; allowed: \"recording\"");
    CHECK(problem_of(edited(text, "\"aircraft\":\"tourer\",", "")) ==
          "x.json:1: /lesson/aircraft is missing");
    CHECK(problem_of(edited(text, "[300,4000", "[300,40000")) ==
          "x.json:1: /controls/1 has a bad stick; allowed: a whole number, -32767 to 32767");
    CHECK(problem_of(edited(text, "[700,", "[300,")) ==
          "x.json:1: /controls/2 is not later than the row before");
    CHECK(problem_of(edited(text, "[700,", "[7000,")) ==
          "x.json:1: /controls/2 is later than the recording; allowed: a tick before /ticks");
    CHECK(problem_of(edited(text, "\"ticks\":1200", "\"ticks\":\"all\"")).starts_with("x.json:1: /ticks "));
    CHECK(problem_of(edited(text, "[700,", "[")) ==
          "x.json:1: /controls/2 is not a row of controls; allowed: 6 numbers");
    CHECK(problem_of(edited(text, "\"ticks\":1200", "\"ticks\":1320")) ==
          "x.json:1: /hashes has 10 entries; allowed: 11, one for every 120 ticks");
    CHECK(problem_of(edited(text, "\"final_hash\":\"", "\"final_hash\":\"zz")) ==
          "x.json:1: /final_hash is no hash; allowed: 16 hexadecimal digits");
    CHECK(problem_of(edited(text, "[300,4000", "[300,4000.5")) ==
          "x.json:1: /controls/1 has a bad stick; allowed: a whole number, -32767 to 32767");
    CHECK(problem_of(edited(text, "[300,4000", "[300,true")) ==
          "x.json:1: /controls/1 has a bad stick; allowed: a whole number, -32767 to 32767");
    CHECK(problem_of(edited(text, "\"controls\":[", "\"controls\":[7,")) ==
          "x.json:1: /controls/0 is not a row of controls; allowed: 6 numbers");
    CHECK(problem_of(edited(text, "\"hashes\":[", "\"hashes\":[7,")) ==
          "x.json:1: /hashes has an entry that is no hash; allowed: texts of 16 hexadecimal digits");
    CHECK(problem_of(edited(text, "\"hashes\":[\"", "\"hashes\":[\"f")) ==
          "x.json:1: /hashes has an entry that is no hash; allowed: texts of 16 hexadecimal digits");
    CHECK(problem_of(edited(text, "[300,4000", "[300,-40000")) ==
          "x.json:1: /controls/1 has a bad stick; allowed: a whole number, -32767 to 32767");
    CHECK(problem_of(edited(text, "\"hashes\":[\"", "\"hashes\":[\"zzzzzzzzzzzzzzzz\",\"")) ==
          "x.json:1: /hashes has an entry that is no hash; allowed: texts of 16 hexadecimal digits");
    std::string many = "\"controls\":[";
    for (int i = 0; i < 1000; ++i) many += "7,";
    CHECK(read_recording(edited(text, "\"controls\":[", many), "x.json").problems.size() <
          50);  // no flood of them
    for (const char* part : {"lesson", "controls", "hashes"}) {
        const std::string gone = "x.json:1: /" + std::string(part) + " is missing";
        CHECK(problem_of(edited(text, "\"" + std::string(part) + "\":", "\"x\":")) == gone);
    }
    CHECK(problem_of(text.substr(0, text.size() / 2)).starts_with("x.json:1: is not JSON at"));
    CHECK(problem_of(std::string((std::size_t{16} << 20) + 1, ' ')) ==
          "x.json: is 16777217 bytes long; allowed: 16 MiB");
}
