// The line that tells of a newer version, on the two sheets between flights.
#include <doctest/doctest.h>

#include "tests/screens/sample_view.h"
#include "tests/screens/stage.h"

using namespace slopewise;

TEST_CASE("update line: its button asks for the newer version, and without one there is no button") {
    for (const Place& place : {Place{Screen::welcome, "welcome"}, Place{Screen::choices, "choices"}}) {
        const auto [screen, window] = place;
        for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{844, 390}, ImVec2{390, 844}}) {
            CAPTURE(window);
            CAPTURE(size_words(size));
            Stage stage(size);
            stage.view = sample_view();
            CHECK_FALSE(stage.place_of(screen, window, "Use it now"));
            stage.view.about.update_waits = true;
            const Actions pressed = press(stage, screen, window, "Use it now");
            const auto* wish = find<DoWithProgram>(pressed);
            REQUIRE(wish != nullptr);
            CHECK(wish->wish == DoWithProgram::Wish::take_update);
            CHECK(words_over_words(stage.glyphs(window)) == 0);
        }
    }
}

TEST_CASE("update line: with projector text in a narrow window its button stands below the words") {
    for (const Place& place : {Place{Screen::welcome, "welcome"}, Place{Screen::choices, "choices"}}) {
        Stage stage({390, 844});
        stage.view = sample_view();
        stage.view.about.update_waits = stage.view.display.projector_text = true;
        stage.draw(place.screen);
        stage.draw(place.screen);
        CAPTURE(place.window);
        CHECK(words_over_words(stage.glyphs(place.window)) == 0);
        CHECK(stage.drawn().lies_in(stage.display()));
    }
}
