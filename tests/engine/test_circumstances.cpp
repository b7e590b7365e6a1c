// Circumstances and criteria as files hold them: what is wrong is told by its place, and nothing is lost.
#include <string>

#include "data/circumstances_json.h"
#include "data/criteria_file.h"
#include "data/json_tree.h"
#include "tests/check.h"
#include "tests/engine/mutation.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

struct Read {
    Circumstances circumstances;
    std::string told;
};

Read read(const std::string& text) {
    const Result<JsonNode> root = parse_json(text, "x");
    if (!root.ok()) return {{}, to_text(root.problems.front())};
    std::vector<Problem> problems;
    Read result;
    result.circumstances = read_circumstances(Fields(*root.value, "x", "/circumstances", problems));
    for (const Problem& problem : problems) result.told += to_text(problem) + "\n";
    return result;
}

Circumstances full() {
    Circumstances c;
    c.student = "Kestrel 7";
    c.started_unix_s = 1764000000;
    c.device = "stick and lever";
    c.version = "Slopewise 1";
    c.aids.guide_s = 4.0;
    c.aids.guide_calls = 2;
    c.aids.pauses = 1;
    c.aids.peeks = 9;
    c.aids.panel_share = 0.25;
    c.aids.longest_peek_s = 1.5;
    c.aids.side_profile = c.aids.magnifier = c.aids.lamp_letters = c.aids.lamp_shapes = true;
    c.aids.lights_hidden = c.aids.airspeed_hidden = true;
    c.aids.covered = {"airspeed", "altimeter"};
    c.aids.failed = {"vertical speed"};
    c.aids.partner_s = 7.5;
    c.aids.lost_s = 3.25;
    c.estimate = Estimate{Estimate::Path::low, Estimate::Speed::fast, false};
    return c;
}

std::string names(int count) {
    std::string list = "[";
    for (int i = 0; i < count; ++i) list += (i > 0 ? ",\"a\"" : "\"a\"");
    return list + "]";
}

}  // namespace

TEST_CASE("circumstances: all of them come back, and those at their defaults are left out") {
    CHECK(circumstances_text({}) == "{}");
    CHECK(read("{}").told == "");
    const std::string text = circumstances_text(full());
    const Read again = read(text);
    CHECK(again.told == "");
    CHECK(circumstances_text(again.circumstances) == text);
    const RecordedAids& aids = again.circumstances.aids;
    CHECK(aids.peeks == 9);
    CHECK(aids.pauses == 1);
    CHECK(aids.longest_peek_s == 1.5);
    CHECK(aids.magnifier);
    CHECK(aids.partner_s == 7.5);
    CHECK(aids.lost_s == 3.25);
    CHECK(aids.covered == std::vector<std::string>{"airspeed", "altimeter"});
    CHECK(aids.failed == std::vector<std::string>{"vertical speed"});
    CHECK(again.circumstances.estimate->speed == Estimate::Speed::fast);
    CHECK(read(R"({"aids":{"peeks":0}})").circumstances.aids.peeks == 0);  // dark, and never looked
    CHECK(circumstances_text(read(R"({"aids":{"peeks":0}})").circumstances) == R"({"aids":{"peeks":0}})");
}

TEST_CASE("circumstances: an attempt is unaided when nothing showed its path") {
    RecordedAids aids;
    aids.magnifier = aids.lamp_letters = aids.lights_hidden = true;
    CHECK(aids.unaided());
    RecordedAids called = aids, shown = aids, from_the_side = aids, flown_by_another = aids;
    flown_by_another.partner_s = 0.5;
    CHECK_FALSE(flown_by_another.unaided());
    called.guide_calls = 1;
    shown.guide_s = 0.5;
    from_the_side.side_profile = true;
    CHECK_FALSE(called.unaided());
    CHECK_FALSE(shown.unaided());
    CHECK_FALSE(from_the_side.unaided());
}

TEST_CASE("circumstances: what is wrong is told by its place, with what is allowed") {
    struct Row {
        std::string text;
        std::string says;  // all of it, after "x:1: /circumstances"
    };
    const std::string no_instrument =
        " has an entry that is no instrument; allowed: up to 20 names of 1 to 40 bytes";
    const Row rows[] = {
        {R"({"student":""})", "/student is 0 bytes long; allowed: 1 to 200"},
        {R"({"started_unix_s":-1})", "/started_unix_s is -1; allowed: 0 to 1e+11"},
        {R"({"device":3})", "/device is a number; allowed: a text"},
        {R"({"versions":"a"})", "/versions is not a known key; nearest: \"version\""},
        {R"({"aids":[]})", "/aids is a list; allowed: an object"},
        {R"({"aids":{"guide_s":-1}})", "/aids/guide_s is -1; allowed: 0 to 100000"},
        {R"({"aids":{"guide_calls":0.5}})",
         "/aids/guide_calls is 0.5; allowed: a whole number, 0 to 1000000"},
        {R"({"aids":{"pauses":-1}})", "/aids/pauses is -1; allowed: 0 to 1000000"},
        {R"({"aids":{"peeks":-1}})", "/aids/peeks is -1; allowed: 0 to 1000000"},
        {R"({"aids":{"panel_percent":101}})", "/aids/panel_percent is 101; allowed: 0 to 100"},
        {R"({"aids":{"longest_peek_s":true}})", "/aids/longest_peek_s is true or false; allowed: a number"},
        {R"({"aids":{"magnifier":1}})", "/aids/magnifier is a number; allowed: true or false"},
        {R"({"aids":{"covered":"airspeed"}})", "/aids/covered is a text; allowed: a list"},
        {R"({"aids":{"covered":[7]}})", "/aids/covered" + no_instrument},
        {R"({"aids":{"covered":["airspeed",[]]}})", "/aids/covered" + no_instrument},
        {R"({"aids":{"failed":[""]}})", "/aids/failed" + no_instrument},
        {R"({"aids":{"failed":[")" + std::string(41, 'a') + "\"]}}", "/aids/failed" + no_instrument},
        {R"({"aids":{"failed":)" + names(21) + "}}", "/aids/failed" + no_instrument},
        {R"({"aids":{"wings":1}})", "/aids/wings is not a known key"},
        {R"({"estimate":{"path":"up","speed":"on"}})",
         "/estimate/path is \"up\"; allowed: \"low\", \"on\", \"high\""},
        {R"({"estimate":{"path":"on"}})", "/estimate/speed is missing"},
        {R"({"estimate":7})", "/estimate is a number; allowed: an object"},
    };
    for (const Row& row : rows) CHECK(read(row.text).told == "x:1: /circumstances" + row.says + "\n");
    CHECK(read(R"({"aids":{"failed":[]}})").told == "");
    CHECK(read(R"({"aids":{"failed":[")" + std::string(40, 'a') + "\"]}}").told == "");
    CHECK(read(R"({"aids":{"failed":)" + names(20) + "}}").circumstances.aids.failed.size() == 20);
}

TEST_CASE("circumstances: changed at random they are refused with words, or are within what is allowed") {
    const std::string text = circumstances_text(full());
    Random random{62};
    int good = 0;
    for (int i = 0; i < 5000; ++i) {
        CAPTURE(i);
        const Read result = read(mutated(text, random));
        if (!result.told.empty()) {
            CHECK(result.told.starts_with("x:"));
            continue;
        }
        ++good;
        const RecordedAids& aids = result.circumstances.aids;
        CHECK(aids.guide_s >= 0.0);
        CHECK(aids.peeks >= -1);
        CHECK(aids.panel_share <= 1.0);
        CHECK(aids.covered.size() <= 20);
        CHECK(read(circumstances_text(result.circumstances)).told == "");
    }
    CHECK(good > 200);
    CHECK(good < 4500);
}

TEST_CASE("criteria: changed at random they are refused with words, or are within what is allowed") {
    const std::string text = criteria_text({});
    Random random{63};
    int good = 0;
    for (int i = 0; i < 5000; ++i) {
        CAPTURE(i);
        const Result<Criteria> result = read_criteria(mutated(text, random), "x");
        CHECK(result.ok() == result.problems.empty());
        for (const Problem& problem : result.problems) CHECK(to_text(problem).starts_with("x:"));
        if (!result.ok()) continue;
        ++good;
        const std::string written = criteria_text(*result.value);
        const Result<Criteria> again = read_criteria(written, "x");
        REQUIRE(again.ok());
        CHECK(criteria_text(*again.value) == written);
    }
    CHECK(good > 200);
    CHECK(good < 4500);
}

TEST_CASE("criteria: each limit has its range, ends included, and a file of another kind is none") {
    struct Row {
        const char* key;
        const char* least;
        const char* most;
        const char* below;
        const char* above;
    };
    const auto told = [](const std::string& part) {
        const Result<Criteria> result = read_criteria("{\"kind\":\"criteria\"," + part + "}", "x");
        return result.ok() ? "" : to_text(result.problems.front());
    };
    const Row of_all[] = {
        {"decision_s", "1", "30", "0.9", "31"},           {"pitch_range_deg", "1", "20", "0.9", "21"},
        {"lever_step_percent", "1", "100", "0.9", "101"}, {"power_over_idle_percent", "0", "50", "-1", "51"},
        {"answer_path_deg", "0.1", "2", "0.09", "2.1"},   {"answer_path_floor_ft", "0", "100", "-1", "101"}};
    const Row of_a_gate[] = {
        {"path_deg", "0.1", "2", "0.09", "2.1"},  {"path_floor_ft", "0", "100", "-1", "101"},
        {"slow_kt", "1", "30", "0.9", "31"},      {"fast_kt", "1", "30", "0.9", "31"},
        {"sink_fpm", "50", "1000", "49", "1001"}, {"most_sink_fpm", "300", "2000", "299", "2001"}};
    const auto check = [&](const Row& row, const std::string& place, const std::string& before,
                           const std::string& after) {
        const std::string key = before + "\"" + row.key + "\":";
        const std::string range = std::string("; allowed: ") + row.least + " to " + row.most;
        CHECK(told(key + row.least + after) == "");
        CHECK(told(key + row.most + after) == "");
        CHECK(told(key + row.below + after) == "x:1: " + place + row.key + " is " + row.below + range);
        CHECK(told(key + row.above + after) == "x:1: " + place + row.key + " is " + row.above + range);
    };
    for (const Row& row : of_all) check(row, "/", "", "");
    for (const std::string gate : {"at_500_ft_and_above", "at_300_ft", "at_200_ft_and_below"}) {
        for (const Row& row : of_a_gate) check(row, "/" + gate + "/", "\"" + gate + "\":{", "}");
        CHECK(told("\"" + gate + "\":1") == "x:1: /" + gate + " is a number; allowed: an object");
    }
    CHECK(told("\"landing_flap\":1") == "x:1: /landing_flap is a number; allowed: true or false");
    CHECK(told("\"convention\":\"none\"") ==
          "x:1: /convention is \"none\"; allowed: \"power_for_path\", \"pitch_for_path\", \"both\"");
    CHECK(to_text(read_criteria("{\"kind\":\"lesson\"}", "x").problems.front()) ==
          "x:1: /kind is \"lesson\"; allowed: \"criteria\"");
}
