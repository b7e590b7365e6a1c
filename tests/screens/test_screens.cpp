// Every screen drawn with no window: it fits, nothing covers anything, and every press asks for what it says.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "tests/screens/stage.h"
#include "ui/theme.h"

using namespace slopewise;

namespace {

struct Place {
    Screen screen;
    const char* window;
};
constexpr std::array<Place, 5> screens{{{Screen::choices, "choices"},
                                        {Screen::stick_sense, "stick sense"},
                                        {Screen::briefing, "briefing"},
                                        {Screen::flight, "flight"},
                                        {Screen::summary, "summary"}}};

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

std::string size_words(ImVec2 size) {
    return std::to_string(static_cast<int>(size.x)) + " x " + std::to_string(static_cast<int>(size.y));
}

template <class Wanted>
const Wanted* find(const Actions& actions) {
    for (const Action& action : actions) {
        if (const auto* wanted = std::get_if<Wanted>(&action)) return wanted;
    }
    return nullptr;
}

// Share of the smaller box that both cover.
float covered(const Box& a, const Box& b) {
    const float width = std::min(a.right, b.right) - std::max(a.left, b.left);
    const float height = std::min(a.bottom, b.bottom) - std::max(a.top, b.top);
    if (width <= 0 || height <= 0) return 0;
    const auto area = [](const Box& box) { return (box.right - box.left) * (box.bottom - box.top); };
    return width * height / std::max(1.0f, std::min(area(a), area(b)));
}

int words_over_words(const std::vector<Box>& glyphs) {
    int count = 0;
    for (std::size_t i = 0; i < glyphs.size(); ++i) {
        for (std::size_t j = i + 1; j < glyphs.size(); ++j)
            count += covered(glyphs[i], glyphs[j]) > 0.3f ? 1 : 0;
    }
    return count;
}

Actions press(Stage& stage, Screen screen, const char* window, const char* label,
              const char* group = nullptr) {
    const auto place = stage.place_of(screen, window, label, group);
    REQUIRE_MESSAGE(place.has_value(), label, " can be pressed");
    return stage.click(screen, place->middle());
}

}  // namespace

TEST_CASE("screens: every screen is drawn in every window, and nothing is drawn outside it") {
    Stage stage({1280, 720});
    for (const ImVec2 size : sizes) {
        stage.resize(size);
        for (const Place& place : screens) {
            CAPTURE(size_words(size));
            CAPTURE(std::string(place.window));
            stage.draw(place.screen);
            stage.draw(place.screen);
            CHECK(stage.vertices() > 400);
            CHECK(stage.drawn().lies_in(stage.display()));
        }
    }
}

TEST_CASE("screens: no word is cut by an edge of the window, nor begins or ends outside it") {
    Stage stage({1280, 720});
    for (const ImVec2 size : sizes) {
        stage.resize(size);
        for (const Place& place : screens) {
            stage.draw(place.screen);
            stage.draw(place.screen);
            Box room = stage.display();
            // What a sheet holds below its window is reached by scrolling.
            if (stage.scroll_room(place.window) > 0) room.bottom += 2 * theme().size[0];
            int outside = 0;
            for (const Box& glyph : stage.glyphs(place.window)) outside += glyph.lies_in(room, 1.0f) ? 0 : 1;
            CAPTURE(size_words(size));
            CAPTURE(std::string(place.window));
            CHECK(outside == 0);
        }
    }
}

TEST_CASE("screens: no words lie over other words") {
    Stage stage({1280, 720});
    for (const ImVec2 size : sizes) {
        stage.resize(size);
        for (const Place& place : screens) {
            stage.draw(place.screen);
            stage.draw(place.screen);
            CAPTURE(size_words(size));
            CAPTURE(std::string(place.window));
            const std::vector<Box> glyphs = stage.glyphs(place.window);
            CHECK(glyphs.size() > 30);
            CHECK(words_over_words(glyphs) == 0);
        }
    }
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
    for (int tabs = 1; tabs < 10 && !reached; ++tabs) {
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
        const Actions up = press(stage, Screen::stick_sense, "stick sense", "Up key");
        REQUIRE(find<AnswerStickSense>(up) != nullptr);
        CHECK(find<AnswerStickSense>(up)->up_key_pushes);
        const Actions down = press(stage, Screen::stick_sense, "stick sense", "Down key");
        REQUIRE(find<AnswerStickSense>(down) != nullptr);
        CHECK_FALSE(find<AnswerStickSense>(down)->up_key_pushes);
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

TEST_CASE("flight: the mouse is a stick with its datum where it was pressed, back at trim when let go") {
    Stage stage({1280, 720});
    const ImVec2 datum{900, 300};
    stage.move_mouse(datum);
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    stage.hold_mouse(true);
    stage.draw(Screen::flight);
    stage.move_mouse({datum.x, datum.y + 60});
    const Actions pulled = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(pulled) != nullptr);
    CHECK(find<MoveStick>(pulled)->stick > 0.1);
    CHECK(find<MoveStick>(pulled)->stick < 0.5);
    stage.move_mouse({datum.x, datum.y - 400});
    const Actions pushed = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(pushed) != nullptr);
    CHECK(find<MoveStick>(pushed)->stick == -1.0);
    stage.hold_mouse(false);
    const Actions let_go = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(let_go) != nullptr);
    CHECK(find<MoveStick>(let_go)->stick == 0.0);
    CHECK(find<MoveStick>(stage.draw(Screen::flight)) == nullptr);
}

TEST_CASE("flight: pausing in the middle of a drag lets the stick go") {
    Stage stage({1280, 720});
    stage.move_mouse({900, 300});
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    stage.hold_mouse(true);
    stage.draw(Screen::flight);
    REQUIRE(stage.ui.dragging_stick);
    stage.view.flight.paused = true;
    const Actions actions = stage.draw(Screen::flight);
    REQUIRE(find<MoveStick>(actions) != nullptr);
    CHECK(find<MoveStick>(actions)->stick == 0.0);
    CHECK_FALSE(stage.ui.dragging_stick);
}

TEST_CASE("flight: the wheel over the view trims by a small step, forward for nose down") {
    Stage stage({1280, 720});
    stage.move_mouse({900, 300});
    stage.draw(Screen::flight);
    stage.draw(Screen::flight);
    stage.turn_wheel(1);
    const Actions actions = stage.draw(Screen::flight);
    REQUIRE(find<SetTrim>(actions) != nullptr);
    CHECK(find<SetTrim>(actions)->trim == doctest::Approx(stage.view.flight.instruments.trim - 0.02));
}

TEST_CASE("flight: the view takes three quarters of a landscape window, and its buttons are a finger high") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{844, 390}, ImVec2{1024, 768}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const auto view = stage.place_of(Screen::flight, "flight", "stick");
        const auto pause = stage.place_of(Screen::flight, "flight", "Pause");
        const auto around = stage.place_of(Screen::flight, "flight", "Go around");
        REQUIRE(view.has_value());
        REQUIRE(pause.has_value());
        REQUIRE(around.has_value());
        if (size.x > size.y) CHECK(view->height() >= 0.75f * size.y);
        CHECK(pause->height() >= 44);
        CHECK(around->height() >= 44);
        CHECK(find<TogglePause>(stage.click(Screen::flight, pause->middle())) != nullptr);
        CHECK(find<GoAround>(stage.click(Screen::flight, around->middle())) != nullptr);
    }
}

TEST_CASE("flight: once unscored, the way to the summary is in the corner") {
    Stage stage({844, 390});
    CHECK_FALSE(stage.place_of(Screen::flight, "flight", "Summary").has_value());
    stage.view.flight.scored = false;
    stage.view.flight.status = "Unscored: land or go around";
    CHECK(find<OpenSummary>(press(stage, Screen::flight, "flight", "Summary")) != nullptr);
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
    CHECK(find<SaveTrack>(press(stage, Screen::summary, "summary", "Save track (CSV)")) != nullptr);
    CHECK(find<GoToChoices>(press(stage, Screen::summary, "summary", "New approach")) != nullptr);
}

TEST_CASE("summary: it is drawn when no gate was reached and the track is short") {
    Stage stage({1280, 720});
    for (GateRow& gate : stage.view.summary.gates)
        gate = GateRow{gate.height, "", "", {}, "", "", "", "", true, true, true, false};
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
