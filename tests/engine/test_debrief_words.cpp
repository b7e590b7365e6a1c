// The sentences of the sheet, word for word: aids, estimate, criteria, and what stands beside them.
#include <string>

#include "base/units.h"
#include "debrief/criteria_words.h"
#include "debrief/estimate.h"
#include "debrief/sheet.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

ReviewedFlight reviewed() {
    const Scenario scenario = shipped_scenario("from_above");
    const Flight flight = fly_good(scenario, 1);
    return review_flight(scenario, {}, flight.track, flight.attempt.end);
}

}  // namespace

TEST_CASE("words: the sentence of the aids names each, and what was covered or failed") {
    struct Row {
        void (*used)(RecordedAids&);
        const char* says;
    };
    using Aids = RecordedAids;
    const Row rows[] = {
        {[](Aids&) {}, "Aids: none."},
        {[](Aids& a) { a.guide_s = 4.4; }, "Aids: the path guide (4 s, called 0 times)."},
        {[](Aids& a) { a.guide_calls = 2; }, "Aids: the path guide (0 s, called 2 times)."},
        {[](Aids& a) { a.magnifier = true; }, "Aids: the magnifier."},
        {[](Aids& a) { a.magnifier = a.lamp_letters = true; },
         "Aids: the magnifier and letters in the lights."},
        {[](Aids& a) { a.side_profile = a.lamp_shapes = true; },
         "Aids: shapes in the lights and the side profile."},
        {[](Aids& a) {
             a.guide_s = 12.0, a.guide_calls = 3;
             a.magnifier = a.lamp_letters = a.lamp_shapes = a.side_profile = a.lights_hidden = true;
         },
         "Aids: the path guide (12 s, called 3 times), the magnifier, letters in the lights, shapes in the "
         "lights and the side profile. The lights were hidden."},
        {[](Aids& a) { a.partner_s = 12.4; },
         "Aids: none. The other pilot flew the student's part for 12 s."},
        {[](Aids& a) { a.lost_s = 0.99; }, "Aids: none."},
        {[](Aids& a) { a.lost_s = 12.4; },
         "Aids: none. The machine was too slow: 12 s of the clock were not flown."},
        {[](Aids& a) { a.airspeed_hidden = true; }, "Aids: none. Covered: airspeed."},
        {[](Aids& a) { a.airspeed_hidden = true, a.covered = {"altimeter"}; },
         "Aids: none. Covered: altimeter."},
        {[](Aids& a) { a.airspeed_hidden = true, a.failed = {"airspeed"}; }, "Aids: none. Failed: airspeed."},
        {[](Aids& a) {
             a.covered = {"airspeed", "altimeter"}, a.failed = {"a", "b", "c"};
         },
         "Aids: none. Covered: airspeed and altimeter. Failed: a, b and c."},
        {[](Aids& a) { a.panel_share = 0.0; }, "Aids: none. Eyes outside; inside 0 % of the time."},
        {[](Aids& a) { a.peeks = 3; }, "Aids: none."},  // of eyes that were not measured nothing is said
        {[](Aids& a) { a.peeks = 0, a.panel_share = 0.12, a.longest_peek_s = 0.94; },
         "Aids: none. Eyes outside; peeks: 0; inside 12 % of the time, at most 0.9 s at once."},
    };
    for (const Row& row : rows) {
        RecordedAids aids;
        row.used(aids);
        CHECK(aids_sentence(aids) == row.says);
    }
}

// Rule R6: the student judges the run before its figures are shown (FAA-H-8083-9, Aviation Instructor's
// Handbook, collaborative assessment; recalled): here is what the two are made of, side by side. That nothing
// is shown for five seconds, and no figure before the estimate, is tested with the screens
// (tests/ui/test_debrief.cpp).
TEST_CASE("words: the estimate stands against what was, with the gate only where it was reached") {
    ReviewedFlight flight = reviewed();
    flight.review.summary.path_rad.bias = rad_from_deg(0.3);
    flight.review.summary.speed_mps.bias = mps_from_kt(-4.0);
    using Path = Estimate::Path;
    using Speed = Estimate::Speed;
    CHECK(estimate_sentence({Path::high, Speed::slow, true}, flight) ==
          "You said: high, slow, stable. It was: high, slow, stable. 3 of 3.");
    CHECK(estimate_sentence({Path::low, Speed::fast, false}, flight) ==
          "You said: low, fast, not stable. It was: high, slow, stable. 0 of 3.");
    flight.review.summary.path_rad.bias = rad_from_deg(-0.3);
    flight.review.summary.speed_mps.bias = mps_from_kt(4.0);
    for (Stability& stability : flight.review.stability) stability.missing[0] = true;
    CHECK(estimate_sentence({Path::on, Speed::on, false}, flight) ==
          "You said: on the path, on speed, not stable. It was: low, fast, not stable. 1 of 3.");
    flight.criteria.decision_gate_ft = 9999.0;  // never there
    flight.review.summary.path_rad.bias = flight.review.summary.speed_mps.bias = 0.0;
    CHECK(estimate_sentence({Path::on, Speed::fast, false}, flight) ==
          "You said: on the path, fast. It was: on the path, on speed. 1 of 2.");
}

TEST_CASE("words: the criteria are told with their units, and as the school words them") {
    Criteria criteria;
    const std::vector<std::string> usual = {
        "500 ft and above: path 0.50\u00b0 or 30 ft, the larger; speed \u22125/+10 kt; sink \u00b1250, at "
        "most "
        "800 ft/min.",
        "300 ft: path 0.50\u00b0 or 30 ft, the larger; speed \u22125/+10 kt; sink \u00b1200, at most 800 "
        "ft/min.",
        "200 ft and below: path 0.50\u00b0 or 30 ft, the larger; speed \u22125/+5 kt; sink \u00b1200, at "
        "most "
        "700 ft/min.",
        "At 300 ft: 3 s to decide; in the 10 s before, pitch within 4.0\u00b0 and no lever step over 20 %. "
        "From "
        "500 ft: landing flap; power at least 1 % above idle.",
        "Power or pitch corrects the path; an error to answer is over 0.25\u00b0 and 15 ft."};
    CHECK(criteria_lines(criteria) == usual);
    std::string sentence = "Held to:";
    for (const std::string& line : usual) sentence += " " + line;
    CHECK(criteria_sentence(criteria) == sentence);

    criteria.landing_flap = false;
    criteria.convention = Convention::power_for_path;
    CHECK(criteria_lines(criteria)[3].ends_with("From 500 ft: power at least 1 % above idle."));
    CHECK(criteria_lines(criteria)[4].starts_with("Power corrects the path; "));
    criteria.convention = Convention::pitch_for_path;
    CHECK(criteria_lines(criteria)[4].starts_with("Pitch corrects the path; "));
}

TEST_CASE(
    "words: the facts of a sheet are the recording's circumstances, and what is not known is left empty") {
    const ReviewedFlight flight = reviewed();
    const SheetFacts none = sheet_facts({}, flight);
    CHECK(none.student.empty());
    CHECK(none.date.empty());
    CHECK(none.estimate.empty());
    CHECK(none.version == "Slopewise");
    Circumstances circumstances;
    circumstances.student = "Kestrel 7";
    circumstances.started_unix_s = 1709164800;
    circumstances.device = "keyboard";
    circumstances.version = "Slopewise 9";
    circumstances.estimate = Estimate{};
    const SheetFacts facts = sheet_facts(circumstances, flight);
    CHECK(facts.student == "Kestrel 7");
    CHECK(facts.date == "2024-02-29");
    CHECK(facts.aids == "Aids: none.");
    CHECK(facts.device == "keyboard");
    CHECK(facts.version == "Slopewise 9");
    CHECK(facts.estimate == estimate_sentence(Estimate{}, flight));
}

TEST_CASE("words: a date is of the Gregorian calendar counted on backwards, also before its year 0") {
    CHECK(date_text(-62162035200) == "0000-03-01");
    CHECK(date_text(-62162035201) == "0000-02-29");  // 0 is a leap year, as 2000 is
    CHECK(date_text(-62167219200) == "0000-01-01");
}

TEST_CASE("words: the estimate and the student's own words stand apart, and either may be missing") {
    const ReviewedFlight flight = reviewed();
    const auto box = [&](const char* estimate, const char* own_words) {
        SheetFacts facts;
        facts.estimate = estimate;
        facts.own_words = own_words;
        const std::string html = sheet_html(flight, facts);
        const std::size_t begin = html.find("<div class=\"box\">") + 17;
        return html.substr(begin, html.find("</div>", begin) - begin);
    };
    CHECK(box("1 of 3.", "I was tired.") == "1 of 3.<br>I was tired.");
    CHECK(box("1 of 3.", "") == "1 of 3.");
    CHECK(box("", "I was tired.") == "I was tired.");
    CHECK(box("", "") == "");
}
