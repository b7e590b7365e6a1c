// The logbook and the progress sheet on a stage: what each part asks for, and how they look with little and
// much.
#include <doctest/doctest.h>

#include <array>
#include <cstring>
#include <string>

#include "tests/screens/sample_logbook.h"
#include "tests/screens/stage.h"

using namespace slopewise;

namespace {

constexpr std::array<ImVec2, 5> sizes{{{1280, 720}, {1920, 1080}, {844, 390}, {390, 844}, {1024, 768}}};

std::string id_of(const Stage& stage, std::size_t index) { return stage.view.logbook.rows[index].id; }

void settle(Stage& stage, Screen screen) {
    stage.draw(screen);
    stage.draw(screen);
}

// Draws a screen in every look and with large text, in every window.
template <class Look>
void in_every_dress(Stage& stage, Screen screen, Look&& look) {
    for (const ImVec2 size : sizes) {
        stage.resize(size);
        for (int dress = 0; dress < 6; ++dress) {
            stage.view.display.look = static_cast<slopewise::Look>(dress % 3);
            stage.view.display.projector_text = dress >= 3;
            CAPTURE(size_words(size));
            CAPTURE(dress);
            settle(stage, screen);
            look();
        }
    }
}

}  // namespace

TEST_CASE("logbook: its buttons ask for what they say") {
    Stage stage({1280, 720});
    const auto at = [&](const char* label, const char* group = nullptr) {
        return press(stage, Screen::logbook, "logbook", label, group);
    };
    CHECK(find<CloseLogbook>(at("Back")) != nullptr);
    CHECK(find<OpenProgress>(at("Progress")) != nullptr);
    CHECK(find<ExportStudent>(at("Hand over this student's file")) != nullptr);
    CHECK(find<ImportFile>(at("Take in a file")) != nullptr);
    const std::string id = id_of(stage, 0);
    REQUIRE(find<OpenAttempt>(at("Open it")) != nullptr);
    CHECK(find<OpenAttempt>(at("Open it"))->id == id);
    CHECK(find<ReplayAttempt>(at("Replay"))->id == id);
    CHECK(find<SaveAttempt>(at("Save as a file"))->id == id);
    const Actions compared = at("Compare with the one before");
    REQUIRE(find<CompareAttempts>(compared) != nullptr);
    CHECK(find<CompareAttempts>(compared)->id == id);
    CHECK(find<CompareAttempts>(compared)->other_id == id_of(stage, 1));
}

TEST_CASE("logbook: a row is chosen by a press and by the arrow keys, and Enter opens it") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const Actions pressed = press(stage, Screen::logbook, "logbook", id_of(stage, 1).c_str());
        REQUIRE(find<ChooseAttempt>(pressed) != nullptr);
        CHECK(find<ChooseAttempt>(pressed)->id == id_of(stage, 1));
    }
    Stage stage({1280, 720});
    settle(stage, Screen::logbook);
    CHECK(find<ChooseAttempt>(stage.key(Screen::logbook, ImGuiKey_UpArrow)) == nullptr);
    const Actions down = stage.key(Screen::logbook, ImGuiKey_DownArrow);
    REQUIRE(find<ChooseAttempt>(down) != nullptr);
    CHECK(find<ChooseAttempt>(down)->id == id_of(stage, 1));
    const Actions enter = stage.key(Screen::logbook, ImGuiKey_Enter);
    REQUIRE(find<OpenAttempt>(enter) != nullptr);
    CHECK(find<OpenAttempt>(enter)->id == id_of(stage, 0));
}

TEST_CASE("logbook: a row chosen far below is brought into the window with its buttons") {
    Stage stage({1280, 720});
    stage.view.logbook = sample_logbook(1000);
    settle(stage, Screen::logbook);
    for (const int chosen : {500, 999, 3}) {
        CAPTURE(chosen);
        stage.view.logbook.chosen = chosen;
        stage.view.logbook.earlier = "1795654550000-00000001";
        settle(stage, Screen::logbook);
        stage.draw(Screen::logbook);
        const auto open = stage.place_of(Screen::logbook, "logbook", "Open it");
        REQUIRE(open.has_value());
        CHECK(open->lies_in(stage.display()));
    }
}

TEST_CASE("logbook: deleting asks first, and nothing else can be pressed meanwhile") {
    Stage stage({1280, 720});
    const std::string id = id_of(stage, 0);
    CHECK(press(stage, Screen::logbook, "logbook", "Delete").empty());
    CHECK(stage.ui.logbook.asks == LogbookUi::Asks::remove);
    CHECK(press(stage, Screen::logbook, "logbook", "Progress").empty());
    CHECK(find<ChooseAttempt>(stage.key(Screen::logbook, ImGuiKey_DownArrow)) == nullptr);
    CHECK(press(stage, Screen::logbook, "delete", "Leave it").empty());
    CHECK(stage.ui.logbook.asks == LogbookUi::Asks::nothing);

    press(stage, Screen::logbook, "logbook", "Delete");
    const Actions deleted = press(stage, Screen::logbook, "delete", "Delete");
    REQUIRE(find<DeleteAttempt>(deleted) != nullptr);
    CHECK(find<DeleteAttempt>(deleted)->id == id);
    CHECK(stage.ui.logbook.asks == LogbookUi::Asks::nothing);

    // Enter leaves it, since that harms nothing.
    press(stage, Screen::logbook, "logbook", "Delete");
    stage.move_mouse({2, 2});
    settle(stage, Screen::logbook);
    CHECK(find<DeleteAttempt>(stage.key(Screen::logbook, ImGuiKey_Enter)) == nullptr);
    CHECK(stage.ui.logbook.asks == LogbookUi::Asks::nothing);
}

TEST_CASE("logbook: what was deleted is brought back, or deleted for good when asked again") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const std::string id = stage.view.logbook.deleted[0].id;
        press(stage, Screen::logbook, "logbook", "Deleted, can be brought back (1)", "deleted");
        const Actions back = press(stage, Screen::logbook, "logbook", "Bring back", id.c_str());
        REQUIRE(find<BringBackAttempt>(back) != nullptr);
        CHECK(find<BringBackAttempt>(back)->id == id);
        CHECK(press(stage, Screen::logbook, "logbook", "Delete for good", id.c_str()).empty());
        const Actions erased = press(stage, Screen::logbook, "delete", "Delete for good");
        REQUIRE(find<EraseAttempt>(erased) != nullptr);
        CHECK(find<EraseAttempt>(erased)->id == id);
    }
}

TEST_CASE("logbook: a student is chosen among those here, or named anew, or not named") {
    Stage stage({1280, 720});
    const auto ask = [&] { press(stage, Screen::logbook, "logbook", "Another student"); };
    ask();
    const Actions chosen = press(stage, Screen::logbook, "student", "Heron 2");
    REQUIRE(find<ChooseStudent>(chosen) != nullptr);
    CHECK(find<ChooseStudent>(chosen)->name == "Heron 2");
    CHECK(stage.ui.logbook.asks == LogbookUi::Asks::nothing);

    ask();
    ImGui::GetIO().AddInputCharactersUTF8("Wren \xC3\xA9 9");
    settle(stage, Screen::logbook);
    const Actions named = press(stage, Screen::logbook, "student", "Take this name");
    REQUIRE(find<ChooseStudent>(named) != nullptr);
    CHECK(find<ChooseStudent>(named)->name == "Wren \xC3\xA9 9");

    ask();
    CHECK(find<ChooseStudent>(press(stage, Screen::logbook, "student", "Leave it as it is")) == nullptr);
    ask();
    const Actions nobody = press(stage, Screen::logbook, "student", "Take this name");
    REQUIRE(find<ChooseStudent>(nobody) != nullptr);
    CHECK(find<ChooseStudent>(nobody)->name.empty());
}

TEST_CASE("logbook: by finger a name is written in the machine's own window") {
    Stage stage({390, 844});
    stage.view.logbook.writes_by_finger = true;
    press(stage, Screen::logbook, "logbook", "Another student");
    CHECK_FALSE(stage.place_of(Screen::logbook, "student", "Take this name").has_value());
    const Actions wishes = press(stage, Screen::logbook, "student", "Write a name");
    CHECK(find<WriteStudent>(wishes) != nullptr);
    CHECK(find<ChooseStudent>(wishes) == nullptr);
}

TEST_CASE("logbook: a name takes forty letters and no more, and Enter ends it") {
    Stage stage({1280, 720});
    press(stage, Screen::logbook, "logbook", "Another student");
    for (int i = 0; i < 45; ++i) {
        ImGui::GetIO().AddInputCharactersUTF8("\xC3\xA9");
        stage.draw(Screen::logbook);
    }
    CHECK(std::strlen(stage.ui.logbook.name.data()) == 80);  // two bytes a letter
    const Actions entered = stage.key(Screen::logbook, ImGuiKey_Enter);
    REQUIRE(find<ChooseStudent>(entered) != nullptr);
    CHECK(find<ChooseStudent>(entered)->name.size() == 80);
}

TEST_CASE("logbook: trouble is told with the way to hand over the file, and an empty one says what to do") {
    Stage stage({1280, 720});
    stage.view.logbook = sample_logbook(0);
    settle(stage, Screen::logbook);
    CHECK(words_over_words(stage.glyphs("logbook")) == 0);
    const std::size_t calm = stage.glyphs("logbook").size();
    stage.view.logbook.trouble = "The last attempt is not kept: this device has no more room.";
    CHECK(find<ExportStudent>(press(stage, Screen::logbook, "logbook", "Hand over the file")) != nullptr);
    CHECK(stage.glyphs("logbook").size() > calm + 40);
}

TEST_CASE(
    "logbook: in every window and look nothing lies over anything or outside, with all that can be told") {
    Stage stage({1280, 720});
    LogbookView& sheet = stage.view.logbook;
    sheet.trouble =
        "The last attempt is not kept: this device has no more room. What was kept before is safe.";
    sheet.news = "chosen.jsonl: 12 attempts taken in, 3 already here, 8 problems.";
    sheet.problems = {"chosen.jsonl:7: is no attempt of Slopewise", "chosen.jsonl:9: /sum differs",
                      "and 6 more"};
    stage.ui.logbook.deleted_open = true;
    in_every_dress(stage, Screen::logbook, [&] {
        CHECK(words_over_words(stage.glyphs("logbook")) == 0);
        CHECK(stage.drawn().lies_in(stage.display()));
    });
    for (const auto asks : {LogbookUi::Asks::remove, LogbookUi::Asks::erase, LogbookUi::Asks::student}) {
        stage.ui.logbook.words = "26 Nov 2026, 14:05";
        const char* window = asks == LogbookUi::Asks::student ? "student" : "delete";
        stage.ui.logbook.asks = asks;
        in_every_dress(stage, Screen::logbook, [&] {
            CHECK(stage.glyphs(window).size() > 30);
            CHECK(words_over_words(stage.glyphs(window)) == 0);
            CHECK(stage.drawn().lies_in(stage.display()));
        });
    }
}

TEST_CASE("logbook: ten thousand rows take no more to draw than a windowful") {
    Stage stage({1280, 720});
    stage.view.logbook = sample_logbook(40);
    settle(stage, Screen::logbook);
    const int few = stage.vertices();
    stage.view.logbook = sample_logbook(10000);
    settle(stage, Screen::logbook);
    CHECK(stage.vertices() < few + few / 10);
    CHECK(stage.scroll_room("logbook") > 10000 * 44.0f);
}

TEST_CASE("progress: its rows and buttons ask for what they say") {
    Stage stage({1280, 720});
    const auto at = [&](const char* label) { return press(stage, Screen::progress, "progress", label); };
    CHECK(find<CloseProgress>(at("Back to the logbook")) != nullptr);
    const Actions lesson = at("Final approach, calm");
    REQUIRE(find<ChooseProgressLesson>(lesson) != nullptr);
    CHECK(find<ChooseProgressLesson>(lesson)->id == "final_calm");
    stage.key(Screen::progress, ImGuiKey_End);
    CHECK(find<SaveProgress>(at("Hand over as CSV")) != nullptr);
}

TEST_CASE("progress: with none, one, three, forty and ten thousand attempts nothing lies over anything") {
    for (const int attempts : {0, 1, 3, 40, 10000}) {
        CAPTURE(attempts);
        Stage stage({1280, 720});
        stage.view.progress = sample_progress(attempts);
        in_every_dress(stage, Screen::progress, [&] {
            CHECK(words_over_words(stage.glyphs("progress")) == 0);
            CHECK(stage.drawn().lies_in(stage.display()));
        });
    }
}

TEST_CASE("progress: ten thousand attempts are thinned to what can be seen") {
    Stage stage({1280, 720});
    stage.view.progress = sample_progress(10000);
    settle(stage, Screen::progress);
    // A mark is 60 vertices or so; two panels of 10,000 would be over a million.
    CHECK(stage.vertices() < 60000);
}
