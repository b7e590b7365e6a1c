// A class being taught: its flight frozen and run, what it is shown, and that nothing of it is kept.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/ui/class_player.h"
#include "tests/wish_in.h"
#include "ui/input.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("class: it begins frozen on final, runs and freezes, and time stands still in between") {
    ClassPlayer player;
    CHECK(player.app.screen == Screen::class_room);
    player.pass(2.0);
    CHECK(player.app.flight->attempt.tick == 0);
    CHECK(player.text().find("Frozen at 3.0 NM") != std::string::npos);

    player.wish(FreezeOrRun{});
    player.pass(2.0);
    const std::int64_t flown = player.app.flight->attempt.tick;
    CHECK(flown >= 236);  // two seconds of 120 ticks, less what the last frames still owe
    CHECK(flown <= 240);
    CHECK(player.text().find("Running") != std::string::npos);

    player.wish(FreezeOrRun{});
    player.pass(2.0);
    CHECK(player.app.flight->attempt.tick == flown);
}

TEST_CASE("class: run on for a while, it freezes by itself at that tick") {
    ClassPlayer player;
    run_class_for(player.app, 4.0);
    player.pass(9.0);
    CHECK(player.app.flight->attempt.tick == 480);
    CHECK(player.app.flight->paused);
}

TEST_CASE("class: the approach freezes where its scoring ends, and says that it is over") {
    ClassPlayer player;
    player.wish(FreezeOrRun{});
    player.pass(240.0);
    CHECK(player.app.flight->attempt.end != End::none);
    CHECK(player.app.flight->paused);
    CHECK(player.app.screen == Screen::class_room);
    CHECK(player.text().find("The approach is over") != std::string::npos);
}

TEST_CASE("class: each thing the class sees is hidden and shown alone") {
    ClassPlayer player;
    using What = ShowToClass::What;
    CHECK(make_view(player.app).flight.scene.lamp_count == 4);
    player.wish(ShowToClass{What::lights});
    CHECK(make_view(player.app).flight.scene.lamp_count == 0);
    player.wish(ShowToClass{What::side_profile});
    CHECK_FALSE(make_view(player.app).flight.side_profile.flown.empty());
    for (std::size_t i = 0; i < instrument_names.size(); ++i) {
        const InstrumentName& one = instrument_names[i];
        CAPTURE(std::string(one.name));
        player.wish(ShowToClass{static_cast<What>(static_cast<std::size_t>(What::airspeed) + i)});
        InstrumentSet only;
        only.*one.which = true;
        CHECK(make_view(player.app).flight.instruments.covered == only);
        player.wish(ShowToClass{static_cast<What>(static_cast<std::size_t>(What::airspeed) + i)});
    }
    CHECK(make_view(player.app).flight.instruments.covered == InstrumentSet{});
}

TEST_CASE("class: black hides all words from the class at once, and the flight stays where it is") {
    ClassPlayer player;
    player.wish(ShowToClass{ShowToClass::What::black});
    CHECK(player.shown().black);
    CHECK(player.text().find("Black.") != std::string::npos);
    player.wish(ShowToClass{ShowToClass::What::black});
    CHECK_FALSE(player.shown().black);
    CHECK(player.app.flight->attempt.tick == 0);
}

TEST_CASE("class: the keys of a clicker are next, back and black") {
    RawInput raw;
    const auto pressed = [&](Key key) {
        raw = {};
        raw.pressed[static_cast<std::size_t>(key)] = true;
        return read_class_keys(raw);
    };
    using Wish = DoWithQuestions::Wish;
    const auto asks = [](const Actions& actions, Wish wish) {
        const auto* asked = actions.size() == 1 ? wish_in<DoWithQuestions>(actions.front()) : nullptr;
        return asked != nullptr && asked->wish == wish;
    };
    CHECK(asks(pressed(Key::page_down), Wish::next));
    CHECK(asks(pressed(Key::page_up), Wish::previous));
    CHECK(asks(pressed(Key::four), Wish::count_hand));
    for (const Key key : {Key::b, Key::period}) {
        const Actions actions = pressed(key);
        REQUIRE(actions.size() == 1);
        REQUIRE(wish_in<ShowToClass>(actions.front()) != nullptr);
        CHECK(wish_in<ShowToClass>(actions.front())->what == ShowToClass::What::black);
    }
}

TEST_CASE("class: nothing of its flight goes into the logbook, and leaving leads back") {
    ClassPlayer player;
    const std::size_t before = player.app.logbook.rows.size();
    player.wish(FreezeOrRun{});
    player.pass(30.0);
    player.wish(CloseClassRoom{});
    CHECK(player.app.screen == Screen::welcome);
    CHECK_FALSE(player.app.flight);
    CHECK(player.app.logbook.rows.size() == before);
    CHECK(player.host.store.journals.empty());
}

TEST_CASE("class: a flight begun elsewhere is the student's again, and is kept") {
    ClassPlayer player;
    player.wish(CloseClassRoom{});
    player.wish(FlyNow{});
    CHECK(player.app.screen == Screen::flight);
    CHECK_FALSE(player.app.room.open);
}

TEST_CASE("class: the panel that shows and hides says in words what is shown and what is not") {
    ClassPlayer player;
    player.wish(ChooseClassPanel{2});
    player.wish(ShowToClass{ShowToClass::What::lights});
    player.wish(ShowToClass{ShowToClass::What::airspeed});
    const std::string text = player.text();
    CHECK(text.find("Shown: dials, words over the picture, altimeter, ") != std::string::npos);
    CHECK(text.find("Hidden: slope lights, path from the side, calm air beside it, airspeed.") !=
          std::string::npos);
}
