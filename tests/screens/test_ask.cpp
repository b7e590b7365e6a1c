// The question under the picture and the instructor's panel, drawn and pressed with no window.
#include <doctest/doctest.h>

#include <array>
#include <string>

#include "tests/screens/stage.h"
#include "ui/screens/ask_board.h"

using namespace slopewise;

namespace {

using Wish = DoWithQuestions::Wish;

constexpr std::array<ImVec2, 3> landscape{{{1280, 720}, {1920, 1080}, {1024, 768}}};

AskShown sample_asked() {
    AskShown ask;
    ask.stage = AskShown::Stage::asked;
    ask.place = "What do you do first?: 2 of 5";
    ask.question = "What do you move first?";
    ask.choices = {"more power, for the path", "less power, for the path", "nose up, for the speed",
                   "nose down, for the speed", "nothing: leave it alone"};
    ask.first = {3, 0, 12, 9, 1};
    return ask;
}

AskShown sample_revealed() {
    AskShown ask = sample_asked();
    ask.stage = AskShown::Stage::revealed;
    ask.second = {1, 0, 22, 2, 0};
    ask.right = 2;
    ask.reveal =
        "0.8\u00b0 (85 ft) low and 14 kt fast: nose up, for the speed. The energy is enough, in the wrong "
        "place.";
    return ask;
}

AskView sample_panel(bool set_chosen, bool editing) {
    AskView ask;
    for (int i = 1; i <= 7; ++i)
        ask.sets.push_back({"set" + std::to_string(i), "What do you do first? " + std::to_string(i),
                            "One control, now. Too much or too little energy asks for power.", i == 7});
    ask.kept = "14 answered questions are kept.";
    for (const char* step : {"Energy state", "What the lights say", "Power down: what answers first"})
        ask.kinds.emplace_back(step);
    if (!set_chosen) return ask;
    ask.set = 6;
    for (int i = 0; i < 5; ++i)
        ask.questions.push_back(
            {"What do you move first?", "1.2 NM, 0.8\u00b0 (102 ft) high, 8 kt slow", false});
    ask.question = 1;
    ask.answer = "Right: 3, nose up, for the speed. 0.8\u00b0 (85 ft) low and 14 kt fast.";
    ask.close = "The path is within its tolerance: only the speed is off.";
    ask.next = "Talk it over, then count again";
    ask.counting = ask.can_discuss = true;
    ask.tally = "12 of 25 right at first";
    ask.editing = editing;
    ask.own_words = editing ? "What now?" : "";
    return ask;
}

void put(Stage& stage, const AskShown& ask) {
    stage.view.class_picture.shown.ask = ask;
    stage.view.class_picture.shown.names = false;
    stage.view.display.projector_text = true;
    stage.view.class_room.state = "Frozen at 1.2 NM, 380 ft";
    stage.view.class_room.truth = "Path -0.80\u00b0, speed +14 kt, sink 410 ft/min, lights 4 red";
}

}  // namespace

TEST_CASE(
    "ask board: in every look, size and stage nothing lies over anything, and all of it is on the screen") {
    Stage stage({1280, 720});
    for (const AskShown& ask : {sample_asked(), sample_revealed()}) {
        put(stage, ask);
        for (const ImVec2 size : landscape) {
            stage.resize(size);
            for (const Look look : {Look::standard, Look::high_contrast, Look::night}) {
                stage.view.display.look = look;
                CAPTURE(size_words(size));
                stage.draw(Screen::class_window);
                stage.draw(Screen::class_window);
                CHECK(words_over_words(stage.glyphs("class window")) == 0);
                CHECK(stage.drawn().lies_in(stage.display()));
            }
        }
    }
}

TEST_CASE("ask board: it takes its room from the picture, and never more than half of it") {
    Stage stage({1280, 720});
    for (const ImVec2 size : landscape) {
        stage.resize(size);
        CAPTURE(size_words(size));
        CHECK(ask_board_height(size.x, sample_asked()) > 0.1f * size.y);
        CHECK(ask_board_height(size.x, sample_revealed()) >= ask_board_height(size.x, sample_asked()));
        CHECK(ask_board_height(size.x, sample_revealed()) < 0.5f * size.y);
    }
}

TEST_CASE("ask board: without a question it has no height") {
    const Stage stage({1280, 720});
    CHECK(ask_board_height(1280, {}) == 0);
}

TEST_CASE(
    "ask panel: in every size nothing lies over anything, in the list, while asking and while writing") {
    Stage stage({1280, 720});
    put(stage, sample_asked());
    for (const AskView& ask :
         {sample_panel(false, false), sample_panel(true, false), sample_panel(true, true)}) {
        stage.view.ask = ask;
        for (const ImVec2 size :
             {ImVec2{1280, 720}, ImVec2{1920, 1080}, ImVec2{1024, 768}, ImVec2{390, 844}}) {
            stage.resize(size);
            stage.view.class_picture.shown.black = true;  // of the picture, other tests say
            CAPTURE(size_words(size));
            CAPTURE(ask.editing);
            stage.draw(Screen::class_room);
            stage.draw(Screen::class_room);
            CHECK(words_over_words(stage.glyphs("class room")) == 0);
        }
    }
}

TEST_CASE("ask panel: a set is chosen, the next step taken and a hand counted by the mouse") {
    Stage stage({1920, 1080});
    put(stage, sample_asked());
    stage.view.display.projector_text = false;  // so that more of the panel is in the window
    stage.view.class_picture.shown.black = true;
    stage.view.ask = sample_panel(false, false);
    const auto asked = [&](const char* label) {
        const Actions actions = press(stage, Screen::class_room, "class room", label);
        const auto* wish = find<DoWithQuestions>(actions);
        REQUIRE(wish != nullptr);
        return *wish;
    };
    CHECK(asked("What do you do first? 2").words == "set2");
    stage.view.ask = sample_panel(true, false);
    CHECK(asked("Talk it over, then count again").wish == Wish::next);
    CHECK(asked("Back").wish == Wish::previous);
}
