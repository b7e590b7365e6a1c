// The sheet "Where the numbers come from", and the ways to it, pressed and read with no window.
#include <doctest/doctest.h>

#include <array>
#include <span>
#include <string>

#include "tests/screens/stage.h"
#include "ui/sources_view.h"

using namespace slopewise;

namespace {

constexpr std::array<ImVec2, 6> sizes{
    {{1280, 720}, {1920, 1080}, {844, 390}, {390, 844}, {1024, 768}, {360, 640}}};
constexpr const char* lead = "Where the numbers come from";

// The sheets that lead to it.
constexpr std::array<Place, 6> openers{{{Screen::choices, "choices"},
                                        {Screen::briefing, "briefing"},
                                        {Screen::summary, "summary"},
                                        {Screen::criteria, "criteria"},
                                        {Screen::progress, "progress"},
                                        {Screen::screen_and_help, "screen and help"}}};

void settle(Stage& stage, Screen screen) {
    stage.draw(screen);
    stage.draw(screen);
}

// Draws a sheet in every window and look and with large text, at its head and at its foot.
void check_every_dress(Stage& stage, const Place& place, std::span<const ImVec2> windows) {
    for (const ImVec2 size : windows) {
        stage.resize(size);
        for (int dress = 0; dress < 6; ++dress) {
            stage.view.display.look = static_cast<Look>(dress % 3);
            stage.view.display.projector_text = dress >= 3;
            CAPTURE(std::string(place.window));
            CAPTURE(size_words(size));
            CAPTURE(dress);
            for (const ImGuiKey end : {ImGuiKey_Home, ImGuiKey_End}) {
                stage.key(place.screen, end);
                settle(stage, place.screen);
                CHECK(words_over_words(stage.glyphs(place.window)) == 0);
                CHECK(stage.drawn().lies_in(stage.display()));
                // Nothing is cut at the sides.
                const Box display = stage.display();
                int beyond = 0;
                for (const Box& glyph : stage.glyphs(place.window))
                    beyond += glyph.left < display.left - 1 || glyph.right > display.right + 1 ? 1 : 0;
                CHECK(beyond == 0);
            }
        }
    }
}

}  // namespace

TEST_CASE("sources: in every window, look and text nothing lies over anything, at the head and at the foot") {
    Stage stage({1280, 720});
    check_every_dress(stage, {Screen::sources, "sources"}, sizes);
}

TEST_CASE("sources: the way to them costs no sheet its order, in any window, look or text") {
    Stage stage({1280, 720});
    // Not in the smallest with large text, where the progress sheet's plot has an overlap of its own.
    for (const Place& place : openers) check_every_dress(stage, place, std::span(sizes).first(5));
}

TEST_CASE("sources: each sheet with numbers has a button that leads to them") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}}) {
        for (const Place& place : openers) {
            Stage stage(size);
            CAPTURE(size_words(size));
            CAPTURE(std::string(place.window));
            settle(stage, place.screen);
            stage.key(place.screen, ImGuiKey_End);
            settle(stage, place.screen);
            CHECK(find<OpenSources>(press(stage, place.screen, place.window, lead)) != nullptr);
        }
    }
}

TEST_CASE("sources: a topic is chosen, and the way back is taken, with the mouse") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const SourcesView& sheet = stage.view.sources;
        // The first of each row of choices names the row.
        const Actions all = press(stage, Screen::sources, "sources", "All", sheet.topics[0].c_str());
        REQUIRE(find<ChooseSourceTopic>(all) != nullptr);
        CHECK(find<ChooseSourceTopic>(all)->topic == 0);
        const Actions path = press(stage, Screen::sources, "sources", "Path", sheet.topics[0].c_str());
        REQUIRE(find<ChooseSourceTopic>(path) != nullptr);
        CHECK(sheet.topics[std::size_t(find<ChooseSourceTopic>(path)->topic)] == "Path");
        CHECK(find<CloseSources>(press(stage, Screen::sources, "sources", sheet.back.c_str())) != nullptr);
    }
}

TEST_CASE("sources: it scrolls to its end, and begins at its head when it is opened again") {
    Stage stage({1280, 720});
    settle(stage, Screen::sources);
    REQUIRE(stage.scroll_room("sources") > 1000);
    stage.key(Screen::sources, ImGuiKey_End);
    settle(stage, Screen::sources);
    CHECK(stage.scrolled("sources") == doctest::Approx(stage.scroll_room("sources")));
    settle(stage, Screen::summary);
    stage.draw(Screen::sources);
    CHECK(stage.scrolled("sources") == 0);
}
