// Figures, criteria, the record that is kept, and what it says to the list of evidence.
#include <algorithm>

#include "base/units.h"
#include "data/drill_result_line.h"
#include "drill/evidence.h"
#include "drill/picture_deck.h"
#include "drill/quiz.h"
#include "tests/check.h"
#include "tests/engine/drill_answerers.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// A quiz over cards whose right answer is the first choice, answered as `choices` say, a second each.
Quiz plain_quiz(std::string_view id, std::initializer_list<int> choices) {
    Quiz quiz;
    quiz.drill = *find_drill(shipped(), id);
    quiz.runway = plain_runway();
    for (const int choice : choices) {
        Card card;
        card.choices = {"a", "b"};
        quiz.cards.push_back(card);
        SaidAnswer said;
        said.choice = choice;
        said.reaction_s = choice < 0 ? -1.0 : 1.0;
        answer(quiz, said);
        next_card(quiz);
    }
    return quiz;
}

double figure(const DrillResult& result, Measure measure) {
    const Figure* found = find_figure(result.figures, measure);
    REQUIRE(found != nullptr);
    return found->value;
}

// A picture card so far off the path, answered.
void answer_picture(Quiz& quiz, double error_deg, int choice) {
    Card card;
    card.choices = {"high", "on path", "low"};
    card.truth_rad = rad_from_deg(error_deg);
    card.right = error_deg > 0.0 ? picture_high : (error_deg < 0.0 ? picture_low : picture_on);
    card.distance_m = m_from_nm(1.0);
    quiz.cards.push_back(card);
    SaidAnswer said;
    said.choice = choice;
    said.reaction_s = 1.0;
    answer(quiz, said);
    next_card(quiz);
}

}  // namespace

TEST_CASE(
    "criteria: each relation holds on its own side of the limit, and what was not measured is not met") {
    using Relation = DrillCriterion::Relation;
    const auto holds_at = [](Relation relation, double limit, double value) {
        return holds({Measure::right_percent, relation, limit, {}}, value);
    };
    CHECK(holds_at(Relation::at_least, 95.0, 95.0));
    CHECK_FALSE(holds_at(Relation::at_least, 95.0, 94.9));
    CHECK(holds_at(Relation::at_most, 30.0, 30.0));
    CHECK_FALSE(holds_at(Relation::at_most, 30.0, 30.1));
    CHECK(holds_at(Relation::below, 1.5, 1.49));
    CHECK_FALSE(holds_at(Relation::below, 1.5, 1.5));
    CHECK(holds_at(Relation::within, 0.25, -0.24));
    CHECK_FALSE(holds_at(Relation::within, 0.25, -0.25));
    const JudgedCriterion unknown = judged({Measure::bump_ft, Relation::at_most, 30.0, {}}, {});
    CHECK_FALSE(unknown.met);
    CHECK(unknown.asked == "height gained at a flap step: at most 30 ft");
    CHECK(unknown.found == "not measured");
}

TEST_CASE("sources: every criterion of a shipped drill says how sure it is") {
    CHECK(source_text({"FAA AIM 2-1-2", Certainty::recalled}) == "FAA AIM 2-1-2 (recalled)");
    CHECK(source_text({}) == "common practice, no source");
    CHECK(shipped().drills.size() == drill_kind_names.size());
    for (const Drill& drill : shipped().drills) {
        CAPTURE(drill.id);
        CHECK_FALSE(drill.criteria.empty());
        CHECK_FALSE(source_text(drill.source).empty());
        for (const std::string& text : {drill.aim, drill.why, drill.how, drill.mistakes})
            CHECK(text.find("ready to land") == std::string::npos);
    }
}

TEST_CASE("results: a card passed over is not right, and has no reaction time") {
    const DrillResult result = result_of(plain_quiz("quadrant_snap", {0, 0, -1, 1}));
    CHECK(result.items == 4);
    CHECK(result.right == 2);
    CHECK(result.reactions_s.size() == 3);
    CHECK(figure(result, Measure::right_percent) == 50.0);
    CHECK(figure(result, Measure::median_s) == 1.0);
}

TEST_CASE("results: the lights are judged over the last twenty, so that finding one's feet costs nothing") {
    Quiz quiz = plain_quiz("read_the_lights",
                           {1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0});
    const DrillResult result = result_of(quiz);
    CHECK(result.items == 20);
    CHECK(figure(result, Measure::right_percent) == 100.0);
    CHECK(result.passed());
    quiz.cards.push_back(quiz.cards.front());  // one more to come
    CHECK_FALSE(result_of(quiz).finished);
    CHECK_FALSE(result_of(quiz).passed());
    CHECK(result_lines(result_of(quiz)).back() == "Not finished: nothing is judged.");
}

TEST_CASE("results: fewer answers than are judged are all judged, and what nobody answered has no figures") {
    CHECK(result_of(plain_quiz("read_the_lights", {0, 0, 1})).items == 3);

    const DrillResult empty = result_of(plain_quiz("quadrant_snap", {}));
    CHECK_FALSE(empty.finished);  // no cards: nothing was asked
    CHECK(empty.figures.empty());

    Quiz marks = begin_quiz(*find_drill(shipped(), "where_would_we_hit"), shipped_scenario("final_calm"),
                            Criteria{}, 1);
    CHECK(result_of(marks).figures.empty());
    while (!is_finished(marks)) {
        answer(marks, {});
        next_card(marks);
    }
    const DrillResult unmarked = result_of(marks);
    CHECK(unmarked.finished);
    CHECK(find_figure(unmarked.figures, Measure::impact_error_ft) == nullptr);
    CHECK(find_figure(unmarked.figures, Measure::bias_ft) == nullptr);
}

TEST_CASE("results: a picture passed over is not right, and says nothing of a bias") {
    Quiz quiz;
    quiz.drill = *find_drill(shipped(), "read_the_picture");
    answer_picture(quiz, 0.5, -1);
    CHECK(quiz.answers.front().error_rad == 0.0);
    CHECK(figure(result_of(quiz), Measure::half_degree_percent) == 0.0);
    CHECK(find_figure(result_of(quiz).figures, Measure::bias_deg) == nullptr);
    answer_picture(quiz, 0.5, picture_on);
    CHECK_NEAR(figure(result_of(quiz), Measure::bias_deg), -0.5, 1e-9);  // of the one answered; rounding
}

TEST_CASE("results: after the last card it stays, and takes no second answer") {
    Quiz quiz = plain_quiz("quadrant_snap", {0, 1});
    SaidAnswer said;
    said.choice = 0;
    answer(quiz, said);
    CHECK(quiz.answers.size() == 2);
    CHECK(quiz.answers.back().said.choice == 1);
    CHECK(card_view(quiz, 0.0).number == 2);
    const std::vector<std::string> lines =
        card_lines(card_view(quiz, 0.0));  // a card without words of its own
    REQUIRE(lines.size() == 5);            // number, question, two choices, what it was
    CHECK(lines.back() == "Not right, you said: b. ");
}

TEST_CASE("results: the lines of a flight count no cards, and end with what comes next") {
    Drill drill = *find_drill(shipped(), "go_around");
    drill.criteria = {{Measure::decision_s, DrillCriterion::Relation::at_most, 2.0, {}}};
    const auto lines = [&](double decision_s) {
        return result_lines(drill_result(drill, 1, true, {{Measure::decision_s, decision_s}}));
    };
    CHECK(lines(1.0) ==
          std::vector<std::string>{
              "go-around begun after the call: 1.0 s",
              "met: go-around begun after the call: at most 2.0 s; found 1.0 s",
              "All criteria met in this run. Next: the same again on another day, with another seed."});
    CHECK(lines(3.0) ==
          std::vector<std::string>{"go-around begun after the call: 3.0 s",
                                   "not met: go-around begun after the call: at most 2.0 s; found 3.0 s",
                                   "Not all criteria met. Next: the same drill once more."});
    CHECK(result_lines(result_of(plain_quiz("quadrant_snap", {0, 1}))).front() == "1 of 2 right");
    drill.criteria.clear();
    CHECK_FALSE(drill_result(drill, 1, true, {}).passed());  // nothing was asked: nothing was shown
}

TEST_CASE(
    "results: the bias of the pictures is what was said less what was, near the path, in degrees and feet") {
    // Half a degree high called on the path, three times of six: three errors of -0.5 deg, three of none.
    // Bias -0.25, scatter 0.25. At 1 NM half a degree is 53 ft: calculated.
    Quiz quiz;
    quiz.drill = *find_drill(shipped(), "read_the_picture");
    for (int i = 0; i < 3; ++i) {
        answer_picture(quiz, 0.5, picture_on);
        answer_picture(quiz, 0.0, picture_on);
    }
    answer_picture(quiz, 1.0, picture_low);  // gross, and beyond what a bias is made of
    const DrillResult result = result_of(quiz);
    CHECK_NEAR(figure(result, Measure::bias_deg), -0.25, 1e-9);
    CHECK_NEAR(figure(result, Measure::scatter_deg), 0.25, 1e-9);
    CHECK_NEAR(figure(result, Measure::bias_ft), -0.25 * pi / 180.0 * 1852.0 / 0.3048, 1e-6);
    CHECK_NEAR(figure(result, Measure::half_degree_percent), 50.0, 1e-9);
    CHECK_NEAR(figure(result, Measure::right_percent), 300.0 / 7.0, 1e-9);
}

TEST_CASE("results: a line keeps everything, and what is no result is told") {
    for (const std::string_view id : {"read_the_lights", "where_would_we_hit", "gate_call"}) {
        DrillResult result = result_of(take_quiz(id, 18446744073709551615u, says::right_with_slips));
        const std::string line = drill_result_line(result);
        CHECK(std::ranges::count(line, '\n') == 1);
        const Result<DrillResult> read = read_drill_result(line, "results.jsonl");
        REQUIRE(read.ok());
        CHECK(drill_result_line(*read.value) == line);
        CHECK(read.value->seed == result.seed);
        CHECK(read.value->criteria == result.criteria);
        CHECK(read.value->passed() == result.passed());
    }
    for (const char* bad : {"", "[]", "{}", R"({"kind":"drill_result"})"})
        CHECK_FALSE(read_drill_result(bad, "x").ok());
    const std::string good = R"({"kind":"drill_result","drill":"gate_call","of":"gate_call","seed":"7",)"
                             R"("items":2,"right":1,"reactions_s":[1,2],)"
                             R"("figures":[{"measure":"right_percent","value":50}],"criteria":[]})";
    REQUIRE(read_drill_result(good, "x").ok());
    const auto told = [&](std::string_view was, const std::string& is) {
        std::string line = good;
        std::string all;
        line.replace(line.find(was), was.size(), is);
        for (const Problem& problem : read_drill_result(line, "x").problems) all += to_text(problem) + "\n";
        return all;
    };
    for (const std::string seed : {"-1", "7x", "18446744073709551616"})
        CHECK(told("\"7\"", "\"" + seed + "\"") ==
              "x:1: /seed is \"" + seed + "\"; allowed: a whole number as text\n");
    const std::string no_times =
        "x:1: /reactions_s holds something else; allowed: at most 200 numbers, none negative\n";
    CHECK(told("[1,2]", "[1,-2]") == no_times);
    CHECK(told("[1,2]", "[1,\"2\"]") == no_times);
    std::string times = "1";
    for (int i = 1; i < 200; ++i) times += ",1";
    CHECK(told("[1,2]", "[" + times + "]") == "");
    CHECK(told("[1,2]", "[" + times + ",1]") == no_times);
    CHECK(told("\"right_percent\"", "\"luck\"") ==
          "x:1: /figures/0/measure is \"luck\", which is no measure\n");
    CHECK(told("\"measure\":\"right_percent\",", "") == "x:1: /figures/0/measure is missing\n");
}

TEST_CASE("evidence: the latest finished result of each kind fills the list, and nothing else does") {
    const DrillResult lights = result_of(take_quiz("read_the_lights", 1, says::right_with_slips));
    const DrillResult reversed = result_of(take_quiz("read_the_lights", 1, says::red_for_white));
    const DrillResult pictures = result_of(take_quiz("read_the_picture", 1, says::sees_angle));
    const DrillResult controls = result_of(take_quiz("one_control", 1, says::right_with_slips));
    const DrillResult unknowing = result_of(take_quiz("one_control", 1, says::pull_is_climb));
    DrillResult unfinished = reversed;
    unfinished.finished = false;

    const DrillResults none = evidence_of({});
    CHECK_FALSE(none.lamps);
    CHECK_FALSE(none.pictures);
    CHECK_FALSE(none.knowledge);

    const std::vector<DrillResult> good{reversed, lights, pictures, unknowing, controls, unfinished};
    const DrillResults evidence = evidence_of(good);
    REQUIRE(evidence.lamps);
    CHECK(evidence.lamps->items == 20);
    CHECK(evidence.lamps->right_share >= 0.95);
    CHECK(evidence.lamps->median_s < 1.5);
    REQUIRE(evidence.pictures);
    CHECK(std::abs(evidence.pictures->bias_rad) < rad_from_deg(0.25));
    CHECK(evidence.pictures->right_share >= 0.8);
    CHECK(evidence.knowledge == true);
    const std::vector<EvidenceItem> list = evidence_list({}, CusumParameters{}, evidence);
    CHECK(list[0].complete);
    CHECK(list[1].complete);
    CHECK(list[6].complete);

    const std::vector<DrillResult> later{lights, reversed, controls, unknowing};
    CHECK(evidence_of(later).lamps->right_share < 0.5);
    CHECK(evidence_of(later).knowledge == false);
}

TEST_CASE(
    "evidence: a result that lacks a figure is none, and a kind the list does not ask for changes nothing") {
    const DrillResult lights = result_of(take_quiz("read_the_lights", 1, says::right_with_slips));
    const DrillResult pictures = result_of(take_quiz("read_the_picture", 1, says::sees_angle));
    for (const Measure lost :
         {Measure::right_percent, Measure::median_s, Measure::half_degree_percent, Measure::bias_deg}) {
        std::vector<DrillResult> kept{lights, pictures};
        for (DrillResult& result : kept)
            std::erase_if(result.figures, [&](const Figure& one) { return one.measure == lost; });
        const bool of_lights = lost == Measure::right_percent || lost == Measure::median_s;
        CHECK(evidence_of(kept).lamps.has_value() != of_lights);
        CHECK(evidence_of(kept).pictures.has_value() == of_lights);
    }
    const std::vector<DrillResult> other{result_of(plain_quiz("quadrant_snap", {0}))};
    CHECK_FALSE(evidence_of(other).lamps);
    CHECK_FALSE(evidence_of(other).pictures);
    CHECK_FALSE(evidence_of(other).knowledge);
}
