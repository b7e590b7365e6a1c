// The one-page sheet of unlike flights: what it says of each, and what it leaves out.
#include "base/units.h"
#include "debrief/estimate.h"
#include "debrief/html_text.h"
#include "debrief/sheet.h"
#include "lesson/approach_choice.h"
#include "progress/attempt_row.h"
#include "tests/check.h"
#include "tests/fixtures.h"
#include "tests/steady_approach.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool has(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

ReviewedFlight flown_by(std::string_view pilot_name, const Scenario& scenario,
                        std::int64_t most_ticks = 144000) {
    ModelPilot pilot = pilot_for(scenario, *pilot_skill(pilot_name), 1);
    const Flight flight = fly_with(scenario, most_ticks, [&](const Attempt& attempt) {
        return fly(pilot, sight_of(scenario, attempt), time_s(attempt));
    });
    return review_flight(scenario, {}, flight.track, flight.attempt.end);
}

ReviewedFlight by_hand(std::vector<TrackPoint> points) {
    const std::size_t count = points.size();
    return review_flight(shipped_scenario("final_calm"), {}, Track{std::move(points), count},
                         End::reached_floor);
}

}  // namespace

TEST_CASE("sheet: a go-around is told with its height, and the gates that were not reached") {
    Lesson lesson = lesson_of({1, StartSide::on, 0.0}, shipped_scenario("final_calm").lesson);
    lesson.start.offset_rad = rad_from_deg(1.2);
    const std::string html = sheet_html(flown_by("good", scenario_of(shipped(), lesson)), {});
    CHECK(has(html, "<td>go-around from</td><td>300 ft"));
    CHECK(has(html, "not reached"));
    CHECK(has(html, "Decision at the gate: <b>right</b>"));
    CHECK(has(html, "Student: ____________"));
    CHECK_FALSE(has(html, "straight on, no flare"));
}

TEST_CASE("sheet: the faults after the first are named, and the date where it is known") {
    SheetFacts facts;
    facts.date = "1 May <2026>";
    facts.own_words = std::string(301, 'x');  // one letter too many
    const std::string html = sheet_html(flown_by("low_stretch", shipped_scenario("from_below")), facts);
    CHECK(has(html, "One thing to work on: Stretching the approach with the nose"));
    CHECK(has(html, "Also seen: Low and slow; "));
    CHECK(has(html, "1 May &lt;2026&gt;"));
    CHECK(has(html, std::string(300, 'x') + "\u2026"));
}

TEST_CASE("sheet: a flight that has hardly begun has no figures that it cannot have") {
    const ReviewedFlight flight = flown_by("good", shipped_scenario("final_calm"), 300);
    const std::string html = sheet_html(flight, {});
    for (const char* figure : {"straight on", "path, 200 to 50 ft", "go-around from", "answer to a path"})
        CHECK_FALSE(has(html, figure));
    CHECK(has(html, ">start</td>"));
    CHECK(score_of({}, flight).asked() == 2);  // nothing can be said of the gate
    CHECK(score_of(truth_of(flight), flight).right() == 2);
    const AttemptRow row = attempt_row(flight, {});
    CHECK_FALSE(row.gate_reached);
    CHECK_FALSE(row.stable_at_gate);
    CHECK(row.learning_result() == LearningResult::left_out);
}

TEST_CASE("sheet: the plot's scale goes with the height, and lights unseen are an empty box") {
    const auto grid_of = [](double from_ft) {
        return sheet_html(by_hand(steady_approach(shipped_scenario("final_calm"), from_ft)), {});
    };
    CHECK(has(grid_of(200.0), ">150</text>"));
    CHECK(has(grid_of(500.0), ">100</text>"));
    CHECK_FALSE(has(grid_of(500.0), ">150</text>"));
    CHECK_FALSE(has(grid_of(900.0), ">100</text>"));

    std::vector<TrackPoint> points = steady_approach(shipped_scenario("final_calm"), 900.0);
    for (TrackPoint& p : points) p.white_count = -1;
    const std::string unseen = sheet_html(by_hand(std::move(points)), {});
    CHECK_FALSE(has(unseen, "class=\"red\""));
    CHECK(has(unseen, "class=\"white\""));
}

TEST_CASE("sheet: a fault seen all along has one mark, not one at each of its moments") {
    std::vector<TrackPoint> points = steady_approach(shipped_scenario("final_calm"), 900.0);
    for (std::size_t i = 100; i < 400; ++i)
        if (i % 20 < 10)
            points[i].cas_mps += mps_from_kt(12.0), points[i].path_error_rad = rad_from_deg(0.1),
                                                    points[i].pitch_rad = rad_from_deg(-8.0);
    const ReviewedFlight flight = by_hand(std::move(points));
    REQUIRE(flight.diagnosis.priority()->fault->id == "diving");
    CHECK(flight.diagnosis.priority()->evidence.moments.size() == 15);
    const std::string html = sheet_html(flight, {});
    const std::size_t first = html.find("class=\"mark\"");
    CHECK(first != std::string::npos);
    CHECK(html.find("class=\"mark\"", first + 1) == std::string::npos);
}

TEST_CASE("sheet: the strongest is what was longest in tolerance, if it was for half of the approach") {
    Summary summary;
    CHECK(strongest_sentence(summary).empty());
    summary.sink_share = 0.6;
    CHECK(has(strongest_sentence(summary), "the sink, in tolerance for 60 %"));
    summary.speed_share = 0.7;
    CHECK(has(strongest_sentence(summary), "the airspeed, "));
    summary.path_share = 0.8;
    CHECK(has(strongest_sentence(summary), "the path, "));
    CHECK(html_text("one\ntwo") == "one\ntwo");
}

TEST_CASE("estimate: the truth is on, low or fast as well as high or slow") {
    ReviewedFlight flight = by_hand(steady_approach(shipped_scenario("final_calm"), 900.0));
    CHECK(truth_of(flight).path == Estimate::Path::on);
    CHECK(truth_of(flight).speed == Estimate::Speed::on);
    flight.review.summary.path_rad.bias = rad_from_deg(-0.3);
    flight.review.summary.speed_mps.bias = mps_from_kt(4.0);
    CHECK(truth_of(flight).path == Estimate::Path::low);
    CHECK(truth_of(flight).speed == Estimate::Speed::fast);
}
