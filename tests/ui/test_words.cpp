// Numbers as words, settings as text.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "tests/check.h"
#include "ui/format.h"
#include "ui/settings.h"

using namespace slopewise;

TEST_CASE("format: a deviation carries its sign, and a zero carries none") {
    CHECK(signed_words(0.126, 2) == "+0.13");
    CHECK(signed_words(-3.4) == "\u22123");
    CHECK(signed_words(-0.04, 1) == "0.0");
    CHECK(signed_words(0.04, 1) == "0.0");
    CHECK(number_words(-0.2) == "0");
    CHECK(percent_words(0.856) == "86 %");
}

TEST_CASE("settings: what is kept reads back the same") {
    for (const Settings& kept :
         {Settings{std::nullopt, true}, Settings{true, false, 0.0}, Settings{false, true, 0.35}}) {
        const KeptSettings read = parse_settings(settings_text(kept));
        REQUIRE(read.problems.empty());
        CHECK(read.settings.up_key_pushes == kept.up_key_pushes);
        CHECK(read.settings.sound == kept.sound);
        CHECK(read.settings.volume == kept.volume);
    }
}

TEST_CASE("settings: a bad value has its default alone, and all others are kept") {
    Settings others;
    others.up_key_pushes = false;
    others.display.look = Look::night;
    others.display.eyes_outside = true;
    others.where_and_when.runway_id = "sandholm";
    others.where_and_when.outlook.rain = true;
    others.where_and_when.outlook.visibility_m = 5000;
    const std::string whole = settings_text(others);
    struct Row {
        const char *was, *is, *path;
    };
    // Among them what is on, or not the least, by default.
    for (const Row& row : {Row{R"("sound": "on")", R"("sound": 7)", "/sound"},
                           Row{R"("volume": 0.8)", R"("volume": 1.5)", "/volume"},
                           Row{R"("magnifier": "on")", R"("magnifier": "yes")", "/magnifier"},
                           Row{R"("failed_trim": "off")", R"("failed_trim": true)", "/failed_trim"},
                           Row{R"("screen_width_cm": 0)", R"("screen_width_cm": -3)", "/screen_width_cm"},
                           Row{R"("aircraft": "tourer")", R"("aircraft": "")", "/aircraft"},
                           Row{R"("ground_lights": true)", R"("ground_lights": 1)", "/outlook/ground_lights"},
                           Row{R"("kind": "settings")", R"("kind": "settings", "colour": 3)", "/colour"}}) {
        CAPTURE(row.path);
        std::string text = whole;
        REQUIRE(text.find(row.was) != std::string::npos);
        text.replace(text.find(row.was), std::string(row.was).size(), row.is);
        const KeptSettings read = parse_settings(text);
        REQUIRE(read.problems.size() == 1);
        CHECK(read.problems.front().path == row.path);
        CHECK(settings_text(read.settings) == whole);
    }
    std::string foggy = whole;
    foggy.replace(foggy.find("\"visibility_km\": 5"), 18, "\"visibility_km\": 0");
    const KeptSettings read = parse_settings(foggy);
    CHECK(read.problems.size() == 1);
    CHECK(read.settings.where_and_when.outlook.visibility_m == Outlook{}.visibility_m);
    CHECK(read.settings.where_and_when.outlook.rain);
}

TEST_CASE("settings: nothing kept gives the defaults, and a damaged text says what is wrong") {
    CHECK(parse_settings("").problems.empty());
    const KeptSettings bad =
        parse_settings("{\"kind\": \"settings\", \"stick_sense\": \"sideways\", \"sound\": \"on\"}");
    REQUIRE(bad.problems.size() == 1);
    CHECK(to_text(bad.problems.front()) ==
          "kept settings:1: /stick_sense is \"sideways\"; allowed: \"ask\", \"up_key_pushes\", "
          "\"up_key_pulls\"");
    CHECK_FALSE(parse_settings("{").problems.empty());
}
