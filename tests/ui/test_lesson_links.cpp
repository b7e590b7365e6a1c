// Lessons that come from somebody else by a link: flown, kept, refused.
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

TEST_CASE(
    "lesson link: copied in a page that is a file, it tells nothing of this machine and is whole behind any "
    "address") {
    Desktop here;
    here.host.address = "file:///home/somebody/slopewise.html";
    const std::string id = here.keep_gusty();
    here.ask(Wish::copy_link, id);
    CHECK(here.host.copied.starts_with("#lesson=1."));
    CHECK(holds(here.app.lessons.news, "behind the address of any page"));

    Desktop there;
    there.open_link("https://example.org/slopewise/" + here.host.copied);
    CHECK(make_view(there.app).arrived_lesson.title == "Gusty final");
}

TEST_CASE(
    "lesson link: opened at another machine it is flown to the same bits, turbulence and gust and all") {
    Desktop here;
    const std::string id = here.keep_gusty();
    here.ask(Wish::copy_link, id);
    CHECK(here.host.copied.starts_with("https://example.org/slopewise/#lesson=1."));
    CHECK(holds(here.app.lessons.news, "The link is copied"));

    Desktop there;
    there.open_link(here.host.copied);
    CHECK(there.app.screen == Screen::arrived_lesson);
    CHECK_FALSE(there.app.flight.has_value());  // it never starts by itself
    const ArrivedLessonView sheet = make_view(there.app).arrived_lesson;
    CHECK(sheet.from == "From a link");
    CHECK(sheet.title == "Gusty final");
    CHECK(sheet.can_keep);
    CHECK(holds(make_view(there.app).mirror.screen, "a gust of \u221210 kt at 0.75 NM"));

    there.ask(Wish::fly_arrived);
    CHECK(there.app.screen == Screen::briefing);
    CHECK(make_view(there.app).briefing.title == "Gusty final");
    apply(there.app, StartFlight{}, there.host);
    here.ask(Wish::fly, id);
    apply(here.app, StartFlight{}, here.host);
    CHECK(flown_hash(here.app) == flown_hash(there.app));

    // And another variant of the air is another flight.
    here.ask(Wish::open, id);
    here.set("Variant of the air", 43);
    here.ask(Wish::fly_draft);
    apply(here.app, StartFlight{}, here.host);
    CHECK(flown_hash(here.app) != state_hash(there.app.flight->attempt));
}

TEST_CASE("lesson link: kept, it has the same identity, and coming again it is known") {
    Desktop here, there;
    there.host.drawn = 1000;  // two machines draw different numbers
    here.ask(Wish::copy_link, here.keep_gusty());
    there.open_link(here.host.copied);
    there.ask(Wish::keep_arrived);
    CHECK(there.app.screen == Screen::own_lessons);
    REQUIRE(there.app.lessons.own.size() == 1);
    CHECK(lesson_text(there.app.lessons.own[0]) == lesson_text(here.app.lessons.own[0]));
    there.open_link(here.host.copied);
    CHECK_FALSE(make_view(there.app).arrived_lesson.can_keep);
    there.ask(Wish::leave_arrived);
    CHECK(there.app.screen == Screen::own_lessons);

    // Changed since by the one who wrote it: both are kept.
    here.ask(Wish::open, here.app.lessons.own[0].id);
    here.set("Target on final", 70);
    here.ask(Wish::keep);
    here.ask(Wish::copy_link, here.app.lessons.own[0].id);
    there.open_link(here.host.copied);
    there.ask(Wish::keep_arrived);
    CHECK(there.app.lessons.own.size() == 2);
}

TEST_CASE("lesson link: a hostile or damaged one is refused in words, and nothing is kept or begun") {
    Desktop at;
    at.open_link("lesson=1.0123456789abcdef.AAAA");
    CHECK(at.app.screen == Screen::arrived_lesson);
    const View view = make_view(at.app);
    CHECK(view.arrived_lesson.title.empty());
    CHECK(holds(view.mirror.screen, "damaged"));
    for (const Wish wish : {Wish::fly_arrived, Wish::keep_arrived}) {
        at.ask(wish);
        CHECK(at.app.screen == Screen::arrived_lesson);
    }
    CHECK(at.app.lessons.own.empty());
    at.ask(Wish::leave_arrived);
    CHECK(at.app.screen == Screen::welcome);
}

TEST_CASE("lesson link: one that takes a shipped lesson's name counts as another lesson") {
    Lesson easy = *find_lesson(shipped(), "final_calm");
    easy.tolerances.slow_mps = mps_from_kt(30.0);
    Desktop at;
    at.open_link(*lesson_link(easy).value);
    REQUIRE(at.app.lessons.arrived->lesson);
    const std::string id = at.app.lessons.arrived->lesson->id;
    CHECK(id.starts_with("own-final-approach-calm-"));
    Desktop other;
    other.open_link(*lesson_link(easy).value);
    CHECK(other.app.lessons.arrived->lesson->id == id);  // the same everywhere
    other.open_link(*lesson_link(*find_lesson(shipped(), "final_calm")).value);
    CHECK(other.app.lessons.arrived->lesson->id == "final_calm");
}

TEST_CASE("lesson link: one that comes in flight pauses it, and leaving it leads back") {
    Desktop at;
    apply(at.app, StartFlight{}, at.host);
    at.open_link(*lesson_link(shipped().lessons.front()).value);
    CHECK(at.app.screen == Screen::arrived_lesson);
    CHECK(at.app.flight->paused);
    apply(at.app, CloseOwnLessons{}, at.host);  // Escape: it is not left for good
    CHECK(at.app.screen == Screen::flight);
    CHECK(at.app.lessons.arrived.has_value());
    at.open_link(*lesson_link(shipped().lessons.front()).value);
    at.ask(Wish::leave_arrived);
    CHECK(at.app.screen == Screen::flight);
    CHECK_FALSE(at.app.lessons.arrived.has_value());
}
