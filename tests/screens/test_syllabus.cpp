// The sheets of the syllabus and the first page, drawn and pressed with no window.
#include <doctest/doctest.h>

#include <string>

#include "tests/screens/sample_syllabus.h"
#include "tests/screens/stage.h"

using namespace slopewise;

namespace {

constexpr std::array<ImVec2, 5> sizes{{{1280, 720}, {1920, 1080}, {844, 390}, {390, 844}, {1024, 768}}};

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
                CAPTURE(size_words(size));
                CAPTURE(projector);
                CHECK(words_over_words(stage.glyphs(window)) == 0);
                CHECK(stage.drawn().lies_in(stage.display()));
            }
        }
    }
}

}  // namespace

TEST_CASE(
    "first page, lessons, card, a lesson's summary: in every look and size nothing lies over anything") {
    Stage stage({1280, 720});
    check_sheet(stage, Screen::welcome, "welcome");
    check_sheet(stage, Screen::lessons, "lessons");
    check_sheet(stage, Screen::lesson_card, "lesson card");
    stage.view.summary.lesson = sample_lesson_result();
    for (const SheetDetail detail : {SheetDetail::full, SheetDetail::brief, SheetDetail::last_three}) {
        stage.view.summary.detail = detail;
        check_sheet(stage, Screen::summary, "summary");
    }
}

TEST_CASE("first page: Enter begins with lesson 1, and every way on is pressed") {
    Stage stage({1280, 720});
    stage.draw(Screen::welcome);
    stage.draw(Screen::welcome);
    CHECK(find<OpenFirstLesson>(stage.key(Screen::welcome, ImGuiKey_Enter)) != nullptr);
    CHECK(find<FlyNow>(press(stage, Screen::welcome, "welcome", "Fly a final now")) != nullptr);
    CHECK(find<OpenLessons>(press(stage, Screen::welcome, "welcome", "All lessons")) != nullptr);
    CHECK(find<GoToChoices>(press(stage, Screen::welcome, "welcome", "Choose an approach")) != nullptr);
    CHECK(find<OpenScreenAndHelp>(press(stage, Screen::welcome, "welcome", "Screen and help")) != nullptr);
}

TEST_CASE("lessons: arrows choose, Enter opens, and a press on a row opens it") {
    Stage stage({1280, 720});
    stage.draw(Screen::lessons);
    stage.draw(Screen::lessons);
    const Actions down = stage.key(Screen::lessons, ImGuiKey_DownArrow);
    REQUIRE(find<ChooseLesson>(down) != nullptr);
    CHECK(find<ChooseLesson>(down)->id == "lesson_5");
    const Actions enter = stage.key(Screen::lessons, ImGuiKey_Enter);
    REQUIRE(find<OpenLesson>(enter) != nullptr);
    CHECK(find<OpenLesson>(enter)->id == "lesson_4");
    const Actions pressed = press(stage, Screen::lessons, "lessons", "lesson_2");
    REQUIRE(find<OpenLesson>(pressed) != nullptr);
    CHECK(find<OpenLesson>(pressed)->id == "lesson_2");
}

TEST_CASE("lesson card: it is flown, or its drill is opened, and the lessons before and after are there") {
    Stage stage({1280, 720});
    const auto pressed = [&](const char* label) {
        return press(stage, Screen::lesson_card, "lesson card", label);
    };
    CHECK(find<FlyLesson>(pressed("Fly it")) != nullptr);
    CHECK(find<OpenLesson>(pressed("Next lesson"))->id == "lesson_6");
    CHECK(find<OpenLesson>(pressed("Previous"))->id == "lesson_4");
    CHECK(find<OpenLessons>(pressed("All lessons")) != nullptr);
    stage.view.lesson_card.drill = "read_the_lights";
    CHECK(find<OpenDrill>(pressed("Open the drill")) != nullptr);
}

TEST_CASE("summary: a lesson goes on to the next one only when enough runs met it") {
    Stage stage({1280, 720});
    stage.view.summary.lesson = sample_lesson_result();
    stage.draw(Screen::summary);
    stage.draw(Screen::summary);
    CHECK(find<RestartSame>(stage.key(Screen::summary, ImGuiKey_Enter)) != nullptr);
    CHECK_FALSE(stage.place_of(Screen::summary, "summary", "Next lesson").has_value());
    CHECK(find<FlyNextRun>(press(stage, Screen::summary, "summary", "Another run")) != nullptr);
    stage.view.summary.lesson.reached = true;
    CHECK(find<OpenLesson>(press(stage, Screen::summary, "summary", "Next lesson"))->id == "lesson_6");
}
