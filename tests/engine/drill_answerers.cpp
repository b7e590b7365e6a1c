#include "tests/engine/drill_answerers.h"

#include "tests/fixtures.h"

namespace slopewise::test {

Quiz take_quiz(std::string_view drill_id, std::uint64_t seed, Answerer answerer) {
    Quiz quiz =
        begin_quiz(*find_drill(shipped(), drill_id), shipped_scenario("final_calm"), Criteria{}, seed);
    Random random{seed + 1000};
    while (!is_finished(quiz)) {
        answer(quiz, answerer(quiz, quiz.cards[present_card(quiz)], random));
        next_card(quiz);
    }
    return quiz;
}

FlownRun fly_drill(std::string_view drill_id, std::uint64_t seed, StudentHands hands) {
    FlownRun run;
    run.flown = begin_flown(*find_drill(shipped(), drill_id), shipped_scenario("final_calm"), seed);
    const Scenario& scenario = run.flown.scenario;
    run.attempt = begin_attempt(scenario);
    run.track = begin_track(scenario, run.attempt);
    Student student{scenario.start_trim.controls, scenario.start_state.pitch_rad, {}};
    constexpr std::int64_t ten_minutes = 10 * 60 * 120;
    while (!is_finished(run.flown, run.attempt) && run.attempt.tick < ten_minutes) {
        const Controls held = hands(run.flown, run.attempt, student);
        const Controls controls = flown_controls(run.flown, run.attempt, held);
        const Events events = tick(scenario, run.attempt, controls);
        extend(run.track, scenario, run.attempt, events);
        advance_flown(run.flown, run.attempt);
    }
    run.result = result_of(run.flown, run.track, run.attempt, Criteria{});
    return run;
}

}  // namespace slopewise::test
