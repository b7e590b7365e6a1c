// The class in a table on a stage: what each part asks for, and how it looks with little and much.
#include <doctest/doctest.h>

#include <array>
#include <string>

#include "tests/screens/stage.h"

using namespace slopewise;

namespace {

using Wish = DoWithClassTable::Wish;

constexpr std::array<ImVec2, 6> sizes{
    {{1280, 720}, {1920, 1080}, {844, 390}, {390, 844}, {1024, 768}, {360, 640}}};

ClassTableView sample(int rows) {
    ClassTableView view;
    view.summary = "30 students, 302 attempts, from 30 files.";
    view.news = {"Handed over: slopewise-class.csv.",
                 "Not read: group-b/heron-07.jsonl:4: is damaged: its sum does not agree"};
    for (int i = 0; i < rows; ++i)
        view.rows.push_back({"Student with quite a long name " + std::to_string(i),
                             i % 2 == 0 ? "Final approach, 15 knot headwind" : "The last half mile",
                             i % 3 == 0 ? "15 (12)" : "7", "\u22120.34\u00b0", "\u00b10.30\u00b0",
                             i % 5 == 4 ? "not known" : "2026-11-26",
                             i % 2 == 0 ? "2 of 3: Stretching the approach with the nose" : "none"});
    return view;
}

void settle(Stage& stage) {
    stage.draw(Screen::class_table);
    stage.draw(Screen::class_table);
}

Wish wish_of(Stage& stage, const char* label, int* which = nullptr) {
    const Actions actions = press(stage, Screen::class_table, "class table", label);
    const auto* found = find<DoWithClassTable>(actions);
    REQUIRE(found != nullptr);
    if (which != nullptr) *which = found->which;
    return found->wish;
}

}  // namespace

TEST_CASE("class table: its buttons ask for what they say") {
    Stage stage({1280, 720});
    stage.view.class_table = sample(10);
    settle(stage);
    CHECK(wish_of(stage, "Add files") == Wish::add_files);
    CHECK(wish_of(stage, "Add a folder") == Wish::add_folder);
    CHECK(wish_of(stage, "Clear") == Wish::clear);
    CHECK(wish_of(stage, "Save as CSV") == Wish::save);
    CHECK(wish_of(stage, "Handout") == Wish::hand_out);
    CHECK(wish_of(stage, "Lesson plan") == Wish::lesson_plan);
    CHECK(find<CloseClassTable>(press(stage, Screen::class_table, "class table", "Back")) != nullptr);
}

TEST_CASE("class table: each head sorts by its column, and on a narrow page four of them do") {
    Stage stage({1280, 720});
    stage.view.class_table = sample(10);
    settle(stage);
    int which = -1;
    constexpr std::array<const char*, 7> heads{"Student", "Lesson", "Attempts", "Off path",
                                               "Spread",  "Last",   "Fault"};
    for (int i = 0; i < 7; ++i) {
        CAPTURE(i);
        CHECK(wish_of(stage, heads[static_cast<std::size_t>(i)], &which) == Wish::sort_by);
        CHECK(which == i);
    }
    stage.resize({390, 844});
    settle(stage);
    const auto spread = stage.place_of(Screen::class_table, "class table", "Spread", "sorted by");
    REQUIRE(spread.has_value());
    const Actions actions = stage.click(Screen::class_table, spread->middle());
    REQUIRE(find<DoWithClassTable>(actions) != nullptr);
    CHECK(find<DoWithClassTable>(actions)->which == 4);
}

TEST_CASE("class table: while files are read no others can be added nor any cleared") {
    Stage stage({1280, 720});
    stage.view.class_table = sample(3);
    stage.view.class_table.reading = true;
    settle(stage);
    for (const char* label : {"Add files", "Add a folder", "Clear"})
        CHECK(find<DoWithClassTable>(press(stage, Screen::class_table, "class table", label)) == nullptr);
    CHECK(wish_of(stage, "Save as CSV") == Wish::save);
}

TEST_CASE("class table: of many rows only those in the window are drawn, and the last can be scrolled to") {
    Stage stage({1280, 720});
    stage.view.class_table = sample(60);
    settle(stage);
    const int few = stage.vertices();
    const float room = stage.scroll_room("class table");
    stage.view.class_table = sample(6000);
    settle(stage);
    CHECK(stage.scroll_room("class table") > 50 * room);
    CHECK(stage.vertices() <= few + 200);  // words differ in length, not the rows in number
}

TEST_CASE("class table: in every window and look its words lie in it and over no others") {
    for (const ImVec2 size : sizes)
        for (const int rows : {0, 1, 300})
            for (int dress = 0; dress < 4; ++dress) {
                Stage stage(size);
                stage.view.class_table = sample(rows);
                stage.view.display.look = static_cast<Look>(dress % 3);
                stage.view.display.projector_text = dress == 3;
                settle(stage);
                CAPTURE(size_words(size));
                CAPTURE(rows);
                CAPTURE(dress);
                const std::vector<Box> glyphs = stage.glyphs("class table");
                CHECK(words_over_words(glyphs) == 0);
                int outside = 0;
                for (const Box& glyph : glyphs)
                    outside += glyph.left < -1 || glyph.right > size.x + 1 ? 1 : 0;
                CHECK(outside == 0);
                CHECK(stage.drawn().lies_in(stage.display()));
            }
}
