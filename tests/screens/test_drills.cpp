// The sheets of the drills, drawn and pressed with no window.
#include <doctest/doctest.h>

#include <array>
#include <string>

#include "tests/screens/sample_drills.h"
#include "tests/screens/stage.h"

using namespace slopewise;

namespace {

constexpr std::array<ImVec2, 5> sizes{{{1280, 720}, {1920, 1080}, {844, 390}, {390, 844}, {1024, 768}}};

// Draws a sheet in every size, look and text, as it stands in the stage's view, and counts what overlaps.
void check_sheet(Stage& stage, Screen screen, const char* window) {
    for (const ImVec2 size : sizes) {
        stage.resize(size);
        for (const Look look : {Look::standard, Look::high_contrast, Look::night}) {
            for (const bool projector : {false, true}) {
                stage.view.display.look = look;
                stage.view.display.projector_text = projector;
                stage.draw(screen);
                stage.draw(screen);
                CAPTURE(window);
                CAPTURE(stage.view.drill.title);
                CAPTURE(size_words(size));
                CAPTURE(projector);
                CHECK(words_over_words(stage.glyphs(window)) == 0);
                CHECK(stage.drawn().lies_in(stage.display()));
            }
        }
    }
}

std::array<DrillView, 5> all_items() {
    return {sample_drill_about(), sample_card(), sample_place(), sample_moment(), sample_told()};
}

}  // namespace

TEST_CASE("drills: in every look and size nothing lies over anything, before the answer and after it") {
    Stage stage({1280, 720});
    check_sheet(stage, Screen::drills, "drills");
    check_sheet(stage, Screen::drill_result, "drill result");
    for (const DrillView& sheet : all_items()) {
        stage.view.drill = sheet;
        check_sheet(stage, Screen::drill, "drill");
        if (sheet.stage != DrillView::Stage::asked) continue;
        stage.view.drill = revealed(sheet);
        check_sheet(stage, Screen::drill, "drill");
        stage.view.drill.picture_shown = false;
        stage.view.drill.gone = "The picture is gone. Answer from what you saw.";
        check_sheet(stage, Screen::drill, "drill");
    }
}

TEST_CASE("drills: the next one is opened by Enter, every one by the mouse") {
    Stage stage({1280, 720});
    stage.draw(Screen::drills);
    stage.draw(Screen::drills);
    const Actions entered = stage.key(Screen::drills, ImGuiKey_Enter);
    REQUIRE(find<OpenDrill>(entered) != nullptr);
    CHECK(find<OpenDrill>(entered)->id == "drill3");
    CHECK(find<CloseDrills>(press(stage, Screen::drills, "drills", "Back")) != nullptr);
    const Actions pressed = press(stage, Screen::drills, "drills", "1. Speed by attitude, and trim");
    REQUIRE(find<OpenDrill>(pressed) != nullptr);
    CHECK(find<OpenDrill>(pressed)->id == "drill1");
}

TEST_CASE("drill: every answer and every command is pressed with the mouse") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{1920, 1080}, ImVec2{1024, 768}}) {
        CAPTURE(size_words(size));
        for (const DrillView& sheet : {sample_card(), sample_moment(), sample_told()}) {
            Stage stage(size);
            stage.view.drill = sheet;
            CAPTURE(sheet.title);
            for (int i = 0; i < int(sheet.choices.size()); ++i) {
                const Actions actions =
                    press(stage, Screen::drill, "drill", sheet.choices[std::size_t(i)].c_str());
                REQUIRE(find<AnswerCard>(actions) != nullptr);
                CHECK(find<AnswerCard>(actions)->choice == i);
            }
        }
    }
}

TEST_CASE("drill: after the answer nothing can be answered again, and Enter goes on") {
    Stage stage({1280, 720});
    stage.view.drill = revealed(sample_card());
    stage.draw(Screen::drill);
    stage.draw(Screen::drill);
    CHECK_FALSE(stage.place_of(Screen::drill, "drill", "slightly high").has_value());
    const Actions entered = stage.key(Screen::drill, ImGuiKey_Enter);
    REQUIRE(find<DoWithDrill>(entered) != nullptr);
    CHECK(find<DoWithDrill>(entered)->wish == DoWithDrill::Wish::go_on);
}

TEST_CASE("drill: the mark goes where the picture is pressed, farther up is farther along the runway") {
    Stage stage({1280, 720});
    stage.view.drill = sample_place();
    const auto picture = stage.place_of(Screen::drill, "drill", "picture");
    REQUIRE(picture.has_value());
    const auto mark_at = [&](float share) {
        stage.move_mouse({picture->middle().x, picture->top + share * picture->height()});
        stage.draw(Screen::drill);
        stage.hold_mouse(true);
        const Actions actions = stage.draw(Screen::drill);
        stage.hold_mouse(false);
        stage.draw(Screen::drill);
        const auto* mark = find<MovePlaceMark>(actions);
        return mark == nullptr ? -1e9 : mark->metres;
    };
    const double near_m = mark_at(0.75f), far_m = mark_at(0.6f);
    CHECK(near_m > -2500.0);  // in front of the eye
    CHECK(far_m > near_m);
    // The arrows move the mark, so they must not move the focus off "Mark it here".
    stage.key(Screen::drill, ImGuiKey_UpArrow);
    const Actions entered = stage.key(Screen::drill, ImGuiKey_Enter);
    CHECK(find<DoWithDrill>(entered) != nullptr);
}

TEST_CASE("drill: the moment is marked and the replay driven with the mouse") {
    Stage stage({1280, 720});
    stage.view.drill = sample_moment();
    const Actions marked = press(stage, Screen::drill, "drill", "Mark this moment");
    REQUIRE(find<DoWithDrill>(marked) != nullptr);
    CHECK(find<DoWithDrill>(marked)->wish == DoWithDrill::Wish::mark_moment);
    CHECK(find<DriveReplay>(press(stage, Screen::drill, "drill", "Pause")) != nullptr);
}

TEST_CASE("drill result: again with another seed by Enter, with the same by its button") {
    Stage stage({1280, 720});
    stage.draw(Screen::drill_result);
    stage.draw(Screen::drill_result);
    const Actions anew = stage.key(Screen::drill_result, ImGuiKey_Enter);
    REQUIRE(find<DoWithDrill>(anew) != nullptr);
    CHECK(find<DoWithDrill>(anew)->wish == DoWithDrill::Wish::again_anew);
    const Actions same = press(stage, Screen::drill_result, "drill result", "Again, the same seed");
    REQUIRE(find<DoWithDrill>(same) != nullptr);
    CHECK(find<DoWithDrill>(same)->wish == DoWithDrill::Wish::again);
}

TEST_CASE("flight: a drill's task and who has which control lie over nothing else") {
    Stage stage({1280, 720});
    stage.view.flight.drill = {"Go around!", "Instructor: \"You have control.\" You: \"I have control.\"",
                               true};
    check_sheet(stage, Screen::flight, "flight");
}
