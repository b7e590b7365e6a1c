// One's own lessons in the program without a window: written, kept, handed on, and flown by somebody else.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "base/random.h"
#include "data/write_lesson.h"
#include "share/lesson_link.h"
#include "share/own_lessons.h"
#include "share/shared_lesson.h"
#include "tests/check.h"
#include "tests/ui/lesson_desktop.h"
#include "ui/app.h"
#include "ui/lesson_editor_desk.h"
#include "ui/lesson_editor_fields.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Wish = DoWithLesson::Wish;

}  // namespace

TEST_CASE("own lessons: a new one begins with the chosen approach, and can be flown as it stands") {
    Desktop at;
    apply(at.app, ChooseDistance{2}, at.host);
    apply(at.app, ChooseHeadwind{10.0}, at.host);
    apply(at.app, OpenOwnLessons{}, at.host);
    CHECK(at.app.screen == Screen::own_lessons);
    at.ask(Wish::write_new);
    CHECK(at.app.screen == Screen::lesson_editor);
    CHECK(at.sheet().can_fly);
    CHECK(at.field("To the aim point")->value == "2.00");
    CHECK(at.field("Headwind")->value == "10");
    CHECK(at.field("Title")->value == "New lesson");
    CHECK(at.sheet().figures.size() == 4);
}

TEST_CASE("own lessons: every step of every field is read back as it was set, and each stays itself") {
    Desktop at;
    at.ask(Wish::write_new);
    Random random{5};
    int good = 0;
    for (int i = 0; i < 400; ++i) {
        const LessonEditorView sheet = at.sheet();
        const auto& group = sheet.groups[next_bits(random) % sheet.groups.size()];
        const auto& field = group.fields[next_bits(random) % group.fields.size()];
        const double most =
            field.choices.empty() ? field.most : static_cast<double>(field.choices.size()) - 1.0;
        const double amount = field.least + next_uniform(random) * (most - field.least);
        if (field.kind != LessonEditorView::Kind::text)
            apply(at.app, SetLessonField{field.number, amount, ""}, at.host);
        const LessonDraft& draft = *at.app.lessons.draft;
        const Result<Lesson> again = read_shared_lesson(lesson_text(draft.lesson), "x", at.app.catalog);
        if (!again.ok()) continue;  // it cannot be flown: that is told, and flying is not offered
        ++good;
        if (lesson_text(*again.value) != lesson_text(draft.lesson)) FAIL_CHECK(lesson_text(draft.lesson));
        const Result<std::string> link = lesson_link(draft.lesson);
        REQUIRE(link.ok());
        const Result<Lesson> read = read_lesson_link(*link.value, at.app.catalog);
        CHECK(read.ok());
        if (read.ok()) CHECK(lesson_text(*read.value) == lesson_text(draft.lesson));
    }
    CHECK(good > 20);
}

TEST_CASE("own lessons: steps are written as a person would, and taken to the nearest that is allowed") {
    Desktop at;
    at.ask(Wish::write_new);
    at.set("Off the path, + high", 0.30000000000000004);
    CHECK(holds(lesson_text(at.app.lessons.draft->lesson), "\"offset_deg\": 0.3,"));
    at.set("Path within", 0.35000000000000003);
    CHECK(holds(lesson_text(at.app.lessons.draft->lesson), "\"path_deg\": 0.35,"));
    at.set("Target on final", 9000);
    CHECK(at.field("Target on final")->value == "150");
    apply(at.app, SetLessonField{-1, 3.0, ""}, at.host);  // no field at all
    apply(at.app, SetLessonField{1000, 3.0, ""}, at.host);
    CHECK(at.field("Target on final")->value == "150");
}

TEST_CASE("own lessons: what is wrong stands beside the field it is of, in the reader's words") {
    Desktop at;
    at.ask(Wish::write_new);
    at.set("Title", 0, "");
    CHECK(at.field("Title")->problem == "This is 0 bytes long; allowed: 1 to 80.");
    CHECK_FALSE(at.sheet().can_fly);
    CHECK(at.sheet().standing == "One thing is to be put right.");
    at.set("Title", 0, "Turned \xE2\x80\xAE round");
    CHECK(holds(at.field("Title")->problem, "cannot be seen"));
    at.set("Title", 0, "Named");
    CHECK(at.field("Title")->problem.empty());

    at.set("Wind", 2);
    at.set("The upper height", 50);
    CHECK(at.field("The upper height")->problem == "This is 50; allowed: above the row before.");
    at.set("The upper height", 500);
    CHECK(at.sheet().can_fly);

    at.set("Descending at", 0);
    at.set("Speed", 200);  // full power does not hold this
    const LessonEditorView sheet = at.sheet();
    REQUIRE_FALSE(sheet.problems.empty());
    CHECK(holds(sheet.problems.front(), "The lesson cannot be flown: "));
    CHECK_FALSE(sheet.can_fly);
    at.ask(Wish::fly_draft);
    CHECK(at.app.screen == Screen::lesson_editor);
    at.ask(Wish::keep);
    CHECK(at.app.lessons.own.empty());
}

TEST_CASE("own lessons: another aircraft brings its own speed and flap") {
    Desktop at;
    at.ask(Wish::write_new);
    const std::string before = at.field("Target on final")->value;
    for (int i = 0; i < static_cast<int>(at.app.catalog.aircraft.size()); ++i) {
        at.set("Aircraft", i);
        const Aircraft& aircraft = at.app.catalog.aircraft[static_cast<std::size_t>(i)];
        const Lesson& lesson = at.app.lessons.draft->lesson;
        CHECK(lesson.aircraft_id == aircraft.id);
        CHECK_NEAR(lesson.target_cas_mps, aircraft.approach_speed_mps, 1e-9);
        CHECK(lesson.start.flap == landing_flap(aircraft));
        CHECK(at.sheet().can_fly);
    }
}

TEST_CASE("own lessons: a gust is put there and taken away, and other happenings stay") {
    Desktop at;
    at.ask(Wish::write_new);
    CHECK(at.field("at") == nullptr);
    at.set("Gust, + headwind", 10);
    at.set("at", 0.5);
    CHECK(at.app.lessons.draft->lesson.air_event_count == 1);
    CHECK(at.sheet().can_fly);
    Lesson lesson = at.app.lessons.draft->lesson;
    lesson.air_events[1] = lesson.air_events[0];
    lesson.air_events[1].kind = AirEvent::Kind::shear;
    lesson.air_event_count = 2;
    lesson.failures[0] = {};
    lesson.failure_count = 1;
    set_lesson_field(lesson, at.field("Gust, + headwind")->number, 0, "", at.app.catalog);
    CHECK(lesson.air_event_count == 1);
    CHECK(lesson.air_events[0].kind == AirEvent::Kind::shear);
    at.app.lessons.draft->lesson = lesson;
    CHECK(at.sheet().also == "It also holds 1 failure, 1 more event in the air, which stay as they are.");
}

TEST_CASE("own lessons: what is kept is there after the program was left") {
    Desktop at;
    const std::string id = at.keep_gusty();
    App again = make_app(shipped(), at.host);
    REQUIRE(again.lessons.own.size() == 1);
    CHECK(lesson_text(again.lessons.own[0]) == lesson_text(*find_own(at.app.lessons, id)));
    CHECK(again.lessons.trouble.empty());
    CHECK(id.starts_with("own-gusty-final-"));  // as the logbook lists it where the lesson is not kept
    CHECK(id.size() <= 40);
}

TEST_CASE("own lessons: kept again they are changed, not doubled; a copy is another") {
    Desktop at;
    const std::string id = at.keep_gusty();
    at.ask(Wish::open, id);
    at.set("Target on final", 70);
    at.ask(Wish::keep);
    REQUIRE(at.app.lessons.own.size() == 1);
    CHECK_NEAR(at.app.lessons.own[0].target_cas_mps, mps_from_kt(70.0), 1e-9);
    at.ask(Wish::copy, id);
    REQUIRE(at.app.lessons.own.size() == 2);
    CHECK(at.app.lessons.own[0].title == "Copy of Gusty final");
    CHECK(at.app.lessons.own[0].id != id);
}

TEST_CASE("own lessons: deleted ones can be brought back until the program is left") {
    Desktop at;
    const std::string id = at.keep_gusty();
    at.ask(Wish::remove, id);
    CHECK(at.app.lessons.own.empty());
    CHECK(at.list().deleted.size() == 1);
    CHECK(make_app(shipped(), at.host).lessons.own.empty());
    at.ask(Wish::bring_back, id);
    CHECK(at.list().rows.size() == 1);
    CHECK(at.list().deleted.empty());
    CHECK(make_app(shipped(), at.host).lessons.own.size() == 1);
}

TEST_CASE("own lessons: one that is being written is not lost to another") {
    Desktop at;
    at.ask(Wish::write_new);
    at.ask(Wish::write_new);  // nothing was written
    CHECK(at.app.lessons.deleted.empty());
    at.set("Title", 0, "Half done");
    at.set("Aim, in one sentence", 0, "");
    at.ask(Wish::write_new);
    REQUIRE(at.list().deleted.size() == 1);
    CHECK(at.list().deleted[0].title == "Half done");
    at.ask(Wish::bring_back, at.list().deleted[0].id);  // it was never good enough to be kept
    CHECK(at.app.screen == Screen::lesson_editor);
    CHECK(at.field("Title")->value == "Half done");
    CHECK(at.app.lessons.own.empty());
}

TEST_CASE("own lessons: one that is being written stands there again when the page was closed") {
    Desktop at;
    at.ask(Wish::write_new);
    CHECK_FALSE(make_app(shipped(), at.host).lessons.draft.has_value());  // nothing was written
    at.set("Title", 0, "Half done");
    at.set("Aim, in one sentence", 0, "");  // what makes it bad is all that is lost
    Desktop again{at.host, make_app(shipped(), at.host)};
    REQUIRE(again.app.lessons.draft.has_value());
    CHECK(again.app.lessons.draft->lesson.title == "Half done");
    CHECK(again.app.lessons.draft->problems.empty());
    again.ask(Wish::write_on);
    CHECK(again.app.screen == Screen::lesson_editor);
    again.ask(Wish::keep);
    CHECK_FALSE(make_app(shipped(), again.host).lessons.draft.has_value());

    again.host.save(lesson_draft_key, "{");
    const App damaged = make_app(shipped(), again.host);
    CHECK_FALSE(damaged.lessons.draft.has_value());
    CHECK(holds(damaged.lessons.trouble, "The lesson that was being written"));
}

TEST_CASE("own lessons: a damaged text is told and put aside, and the good ones stay") {
    TestHost host;
    std::string kept = own_lessons_text(std::span<const Lesson>(shipped().lessons).first(3));
    kept.insert(kept.find("\"distance_nm\":") + 14, "9");
    host.texts[std::string(own_lessons_key)] = kept;
    App app = make_app(shipped(), host);
    CHECK(app.lessons.own.size() == 2);
    CHECK(holds(app.lessons.trouble, "/start/distance_nm"));
    CHECK(host.texts["slopewise-lessons-damaged-1"] == kept);

    App same = make_app(shipped(), host);  // the same damage is put aside once
    CHECK(host.texts.count("slopewise-lessons-damaged-2") == 0);
    host.texts[std::string(own_lessons_key)] = "{";
    App other = make_app(shipped(), host);
    CHECK(other.lessons.own.empty());
    CHECK(host.texts["slopewise-lessons-damaged-1"] == kept);
    CHECK(host.texts["slopewise-lessons-damaged-2"] == "{");
}

TEST_CASE("own lessons: beyond the limit none is kept, and that is told") {
    Desktop at;
    Lesson lesson = shipped().lessons.front();
    for (std::size_t i = 0; i < most_own_lessons; ++i) {
        lesson.id = "own_" + std::to_string(i);
        at.app.lessons.own.push_back(lesson);
    }
    at.ask(Wish::write_new);
    at.ask(Wish::keep);
    CHECK(at.app.lessons.own.size() == most_own_lessons);
    CHECK(holds(at.sheet().news, "At most 100 lessons"));
}

TEST_CASE("own lessons: as a file they come back as they went") {
    Desktop here, there;
    const std::string id = here.keep_gusty();
    here.ask(Wish::hand_over, id);
    CHECK(here.app.lessons.news == "Handed over: slopewise-lesson-gusty-final.json.");
    there.ask(Wish::take_in);
    CHECK(there.host.asked_for_file);
    there.open_file("gusts.json", here.host.file);
    CHECK(make_view(there.app).arrived_lesson.from == "From the file gusts.json");
    there.ask(Wish::keep_arrived);
    CHECK(lesson_text(there.app.lessons.own.at(0)) == lesson_text(here.app.lessons.own[0]));
    there.open_file("holiday.json", "{\"kind\": \"holiday\"}");
    CHECK(holds(make_view(there.app).mirror.screen, "holiday.json:1: holds no lesson"));
    there.host.from_outside.push_back({HostText::Kind::unread_file, "film.mkv", "is longer than 1 MB"});
    take_in_lesson_texts(there.app, there.host);
    CHECK(holds(make_view(there.app).mirror.screen, "film.mkv: is longer than 1 MB"));
}

TEST_CASE("own lessons: flown, they can be mirrored and flown again, and the first sheets are as they were") {
    Desktop at;
    apply(at.app, ChooseDistance{3}, at.host);
    at.ask(Wish::fly, at.keep_gusty());
    CHECK(make_view(at.app).briefing.back == "Back");
    apply(at.app, GoToChoices{}, at.host);  // from the briefing: where it came from
    CHECK(at.app.screen == Screen::lesson_editor);
    at.ask(Wish::fly_draft);
    apply(at.app, StartFlight{}, at.host);
    const double below = observe(at.app.flight->scenario, at.app.flight->attempt).path_error_rad;
    apply(at.app, RestartMirrored{}, at.host);
    CHECK_NEAR(observe(at.app.flight->scenario, at.app.flight->attempt).path_error_rad, -below, 1e-12);
    CHECK(at.app.flight->scenario.lesson.title == "Gusty final");
    apply(at.app, GoToChoices{}, at.host);
    CHECK(at.app.screen == Screen::choices);
    CHECK(make_view(at.app).choice.sentence.starts_with("3 NM, on the path"));
}

TEST_CASE("own lessons: the keys lead there and back") {
    Desktop at;
    RawInput raw;
    raw.pressed[static_cast<std::size_t>(Key::k)] = true;
    for (const Action& action : read_shortcuts(raw, Screen::choices)) apply(at.app, action, at.host);
    CHECK(at.app.screen == Screen::own_lessons);
    for (const Action& action : read_shortcuts(raw, Screen::own_lessons)) apply(at.app, action, at.host);
    CHECK(at.app.screen == Screen::welcome);
    raw = {};
    raw.pressed[static_cast<std::size_t>(Key::n)] = true;
    apply(at.app, OpenOwnLessons{}, at.host);
    for (const Action& action : read_shortcuts(raw, Screen::own_lessons)) apply(at.app, action, at.host);
    CHECK(at.app.screen == Screen::lesson_editor);
    raw = {};
    raw.pressed[static_cast<std::size_t>(Key::escape)] = true;
    for (const Action& action : read_shortcuts(raw, Screen::lesson_editor)) apply(at.app, action, at.host);
    CHECK(at.app.screen == Screen::own_lessons);
    CHECK(at.list().draft == "New lesson");  // it waits to be written on
}
