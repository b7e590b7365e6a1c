// Numbers as words, settings as text, sound as samples.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "tests/check.h"
#include "ui/format.h"
#include "ui/settings.h"
#include "ui/sound.h"

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
         {Settings{std::nullopt, true}, Settings{true, false}, Settings{false, true}}) {
        const Result<Settings> read = parse_settings(settings_text(kept));
        REQUIRE(read.ok());
        CHECK(read.value->up_key_pushes == kept.up_key_pushes);
        CHECK(read.value->sound == kept.sound);
    }
}

TEST_CASE("settings: nothing kept gives the defaults, and a damaged text says what is wrong") {
    CHECK(parse_settings("").ok());
    const Result<Settings> bad =
        parse_settings("{\"kind\": \"settings\", \"stick_sense\": \"sideways\", \"sound\": \"on\"}");
    REQUIRE_FALSE(bad.ok());
    CHECK(to_text(bad.problems.front()) ==
          "kept settings:1: /stick_sense is \"sideways\"; allowed: \"ask\", \"up_key_pushes\", "
          "\"up_key_pulls\"");
    CHECK_FALSE(parse_settings("{").ok());
}

TEST_CASE("sound: silence is silent, power is loud, and no sample leaves its range") {
    std::array<float, 44100> second{};
    const auto loudness = [&] {
        double sum = 0.0;
        for (const float sample : second) {
            CHECK(std::abs(sample) <= 1.0f);
            sum += static_cast<double>(sample) * static_cast<double>(sample);
        }
        return std::sqrt(sum / static_cast<double>(second.size()));
    };
    SoundState quiet;
    synthesise(quiet, {}, second);
    CHECK(loudness() == 0.0);
    SoundState idle, full;
    synthesise(idle, {true, 0.05, 65.0, false}, second);
    const double at_idle = loudness();
    synthesise(full, {true, 1.0, 65.0, false}, second);
    CHECK(loudness() > 1.5 * at_idle);
    SoundState warned;
    synthesise(warned, {true, 0.05, 65.0, true}, second);
    CHECK(loudness() > 1.5 * at_idle);
}
