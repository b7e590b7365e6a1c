// The answers at the edges of what is asked: nothing to see, nothing to hit, nothing flown yet; and how a
// question tells where it stands.
#include <algorithm>
#include <cmath>
#include <string>

#include "base/units.h"
#include "data/write_question_set.h"
#include "review/aim_point.h"
#include "review/gate_value.h"
#include "tests/check.h"
#include "tests/engine/frozen.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool holds(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

Answer answer_to(const Question& question) { return work_out(question, frozen(question).so_far()); }

Controls trimmed(const Frozen& flight) { return quantize(flight.scenario.start_trim.controls); }

Controls stick_back(const Frozen& flight) {
    ControlPositions hands = flight.scenario.start_trim.controls;
    hands.stick += 0.3;
    hands.throttle = 1.0;
    return quantize(hands);
}

}  // namespace

TEST_CASE("answers: each kind has words of its own, and one's own go before them") {
    Question question;
    for (const auto& [kind, words] :
         {std::pair{QuestionKind::energy_state, "High or low? Fast or slow?"},
          std::pair{QuestionKind::lights, "What do the lights say?"},
          std::pair{QuestionKind::where_hit, "Where would we hit, if nothing is changed?"},
          std::pair{QuestionKind::stable, "Stable at this gate, or going around?"},
          std::pair{QuestionKind::first_action, "What do you move first?"},
          std::pair{QuestionKind::moves_first,
                    "Power up only, all else held. What is seen to answer first?"}}) {
        question.kind = kind;
        CHECK(asked_words(question) == words);
    }
    question.words = "And now?";
    CHECK(asked_words(question) == "And now?");
}

TEST_CASE("answers: one that is off the path alone is called arguable, and one off in both is not") {
    CHECK(answer_to(stands(QuestionKind::energy_state, 0.8, 0)).close ==
          "The speed is within its tolerance: only the path is off.");
    CHECK(answer_to(stands(QuestionKind::energy_state, 0.8, 14)).close == "");
}

TEST_CASE("answers: past the lights there are none to believe") {
    Question question = stands(QuestionKind::lights, 0.0, 0);
    question.stands.distance_m = m_from_nm(0.25);
    Frozen flight = frozen(question);
    fly_on(flight, stick_back(flight), 30.0);
    REQUIRE(flight.now().distance_m < 0.0);
    CHECK(flight.right(question) == "not to be trusted");
    CHECK(holds(work_out(question, flight.so_far()).reveal, "No lights are in view."));
}

TEST_CASE("answers: a lamp that is just changing its colour is told, and one that is not is not") {
    // Across a lamp's setting by hundredths of a degree: some stand within its transition, and
    // some do not.
    int changing = 0, clear = 0;
    for (int hundredths = -20; hundredths <= 20; hundredths += 4) {
        const Frozen flight = frozen(stands(QuestionKind::lights, 0.01 * hundredths, 0));
        const auto fractions = flight.now().white_fraction;
        const bool blended =
            std::ranges::any_of(fractions, [](double white) { return white > 0.0 && white < 1.0; });
        const std::string close = work_out(stands(QuestionKind::lights, 0.0, 0), flight.so_far()).close;
        if (blended) CHECK(close == "A lamp is just changing its colour.");
        (close.empty() ? clear : changing) += 1;
    }
    CHECK(changing > 0);
    CHECK(clear > 0);
}

TEST_CASE("answers: a lamp that is set wrong is not to be trusted") {
    Question question = stands(QuestionKind::lights, -0.33, 0);
    Failure failure;
    failure.kind = Failure::Kind::light_misaimed;
    failure.amount = rad_from_deg(0.4);
    failure.unit = 1;
    question.failures = {failure};
    const Frozen flight = frozen(question);
    CHECK(flight.right(question) == "not to be trusted");
    CHECK(holds(work_out(question, flight.so_far()).reveal, "A lamp is set wrong"));
}

TEST_CASE("answers: what does not descend hits nothing, and has a gate where it is, without a trend") {
    for (const double run_s : {1.0, 6.0}) {
        Question question = stands(QuestionKind::where_hit, 0.0, 0, -4.0);
        question.run_s = run_s;
        const Frozen flight = frozen(question);
        REQUIRE(flight.now().sink_mps < 0.0);
        CHECK(flight.right(question) == "beyond the aim point");
        CHECK(answer_to(question).reveal == "It is not descending: it meets no ground here.");
        question.kind = QuestionKind::stable;
        const std::string height = std::to_string(std::lround(ft_from_m(flight.now().wheel_height_m)));
        CHECK(answer_to(question).reveal.starts_with("At " + height + " ft: "));
        CHECK(flight.right(question) == "not stable: go around");  // a degree up is no approach
    }
}

TEST_CASE("answers: an approach that has come up again is judged at the height where it is") {
    const Question question = stands(QuestionKind::stable, 0.0, 0);
    Frozen flight = frozen(question);
    double lowest_m = flight.now().wheel_height_m;
    const Controls up = stick_back(flight);
    for (int second = 0; second < 12 && flight.now().wheel_height_m < lowest_m + 2.0; ++second) {
        fly_on(flight, up, 1.0);
        lowest_m = std::min(lowest_m, flight.now().wheel_height_m);
    }
    REQUIRE(flight.now().wheel_height_m > lowest_m + 2.0);
    const std::string height = std::to_string(std::lround(ft_from_m(flight.now().wheel_height_m)));
    CHECK(work_out(question, flight.so_far()).reveal.starts_with("At " + height + " ft: "));
}

TEST_CASE("answers: where it would hit is arguable within fifty feet of the limit, and nowhere else") {
    int close = 0;
    for (int step = 0; step <= 20; ++step) {
        const Frozen flight = frozen(stands(QuestionKind::where_hit, 0.0, 0, -0.02 * step));
        const TrackPoint now = flight.now();
        const double off_ft = std::abs(ft_from_m(
            impact_beyond_aim_m(now.eye_height_m, now.distance_m, now.ground_speed_mps, now.sink_mps)));
        const bool near = off_ft > 150.0 && off_ft < 250.0;
        const Answer answer = work_out(stands(QuestionKind::where_hit, 0.0, 0), flight.so_far());
        CHECK(answer.close.empty() != near);
        close += near ? 1 : 0;
    }
    CHECK(close > 0);
}

TEST_CASE("answers: stable is arguable where a limit is as near as a tenth") {
    const Question question = stands(QuestionKind::stable, 0.0, 8);
    Frozen flight = frozen(question);
    CHECK(work_out(question, flight.so_far()).close == "");
    flight.criteria.decision.fast_mps = flight.criteria.near.fast_mps = flight.criteria.far.fast_mps =
        mps_from_kt(8.0);
    CHECK(holds(work_out(question, flight.so_far()).close, "within a tenth of a limit"));
}

TEST_CASE("answers: what answers first can be asked of a flight that has not begun") {
    Question question = stands(QuestionKind::moves_first, 0.0, 0);
    question.run_s = 0.0;
    const Frozen flight = frozen(question);
    REQUIRE(flight.attempt.tick == 0);
    CHECK(flight.right(question) == "the sink");
    // A control that hardly moves against the trimmed flight: it was held where the trim has it.
    question.step_share = 0.0;
    CHECK(holds(answer_to(question).reveal, "changes by at most 0 kt"));
}

TEST_CASE("answers: the comparison ends with the flight that ends first, moved or left alone") {
    Question question = stands(QuestionKind::moves_first, 0.0, 0, 3.0);
    question.stands.distance_m = m_from_nm(0.25);
    for (const ControlStep step : {ControlStep::nose_up, ControlStep::nose_down}) {
        question.step = step;
        Frozen flight = frozen(question);
        REQUIRE(flight.attempt.end == End::none);
        CHECK(flight.right(question) == "the sink");
        fly_on(flight, trimmed(flight), answers_within_s);
        CHECK(flight.attempt.end != End::none);  // left alone, it ends within the time
    }
}

TEST_CASE(
    "answers: an aeroplane with power to spare and none of it in the nose is seen to gain speed first") {
    // A speed that grows by `a` makes sink through the lift: g a t^2 / V against a t. From 33 m/s, 3 kt come
    // before 100 ft/min where a is over 1.5 m/s2: six times a tourer's power, at once.
    Aircraft strong = tourer();
    strong.engine.rated_power_w *= 6.0;
    strong.engine.idle_fraction /= 6.0;
    strong.engine.lag_s = 0.1;
    strong.pitch.power_shift_rad = 0.0;
    Question question = stands(QuestionKind::moves_first, 0.0, 0);
    question.step_share = 1.0;
    const Frozen flight = frozen(question, strong, *find_runway(shipped(), "larkmoor"));
    REQUIRE(flight.scenario.start_trim.flyable);
    CHECK(flight.right(question) == "the airspeed");
    CHECK(holds(work_out(question, flight.so_far()).reveal, "The airspeed after"));
}

TEST_CASE("answers: each control's step moves that control") {
    const Question base = stands(QuestionKind::moves_first, 0.0, 0);
    const Scenario scenario = frozen(base).scenario;
    ControlPositions hands;
    hands.throttle = 0.5;
    const auto after = [&](ControlStep step) {
        Question question = base;
        question.step = step;
        return stepped(question, scenario, hands);
    };
    constexpr double detent = 1e-3;  // a control is kept in steps of less than a thousandth
    CHECK_NEAR(after(ControlStep::power_up).throttle, 0.7, detent);
    CHECK_NEAR(after(ControlStep::power_down).throttle, 0.3, detent);
    CHECK_NEAR(after(ControlStep::nose_up).stick, 0.2, detent);
    CHECK_NEAR(after(ControlStep::nose_down).stick, -0.2, detent);
    CHECK_NEAR(after(ControlStep::trim_up).trim, 0.2, detent);
    CHECK_NEAR(after(ControlStep::trim_down).trim, -0.2, detent);
    CHECK(after(ControlStep::flap_down).flap == 1);
}

TEST_CASE("questions: how one stands is told with all that is not plain, and no more") {
    Question question = stands(QuestionKind::stable, 0.0, 0);
    CHECK(stands_words(question) == "1 NM, on the path");
    question = stands(QuestionKind::stable, 0.6, -5, -0.5);
    question.stands.headwind_mps = mps_from_kt(-8.0);
    question.stands.flap_short = 1;
    question.runway_id = "larkmoor";
    question.outlook = Outlook{};
    question.failures.resize(1);
    const std::string slow = stands_words(question);
    for (const char* words :
         {", 5 kt slow", ", 0.5\u00b0 flatter than the line to the aim point", ", 8 kt tailwind",
          ", flap short of landing flap", ", at larkmoor", ", with a failure"})
        CHECK_MESSAGE(holds(slow, words), slow);
    CHECK_FALSE(holds(slow, "day"));
    question = stands(QuestionKind::stable, 0.6, 12, 0.5);
    question.stands.headwind_mps = mps_from_kt(20.0);
    question.outlook = Outlook{};
    question.outlook->light = Daylight::low_sun;
    const std::string fast = stands_words(question);
    for (const char* words : {", 12 kt fast", "steeper than the line", ", 20 kt headwind", ", low sun"})
        CHECK_MESSAGE(holds(fast, words), fast);
    question.outlook->light = Daylight::night;
    CHECK(holds(stands_words(question), ", night"));
}

TEST_CASE("questions: one about the approach as it is takes its light and what has failed, of at most four") {
    Question first = stands(QuestionKind::energy_state, 0.0, 0);
    first.outlook = Outlook{};
    first.outlook->light = Daylight::dusk;
    Failure later;
    later.at = 1000.0;  // s: not yet
    Failure now;
    now.kind = Failure::Kind::flap_stuck;
    first.failures = {later, now};
    Frozen flight = frozen(first);
    Question here = question_here(QuestionKind::stable, flight.scenario, flight.attempt);
    REQUIRE(here.outlook.has_value());
    CHECK(here.outlook->light == Daylight::dusk);
    REQUIRE(here.failures.size() == 1);
    CHECK(here.failures[0].kind == Failure::Kind::flap_stuck);
    // More than a lesson can hold are cut to what it can, and of those as many as a question may have.
    first.failures.assign(most_failures + 1, now);
    flight = frozen(first);
    CHECK(flight.scenario.lesson.failure_count == static_cast<int>(most_failures));
    here = question_here(QuestionKind::stable, flight.scenario, flight.attempt);
    CHECK(here.failures.size() == most_question_failures);
}

TEST_CASE("questions: a set that could not be written as lessons, or not flown, is refused") {
    const auto refused = [](Question question, double distance_nm, double run_s, int flap_short) {
        question.stands.distance_m = m_from_nm(distance_nm);
        question.run_s = run_s;
        question.stands.flap_short = flap_short;
        const QuestionSet set{"a", "A", "", 1, {question}};
        return !check_question_set(shipped(), set, "x.json").empty();
    };
    CHECK_FALSE(refused(stands(QuestionKind::stable, 0.0, 0), 9.0, 4.0, 0));
    CHECK(refused(stands(QuestionKind::stable, 0.0, 30), 9.0, 60.0, 0));        // over 10 NM out
    CHECK(refused(stands(QuestionKind::stable, -0.6, 0, -5.0), 1.0, 4.0, 0));   // climbing
    CHECK(refused(stands(QuestionKind::stable, -2.0, 0, -0.3), 1.0, 30.0, 0));  // over 2 degrees low
    CHECK(refused(stands(QuestionKind::stable, 3.0, 30, 5.0), 1.0, 4.0, 0));    // over 8 degrees down
    CHECK(refused(stands(QuestionKind::stable, 0.0, -15), 1.0, 4.0, 3));  // no speed to fly without flap
}
