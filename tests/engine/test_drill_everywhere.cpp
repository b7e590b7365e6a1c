// The drills with every aeroplane at every airfield: there is something to answer and to fly everywhere.
#include "drill/flown_drill.h"
#include "drill/quiz.h"
#include "lesson/where_and_when.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Scenario base_of(const Aircraft& aircraft, const Runway& runway) {
    WhereAndWhen where;
    where.aircraft_id = aircraft.id;
    where.runway_id = runway.id;
    return scenario_of(shipped(), lesson_at(*find_lesson(shipped(), "final_calm"), where, aircraft));
}

void check_quiz(const Drill& drill, const Scenario& base) {
    const Quiz quiz = begin_quiz(drill, base, Criteria{}, 1);
    CHECK(static_cast<int>(quiz.cards.size()) == drill.items);
    for (const Card& card : quiz.cards) {
        CHECK_FALSE(card.question.empty());
        CHECK_FALSE(card.spoken.empty());
        CHECK_FALSE(card.reveal.empty());
        CHECK(card.picture.eye.z_m > 0.0);
        CHECK((card.kind == AnswerKind::place || card.right < static_cast<int>(card.choices.size())));
    }
}

void check_flown(const Drill& drill, const Scenario& base) {
    const FlownDrill flown = begin_flown(drill, base, 1);
    CHECK_MESSAGE(flown.scenario.start_trim.flyable, flown.scenario.start_trim.reason);
    const Attempt attempt = begin_attempt(flown.scenario);
    CHECK_FALSE(is_finished(flown, attempt));
    CHECK_FALSE(flown_view(flown, attempt).say.empty());
}

}  // namespace

TEST_CASE(
    "drills: with every aeroplane there are all the cards, and every flown one begins in steady flight") {
    const Runway& runway = *find_runway(shipped(), "larkmoor");
    for (const Aircraft& aircraft : shipped().aircraft) {
        CAPTURE(aircraft.id);
        for (const Drill& drill : shipped().drills) {
            CAPTURE(drill.id);
            is_flown(drill) ? check_flown(drill, base_of(aircraft, runway))
                            : check_quiz(drill, base_of(aircraft, runway));
        }
    }
}

TEST_CASE("drills: at every airfield, with its own lights and slope, there are all the cards") {
    for (const Runway& runway : shipped().runways) {
        CAPTURE(runway.id);
        for (const char* id : {"read_the_lights", "read_the_picture", "where_would_we_hit", "quadrant_snap"})
            check_quiz(*find_drill(shipped(), id), base_of(tourer(), runway));
    }
}
