// Sets of questions through the program: written, kept, handed over, taken in, put aside when damaged.
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

TEST_CASE("asking: one's own copy is written, kept, handed over and taken in elsewhere") {
    Classroom room;
    room.choose("energy_states");
    room.wish(Wish::edit);
    CHECK(room.panel().editing);
    CHECK(room.desk().chosen.starts_with("own-"));
    room.wish(Wish::set_words, 1, "Monday's class");
    room.wish(Wish::go_to, 1);
    room.wish(Wish::set_words, 0, "Where is the energy?");
    room.wish(Wish::move_up);
    room.wish(Wish::go_to, 5);
    room.wish(Wish::remove);
    room.wish(Wish::done);
    CHECK(room.panel().questions.size() == 5);
    CHECK(room.panel().questions[0].words == "Where is the energy?");
    CHECK(find_question_set(room.app.catalog, "energy_states")->questions.size() == 6);
    room.wish(Wish::hand_over);

    Classroom again;  // the same device, later
    again.host.texts = room.host.texts;
    open_ask_desk(again.app, again.host);
    REQUIRE(again.desk().own.size() == 1);
    CHECK(again.desk().own[0].title == "Monday's class");

    Classroom other;  // another device
    other.wish(Wish::take_in);
    CHECK(other.host.asked_for_file);
    CHECK(take_in_questions(other.app, {HostText::Kind::file, "monday.json", room.host.file}, other.host));
    CHECK(other.news() == "Taken in: Monday's class.");
    other.ask();
    CHECK(other.shown().question == "Where is the energy?");
    CHECK(other.shown().place == "Monday's class: 1 of 5");
}

TEST_CASE("asking: a bad file is refused by file, line, place and what is allowed, and changes nothing") {
    Classroom room;
    room.wish(Wish::take_in);
    const std::string bad =
        "{\"kind\": \"questions\", \"id\": \"x\", \"title\": \"X\",\n"
        "\"questions\": [{\"asks\": \"stable\", \"stands\": {\"distance_nm\": 99}}]}";
    CHECK(take_in_questions(room.app, {HostText::Kind::file, "x.json", bad}, room.host));
    CHECK(room.news() == "x.json:2: /questions/0/stands/distance_nm is 99; allowed: 0.25 to 9.");
    CHECK(room.desk().own.empty());
    room.wish(Wish::take_in);
    CHECK(take_in_questions(room.app, {HostText::Kind::file, "x.json", "{}"}, room.host));
    CHECK(has(room.news(), "x.json:1:"));
    CHECK(has(room.news(), "holds no questions; allowed: an object of the kind \"questions\""));
    // A lesson that comes when no set is waited for is none of ours.
    CHECK(
        !take_in_questions(room.app, {HostText::Kind::file, "x.json", "{\"kind\": \"lesson\"}"}, room.host));
    CHECK(!take_in_questions(room.app, {HostText::Kind::link, "", "x"}, room.host));
}

TEST_CASE("asking: damaged kept questions and answers are put aside, whole, and the good ones still read") {
    Classroom first;
    first.choose("energy_states");
    first.wish(Wish::edit);
    std::string text = first.host.texts[std::string(own_questions_key)];
    const std::string damaged = text.replace(text.find("\"energy_state\""), 14, "\"energy_stat\"");
    Classroom room;
    room.host.texts[std::string(own_questions_key)] = damaged;
    room.host.texts[std::string(class_tally_key)] = "{broken\n";
    room.desk().news.clear();
    open_ask_desk(room.app, room.host);
    CHECK(room.host.texts[std::string(own_questions_key) + "-damaged-1"] == damaged);
    CHECK(room.host.texts[std::string(class_tally_key) + "-damaged"] == "{broken\n");
    CHECK(room.desk().news.size() == 2);
}

TEST_CASE("asking: a question about the approach as it stands begins a set of one's own, and asks about it") {
    Classroom room;
    room.app.room.ask.news.clear();
    const double distance_m = observe(room.app.flight->scenario, room.app.flight->attempt).distance_m;
    room.wish(Wish::add_here, static_cast<int>(QuestionKind::energy_state));
    CHECK(room.panel().editing);
    REQUIRE(room.desk().own.size() == 1);
    room.wish(Wish::add_here, static_cast<int>(QuestionKind::moves_first) + 1);
    CHECK(room.panel().questions.size() == 2);
    CHECK(has(room.panel().questions[1].words, "Power down only"));
    room.wish(Wish::done);
    room.wish(Wish::go_to, 0);
    room.wait(5.0);
    CHECK(room.shown().stage == Stage::asked);
    const double there_m = observe(room.app.flight->scenario, room.app.flight->attempt).distance_m;
    CHECK(std::abs(there_m - distance_m) < 5.0);  // m, of four seconds' flight
}

TEST_CASE("asking: a set is deleted at the second press alone, and its last question never") {
    Classroom room;
    room.wish(Wish::add_here, 0);
    room.wish(Wish::remove);
    CHECK(room.panel().questions.size() == 1);
    room.wish(Wish::remove_set);
    CHECK(room.panel().asks_to_remove);
    room.wish(Wish::go_to, 0);  // anything else takes it back
    room.wish(Wish::remove_set);
    CHECK(room.desk().own.size() == 1);
    room.wish(Wish::remove_set);
    CHECK(room.desk().own.empty());
    CHECK(room.panel().set == -1);
}
