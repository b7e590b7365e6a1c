// The texts of a debrief: cells, escapes, criteria, circumstances, and the student's estimate.
#include "base/units.h"
#include "data/circumstances_json.h"
#include "data/criteria_file.h"
#include "data/json_tree.h"
#include "data/recording_file.h"
#include "debrief/estimate.h"
#include "debrief/html_text.h"
#include "debrief/sheet.h"
#include "debrief/table.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("tables: a cell is quoted where it must be, and never starts a formula") {
    CHECK(csv_cell("plain") == "plain");
    CHECK(csv_cell("a,b") == "\"a,b\"");
    CHECK(csv_cell("say \"so\"") == "\"say \"\"so\"\"\"");
    CHECK(csv_cell("=1+1") == "'=1+1");
    CHECK(cell_text(unknown, 2) == "");
    CHECK(cell_text(-0.256, 2) == "-0.26");
}

TEST_CASE("sheet: texts of others are escaped") {
    CHECK(html_text("<a href='x'>&\"\x01") == "&lt;a href=&#39;x&#39;&gt;&amp;&quot;");
    const Scenario scenario = shipped_scenario("from_above");
    const Flight flight = fly_good(scenario, 1);
    SheetFacts facts;
    facts.student = "<script>alert(1)</script>";
    facts.own_words = std::string(299, 'x') + "\u00e9\u00e9\u00e9";
    const std::string html = sheet_html(review_flight(scenario, {}, flight.track, flight.attempt.end), facts);
    CHECK(html.find("<script") == std::string::npos);
    CHECK(html.find("&lt;script&gt;") != std::string::npos);
    CHECK(html.find("xx\u2026") != std::string::npos);  // cut before the letter that did not fit whole
    CHECK(html.find("No fault stands out") != std::string::npos);
}

TEST_CASE("sheet: where no known fault explains a gate that was not stable, it says where to begin") {
    const Scenario scenario = shipped_scenario("from_above");
    const Flight flight = fly_good(scenario, 1);
    ReviewedFlight reviewed = review_flight(scenario, {}, flight.track, flight.attempt.end);
    REQUIRE(reviewed.diagnosis.priority() == nullptr);
    reviewed.review.stability.front().missing[static_cast<std::size_t>(Unstable::slow)] = true;
    CHECK(no_fault_words(reviewed) ==
          "No known fault explains what was not stable. Begin with the worst moment.");
    CHECK(sheet_html(reviewed, {}).find(no_fault_words(reviewed)) != std::string::npos);
}

TEST_CASE("criteria: written and read again they are the same, and a part may stand alone") {
    Criteria criteria;
    criteria.decision.path_rad = rad_from_deg(0.4);
    criteria.convention = Convention::pitch_for_path;
    criteria.landing_flap = false;
    const Result<Criteria> again = read_criteria(criteria_text(criteria), "mine.json");
    REQUIRE(again.ok());
    CHECK_NEAR(again.value->decision.path_rad, criteria.decision.path_rad, 1e-15);
    CHECK(again.value->convention == Convention::pitch_for_path);
    CHECK_FALSE(again.value->landing_flap);
    CHECK(criteria_text(*again.value) == criteria_text(criteria));

    const Result<Criteria> part =
        read_criteria(R"({"kind":"criteria","at_300_ft":{"slow_kt":3}})", "part.json");
    REQUIRE(part.ok());
    CHECK_NEAR(kt_from_mps(part.value->decision.slow_mps), 3.0, 1e-12);
    CHECK_NEAR(kt_from_mps(part.value->near.slow_mps), 5.0, 1e-12);
}

TEST_CASE("criteria: what is out of range or not known is told with its place") {
    const Result<Criteria> bad = read_criteria(
        "{\"kind\":\"criteria\",\n\"at_300_ft\":{\"path_deg\":9},\"convenience\":1}", "bad.json");
    REQUIRE(bad.problems.size() == 2);
    CHECK(to_text(bad.problems[0]) == "bad.json:2: /at_300_ft/path_deg is 9; allowed: 0.1 to 2");
    CHECK(bad.problems[1].path == "/convenience");
    CHECK_FALSE(read_criteria("no JSON", "bad.json").ok());
    CHECK(read_criteria(R"({"kind":"criteria"})", "empty.json").ok());  // all as usual
}

TEST_CASE("circumstances: they travel with the recording, and one without them is as it was") {
    const Scenario scenario = shipped_scenario("from_above");
    Recording recording = fly_good(scenario, 1).recording;
    CHECK(recording_text(recording).find("circumstances") == std::string::npos);
    Circumstances& c = recording.circumstances;
    c.student = "A. \"Code\" 7";
    c.started_unix_s = 1764000000;
    c.device = "keyboard";
    c.aids.guide_s = 6.0;
    c.aids.guide_calls = 2;
    c.aids.guide_ready = true;
    c.aids.call_outs = 3;
    c.aids.panel_share = 0.25;
    c.aids.airspeed_hidden = true;
    c.aids.lamp_letters = c.aids.lamp_shapes = c.aids.lights_hidden = c.aids.side_profile = true;
    c.aids.pauses = 3;
    c.version = "Slopewise 1";
    c.estimate = Estimate{Estimate::Path::high, Estimate::Speed::slow, false};
    const Result<Recording> again = read_recording(recording_text(recording), "r.json");
    REQUIRE(again.ok());
    const Circumstances& d = again.value->circumstances;
    CHECK(d.student == c.student);
    CHECK(d.started_unix_s == c.started_unix_s);
    CHECK(d.aids.guide_calls == 2);
    CHECK(d.aids.guide_ready);
    CHECK(d.aids.call_outs == 3);
    CHECK_NEAR(d.aids.panel_share, 0.25, 1e-12);
    CHECK(d.aids.longest_peek_s == -1.0);
    CHECK(d.aids.pauses == 3);
    CHECK(d.version == c.version);
    CHECK_FALSE(d.aids.unaided());
    REQUIRE(d.estimate);
    CHECK(d.estimate->path == Estimate::Path::high);
    CHECK_FALSE(d.estimate->stable_at_gate);
    CHECK(recording_text(*again.value) == recording_text(recording));
    c.aids.longest_peek_s = 2.5;
    CHECK(recording_text(recording).find("\"longest_peek_s\":2.5") != std::string::npos);
}

// Rule R6: FAA-H-8083-9, Aviation Instructor's Handbook, collaborative assessment (recalled): own judgement
// first.
TEST_CASE("estimate: the student's words against the mean path, the mean speed and the gate") {
    const Scenario scenario = shipped_scenario("from_above");
    const Flight flight = fly_good(scenario, 1);
    ReviewedFlight reviewed = review_flight(scenario, {}, flight.track, flight.attempt.end);
    reviewed.review.summary.path_rad.bias = rad_from_deg(0.3);
    reviewed.review.summary.speed_mps.bias = mps_from_kt(-4.0);
    const Estimate truth = truth_of(reviewed);
    CHECK(truth.path == Estimate::Path::high);
    CHECK(truth.speed == Estimate::Speed::slow);
    CHECK(truth.stable_at_gate);
    CHECK(score_of(truth, reviewed).right() == 3);
    CHECK(score_of({Estimate::Path::low, Estimate::Speed::slow, true}, reviewed).right() == 2);
    CHECK(score_of(truth, reviewed).asked() == 3);
}
