// Keys bound anew: the sheet where that is done, the screens that name them, and what stays as it was before
// a class.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "tests/ui/class_player.h"
#include "tests/wish_in.h"
#include "ui/act.h"
#include "ui/key_bindings.h"
#include "ui/keys_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

RawInput pressed(Key key) {
    RawInput raw;
    raw.held[static_cast<std::size_t>(key)] = raw.pressed[static_cast<std::size_t>(key)] = true;
    return raw;
}

KeyBindings with(KeyCommand command, Key key) {
    KeyBindings bindings;
    bind_key(bindings, command, {key});
    return bindings;
}

bool says(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("keys: the hints, the briefing, the help and the mirror of a flight name the bound keys") {
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings.up_key_pushes = true;
    app.settings.display.eyes_outside = true;
    const auto bind = [&](KeyCommand command, Key key) { bind_key(app.settings.keys, command, {key}); };
    bind(KeyCommand::stick_up_key, Key::pad_8);
    bind(KeyCommand::go_around, Key::page_up);
    bind(KeyCommand::look_in, Key::semicolon);
    bind(KeyCommand::path_help, Key::f2);
    bind(KeyCommand::pause, Key::end);
    bind(KeyCommand::exchange, Key::insert);
    apply(app, FlyNow{}, host);
    apply(app, StartFlight{}, host);
    const View view = make_view(app);
    const auto has = [&](const std::vector<KeyHint>& hints, std::string_view key, std::string_view meaning) {
        return std::ranges::any_of(
            hints, [&](const KeyHint& hint) { return hint.key == key && hint.meaning == meaning; });
    };
    CHECK(has(view.flight.keys, "Num8 \u2193", "stick: nose down / nose up"));
    CHECK(has(view.flight.keys, "PgUp", "go around: full power"));
    CHECK(has(view.flight.keys, ";", "hold: look at the panel"));
    CHECK(has(view.flight.keys, "F2", "hold: path help"));
    CHECK(has(view.flight.keys, "End H", "pause / screen and help"));
    CHECK(says(view.mirror.screen, "hold ; to look at it"));
    apply(app, OpenScreenAndHelp{}, host);
    const ScreenAndHelpView help = make_view(app).screen_and_help;
    CHECK(help.help.at(0).find("Hold ;") != std::string::npos);
    CHECK(help.help.at(1).starts_with("Hold F2"));
    app.settings.keys.sticky = true;
    CHECK(make_view(app).screen_and_help.help.at(1).starts_with("Press F2"));
}

TEST_CASE("keys: the answer to who takes a control is asked for by the bound key") {
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings.up_key_pushes = true;
    bind_key(app.settings.keys, KeyCommand::exchange, {Key::insert});
    apply(app, OpenLesson{"path_by_power"}, host);
    apply(app, FlyLesson{"path_by_power"}, host);
    apply(app, StartFlight{}, host);
    REQUIRE(waits_for_answer(*app.flight));
    CHECK(make_view(app).flight.caption == "You have power. Answer with Ins: I have power.");
}

TEST_CASE("keys: on the sheet a row asks, the next key is taken, and whose it was is told") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenScreenAndHelp{}, host);
    apply(app, OpenKeys{}, host);
    const auto give = [&](Key key, char32_t gives = 0) {
        RawInput raw = pressed(key);
        raw.gives = gives;
        for (const Action& action : read_key_sheet(raw, app.keys)) apply(app, action, host);
    };
    const auto row = [&](KeyCommand command) {
        return make_view(app).keys.rows.at(static_cast<std::size_t>(command));
    };
    give(Key::k);  // nothing asked
    CHECK(app.settings.keys == KeyBindings{});
    const auto ask = [&](KeyCommand command) {
        apply(app, DoWithKeys{DoWithKeys::Wish::ask_key, static_cast<int>(command)}, host);
    };
    ask(KeyCommand::more_power);
    CHECK(row(KeyCommand::more_power).asked);
    CHECK(says(make_view(app).mirror.screen, "more power: press its key now"));
    give(Key::g);
    CHECK(row(KeyCommand::more_power).key == "G");
    CHECK(row(KeyCommand::go_around).key == "E");
    CHECK(make_view(app).keys.news == "G: more power. It was for go around, which now has E.");
    CHECK(says(host.kept, "\"more_power\": \"g\""));

    ask(KeyCommand::trim_up);
    for (const Key own : {Key::tab, Key::enter}) {
        give(own);
        CHECK(row(KeyCommand::trim_up).asked);
        CHECK(says(make_view(app).keys.news, "is the program's own"));
    }
    for (const Key the_machines : {Key::f5, Key::other}) {
        give(the_machines);
        CHECK(says(make_view(app).keys.news, "belongs to the machine"));
    }
    give(Key::semicolon, 0xf6);
    CHECK(row(KeyCommand::trim_up).key == "\u00d6");

    ask(KeyCommand::pause);
    give(Key::escape);
    CHECK(app.screen == Screen::keys);  // no key after all
    CHECK_FALSE(row(KeyCommand::pause).asked);
    CHECK(row(KeyCommand::pause).key == "P");

    apply(app, DoWithKeys{DoWithKeys::Wish::usual_keys}, host);
    CHECK(app.settings.keys.keys == usual_keys());
    CHECK(row(KeyCommand::trim_up).key == "U");
    apply(app, DoWithKeys{DoWithKeys::Wish::sticky}, host);
    CHECK(says(make_view(app).mirror.screen, "Sticky keys: on"));
    CHECK(says(host.kept, "\"sticky\": \"on\""));
    give(Key::escape);
    CHECK(app.screen == Screen::screen_and_help);
}

TEST_CASE("keys: wishes that no row can send change nothing") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenKeys{}, host);
    for (const int which : {-1, static_cast<int>(command_count), 1000}) {
        apply(app, DoWithKeys{DoWithKeys::Wish::ask_key, which}, host);
        CHECK(app.keys.asked == -1);
    }
    apply(app, DoWithKeys{DoWithKeys::Wish::ask_key, 3}, host);
    for (const int which : {-1, static_cast<int>(Key::count), 1000}) {
        apply(app, DoWithKeys{DoWithKeys::Wish::take_key, which}, host);
        CHECK(app.settings.keys == KeyBindings{});
    }
}

TEST_CASE("keys: before a class its own keys come first, and what a clicker sends does no harm") {
    const KeyBindings bindings = with(KeyCommand::more_power, Key::b);
    CHECK(read_class_keys(pressed(Key::b), bindings).size() == 1);
    CHECK(wish_in<ShowToClass>(read_class_keys(pressed(Key::b), bindings).at(0)));
    CHECK_FALSE(without_class_keys(pressed(Key::b)).is_held(Key::b));
    CHECK(wish_in<GoAround>(read_class_keys(pressed(Key::f2), with(KeyCommand::go_around, Key::f2)).at(0)));
    CHECK(read_class_keys(pressed(Key::g), with(KeyCommand::go_around, Key::f2)).empty());
    // F5 and Escape, by which many clickers begin and end a show.
    for (const Key key : {Key::f5, Key::escape, Key::tab, Key::enter, Key::other})
        CHECK(read_class_keys(pressed(key)).empty());
    for (const Key key : {Key::f5, Key::escape})
        CHECK(read_shortcuts(pressed(key), Screen::class_window).empty());
    CHECK(wish_in<CloseClassRoom>(read_class_keys(pressed(Key::backspace)).at(0)));

    ClassPlayer player;
    player.wish(FreezeOrRun{});
    player.pass(3.0);
    const auto tick = player.app.flight->attempt.tick;
    for (const Key key : {Key::f5, Key::escape})
        for (const Action& action : read_class_keys(pressed(key))) apply(player.app, action, player.host);
    CHECK(player.app.screen == Screen::class_room);
    CHECK(player.app.flight->attempt.tick == tick);
    CHECK_FALSE(player.app.flight->paused);
}

TEST_CASE("keys: in flight a clicker's Page down, Page up, B, full stop and F5 move nothing") {
    PilotHands hands;
    hands.at.throttle = 0.4;
    for (const Key key : {Key::page_down, Key::page_up, Key::b, Key::period, Key::f5}) {
        RawInput raw = pressed(key);
        raw.wall_s = hands.last_wall_s + 0.05;
        const Wishes wishes = read_input(hands, raw, {}, 3);
        CHECK(wishes.actions.empty());
        CHECK(wishes.controls.throttle == 0.4);
        CHECK(wishes.controls.stick == 0.0);
    }
}
