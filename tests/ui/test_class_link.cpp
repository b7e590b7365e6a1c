// Two windows of a class without a browser: one leads, the other follows.
#include "tests/ui/class_windows.h"
#include "ui/room_shown_text.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("class link: a class window waits, then shows the instructor's picture") {
    Room room;
    Page other(room.machine, "abcd1234efgh");
    other.frame();
    CHECK(other.app.screen == Screen::class_window);
    CHECK(other.screen().find("Waiting for the instructor's window.") != std::string::npos);
    CHECK(room.projector->screen().find("Waiting") == std::string::npos);
    CHECK(room.projector->screen().find("Frozen.") != std::string::npos);
    CHECK(same_flight(room.instructor.app, room.projector->app));
    CHECK(room.instructor.app.view.class_room.link.open);
    other.frame();  // of another pair: hears nothing of it
    CHECK(other.screen().find("Waiting for the instructor's window.") != std::string::npos);
}

TEST_CASE(
    "class link: flown by hand, the class window is a few ticks behind, and frozen it is the same to the "
    "bit") {
    Room room;
    room.instructor.frame({FreezeOrRun{}});
    for (int i = 0; i < 600; ++i) {
        room.fly(1);
        const std::int64_t behind =
            room.instructor.app.flight->attempt.tick - room.projector->app.flight->attempt.tick;
        REQUIRE(behind >= 0);
        REQUIRE(behind <= 6);  // 50 ms: those held back and the frame of the other
        REQUIRE_FALSE(room.projector->app.flight->paused);
    }
    room.fly(300);
    CHECK(room.instructor.app.flight->recording.changes.size() > 100);
    room.instructor.frame({FreezeOrRun{}});
    room.projector->frame();
    CHECK(same_flight(room.instructor.app, room.projector->app));
    CHECK(room.projector->app.flight->paused);
    CHECK(room.projector->app.room.link.following.flight->first_diverged_tick == -1);
    room.both();
    const View& a = room.instructor.app.view;
    const View& b = room.projector->app.view;
    CHECK(a.mirror.instruments == b.mirror.instruments);
    CHECK(a.flight.scene.camera.x_m == b.flight.scene.camera.x_m);
    CHECK(a.flight.scene.camera.z_m == b.flight.scene.camera.z_m);
    CHECK(a.flight.setup == b.flight.setup);
    CHECK(a.flight.caption == b.flight.caption);
}

TEST_CASE(
    "class link: what is shown or hidden, pointed at and drawn is in the class window one frame later") {
    Room room;
    using What = ShowToClass::What;
    for (const What what : {What::lights, What::dials, What::side_profile, What::names, What::airspeed,
                            What::black, What::black}) {
        room.instructor.frame({show(what)});
        room.projector->frame();
        CHECK(room.projector->app.room.shown == room.instructor.app.room.shown);
    }
    CHECK(room.projector->screen().find("Slope lights hidden.") != std::string::npos);
    RoomShown& shown = room.instructor.app.room.shown;
    shown.ask = {AskShown::Stage::asked, "1 of 1", "High or low?", {"High", "Low"}, {0, 3}, {}, true, -1, ""};
    shown.ink.push_back({{{0.1f, 0.2f}, {0.3f, 0.4f}}});
    room.both();
    CHECK(room.projector->app.room.shown == shown);
    room.machine.said.clear();
    shown.pointer = {0.25f, 0.75f};
    shown.pointing = true;
    room.both();
    CHECK(room.projector->app.room.shown == shown);
    REQUIRE(room.machine.said.size() == 1);
    CHECK(room.machine.said.front().find("room") == std::string::npos);  // a pointer goes alone
    CHECK(room.machine.said.front().size() < 200);
}

TEST_CASE("class link: a frozen class costs a word a second, a flight one message a frame") {
    Room room;
    room.both(5);
    room.machine.said.clear();
    room.both(300);  // five seconds
    CHECK(room.machine.said.size() >= 8);
    CHECK(room.machine.said.size() <= 12);  // each of the two says that it is there
    room.instructor.frame({FreezeOrRun{}});
    room.both();
    room.machine.said.clear();
    room.both(60);
    CHECK(room.machine.said.size() <= 62);
    for (const std::string& text : room.machine.said) CHECK(text.size() < 300);
}

TEST_CASE("class link: a flight put anew, and settings that were changed, are followed") {
    Room room;
    room.fly(30);
    room.instructor.frame({FreezeOrRun{}});
    room.fly(100);
    Lesson lesson = room.instructor.app.flight->scenario.lesson;
    lesson.start.distance_m *= 0.5;
    REQUIRE(put_class_flight(room.instructor.app, lesson));
    room.both(2);
    CHECK(same_flight(room.instructor.app, room.projector->app));
    CHECK(room.projector->app.flight->attempt.tick == 0);
    room.instructor.app.settings.display.look = Look::night;
    ++room.instructor.app.edition;
    room.both(2);
    CHECK(room.projector->app.view.display.look == Look::night);
    CHECK(room.projector->host.kept.empty());  // never kept from there
}

TEST_CASE("class link: whatever the numbers of a lesson, both windows fly the same from the start") {
    Room room;
    const Lesson usual = room.instructor.app.flight->scenario.lesson;
    std::uint32_t at = 7;
    const auto share = [&] {
        at = at * 1664525u + 1013904223u;
        return static_cast<double>(at >> 8) / static_cast<double>(1 << 24);
    };
    for (int i = 0; i < 60; ++i) {
        Lesson lesson = usual;
        lesson.start.distance_m = 1500.0 + 4000.0 * share();
        lesson.start.offset_rad = 0.02 * (share() - 0.5);
        lesson.start.cas_mps *= 0.97 + 0.1 * share();
        lesson.target_cas_mps *= 0.97 + 0.1 * share();
        lesson.weather.temperature_deviation_k = 30.0 * (share() - 0.5);
        lesson.weather.qnh_pa = 98000.0 + 5000.0 * share();
        lesson.turbulence_w20_mps = 6.0 * share();
        lesson.seed = at % 1000000;
        REQUIRE(put_class_flight(room.instructor.app, lesson));
        room.instructor.app.flight->paused = false;
        room.both(64);  // past the first second, whose hash is compared
        room.instructor.app.flight->paused = true;
        room.both();
        REQUIRE(same_flight(room.instructor.app, room.projector->app));
        REQUIRE(room.instructor.app.flight->attempt.tick > 120);
        REQUIRE(room.projector->app.notice.empty());
    }
}

TEST_CASE("class link: what a clicker presses in the class window is done in the instructor's") {
    Room room;
    const auto press = [&](Key key) {
        RawInput raw;
        raw.pressed[static_cast<std::size_t>(key)] = true;
        room.projector->frame(read_shortcuts(raw, room.projector->app.screen));
        room.both();
    };
    press(Key::b);
    CHECK(room.instructor.app.room.shown.black);
    CHECK(room.projector->app.room.shown.black);
    press(Key::period);
    CHECK_FALSE(room.instructor.app.room.shown.black);
    press(Key::p);
    CHECK_FALSE(room.instructor.app.flight->paused);
    CHECK_FALSE(room.projector->app.flight->paused);
    CHECK(passed_wish(passed_words(DoWithQuestions{DoWithQuestions::Wish::next, 0, ""})).has_value());
    CHECK(passed_wish(passed_words(DoWithQuestions{DoWithQuestions::Wish::previous, 0, ""})).has_value());
    CHECK(passed_words(CloseClassRoom{}).empty());
    CHECK(passed_words(DoWithQuestions{DoWithQuestions::Wish::remove_set, 0, ""}).empty());
    CHECK(passed_words(show(ShowToClass::What::dials)).empty());
    // Nothing that is not a clicker's can be asked for over the channel.
    CHECK_FALSE(passed_wish("leave").has_value());
}

TEST_CASE(
    "class link: hidden, the class window does not stop the flight, and has caught up when it is seen") {
    Room room;
    room.instructor.frame({FreezeOrRun{}});
    pause(room.projector->app);
    for (int i = 0; i < 200; ++i) room.instructor.frame();  // three seconds in which it draws nothing
    room.projector->wall_s = room.instructor.wall_s;
    room.both(3);
    const std::int64_t behind =
        room.instructor.app.flight->attempt.tick - room.projector->app.flight->attempt.tick;
    CHECK(room.instructor.app.flight->attempt.tick > 300);
    CHECK(behind <= 6);
    // So long that not all of it was kept.
    room.projector->host.channel.waiting.assign(1, ChannelText{});
    for (int i = 0; i < 10; ++i) room.instructor.frame();
    room.projector->host.channel.waiting.erase(room.projector->host.channel.waiting.begin() + 1);
    room.both(3);
    room.instructor.frame({FreezeOrRun{}});
    room.both();
    CHECK(same_flight(room.instructor.app, room.projector->app));
}

TEST_CASE(
    "class link: a flight that is not the instructor's is noticed within a second or two, told and put "
    "right") {
    Room room;
    room.instructor.frame({FreezeOrRun{}});
    room.both(30);
    room.projector->app.flight->attempt.flight.vx_mps += 1e-9;
    room.both(150);
    CHECK(room.projector->screen().find("differed from the instructor's") != std::string::npos);
    room.instructor.frame({FreezeOrRun{}});
    room.both(40);
    CHECK(same_flight(room.instructor.app, room.projector->app));
}

TEST_CASE(
    "class link: leaving the class leaves the window waiting, a new class comes to it, and it can be "
    "closed") {
    Room room;
    room.instructor.frame({CloseClassRoom{}});
    room.both();
    CHECK(room.projector->screen().find("Waiting for the instructor's window.") != std::string::npos);
    room.both(120);
    room.instructor.frame({OpenClassRoom{}});
    room.both(70);
    CHECK(same_flight(room.instructor.app, room.projector->app));
    CHECK_FALSE(room.projector->host.channel.closed);
    room.instructor.frame({DoWithClassWindow{DoWithClassWindow::Wish::close}});
    room.projector->frame();
    CHECK(room.projector->host.channel.closed);
}

TEST_CASE("class link: a browser that opens no window, and a program that has one, are told of in words") {
    Machine machine;
    Page page(machine);
    page.frame({OpenClassRoom{}});
    page.host.channel.allows_windows = false;
    page.frame({DoWithClassWindow{DoWithClassWindow::Wish::open}});
    CHECK(page.app.view.class_room.link.standing.find("https://example.org/slopewise/#class=" +
                                                      page.app.room.link.pair) != std::string::npos);
    TestHost desktop;
    App app = make_app(shipped(), desktop);
    apply(app, OpenClassRoom{}, desktop);
    apply(app, DoWithClassWindow{DoWithClassWindow::Wish::open}, desktop);
    tell_class_window(app, 1, desktop);
    hear_other_window(app, 1, desktop);
    CHECK(make_view(app).class_room.link.standing.find("one window") != std::string::npos);
}

TEST_CASE("class link: whatever a page of the same origin says, neither window stops") {
    Room room;
    room.instructor.frame({FreezeOrRun{}});
    room.fly(130);
    std::vector<std::string> texts = room.machine.said;  // all that was ever said, damaged in turn
    texts.resize(std::min<std::size_t>(texts.size(), 40));
    std::uint32_t at = 1;
    for (const std::string& text : texts) {
        for (int i = 0; i < 12; ++i) {
            at = at * 1664525u + 1013904223u;
            std::string damaged = text;
            damaged[at % damaged.size()] = static_cast<char>("0\"{}x,-"[(at >> 16) % 7]);
            room.instructor.host.channel.waiting.push_back({(at >> 8) % 4 == 0, damaged});
            room.projector->host.channel.waiting.push_back({(at >> 8) % 4 == 0, damaged});
            room.both();
        }
    }
    REQUIRE(room.instructor.app.flight);
    CHECK(room.instructor.app.room.open);
}

TEST_CASE("class link: a run that no reader takes is told of in the window, and the next good one is shown") {
    Room room;
    const Lesson good = room.instructor.app.flight->scenario.lesson;
    Lesson bad = good;
    bad.turbulence_w20_mps = 2;
    bad.seed = 2000000;  // a lesson has at most a million
    REQUIRE(put_class_flight(room.instructor.app, bad));
    room.both(70);
    CHECK(room.projector->screen().find("This run cannot be shown: ") != std::string::npos);
    CHECK(room.projector->screen().find("seed is 2000000") != std::string::npos);
    REQUIRE(put_class_flight(room.instructor.app, good));
    room.both(2);
    CHECK(same_flight(room.instructor.app, room.projector->app));
}
