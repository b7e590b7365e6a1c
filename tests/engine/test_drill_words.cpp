// What the drills say: phrases, prompts, and what is told of an answer.
#include "drill/drill_words.h"

#include "base/units.h"
#include "data/drill_result_line.h"
#include "drill/gate_deck.h"
#include "drill/impact_deck.h"
#include "tests/check.h"
#include "tests/engine/drill_answerers.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Quiz quiz_of(std::string_view id) {
    return begin_quiz(*find_drill(shipped(), id), shipped_scenario("final_calm"), Criteria{}, 1);
}

// What is told when the first card is answered so.
std::string told(Quiz quiz, const SaidAnswer& said) {
    answer(quiz, said);
    return card_view(quiz, 0.0).reveal;
}

}  // namespace

TEST_CASE("drill words: a deviation, a distance and a place, as one says them") {
    CHECK(path_phrase(rad_from_deg(0.5), m_from_nm(1.0)) == "0.5\u00b0 (53 ft) high");  // 6,076 ft x 0.00873
    CHECK(path_phrase(rad_from_deg(-1.0), m_from_nm(0.5)) == "1.0\u00b0 (53 ft) low");
    CHECK(path_phrase(rad_from_deg(0.04), m_from_nm(1.0)) == "on the path");
    CHECK(distance_phrase(m_from_nm(1.0)) == "1 NM");
    CHECK(distance_phrase(m_from_nm(0.7)) == "0.7 NM");
    CHECK(place_phrase(m_from_ft(-230.0)) == "230 ft short of the aim point");
    CHECK(place_phrase(m_from_ft(40.0)) == "40 ft beyond the aim point");
    CHECK(place_phrase(m_from_ft(4.0)) == "at the aim point");
    CHECK(sentence("not stable") == "Not stable");
    CHECK(sentence("0.5") == "0.5");
    CHECK(sentence("~5 ft") == "~5 ft");
    CHECK(sentence("").empty());
}

TEST_CASE("drill words: a figure in its unit, never minus nothing") {
    CHECK(value_text(Measure::bias_deg, -0.001) == "0.00\u00b0");
    CHECK(value_text(Measure::bias_deg, -0.126) == "-0.13\u00b0");
    CHECK(figure_text({Measure::right_percent, 95.0}) == "answered right: 95 %");
    using Relation = DrillCriterion::Relation;
    CHECK(criterion_text({Measure::median_s, Relation::below, 1.5, {}}) ==
          "half of the answers take: less than 1.50 s");
    CHECK(criterion_text({Measure::scatter_deg, Relation::within, 0.25, {}}) ==
          "scatter: less than 0.25\u00b0 either way");
    CHECK(criterion_text({Measure::misses, Relation::at_most, 0.0, {}}) ==
          "unstable, and called stable or continued: none");
    CHECK(criterion_text({Measure::pitch_deg, Relation::at_most, 10.0, {}}) ==
          "greatest pitch: at most 10.0\u00b0");
    CHECK(criterion_text({Measure::stable_at_gate, Relation::at_least, 1.0, {}}) ==
          "stable at the gate: yes");
    CHECK(criterion_text({Measure::stable_at_gate, Relation::below, 1.0, {}}) == "stable at the gate: no");
    CHECK(figure_text({Measure::stable_at_gate, 0.0}) == "stable at the gate: no");
    for (std::size_t i = 0; i < measure_words.size(); ++i)
        CHECK(measure_of(measure_words[i].id) == static_cast<Measure>(i));
}

TEST_CASE("drill words: an answer is told to be right, or what was said and what was so") {
    const Quiz lights = quiz_of("read_the_lights");
    SaidAnswer said;
    said.choice = lights.cards[0].right;
    CHECK(told(lights, said).starts_with("Right. "));
    said.choice = (lights.cards[0].right + 1) % 5;
    CHECK(told(lights, said).starts_with("Not right, you said: "));
    said.choice = 5;  // there is none such
    CHECK(told(lights, said).starts_with("Not answered. "));

    const Quiz impacts = quiz_of("where_would_we_hit");
    SaidAnswer mark;
    CHECK(told(impacts, mark).starts_with("Not marked. "));
    mark.marked = true;
    mark.mark_m = impacts.cards[0].truth_m + m_from_ft(200.0);
    CHECK(told(impacts, mark).starts_with("Your mark was 200 ft beyond it"));
    mark.mark_m = impacts.cards[0].truth_m - m_from_ft(200.0);
    CHECK(told(impacts, mark).starts_with("Your mark was 200 ft short of it"));

    const Quiz faults = quiz_of("find_the_fault");
    SaidAnswer fault;
    fault.choice = faults.cards[0].right;
    CHECK(told(faults, fault).starts_with("The fault is right, the moment is not. "));
    fault.mark_s = faults.cards[0].moments_s.front();
    CHECK(told(faults, fault).starts_with("Right. "));
    fault.choice = (fault.choice + 1) % 4;
    CHECK(told(faults, fault).starts_with("The moment is right, the fault is not. "));
    fault.mark_s = -1.0;
    CHECK(told(faults, fault).starts_with("Not right, you said: "));
}

TEST_CASE("drill words: a clip is moving until it stops, and then stays") {
    const Quiz quiz = quiz_of("where_would_we_hit");
    CHECK(card_view(quiz, 1.0).moving);
    CHECK(card_view(quiz, 1.0).eye.x_m < card_view(quiz, 2.0).eye.x_m);
    CHECK_FALSE(card_view(quiz, 3.0).moving);
    CHECK(card_view(quiz, 3.0).eye.x_m == quiz.cards[0].picture.eye.x_m);
    CHECK(card_view(quiz, 60.0).picture_shown);  // no exposure: until it is answered
    CHECK(card_view(Quiz{}, 0.0).of == 0);
}

TEST_CASE("drill words: the speed drill says what to do now") {
    const Scenario scenario = shipped_scenario("final_calm");
    const SpeedHold settings = std::get<SpeedHold>(find_drill(shipped(), "speed_by_attitude")->settings);
    Attempt attempt = begin_attempt(scenario);
    attempt.controls.flap = 1;
    const auto words = [&](SpeedHoldState::Task task) {
        return speed_hold_words({task, 23.4, 4.2, 0.0}, settings, scenario, attempt);
    };
    CHECK(words(SpeedHoldState::Task::set_flap) == "Set flap: landing");
    CHECK(words(SpeedHoldState::Task::hold) == "Hold 65 kt: 23 of 60 s");
    CHECK(words(SpeedHoldState::Task::hands_off) == "Hands off: 4 of 10 s");
    CHECK(words(SpeedHoldState::Task::done) == "Done");
}

TEST_CASE("drills: what cannot be flown makes no card") {
    const Scenario base = shipped_scenario("final_calm");
    DrillStart too_slow;  // 50 kt with flap up is below the stall
    too_slow.faster_mps = -mps_from_kt(15.0);
    too_slow.flap_short = 2;
    CHECK_FALSE(pass_gate(too_slow, 500.0, base, Criteria{}).flown);
    CHECK(fly_fault({"good", too_slow}, base, Criteria{}, 1) == nullptr);
    CHECK(fly_fault({"nobody", {}}, base, Criteria{}, 1) == nullptr);
}

TEST_CASE("partner: with the power he mends the path, with the nose only the speed") {
    Lesson lesson = shipped_scenario("final_calm").lesson;
    lesson.start.offset_rad = rad_from_deg(-0.6);
    const Scenario scenario = scenario_of(shipped(), lesson);
    const auto ended_low_deg = [&](ControlShare share) {
        ModelPilot partner = make_partner(scenario, 1);
        const Controls held = quantize(scenario.start_trim.controls);
        const Flight flight = fly_with(scenario, 60 * 120, [&](const Attempt& attempt) {
            return merged_controls(share, held, partner_controls(partner, share, scenario, attempt));
        });
        return deg_from_rad(flight.track.points.back().path_error_rad);
    };
    CHECK(ended_low_deg(ControlShare::none) > -0.25);   // flies all of it: back within the answer band
    CHECK(ended_low_deg(ControlShare::power) < -0.55);  // the student's lever stands: still as low
}

TEST_CASE("results: what is wrong with a kept line is told by its place") {
    const std::string line = drill_result_line(result_of(take_quiz("gate_call", 1, says::right)));
    const auto problem = [&](const std::string& was, const std::string& is) {
        std::string text = line;
        const std::size_t at = text.find(was);
        REQUIRE(at != std::string::npos);
        text.replace(at, was.size(), is);
        const Result<DrillResult> read = read_drill_result(text, "x");
        return read.ok() ? std::string("good") : to_text(read.problems.front());
    };
    CHECK(problem("\"right_percent\"", "\"left_percent\"") ==
          "x:1: /figures/0/measure is \"left_percent\", which is no measure");
    CHECK(problem("\"items\":12", "\"items\":-1") == "x:1: /items is -1; allowed: 0 to 200");
    CHECK(problem("\"reactions_s\":[", "\"reactions_s\":[-1,") ==
          "x:1: /reactions_s holds something else; allowed: at most 200 numbers, none negative");
    CHECK(problem("\"finished\"", "\"ended\"").find("/ended is not a known key") != std::string::npos);
}
