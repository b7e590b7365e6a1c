#include "tests/engine/lesson_flights.h"

#include "lesson/hands.h"

namespace slopewise::test {

LessonFlight fly_lesson(const Lesson& lesson, const PilotSkill& student_skill, std::uint64_t seed) {
    LessonFlight flight{scenario_of(shipped(), lesson), {}, {}, {}};
    Attempt attempt = begin_attempt(flight.scenario);
    flight.track = begin_track(flight.scenario, attempt);
    ModelPilot student = pilot_for(flight.scenario, student_skill, seed);
    ModelPilot instructor = pilot_for(flight.scenario, PilotSkill{}, seed + 1000);
    const auto fly_a_tick = [&] {
        const Sight sight = sight_of(flight.scenario, attempt);
        const double now_s = time_s(attempt);
        const Controls controls =
            shared(lesson.hands, fly(student, sight, now_s), fly(instructor, sight, now_s));
        extend(flight.track, flight.scenario, attempt, tick(flight.scenario, attempt, controls));
    };
    constexpr std::int64_t fifteen_minutes = 15 * 60 * 120;
    while (attempt.end == End::none && attempt.tick < fifteen_minutes) fly_a_tick();
    const std::int64_t flown_on = attempt.end == End::went_around ? attempt.tick + 40 * 120 : attempt.tick;
    while (attempt.tick < flown_on) fly_a_tick();
    flight.review = review_of(flight.scenario, Criteria{}, flight.track, attempt.end);
    flight.judged = judge_flight(flight.scenario, Criteria{}, flight.track, flight.review);
    return flight;
}

std::vector<LessonFlight> fly_runs(const Lesson& lesson, const PilotSkill& student, std::uint64_t seed) {
    std::vector<LessonFlight> flights;
    for (int run = 1; run <= lesson.success.runs; ++run)
        flights.push_back(
            fly_lesson(varied(lesson, run, seed), student, seed + static_cast<std::uint64_t>(run)));
    return flights;
}

}  // namespace slopewise::test
