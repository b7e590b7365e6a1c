// A class's questions: every shipped one has a clear answer wherever it is asked, the answer is that of the
// flight, and a set is read, written and refused like a lesson.
#include <cmath>
#include <string>

#include "base/exact_math.h"
#include "base/units.h"
#include "data/read_question_set.h"
#include "data/write_question_set.h"
#include "tests/check.h"
#include "tests/engine/frozen.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

std::string problems_of(std::string_view text) {
    std::string all;
    for (const Problem& problem : read_entry({"x.json", text}).problems) all += to_text(problem) + "\n";
    return all;
}

template <class Do>
void for_each_shipped(Do what) {
    for (const QuestionSet& set : shipped().question_sets)
        for (std::size_t i = 0; i < set.questions.size(); ++i)
            for (const Aircraft& aircraft : shipped().aircraft)
                for (const Runway& runway : shipped().runways) {
                    const Question& question = set.questions[i];
                    if (!question.runway_id.empty() && question.runway_id != runway.id) continue;
                    CAPTURE(set.id);
                    CAPTURE(i + 1);
                    CAPTURE(aircraft.id);
                    CAPTURE(runway.id);
                    what(question, aircraft, runway);
                }
}

}  // namespace

TEST_CASE("questions: six sets ship, of four to six questions each") {
    CHECK(shipped().question_sets.size() == 6);
    for (const QuestionSet& set : shipped().question_sets) {
        CAPTURE(set.id);
        CHECK(set.questions.size() >= 4);
        CHECK(set.questions.size() <= 6);
    }
}

TEST_CASE(
    "questions: every shipped one is flown by every aeroplane at every airfield, and none could be argued "
    "about") {
    for_each_shipped([](const Question& question, const Aircraft& aircraft, const Runway& runway) {
        const Frozen flight = frozen(question, aircraft, runway);
        REQUIRE_MESSAGE(flight.scenario.start_trim.flyable, flight.scenario.start_trim.reason);
        CHECK(flight.attempt.end == End::none);
        CHECK(work_out(question, flight.so_far()).close == "");
    });
}

TEST_CASE("questions: at the freeze the approach is where its file says") {
    for_each_shipped([](const Question& question, const Aircraft& aircraft, const Runway& runway) {
        const Frozen flight = frozen(question, aircraft, runway);
        const TrackPoint now = flight.now();
        // Straight flight a few seconds long: the air is thinner at a high field, so that it comes a little
        // further than its indicated speed says (3 per cent at 4,000 ft of 12 s, 1 per cent of a mile each).
        CHECK(std::abs(nm_from_m(now.distance_m - question.stands.distance_m)) < 0.06);
        CHECK(std::abs(deg_from_rad(now.path_error_rad - question.stands.offset_rad)) < 0.1);
        CHECK(std::abs(kt_from_mps(now.cas_mps - flight.scenario.lesson.target_cas_mps -
                                   question.stands.faster_mps)) < 0.5);
    });
}

TEST_CASE("questions: the energy state is read off the flight, for each of the five") {
    const auto right = [](double offset_deg, double faster_kt) {
        const Question question = stands(QuestionKind::energy_state, offset_deg, faster_kt);
        return frozen(question).right(question);
    };
    CHECK(right(0.8, 14) == "high and fast");
    CHECK(right(0.8, -8) == "high and slow");
    CHECK(right(-0.8, 14) == "low and fast");
    CHECK(right(-0.8, -8) == "low and slow");
    CHECK(right(0.0, 0) == "on path and on speed");
}

TEST_CASE("questions: one that is off in one thing alone is called arguable") {
    const Question question = stands(QuestionKind::energy_state, 0.0, 14);
    CHECK(work_out(question, frozen(question).so_far()).close ==
          "The path is within its tolerance: only the speed is off.");
}

TEST_CASE("questions: what is first to be moved is worded as the school words it, and is the same for all") {
    const Question question = stands(QuestionKind::first_action, -0.8, -8);
    Frozen flight = frozen(question);
    CHECK(flight.right(question) == "more power");
    flight.criteria.convention = Convention::power_for_path;
    CHECK(flight.right(question) == "more power, for the path");
    flight.criteria.convention = Convention::pitch_for_path;
    CHECK(flight.right(question) == "more power, for the speed");
}

TEST_CASE("questions: where it would hit is where the straight path meets the runway's level") {
    // Descending 0.5 degrees steeper than the line to the aim point from a mile out it is short by
    // d (1 - tan 3 / tan 3.5): worked out here with no help from the program.
    const Question steeper = stands(QuestionKind::where_hit, 0.0, 0, 0.5);
    const Frozen flight = frozen(steeper);
    CHECK(flight.right(steeper) == "short of the aim point");
    const double short_ft =
        ft_from_m(m_from_nm(1.0)) * (1.0 - exact::tan(rad_from_deg(3.0)) / exact::tan(rad_from_deg(3.5)));
    const std::string reveal = work_out(steeper, flight.so_far()).reveal;
    const std::size_t at = reveal.find("level ");
    REQUIRE(at != std::string::npos);
    // Ninety feet: a tenth of a degree of descent that rounding and the eye's own place make at this
    // distance.
    CHECK(std::abs(std::stod(reveal.substr(at + 6)) - short_ft) < 90.0);
    const Question on = stands(QuestionKind::where_hit, -0.8, 0),
                   flat = stands(QuestionKind::where_hit, 0, 0, -0.5);
    CHECK(frozen(on).right(on) == "at the aim point");  // four reds, and yet it leads there
    CHECK(frozen(flat).right(flat) == "beyond the aim point");
}

TEST_CASE("questions: stable or not follows the school's criteria, not the file") {
    Question question = stands(QuestionKind::stable, 0.0, 8);
    question.run_s = 12.0;
    Frozen flight = frozen(question);
    CHECK(flight.right(question) == "stable: continue");
    flight.criteria.decision.fast_mps = flight.criteria.near.fast_mps = flight.criteria.far.fast_mps =
        mps_from_kt(5.0);
    CHECK(flight.right(question) == "not stable: go around");
}

TEST_CASE("questions: lights that have failed are not to be trusted, whatever they show") {
    Question question = stands(QuestionKind::lights, -0.33, 0);
    CHECK(frozen(question).right(question) == "slightly low");
    for (const Failure::Kind kind :
         {Failure::Kind::condensation, Failure::Kind::lights_out, Failure::Kind::light_out}) {
        Failure failure;
        failure.kind = kind;
        failure.amount = 0.8;
        question.failures = {failure};
        CHECK(frozen(question).right(question) == "not to be trusted");
    }
}

TEST_CASE("questions: power moves the sink, and hardly the speed of a trimmed aeroplane") {
    Question question = stands(QuestionKind::moves_first, 0.0, 0);
    for (const ControlStep step : {ControlStep::power_up, ControlStep::power_down}) {
        question.step = step;
        CHECK(frozen(question).right(question) == "the sink");
    }
    question.step_share = 0.01;
    CHECK(frozen(question).right(question) == "neither within ten seconds");
}

TEST_CASE("questions: one about the approach as it stands comes back to where it stood") {
    const Question first = stands(QuestionKind::energy_state, 0.6, 7, -0.3);
    const Frozen flight = frozen(first);
    const Question here = question_here(QuestionKind::where_hit, flight.scenario, flight.attempt);
    const Frozen again = frozen(here);
    const TrackPoint a = flight.now(), b = again.now();
    CHECK(std::abs(a.distance_m - b.distance_m) < 5.0);                         // m, of four seconds' flight
    CHECK(std::abs(deg_from_rad(a.path_error_rad - b.path_error_rad)) < 0.02);  // degrees, a lamp's blend
    CHECK(std::abs(kt_from_mps(a.cas_mps - b.cas_mps)) < 0.3);                  // kt, a needle's width
    CHECK(std::abs(fpm_from_mps(a.sink_mps - b.sink_mps)) < 20.0);              // ft/min, likewise
}

TEST_CASE("questions: a set that is written and read is the same set") {
    for (const QuestionSet& set : shipped().question_sets) {
        CAPTURE(set.id);
        const std::string text = question_set_text(set);
        const Result<JsonNode> parsed = parse_json(text, "x.json");
        REQUIRE(parsed.ok());
        const Result<QuestionSet> read = read_question_set(*parsed.value, "x.json");
        REQUIRE(read.ok());
        CHECK(question_set_text(*read.value) == text);
        CHECK(read.value->questions.size() == set.questions.size());
    }
}

TEST_CASE("questions: what is wrong with a set is told by line, place, what it is and what is allowed") {
    const std::string head = "{\"kind\": \"questions\", \"id\": \"a\", \"title\": \"A\",\n\"questions\": [";
    CHECK(problems_of(head + "]}") == "x.json:2: /questions has 0 entries; allowed: 1 to 40\n");
    CHECK(problems_of(head + "{\"asks\": \"stable\",\n\"stands\": {\"distance_nm\": 12}}]}") ==
          "x.json:3: /questions/0/stands/distance_nm is 12; allowed: 0.25 to 9\n");
    CHECK(problems_of(head + "{\"asks\": \"stable\", \"right\": 1, \"stands\": {\"distance_nm\": 1}}]}")
              .find("/questions/0/right is not a known key") != std::string::npos);
    CHECK(
        problems_of(
            head + "{\"asks\": \"lights\", \"stands\": {\"distance_nm\": 1},\n\"hidden\": [\"lights\"]}]}") ==
        "x.json:3: /questions/0/hidden has the lights that are asked about; allowed: anything else\n");
    CHECK(problems_of(head +
                      "{\"asks\": \"stable\", \"stands\": {\"distance_nm\": 1}, \"hidden\": [\"nose\"]}]}")
              .find("/questions/0/hidden has \"nose\", which cannot be hidden") != std::string::npos);
}

TEST_CASE("questions: a set that no aeroplane can fly, or at an airfield that is not there, is refused") {
    QuestionSet set{"a", "A", "", 1, {stands(QuestionKind::stable, 3.0, 30, 5.0)}};
    const auto told = [&] {
        std::string all;
        for (const Problem& problem : check_question_set(shipped(), set, "x.json"))
            all += to_text(problem) + "\n";
        return all;
    };
    CHECK(told() ==
          "x.json: /questions/0/stands cannot be flown by any aircraft here; allowed: a steady approach\n");
    set.questions[0] = stands(QuestionKind::stable, 0.0, 0);
    CHECK(told() == "");
    set.questions[0].runway_id = "nowhere";
    CHECK(told().find("x.json: /questions/0/runway is \"nowhere\", which is not known; allowed: ") == 0);
}
