// A question's flight as a class sees it frozen.
#pragma once

#include <string>

#include "base/units.h"
#include "lesson/where_and_when.h"
#include "question/answer.h"
#include "question/set_up.h"
#include "tests/fixtures.h"

namespace slopewise::test {

struct Frozen {
    Scenario scenario;
    Attempt attempt;
    Track track;
    Criteria criteria;

    FlownSoFar so_far() const { return {scenario, attempt, track, criteria}; }
    TrackPoint now() const { return observe(scenario, attempt); }
    std::string right(const Question& question) const {
        const auto choices = answer_choices(question, scenario, criteria.convention);
        return choices[static_cast<std::size_t>(work_out(question, so_far()).right)];
    }
};

// As a class sees it frozen: hands off from the start to the freeze.
inline Frozen frozen(const Question& question, const Aircraft& aircraft, const Runway& runway) {
    WhereAndWhen there;
    there.aircraft_id = aircraft.id;
    there.runway_id = runway.id;
    const Lesson base = lesson_at(*find_lesson(shipped(), "final_calm"), there, aircraft);
    const Lesson lesson = question_lesson(question, make_scenario(base, aircraft, runway));
    Frozen flight{make_scenario(lesson, aircraft, runway), {}, {}, {}};
    flight.attempt = begin_attempt(flight.scenario);
    flight.track = begin_track(flight.scenario, flight.attempt);
    const Controls held = quantize(flight.scenario.start_trim.controls);
    while (time_s(flight.attempt) < question.run_s) {
        const Events events = tick(flight.scenario, flight.attempt, held);
        extend(flight.track, flight.scenario, flight.attempt, events);
    }
    return flight;
}

inline Question stands(QuestionKind kind, double offset_deg, double faster_kt, double steeper_deg = 0.0) {
    Question question;
    question.kind = kind;
    question.stands.distance_m = m_from_nm(1.0);
    question.stands.offset_rad = rad_from_deg(offset_deg);
    question.stands.faster_mps = mps_from_kt(faster_kt);
    question.stands.steeper_rad = rad_from_deg(steeper_deg);
    return question;
}

inline Frozen frozen(const Question& question) {
    return frozen(question, tourer(), *find_runway(shipped(), "larkmoor"));
}

// On from there, with these controls.
inline void fly_on(Frozen& flight, const Controls& held, double for_s) {
    const double until_s = time_s(flight.attempt) + for_s;
    while (time_s(flight.attempt) < until_s) {
        const Events events = tick(flight.scenario, flight.attempt, held);
        extend(flight.track, flight.scenario, flight.attempt, events);
    }
}

}  // namespace slopewise::test
