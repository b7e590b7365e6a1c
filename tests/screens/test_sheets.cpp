// What the hand and the keys do on the sheets of paper.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <string>

#include "tests/screens/stage.h"
#include "ui/stick_question.h"
#include "ui/theme.h"

using namespace slopewise;

TEST_CASE("choices: each part asks for what it shows") {
    Stage stage({1280, 720});
    const Actions distance = press(stage, Screen::choices, "choices", "2 NM", "distance");
    REQUIRE(find<ChooseDistance>(distance) != nullptr);
    CHECK(find<ChooseDistance>(distance)->distance_nm == 2);
    const Actions below = press(stage, Screen::choices, "choices", "Below", "position");
    REQUIRE(find<ChoosePosition>(below) != nullptr);
    CHECK(find<ChoosePosition>(below)->index == 2);
    CHECK(find<OpenBriefing>(press(stage, Screen::choices, "choices", "Brief it")) != nullptr);
}

TEST_CASE("choices: the headwind follows the hand along its slider in whole knots") {
    Stage stage({1280, 720});
    const auto place = stage.place_of(Screen::choices, "choices", "headwind");
    REQUIRE(place.has_value());
    stage.move_mouse({place->left + 4, place->middle().y});
    stage.draw(Screen::choices);
    stage.hold_mouse(true);
    stage.draw(Screen::choices);
    stage.move_mouse({place->right + 200, place->middle().y});  // past its end
    const Actions actions = stage.draw(Screen::choices);
    stage.hold_mouse(false);
    REQUIRE(find<ChooseHeadwind>(actions) != nullptr);
    CHECK(find<ChooseHeadwind>(actions)->headwind_kt == 20.0);
}

TEST_CASE("choices: with the focus on the slider, the arrow keys move it by a knot and the focus stays") {
    bool reached = false;
    for (int tabs = 1; tabs < 20 && !reached; ++tabs) {
        Stage stage({1280, 720});
        stage.draw(Screen::choices);
        stage.draw(Screen::choices);
        for (int i = 0; i < tabs; ++i) stage.key(Screen::choices, ImGuiKey_Tab);
        stage.draw(Screen::choices);
        const Actions more = stage.key(Screen::choices, ImGuiKey_RightArrow);
        if (find<ChooseHeadwind>(more) == nullptr) continue;
        reached = true;
        CHECK(find<ChooseHeadwind>(more)->headwind_kt == 11.0);
        const Actions less = stage.key(Screen::choices, ImGuiKey_LeftArrow);
        CHECK(find<ChooseHeadwind>(less) != nullptr);
        if (find<ChooseHeadwind>(less) != nullptr) CHECK(find<ChooseHeadwind>(less)->headwind_kt == 9.0);
    }
    CHECK(reached);
}

TEST_CASE("choices: what cannot be flown says so and cannot be briefed") {
    Stage stage({1280, 720});
    stage.view.choice.problem = "This cannot be flown: full power does not hold this path.";
    CHECK_FALSE(stage.place_of(Screen::choices, "choices", "Brief it").has_value());
    CHECK(stage.key(Screen::choices, ImGuiKey_Enter).empty());
}

TEST_CASE("choices: nothing moves when the numbers change") {
    Stage stage({1280, 720});
    const auto before = stage.place_of(Screen::choices, "choices", "Brief it");
    stage.view.choice.headwind_kt = 0;
    stage.view.choice.sentence = "1 NM, below the path, calm";
    const auto after = stage.place_of(Screen::choices, "choices", "Brief it");
    REQUIRE(before.has_value());
    REQUIRE(after.has_value());
    CHECK(before->left == after->left);
    CHECK(before->top == after->top);
}

TEST_CASE("stick sense: each card is an answer") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        for (const bool by_thumb : {false, true}) {
            CAPTURE(by_thumb);
            stage.view.stick_question = stick_question_view(by_thumb);
            const char* up_words = by_thumb ? "Thumb up" : "Up key";
            const char* down_words = by_thumb ? "Thumb down" : "Down key";
            const Actions up = press(stage, Screen::stick_sense, "stick sense", up_words);
            REQUIRE(find<AnswerStickSense>(up) != nullptr);
            CHECK(find<AnswerStickSense>(up)->up_key_pushes);
            const Actions down = press(stage, Screen::stick_sense, "stick sense", down_words);
            REQUIRE(find<AnswerStickSense>(down) != nullptr);
            CHECK_FALSE(find<AnswerStickSense>(down)->up_key_pushes);
        }
    }
}

TEST_CASE("briefing: its buttons fly it, go back, and ask about the stick keys again") {
    Stage stage({1280, 720});
    CHECK(find<StartFlight>(press(stage, Screen::briefing, "briefing", "Fly it")) != nullptr);
    CHECK(find<GoToChoices>(press(stage, Screen::briefing, "briefing", "Back to choices")) != nullptr);
    CHECK(find<AskStickSense>(press(stage, Screen::briefing, "briefing", "Change the stick keys")) !=
          nullptr);
}

TEST_CASE("briefing: where it is longer than the window, the step on is in sight at once") {
    for (const ImVec2 size : {ImVec2{1024, 768}, ImVec2{844, 390}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        CHECK(stage.place_of(Screen::briefing, "briefing", "Fly it").has_value());
        CHECK(stage.scrolled("briefing") == 0);
    }
}

TEST_CASE("keyboard: Enter presses the next step while nothing has the focus") {
    Stage stage({1280, 720});
    for (const Place& place : screens) {
        stage.draw(place.screen);
        stage.draw(place.screen);
        const Actions actions = stage.key(place.screen, ImGuiKey_Enter);
        CAPTURE(std::string(place.window));
        if (place.screen == Screen::choices) CHECK(find<OpenBriefing>(actions) != nullptr);
        if (place.screen == Screen::briefing) CHECK(find<StartFlight>(actions) != nullptr);
        if (place.screen == Screen::summary) CHECK(find<RestartSame>(actions) != nullptr);
        if (place.screen == Screen::stick_sense || place.screen == Screen::flight) CHECK(actions.empty());
    }
}

TEST_CASE("keyboard: Tab moves the focus and Enter presses what has it") {
    Stage stage({1280, 720});
    stage.draw(Screen::summary);
    stage.draw(Screen::summary);
    bool mirrored = false;
    for (int i = 0; i < 8 && !mirrored; ++i) {
        stage.key(Screen::summary, ImGuiKey_Tab);
        stage.draw(Screen::summary);
        mirrored = find<RestartMirrored>(stage.key(Screen::summary, ImGuiKey_Enter)) != nullptr;
    }
    CHECK(mirrored);
}

TEST_CASE("keyboard: a key held while the screen changes moves no focus there, and pressed anew it does") {
    Stage stage({1280, 720});
    const auto draw = [&](Screen screen, int frames) {
        for (int i = 0; i < frames; ++i) stage.draw(screen);
    };
    for (const ImGuiKey key : {ImGuiKey_UpArrow, ImGuiKey_DownArrow, ImGuiKey_Tab}) {
        CAPTURE(ImGui::GetKeyName(key));
        draw(Screen::stick_sense, 3);
        stage.hold_key(key, true);
        draw(Screen::stick_sense, 1);
        draw(Screen::briefing, 60);  // a second: repeats begin after a quarter of one
        CHECK(ImGui::IsKeyDown(key));
        CHECK(find<StartFlight>(stage.key(Screen::briefing, ImGuiKey_Enter)) != nullptr);
        stage.hold_key(key, false);
        draw(Screen::briefing, 2);
        stage.key(Screen::briefing, key);
        draw(Screen::briefing, 1);
        CHECK(ImGui::GetIO().NavVisible);
        draw(Screen::flight, 3);
        stage.click(Screen::flight, {640, 200});  // the mouse takes over: no ring is shown
    }
}

TEST_CASE("keyboard: a key held while the flight is paused leaves Enter to fly on") {
    Stage stage({1280, 720});
    stage.draw(Screen::flight);
    stage.hold_key(ImGuiKey_DownArrow, true);
    stage.draw(Screen::flight);
    stage.view.flight.paused = true;
    for (int i = 0; i < 60; ++i) stage.draw(Screen::flight);
    const Actions actions = stage.key(Screen::flight, ImGuiKey_Enter);
    CHECK(find<TogglePause>(actions) != nullptr);
}

TEST_CASE("paused: each button asks for what it says, and Enter flies on") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{844, 390}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        stage.view.flight.paused = true;
        stage.draw(Screen::flight);
        stage.draw(Screen::flight);
        CHECK(find<TogglePause>(stage.key(Screen::flight, ImGuiKey_Enter)) != nullptr);
        CHECK(find<TogglePause>(press(stage, Screen::flight, "paused", "Fly on")) != nullptr);
        CHECK(find<RestartSame>(press(stage, Screen::flight, "paused", "Same again")) != nullptr);
        CHECK(find<RestartMirrored>(press(stage, Screen::flight, "paused", "Mirror start")) != nullptr);
        CHECK(find<GoToChoices>(press(stage, Screen::flight, "paused", "Back to choices")) != nullptr);
        CHECK(words_over_words(stage.glyphs("paused")) == 0);
    }
}

TEST_CASE("paused: the sheet can be put away to look at the picture, and comes back at a press on it") {
    Stage stage({1280, 720});
    stage.view.flight.paused = true;
    CHECK(press(stage, Screen::flight, "paused", "Look at the picture").empty());
    CHECK(stage.ui.looking);
    CHECK(stage.click(Screen::flight, {900, 300}).empty());
    CHECK_FALSE(stage.ui.looking);
}

TEST_CASE("summary: its buttons ask for what they say") {
    Stage stage({1280, 720});
    CHECK(find<RestartSame>(press(stage, Screen::summary, "summary", "Same again")) != nullptr);
    CHECK(find<RestartMirrored>(press(stage, Screen::summary, "summary", "Mirror start")) != nullptr);
    CHECK(find<FlyOn>(press(stage, Screen::summary, "summary", "Fly on")) != nullptr);
    CHECK(find<OpenTakeAway>(press(stage, Screen::summary, "summary", "Take it with you")) != nullptr);
    CHECK(find<GoToChoices>(press(stage, Screen::summary, "summary", "New approach")) != nullptr);
}

TEST_CASE("summary: it is drawn when no gate was reached and the track is short") {
    Stage stage({1280, 720});
    for (GateRow& gate : stage.view.summary.gates)
        gate = GateRow{gate.height, "", "", {}, "", "", "", "", true, true, true, false, true, ""};
    stage.view.summary.profile.resize(2);
    stage.draw(Screen::summary);
    stage.draw(Screen::summary);
    CHECK(words_over_words(stage.glyphs("summary")) == 0);
}

TEST_CASE("sheets: a press that becomes a drag scrolls the sheet and presses nothing") {
    Stage stage({390, 844});
    const auto place = stage.place_of(Screen::summary, "summary", "Same again");
    REQUIRE(place.has_value());
    REQUIRE(stage.scroll_room("summary") > 100);
    stage.move_mouse(place->middle());
    stage.draw(Screen::summary);
    stage.hold_mouse(true);
    Actions actions = stage.draw(Screen::summary);
    for (int i = 1; i <= 6; ++i) {
        stage.move_mouse({place->middle().x, place->middle().y - 10.0f * static_cast<float>(i)});
        for (const Action& action : stage.draw(Screen::summary)) actions.push_back(action);
    }
    stage.hold_mouse(false);
    for (const Action& action : stage.draw(Screen::summary)) actions.push_back(action);
    CHECK(actions.empty());
    stage.draw(Screen::summary);
    CHECK(stage.scrolled("summary") >= 40);
}

TEST_CASE("sheets: Page Down and End scroll to what lies below") {
    Stage stage({1280, 720});
    stage.draw(Screen::summary);
    stage.draw(Screen::summary);
    stage.key(Screen::summary, ImGuiKey_End);
    stage.draw(Screen::summary);
    CHECK(stage.scrolled("summary") == doctest::Approx(stage.scroll_room("summary")));
    stage.key(Screen::summary, ImGuiKey_Home);
    stage.draw(Screen::summary);
    CHECK(stage.scrolled("summary") == 0);
}

TEST_CASE("school: its rows choose, and its buttons hand its file over and take one in") {
    Stage stage({1280, 720});
    const Actions chosen = press(stage, Screen::school, "school", "feet", "Runways in");
    REQUIRE(find<ChooseForSchool>(chosen) != nullptr);
    CHECK(find<ChooseForSchool>(chosen)->row == 2);
    CHECK(find<ChooseForSchool>(chosen)->choice == 1);
    CHECK(find<HandOverSchool>(press(stage, Screen::school, "school", "Hand over its file")) != nullptr);
    CHECK(find<TakeInSchool>(press(stage, Screen::school, "school", "Take in a file")) != nullptr);
    CHECK(find<CloseSchool>(press(stage, Screen::school, "school", "Done")) != nullptr);
    CHECK(find<OpenSchool>(press(stage, Screen::screen_and_help, "screen and help", "School")) != nullptr);
}

// Rule R10: what the session cap says stands on the sheet that offers to fly again.
TEST_CASE("summary: the advice to stop for today is drawn, and the buttons stay in sight") {
    Stage stage({1280, 720});
    stage.view.summary.strongest.clear();  // whose place it takes
    stage.draw(Screen::summary);
    stage.draw(Screen::summary);
    const std::size_t without = stage.glyphs("summary").size();
    stage.view.summary.stop = "Ten approaches flown in this session: stop for today.";
    stage.draw(Screen::summary);
    stage.draw(Screen::summary);
    CHECK(stage.glyphs("summary").size() > without);
    const auto again = stage.place_of(Screen::summary, "summary", "Same again");
    REQUIRE(again.has_value());
    CHECK(again->bottom < 720);
}
