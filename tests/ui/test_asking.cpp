// A class asked through the program: put, frozen, counted, revealed, flown on.
#include <string>

#include "base/units.h"
#include "data/read_lesson.h"
#include "data/write_lesson.h"
#include "record/recording.h"
#include "tests/ui/classroom.h"
#include "ui/make_view.h"
#include "ui/question_sets.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Wish = DoWithQuestions::Wish;
using Stage = AskShown::Stage;

}  // namespace

TEST_CASE("asking: the clicker's one key asks, counts twice, reveals, flies on and asks the next") {
    Classroom room;
    room.choose("energy_states");
    CHECK(room.panel().next == "Ask");
    room.next();
    CHECK(room.shown().stage == Stage::asked);
    CHECK(room.shown().place == "Energy states: 1 of 6");
    CHECK(room.shown().question == "High or low? Fast or slow?");
    CHECK(!room.app.flight->paused);  // it moves first
    CHECK(room.panel().next == "Freeze now");
    room.wait(5.0);
    CHECK(room.app.flight->paused);
    CHECK(room.app.flight->attempt.tick == 480);  // four seconds of 120 ticks
    room.count(0, 5);
    room.count(1, 5);
    CHECK(room.panel().next == "Talk it over, then count again");
    room.next();
    CHECK(room.shown().stage == Stage::discussed);
    room.count(0, 9);
    room.count(1, 1);
    room.next();
    CHECK(room.shown().stage == Stage::revealed);
    CHECK(room.shown().choices[static_cast<std::size_t>(room.shown().right)] == "high and fast");
    CHECK(room.panel().tally == "5 of 10 right at first, 9 of 10 after talking");
    CHECK(room.panel().next == "Run on, 10 s");
    const std::int64_t at = room.app.flight->attempt.tick;
    room.next();
    CHECK(room.shown().stage == Stage::none);
    room.wait(11.0);
    CHECK(room.app.flight->paused);
    CHECK(room.app.flight->attempt.tick == at + 1200);
    room.next();
    CHECK(room.shown().place == "Energy states: 2 of 6");
    room.wish(Wish::previous);
    CHECK(room.shown().place == "Energy states: 1 of 6");
}

TEST_CASE("asking: before the reveal nothing that the class window is given says what is right") {
    Classroom room;
    for (const QuestionSet& set : room.app.catalog.question_sets) {
        room.choose(set.id);
        for (std::size_t i = 0; i < set.questions.size(); ++i) {
            CAPTURE(set.id);
            CAPTURE(i);
            room.ask();
            CHECK(room.shown().right == -1);
            CHECK(room.shown().reveal == "");
            CHECK(!has(class_text(room.shown()), "right"));
            CHECK(!room.app.room.shown.names);           // they would say where the approach began
            CHECK(has(room.panel().answer, "Right: "));  // the instructor knows
            CHECK(room.panel().close == "");
            room.next();
            CHECK(has(class_text(room.shown()), ", right"));
            CHECK(room.shown().reveal != "");
            room.next();  // flown on
        }
    }
}

TEST_CASE(
    "asking: what a question hides comes back with the reveal, and the path from the side only stays that "
    "long") {
    Classroom room;
    RoomShown& shown = room.app.room.shown;
    shown.covered.altimeter = true;  // as the instructor has it
    room.choose("energy_states");
    room.ask();
    CHECK(!shown.lights);
    CHECK(shown.dials);
    CHECK(!shown.side_profile);
    room.next();
    CHECK(shown.lights);
    CHECK(shown.side_profile);
    CHECK(shown.names);
    room.next();  // flown on
    CHECK(shown.side_profile);
    room.next();
    CHECK(!shown.side_profile);
    CHECK(!shown.lights);
    room.wish(Wish::leave_set);
    CHECK(shown.lights);
    CHECK(!shown.side_profile);
    CHECK(shown.covered.altimeter);
    CHECK(!shown.covered.airspeed);
    CHECK(shown.ask == AskShown{});
}

TEST_CASE("asking: a dark picture is lit by the next question, and a board gives way to the flight") {
    Classroom room;
    room.choose("energy_states");
    room.app.room.shown.black = true;
    room.app.room.shown.board.kind = BoardShown::Kind::stills;
    room.next();
    CHECK(!room.app.room.shown.black);
    CHECK(room.app.room.shown.board.kind == BoardShown::Kind::flight);
}

TEST_CASE("asking: after a board or another approach, what was revealed is not asked again") {
    Classroom room;
    room.choose("energy_states");
    room.ask();
    apply(room.app, DoWithBoard{DoWithBoard::Wish::show_explain, 0}, room.host);
    room.ask();
    CHECK(room.desk().run.question == 0);  // it had not come to its reveal
    room.next();
    REQUIRE(room.desk().run.stage == AskStage::revealed);
    apply(room.app, DoWithBoard{DoWithBoard::Wish::show_explain, 0}, room.host);
    CHECK(room.shown().stage == AskShown::Stage::none);
    room.ask();
    CHECK(room.desk().run.question == 1);
    room.next();
    apply(room.app, SetStation{0, 0, 1}, room.host);
    room.ask();
    CHECK(room.desk().run.question == 2);
}

TEST_CASE("asking: hands stay with the instructor until they are shown or it is revealed") {
    Classroom room;
    room.choose("stable_or_not");
    room.ask();
    room.count(0, 3);
    CHECK(!has(class_text(room.shown()), "hands"));
    room.wish(Wish::show_counts);
    CHECK(has(class_text(room.shown()), "1 stable: continue: 3 hands"));
    room.wish(Wish::show_counts);
    CHECK(!has(class_text(room.shown()), "hands"));
    room.wish(Wish::uncount_hand, 0);
    room.next();
    CHECK(has(class_text(room.shown()), "1 stable: continue: 2 hands, right"));
}

TEST_CASE("asking: whoever holds the controls, the approach comes to the freeze as its question says") {
    Classroom room, calm;
    for (Classroom* one : {&room, &calm}) one->choose("where_would_we_hit");
    room.next();
    calm.next();
    room.app.hands.at.stick = 0.5;
    room.app.hands.at.throttle = 1.0;
    room.wait(7.0);
    calm.wait(7.0);
    CHECK(state_hash(room.app.flight->attempt) == state_hash(calm.app.flight->attempt));
}

TEST_CASE("asking: the control that was asked about is moved as it is flown on, and held") {
    Classroom room;
    room.choose("what_answers_first");
    room.ask();
    const double lever = positions_of(room.app.flight->attempt.controls).throttle;
    room.next();
    room.next();
    room.wait(13.0);
    // The step of 25 per cent, to a 16-bit step.
    CHECK(std::abs(positions_of(room.app.flight->attempt.controls).throttle - (lever - 0.25)) < 1e-4);
}

TEST_CASE(
    "asking: what is flown is what the lesson's own text gives, so that another window flies the same") {
    Classroom room;
    for (const QuestionSet& set : room.app.catalog.question_sets) {
        CAPTURE(set.id);
        room.choose(set.id);
        room.ask();
        const FlightSession& flight = *room.app.flight;
        const std::string text = lesson_text(flight.scenario.lesson);
        const Result<JsonNode> parsed = parse_json(text, "lesson");
        const Result<Lesson> read = read_lesson(*parsed.value, "lesson");
        REQUIRE(read.ok());
        const Scenario there = scenario_of(room.app.catalog, *read.value);
        Attempt again = begin_attempt(there);
        while (again.tick < flight.attempt.tick) tick(there, again, quantize(there.start_trim.controls));
        CHECK(state_hash(again) == state_hash(flight.attempt));
    }
}

TEST_CASE(
    "asking: answers are kept with their date, over another start of the program, and taken away as a "
    "table") {
    TestHost kept;
    {
        Classroom room;
        room.choose("read_the_lights");
        room.ask();
        room.count(3, 2);
        room.count(2, 1);
        room.next();
        if (room.shown().stage == Stage::discussed) room.next();
        REQUIRE(room.shown().stage == Stage::revealed);
        room.next();
        room.ask();
        room.next();  // nobody raised a hand: nothing is kept of that
        kept.texts = room.host.texts;
    }
    Classroom room;
    room.host.texts = kept.texts;
    open_ask_desk(room.app, room.host);
    REQUIRE(room.desk().tally.size() == 1);
    CHECK(room.panel().kept == "1 answered question is kept.");
    room.wish(Wish::save_tally);
    CHECK(has(room.host.file,
              "Read the lights,read_the_lights,1,lights,What do the lights say?,4,slightly low,1,2,\n"));
    CHECK(has(room.host.file, ",3,on path,0,1,\n"));
    room.wish(Wish::save_tally, 1);
    CHECK(has(room.host.file, "class-answers.csv,hands_second,"));
}

TEST_CASE("asking: another window that takes the class over goes on with the question that it shows") {
    Classroom lost;
    lost.choose("stable_or_not");
    lost.ask();
    lost.count(0, 4);
    Classroom room;
    put_class_flight(room.app, lost.app.flight->scenario.lesson);
    while (room.app.flight->attempt.tick < lost.app.flight->attempt.tick)
        tick_session(*room.app.flight, quantize(room.app.flight->scenario.start_trim.controls));
    room.app.room.shown = lost.app.room.shown;
    take_up_asking(room.app, lost.desk().chosen);
    CHECK(room.panel().next == "Reveal");
    room.count(0, 1);
    room.next();
    CHECK(room.shown().stage == Stage::revealed);
    CHECK(room.shown().choices[static_cast<std::size_t>(room.shown().right)] == "stable: continue");
    CHECK(room.panel().tally == "5 of 5 right at first");
    CHECK(room.app.room.shown.names);
    // A set that is not here cannot be gone on with.
    room.app.room.shown.ask.place = "Elsewhere: 1 of 3";
    take_up_asking(room.app, lost.desk().chosen);
    CHECK(room.shown() == AskShown{});
}

TEST_CASE("asking: leaving the class and coming back begins with nothing asked") {
    Classroom room;
    room.choose("energy_states");
    room.ask();
    apply(room.app, CloseClassRoom{}, room.host);
    apply(room.app, OpenClassRoom{}, room.host);
    CHECK(room.shown() == AskShown{});
    CHECK(room.panel().set == -1);
    CHECK(room.app.room.shown.lights);
    room.next();  // who has chosen no set begins with the first
    CHECK(room.shown().place == "Energy states: 1 of 6");
}

TEST_CASE("asking: the panel and the picture are told to a screen reader") {
    Classroom room;
    CHECK(has(make_view(room.app).mirror.screen,
              "Choose a set of questions.\nEnergy states\nRead the lights\n"));
    room.choose("read_the_lights");
    room.ask();
    const std::string text = make_view(room.app).mirror.screen;
    CHECK(has(text, "Question, Read the lights: 1 of 6: What do the lights say?\n1 well high\n"));
    CHECK(has(text, "For you alone. Right: 4, slightly low."));
    CHECK(has(text, "Next: Reveal"));
}
