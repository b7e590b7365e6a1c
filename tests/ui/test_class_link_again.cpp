// Either window of a class is closed or loaded again, copied, or beside those of another class.
#include "tests/ui/class_windows.h"
#include "ui/room_shown_text.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("class link: the class window loaded again shows everything again, in the middle of a run") {
    Room room;
    room.instructor.frame({FreezeOrRun{}, show(ShowToClass::What::side_profile)});
    room.fly(240);
    room.projector->host.channel.leave();
    room.both();
    room.projector.reset();
    room.instructor.frame();
    CHECK_FALSE(room.instructor.app.view.class_room.link.open);
    for (int i = 0; i < 100; ++i) room.instructor.frame();
    room.open_projector();
    room.instructor.frame({FreezeOrRun{}});
    room.both();
    CHECK(same_flight(room.instructor.app, room.projector->app));
    CHECK(room.projector->app.flight->attempt.tick > 600);
    CHECK(room.projector->app.room.shown == room.instructor.app.room.shown);
    CHECK(room.instructor.app.view.class_room.link.open);
}

TEST_CASE("class link: the instructor's page loaded again goes on with the same run, frozen, by itself") {
    Room room;
    room.instructor.frame({FreezeOrRun{}, show(ShowToClass::What::lights), ChooseClassPanel{2}});
    room.fly(400);
    const std::string pair = room.instructor.host.channel.kept;
    CHECK(is_pair_name(pair));
    room.projector->frame();
    const std::int64_t flown = room.instructor.app.flight->attempt.tick;
    room.instructor.host.channel.leave();
    Page again(room.machine, "", pair);
    again.app.settings.up_key_pushes = true;
    frames(3, again, *room.projector);
    CHECK(again.app.screen == Screen::class_room);
    REQUIRE(again.app.room.open);
    CHECK(again.app.flight->attempt.tick == flown);
    CHECK(again.app.flight->paused);
    CHECK_FALSE(again.app.room.shown.lights);
    CHECK(again.app.room.panel == ClassRoomView::Panel::show);
    CHECK(again.app.hands.at.throttle == positions_of(again.app.flight->attempt.controls).throttle);
    frames(3, again, *room.projector);
    CHECK(same_flight(again.app, room.projector->app));
    again.frame({FreezeOrRun{}});
    frames(200, again, *room.projector);
    again.frame({FreezeOrRun{}});
    room.projector->frame();
    CHECK(same_flight(again.app, room.projector->app));
    CHECK(again.app.flight->attempt.tick > flown + 300);
    CHECK(room.projector->app.notice.empty());  // never differed
}

TEST_CASE(
    "class link: a fresh instructor's page is offered the run of a window that nobody leads, and goes on") {
    Room room;
    room.instructor.frame({FreezeOrRun{}});
    room.fly(300);
    room.projector->frame();
    const std::int64_t flown = room.instructor.app.flight->attempt.tick;
    Page fresh(room.machine);
    fresh.frame({OpenClassRoom{}});
    for (int i = 0; i < 120; ++i) {
        room.both();
        fresh.frame();
    }
    CHECK(fresh.app.view.class_room.link.offer.empty());  // it is led
    const std::int64_t later = room.instructor.app.flight->attempt.tick;
    CHECK(later > flown);
    // The first page dies without a word.
    for (int i = 0; i < 300; ++i) {
        room.projector->frame();
        fresh.frame();
    }
    const std::string offer = fresh.app.view.class_room.link.offer;
    REQUIRE(offer.starts_with("A class window still shows a run: "));
    CHECK(offer.find(" NM, ") != std::string::npos);
    fresh.frame({DoWithClassWindow{DoWithClassWindow::Wish::go_on_with}});
    frames(4, fresh, *room.projector);
    CHECK(fresh.app.flight->attempt.tick == later);
    CHECK(fresh.app.flight->paused);
    CHECK(fresh.app.view.class_room.link.offer.empty());
    CHECK(fresh.app.view.class_room.link.open);
    CHECK(same_flight(fresh.app, room.projector->app));
    // The first page was only asleep: it is told, and leads no more.
    for (int i = 0; i < 120; ++i) {
        room.both();
        fresh.frame();
    }
    CHECK(room.instructor.app.view.class_room.link.standing.find("another instructor's page") !=
          std::string::npos);
    CHECK(same_flight(fresh.app, room.projector->app));
}

TEST_CASE("class link: two pairs on one machine never cross") {
    Room one;
    Page other_instructor(one.machine);
    other_instructor.frame({OpenClassRoom{}});
    other_instructor.frame({DoWithClassWindow{DoWithClassWindow::Wish::open}});
    CHECK(other_instructor.host.channel.opened != one.instructor.host.channel.opened);
    Page other_projector(one.machine, other_instructor.host.channel.opened);
    const auto all = [&](int count) {
        for (int i = 0; i < count; ++i) {
            one.both();
            frames(1, other_instructor, other_projector);
        }
    };
    all(5);
    one.instructor.frame({FreezeOrRun{}, show(ShowToClass::What::dials)});
    other_instructor.frame({show(ShowToClass::What::names)});
    all(100);
    CHECK(one.projector->app.flight->attempt.tick > 100);
    CHECK(other_projector.app.flight->attempt.tick == 0);
    CHECK_FALSE(one.projector->app.room.shown.dials);
    CHECK(other_projector.app.room.shown.dials);
    CHECK_FALSE(other_projector.app.room.shown.names);
    CHECK(one.instructor.app.view.class_room.link.offer.empty());
    CHECK(other_instructor.app.view.class_room.link.offer.empty());
}

TEST_CASE("class link: a second copy of the instructor's page does not take the run from the first") {
    Room room;
    Page copy(room.machine, "", room.instructor.host.channel.kept);
    copy.app.settings.up_key_pushes = true;
    for (int i = 0; i < 300; ++i) {
        room.both();
        copy.frame();
    }
    CHECK_FALSE(copy.app.room.open);
    CHECK(copy.app.room.link.pair.empty());
    CHECK(room.instructor.app.view.class_room.link.open);
}
