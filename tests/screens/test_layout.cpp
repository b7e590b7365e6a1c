// Every screen drawn with no window at many sizes: it fits, and nothing covers anything.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "tests/screens/stage.h"
#include "ui/theme.h"

using namespace slopewise;

namespace {

constexpr std::array<ImVec2, 11> sizes{{{1280, 720},
                                        {1920, 1080},
                                        {844, 390},
                                        {390, 844},
                                        {1024, 768},
                                        {2560, 1080},
                                        {1366, 768},
                                        {3840, 2160},
                                        {667, 375},
                                        {360, 640},
                                        {768, 1024}}};

// Draws every screen in every window, twice, so that what is laid out a frame late has settled.
template <class Look>
void for_every_picture(Look&& look) {
    Stage stage({1280, 720});
    for (const ImVec2 size : sizes) {
        stage.resize(size);
        for (const Place& place : screens) {
            CAPTURE(size_words(size));
            CAPTURE(std::string(place.window));
            stage.draw(place.screen);
            stage.draw(place.screen);
            look(stage, place);
        }
    }
}

}  // namespace

TEST_CASE("screens: every screen is drawn in every window, and nothing is drawn outside it") {
    for_every_picture([](Stage& stage, const Place&) {
        CHECK(stage.vertices() > 400);
        CHECK(stage.drawn().lies_in(stage.display()));
    });
}

TEST_CASE("screens: no word is cut by an edge of the window, nor begins or ends outside it") {
    for_every_picture([](Stage& stage, const Place& place) {
        Box room = stage.display();
        // What a sheet holds below its window is reached by scrolling.
        if (stage.scroll_room(place.window) > 0) room.bottom += 2 * theme().size[0];
        int outside = 0;
        for (const Box& glyph : stage.glyphs(place.window)) outside += glyph.lies_in(room, 1.0f) ? 0 : 1;
        CHECK(outside == 0);
    });
}

TEST_CASE("screens: no words lie over other words") {
    for_every_picture([](Stage& stage, const Place& place) {
        const std::vector<Box> glyphs = stage.glyphs(place.window);
        CHECK(glyphs.size() > 30);
        CHECK(words_over_words(glyphs) == 0);
    });
}

TEST_CASE("screens: in a landscape window of 720 lines the sheets are read without scrolling") {
    Stage stage({1280, 720});
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{1366, 768}, ImVec2{1920, 1080}, ImVec2{2560, 1080}}) {
        stage.resize(size);
        CAPTURE(size_words(size));
        for (const Place& place : {screens[0], screens[1], screens[2]}) {
            CAPTURE(std::string(place.window));
            stage.draw(place.screen);
            stage.draw(place.screen);
            CHECK(stage.scroll_room(place.window) == 0);
        }
    }
    // The summary scrolls to what was measured; all that matters, down to its buttons, lies above that.
    stage.resize({1280, 720});
    const auto again = stage.place_of(Screen::summary, "summary", "Same again");
    REQUIRE(again.has_value());
    CHECK(again->bottom < 720);
}

TEST_CASE("screens: the smallest text is 3 % of a projected window's height, and 12 pixels on a phone") {
    Stage stage({1280, 720});
    for (const ImVec2 size : sizes) {
        stage.resize(size);
        CAPTURE(size_words(size));
        const float least = *std::min_element(theme().size, theme().size + 4);
        CHECK(least >= 12);
        if (size.x > size.y && size.y >= 720) CHECK(least >= 0.03f * size.y);
    }
}
