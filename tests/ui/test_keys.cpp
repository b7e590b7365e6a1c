// Keys bound anew: what flies, what is kept, and what stands on the screens.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "base/random.h"
#include "tests/wish_in.h"
#include "ui/input.h"
#include "ui/key_bindings.h"
#include "ui/key_names.h"
#include "ui/keys_view.h"

using namespace slopewise;

namespace {

std::size_t index(Key key) { return static_cast<std::size_t>(key); }

RawInput pressed(Key key) {
    RawInput raw;
    raw.held[index(key)] = raw.pressed[index(key)] = true;
    return raw;
}

std::vector<Key> bindable_keys() {
    std::vector<Key> keys;
    for (std::size_t i = 0; i < index(Key::count); ++i)
        if (name_of(static_cast<Key>(i)).bindable) keys.push_back(static_cast<Key>(i));
    return keys;
}

bool differ(const KeyBindings& bindings) {
    for (std::size_t i = 0; i < command_count; ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (bindings.keys[i].key == bindings.keys[j].key) return false;
    return true;
}

KeyBindings with(KeyCommand command, Key key) {
    KeyBindings bindings;
    bind_key(bindings, command, {key});
    return bindings;
}

// What is asked for, each wish by its kind.
using Kinds = std::vector<std::pair<std::size_t, std::size_t>>;

Kinds kinds(const Actions& actions) {
    Kinds all;
    for (const Action& action : actions)
        std::visit([&](const auto& subject) { all.emplace_back(action.index(), subject.index()); }, action);
    return all;
}

bool says(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("keys: with the usual keys every key is what it was") {
    for (std::size_t i = 0; i < index(Key::count); ++i) {
        const RawInput raw = pressed(static_cast<Key>(i));
        const RawInput same = rebound(raw, {});
        CHECK(same.held == raw.held);
        CHECK(same.pressed == raw.pressed);
    }
}

TEST_CASE("keys: every command can have every key, which then does that and nothing else") {
    for (std::size_t c = 0; c < command_count; ++c) {
        for (const Key key : bindable_keys()) {
            CAPTURE(c);
            CAPTURE(std::string(name_of(key).id));
            const auto command = static_cast<KeyCommand>(c);
            KeyBindings bindings;
            const KeyCommand other = bind_key(bindings, command, {key});
            REQUIRE(differ(bindings));
            const RawInput done = rebound(pressed(key), bindings);
            CHECK(std::ranges::count(done.pressed, true) == 1);
            CHECK(done.was_pressed(usual_key(command)));
            CHECK(done.is_held(usual_key(command)));
            if (key == usual_key(command)) continue;
            const RawInput old = rebound(pressed(usual_key(command)), bindings);
            // The old key does what the new one did, or nothing.
            CHECK(std::ranges::count(old.pressed, true) == (other == KeyCommand::count ? 0 : 1));
            if (other != KeyCommand::count) CHECK(old.was_pressed(usual_key(other)));
        }
    }
}

TEST_CASE("keys: however often keys change places, no two commands have the same") {
    Random random{7};
    KeyBindings bindings;
    const std::vector<Key> keys = bindable_keys();
    for (int i = 0; i < 2000; ++i) {
        const auto command = static_cast<KeyCommand>(next_bits(random) % command_count);
        bind_key(bindings, command, {keys[next_bits(random) % keys.size()]});
        REQUIRE(differ(bindings));
    }
    CHECK(bindings.keys != usual_keys());
}

TEST_CASE("keys: the hands fly by the bound keys, and the space bar that flies does not pause") {
    Settings settings;
    settings.up_key_pushes = true;
    settings.keys = with(KeyCommand::stick_down_key, Key::space);
    PilotHands hands;
    RawInput raw = pressed(Key::space);
    raw.wall_s = 0.1;
    const Wishes wishes = read_input(hands, raw, settings, 3);
    CHECK(wishes.controls.stick > 0.0);
    CHECK(wishes.actions.empty());
    hands = {};
    raw = pressed(Key::down);
    raw.wall_s = 0.1;
    CHECK(read_input(hands, raw, settings, 3).controls.stick == 0.0);
}

TEST_CASE("keys: Escape pauses whatever is bound") {
    Settings settings;
    settings.keys = with(KeyCommand::pause, Key::f9);
    PilotHands hands;
    CHECK(wish_in<TogglePause>(read_input(hands, pressed(Key::escape), settings, 3).actions.at(0)));
    CHECK(wish_in<TogglePause>(read_input(hands, pressed(Key::f9), settings, 3).actions.at(0)));
    CHECK(read_input(hands, pressed(Key::p), settings, 3).actions.empty());
    CHECK_FALSE(name_of(Key::escape).bindable);
}

TEST_CASE("keys: with the stick under the left hand a bound key does what the other hand did there") {
    Settings settings;
    settings.up_key_pushes = true;
    settings.school.stick_hand = StickHand::left;
    settings.keys = with(KeyCommand::more_power, Key::pad_8);
    PilotHands hands;
    RawInput raw = pressed(Key::pad_8);
    raw.wall_s = 0.1;
    CHECK(read_input(hands, raw, settings, 3).controls.stick < 0.0);
    CHECK(what_key_does(KeyCommand::more_power, settings) == "nose down");
    CHECK(key_hints(settings).front().key == "Num8 D");
}

// WCAG 2.2 has no such criterion; "no chords" is this program's own promise.
TEST_CASE(
    "keys: no two keys together do what neither does alone, in flight, before a class and on every sheet") {
    const auto all_of = [](const RawInput& raw) {
        std::vector<Kinds> did;
        PilotHands hands;
        hands.last_wall_s = -0.1;
        did.push_back(kinds(read_input(hands, raw, {}, 3).actions));
        did.push_back(kinds(read_class_keys(raw)));
        for (int screen = 0; screen <= static_cast<int>(Screen::about); ++screen)
            did.push_back(kinds(read_shortcuts(raw, static_cast<Screen>(screen))));
        return did;
    };
    std::vector<std::vector<Kinds>> alone;
    for (std::size_t i = 0; i < index(Key::count); ++i) alone.push_back(all_of(pressed(static_cast<Key>(i))));
    int wishes = 0, chords = 0;
    for (std::size_t i = 0; i < index(Key::count); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
            RawInput both = pressed(static_cast<Key>(i));
            both.held[j] = both.pressed[j] = true;
            const std::vector<Kinds> together = all_of(both);
            for (std::size_t k = 0; k < together.size(); ++k) {
                for (const auto& kind : together[k]) {
                    ++wishes;
                    chords +=
                        std::ranges::count(alone[i][k], kind) + std::ranges::count(alone[j][k], kind) == 0;
                }
            }
        }
    }
    CHECK(chords == 0);
    CHECK(wishes > 1000);  // it was about something
}

TEST_CASE("keys: they are kept with the settings and come back the same") {
    Settings settings;
    bind_key(settings.keys, KeyCommand::trim_up, {Key::semicolon, 0xf6});
    bind_key(settings.keys, KeyCommand::go_around, {Key::e});
    settings.keys.sticky = true;
    settings.keys.thumb_pads = false;
    const std::string text = settings_text(settings);
    CHECK(says(text, "\"trim_up\": \"semicolon \u00d6\""));
    CHECK(says(text, "\"more_power\": \"g\""));
    CHECK_FALSE(says(text, "flap_up"));  // a usual key is not written
    const KeptSettings kept = parse_settings(text);
    CHECK(kept.problems.empty());
    CHECK(kept.settings.keys.key_of(KeyCommand::trim_up).key == Key::semicolon);
    CHECK(key_cap(kept.settings.keys.key_of(KeyCommand::trim_up)) == "\u00d6");
    CHECK(kept.settings.keys.key_of(KeyCommand::go_around).key == Key::e);
    CHECK(kept.settings.keys.sticky);
    CHECK_FALSE(kept.settings.keys.thumb_pads);
    CHECK(settings_text(kept.settings) == text);
    CHECK(parse_settings("{\"kind\": \"settings\", \"stick_sense\": \"ask\"}").settings.keys ==
          KeyBindings{});
}

TEST_CASE(
    "keys: a kept key that is no key, no command's, written too long or taken twice has the usual key "
    "alone") {
    struct Bad {
        std::string keys;
        std::string told;
    };
    const std::vector<Bad> all{
        {R"("more_power": "warp")", "/keys/more_power "},
        {R"("more_power": "tab")", "/keys/more_power "},
        {R"("more_power": "escape")", "/keys/more_power "},
        {R"("more_power": "f5")", "/keys/more_power "},
        {R"("more_power": "count")", "/keys/more_power "},
        {R"("more_power": "semicolon xy")", "/keys/more_power "},
        {R"("more_power": "semicolon <")", "/keys/more_power "},
        {R"("more_power": 7)", "/keys/more_power "},
        {R"("more_power": "d")", "/keys/more_power "},
        {R"("more_power": "x", "flap_up": "x")", "/keys/"},
        {R"("sticky": "perhaps")", "/keys/sticky "},
        {R"("fire": "k")", "/keys/fire "},
        {"\"more_power\": \"" + std::string(500, 'x') + "\"", "/keys/more_power "},
    };
    for (const Bad& bad : all) {
        CAPTURE(bad.keys);
        const KeptSettings kept = parse_settings(
            "{\"kind\": \"settings\", \"stick_sense\": \"ask\", \"keys\": {\"trim_down\": \"k\", " +
            bad.keys + "}}");
        REQUIRE_FALSE(kept.problems.empty());
        CHECK_MESSAGE(says(to_text(kept.problems.front()), bad.told), to_text(kept.problems.front()));
        const KeyBindings& keys = kept.settings.keys;
        CHECK(differ(keys));
        CHECK(keys.key_of(KeyCommand::more_power).key == Key::e);
        CHECK(keys.key_of(KeyCommand::trim_down).key == Key::k);  // the good one stays
    }
}
