// The replay's screen: nothing overlaps at any size, and everything on it can be pressed.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "tests/screens/sample_replay.h"
#include "tests/screens/stage.h"
#include "ui/theme.h"

using namespace slopewise;
using Wish = DriveReplay::Wish;

namespace {

constexpr std::array<ImVec2, 8> sizes{
    {{1280, 720}, {1920, 1080}, {844, 390}, {390, 844}, {1024, 768}, {768, 1024}, {667, 375}, {360, 640}}};

Actions press_replay(Stage& stage, const char* label) {
    return press(stage, Screen::replay, "replay", label);
}

// True when a press asks for exactly this.
bool asks(const Actions& actions, Wish wish, double amount) {
    const auto* drive = find<DriveReplay>(actions);
    return drive != nullptr && drive->wish == wish && drive->amount == amount;
}

}  // namespace

TEST_CASE(
    "replay: at every size, seat, side or both, compared or not, no words overlap or leave the window") {
    for (const bool projector : {false, true}) {
        Stage stage({1280, 720});
        stage.view.display.projector_text = projector;
        for (const bool compared : {false, true}) {
            stage.view.replay = compared ? sample_comparison() : sample_replay();
            for (const ImVec2 size : sizes) {
                for (const ReplayShows shows : {ReplayShows::both, ReplayShows::seat, ReplayShows::side}) {
                    stage.resize(size);
                    stage.view.replay.shows = shows;
                    CAPTURE(size_words(size));
                    CAPTURE(static_cast<int>(shows));
                    CAPTURE(compared);
                    CAPTURE(projector);
                    stage.draw(Screen::replay);
                    stage.draw(Screen::replay);
                    const std::vector<Box> glyphs = stage.glyphs("replay");
                    CHECK(glyphs.size() > 60);
                    // Both means both: the plot has found room, too.
                    if (shows == ReplayShows::both && size.x == 1024)
                        CHECK(stage.place_of(Screen::replay, "replay", "side view").has_value());
                    CHECK(words_over_words(glyphs) == 0);
                    CHECK(std::all_of(glyphs.begin(), glyphs.end(), [&](const Box& glyph) {
                        return glyph.lies_in(stage.display(), 1.0f);
                    }));
                    CHECK(stage.drawn().lies_in(stage.display()));
                }
            }
        }
    }
}

TEST_CASE("replay: every button asks for what it says, large enough for a finger, at a desk and on a phone") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}, ImVec2{844, 390}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        stage.view.replay.slowest = false;
        CHECK(asks(press_replay(stage, "play"), Wish::play_or_pause, 0));
        CHECK(asks(press_replay(stage, "step on"), Wish::step, 12));
        CHECK(asks(press_replay(stage, "step back"), Wish::step, -12));
        CHECK(asks(press_replay(stage, "next mark"), Wish::mark, 1));
        CHECK(asks(press_replay(stage, "previous mark"), Wish::mark, -1));
        CHECK(asks(press_replay(stage, "faster"), Wish::speed, 1));
        CHECK(asks(press_replay(stage, "slower"), Wish::speed, -1));
        CHECK(asks(press_replay(stage, "Seat and side"), Wish::change_view, 0));
        CHECK(find<CloseReplay>(press_replay(stage, "Back")) != nullptr);
        for (const char* label : {"play", "step on", "faster", "Back"}) {
            const auto place = stage.place_of(Screen::replay, "replay", label);
            REQUIRE(place.has_value());
            CHECK(place->height() >= 43.5f);
            CHECK(place->right - place->left >= 43.5f);
        }
    }
}

TEST_CASE("replay: a button that would change nothing asks for nothing") {
    Stage stage({1280, 720});
    CHECK(press_replay(stage, "slower").empty());  // the sample runs at the slowest
    stage.view.replay.tick = 0;
    CHECK(press_replay(stage, "previous mark").empty());
    stage.view.replay.tick = stage.view.replay.last_tick;
    CHECK(press_replay(stage, "next mark").empty());
}

TEST_CASE("replay: the time line is dragged to any tick, and near a mark to the mark's own") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const auto line = stage.place_of(Screen::replay, "replay", "time line");
        REQUIRE(line.has_value());
        const auto drag_to = [&](float share) {
            stage.move_mouse({line->left + share * (line->right - line->left), line->middle().y});
            const Actions actions = stage.draw(Screen::replay);
            const auto* drive = find<DriveReplay>(actions);
            return drive != nullptr && drive->wish == Wish::seek ? drive->amount : -1.0;
        };
        drag_to(0.5f);
        stage.hold_mouse(true);
        const double half = drag_to(0.5f);
        CHECK(std::abs(half - 9600) < 400);
        CHECK(std::floor(half) == half);
        CHECK(drag_to(0.9f) > half);
        CHECK(drag_to(-1.0f) == 0);
        CHECK(drag_to(2.0f) == 19200);
        int at_the_gate = 0;  // 13,400 ticks
        for (float share = 0.6f; share < 0.8f; share += 0.002f)
            at_the_gate += drag_to(share) == 13400 ? 1 : 0;
        CHECK(at_the_gate >= 2);
        stage.hold_mouse(false);
        stage.draw(Screen::replay);
        CHECK(drag_to(0.3f) == -1.0);
    }
}

TEST_CASE("replay: a press in the side view goes to where the attempt was at that distance") {
    Stage stage({1280, 720});
    const auto plot = stage.place_of(Screen::replay, "replay", "side view");
    REQUIRE(plot.has_value());
    const auto at = [&](float share) {
        stage.move_mouse({plot->left + share * (plot->right - plot->left), plot->middle().y});
        const Actions actions = stage.draw(Screen::replay);
        const auto* drive = find<DriveReplay>(actions);
        return drive != nullptr && drive->wish == Wish::seek ? drive->amount : -1.0;
    };
    at(0.2f);
    stage.hold_mouse(true);
    const double early = at(0.2f), late = at(0.8f);
    CHECK(early > 0);
    CHECK(late > early + 5000);
    CHECK(at(0.999f) == 19200);
}

TEST_CASE("replay: the hands on the shelf are shown and cannot be moved") {
    Stage stage({1280, 720});
    stage.view.replay.shows = ReplayShows::seat;
    for (const char* lever : {"power", "flap", "trim"}) {
        CAPTURE(std::string(lever));
        const auto place = stage.place_of(Screen::replay, "replay", lever);
        REQUIRE(place.has_value());
        stage.move_mouse(place->middle());
        Actions actions = stage.draw(Screen::replay);
        const auto add = [&](const Actions& more) {
            actions.insert(actions.end(), more.begin(), more.end());
        };
        stage.hold_mouse(true);
        add(stage.draw(Screen::replay));
        stage.move_mouse({place->middle().x, place->top + 2});
        add(stage.draw(Screen::replay));
        stage.turn_wheel(2);
        add(stage.draw(Screen::replay));
        stage.hold_mouse(false);
        add(stage.draw(Screen::replay));
        CHECK(actions.empty());
    }
}

TEST_CASE("replay: another attempt adds its lines and its aircraft") {
    Stage stage({1280, 720});
    stage.view.replay = sample_replay();
    stage.draw(Screen::replay);
    stage.draw(Screen::replay);
    const int alone = stage.vertices();
    const std::size_t words_alone = stage.glyphs("replay").size();
    stage.view.replay = sample_comparison();
    stage.draw(Screen::replay);
    stage.draw(Screen::replay);
    CHECK(stage.vertices() > alone + 1000);
    CHECK(stage.glyphs("replay").size() > words_alone + 60);
}
