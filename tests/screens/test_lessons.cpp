// What the hand and the keys do on the sheets of one's own lessons.
#include <doctest/doctest.h>

#include <cstring>
#include <string>

#include "tests/screens/sample_lessons.h"
#include "tests/screens/stage.h"

using namespace slopewise;

namespace {

using Wish = DoWithLesson::Wish;

Wish asked(const Actions& actions) {
    const auto* found = find<DoWithLesson>(actions);
    REQUIRE(found != nullptr);
    return found->wish;
}

}  // namespace

TEST_CASE("choices: a button leads to one's own lessons") {
    Stage stage({1280, 720});
    CHECK(find<OpenOwnLessons>(press(stage, Screen::welcome, "welcome", "Your own lessons")) != nullptr);
}

TEST_CASE("own lessons: each button asks for what it says, of the chosen lesson") {
    Stage stage({1280, 720});
    const std::pair<const char*, Wish> buttons[] = {{"Write a new one", Wish::write_new},
                                                    {"Take in a file", Wish::take_in},
                                                    {"Write on", Wish::write_on},
                                                    {"What came in", Wish::look_at_arrived},
                                                    {"Fly it", Wish::fly},
                                                    {"Change it", Wish::open},
                                                    {"Copy the link", Wish::copy_link},
                                                    {"Hand over as a file", Wish::hand_over},
                                                    {"Make a copy", Wish::copy}};
    for (const auto& [label, wish] : buttons)
        CHECK(asked(press(stage, Screen::own_lessons, "own lessons", label)) == wish);
    const Actions chosen = press(stage, Screen::own_lessons, "own lessons",
                                 stage.view.own_lessons.rows[1].title.c_str(), "own_1");
    CHECK(asked(chosen) == Wish::choose);
    CHECK(find<DoWithLesson>(chosen)->id == "own_1");
    CHECK(asked(press(stage, Screen::own_lessons, "own lessons", "Bring back", "own_gone")) ==
          Wish::bring_back);
}

TEST_CASE("own lessons: deleting asks first") {
    Stage stage({1280, 720});
    CHECK(press(stage, Screen::own_lessons, "own lessons", "Delete").empty());
    CHECK(press(stage, Screen::own_lessons, "own lessons", "Write a new one").empty());  // under the veil
    CHECK(press(stage, Screen::own_lessons, "delete lesson", "Leave it").empty());
    press(stage, Screen::own_lessons, "own lessons", "Delete");
    const Actions deleted = press(stage, Screen::own_lessons, "delete lesson", "Delete it");
    CHECK(asked(deleted) == Wish::remove);
    CHECK(find<DoWithLesson>(deleted)->id == "own_0");
}

TEST_CASE("own lessons: with none yet, Enter writes one") {
    Stage stage({1280, 720});
    stage.view.own_lessons = sample_own_lessons(0);
    stage.draw(Screen::own_lessons);
    stage.draw(Screen::own_lessons);
    CHECK(asked(stage.key(Screen::own_lessons, ImGuiKey_Enter)) == Wish::write_new);
}

TEST_CASE("lesson editor: steppers, choices and switches set their fields") {
    Stage stage({1280, 720});
    const auto asked_for = [&](const char* label, const char* group) {
        const Actions actions = press(stage, Screen::lesson_editor, "lesson editor", label, group);
        const auto* set = find<SetLessonField>(actions);
        REQUIRE(set != nullptr);
        return *set;
    };
    CHECK(asked(press(stage, Screen::lesson_editor, "lesson editor", "Fly it now")) == Wish::fly_draft);
    CHECK(asked(press(stage, Screen::lesson_editor, "lesson editor", "Keep")) == Wish::keep);
    CHECK(asked_for("Overcast", "Light and weather").field == 28);
    CHECK(asked_for("Overcast", "Light and weather").amount == 1.0);
    CHECK(asked_for("Two-seat trainer", "Aircraft").field == 23);
    CHECK(asked_for("Two-seat trainer", "Aircraft").amount == 2.0);
}

TEST_CASE("lesson editor: Enter ends the writing of a title and does not begin a flight") {
    Stage stage({1280, 720});
    const auto place = stage.place_of(Screen::lesson_editor, "lesson editor", "##Title", "What it is");
    REQUIRE(place.has_value());
    stage.click(Screen::lesson_editor, place->middle());
    REQUIRE(ImGui::GetIO().WantTextInput);
    CHECK(find<DoWithLesson>(stage.key(Screen::lesson_editor, ImGuiKey_Enter)) == nullptr);
    stage.draw(Screen::lesson_editor);
    CHECK_FALSE(ImGui::GetIO().WantTextInput);
}

TEST_CASE("lesson editor: what cannot be flown offers neither flying nor keeping") {
    Stage stage({1280, 720});
    stage.view.lesson_editor.can_fly = false;
    stage.view.lesson_editor.standing = "One thing is to be put right.";
    CHECK_FALSE(stage.place_of(Screen::lesson_editor, "lesson editor", "Fly it now").has_value());
    CHECK_FALSE(stage.place_of(Screen::lesson_editor, "lesson editor", "Keep").has_value());
}

TEST_CASE(
    "lesson editor: letters that are typed come out as the field's words, and outside changes come in") {
    Stage stage({1280, 720});
    const auto place = stage.place_of(Screen::lesson_editor, "lesson editor", "##Title", "What it is");
    REQUIRE(place.has_value());
    stage.click(Screen::lesson_editor, place->middle());
    ImGui::GetIO().AddKeyEvent(ImGuiKey_End, true);
    stage.draw(Screen::lesson_editor);
    ImGui::GetIO().AddKeyEvent(ImGuiKey_End, false);
    ImGui::GetIO().AddInputCharactersUTF8("!");
    Actions actions = stage.draw(Screen::lesson_editor);
    for (const Action& action : stage.draw(Screen::lesson_editor)) actions.push_back(action);
    REQUIRE(find<SetLessonField>(actions) != nullptr);
    CHECK(find<SetLessonField>(actions)->field == 0);
    CHECK(find<SetLessonField>(actions)->words == "Gusty final!");

    Stage other({1280, 720});
    other.draw(Screen::lesson_editor);
    other.view.lesson_editor.groups[0].fields[0].value = "Another lesson";
    CHECK(other.draw(Screen::lesson_editor).empty());
    CHECK(std::string(other.ui.lessons.texts[0].bytes.data()) == "Another lesson");
}

TEST_CASE("arrived lesson: it is flown, kept or left, and a bad one can only be left") {
    Stage stage({1280, 720});
    CHECK(asked(press(stage, Screen::arrived_lesson, "arrived lesson", "Fly it")) == Wish::fly_arrived);
    CHECK(asked(press(stage, Screen::arrived_lesson, "arrived lesson", "Keep it")) == Wish::keep_arrived);
    CHECK(asked(press(stage, Screen::arrived_lesson, "arrived lesson", "Leave it")) == Wish::leave_arrived);
    stage.view.arrived_lesson.title.clear();
    stage.view.arrived_lesson.problems = {"The link: is damaged: a part of it is missing or changed."};
    CHECK_FALSE(stage.place_of(Screen::arrived_lesson, "arrived lesson", "Fly it").has_value());
    CHECK_FALSE(stage.place_of(Screen::arrived_lesson, "arrived lesson", "Keep it").has_value());
    CHECK(asked(press(stage, Screen::arrived_lesson, "arrived lesson", "Leave it")) == Wish::leave_arrived);
}
