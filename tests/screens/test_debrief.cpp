// What is seen after an attempt, pressed and read with no window: the estimate, the sheet in its three
// lengths, the criteria, and what can be taken along.
#include <doctest/doctest.h>

#include <array>
#include <string>

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
                CAPTURE(size_words(size));
                CAPTURE(projector);
                CHECK(words_over_words(stage.glyphs(window)) == 0);
                CHECK(stage.drawn().lies_in(stage.display()));
            }
        }
    }
}

void check_summary(Stage& stage) { check_sheet(stage, Screen::summary, "summary"); }

}  // namespace

TEST_CASE("estimate, criteria, what is taken along: in every look and size nothing lies over anything") {
    Stage stage({1280, 720});
    check_sheet(stage, Screen::estimate, "estimate");
    stage.view.estimate.blank = true;
    check_sheet(stage, Screen::estimate, "estimate");
    check_sheet(stage, Screen::criteria, "criteria");
    check_sheet(stage, Screen::take_away, "take away");
}

TEST_CASE("estimate: while it is blank there is nothing to answer, but the way past it") {
    Stage stage({1280, 720});
    stage.view.estimate.blank = true;
    stage.draw(Screen::estimate);
    stage.draw(Screen::estimate);
    CHECK_FALSE(stage.place_of(Screen::estimate, "estimate", "high").has_value());
    CHECK(find<SkipEstimate>(press(stage, Screen::estimate, "estimate", "Open the sheet without")) !=
          nullptr);
}

TEST_CASE("estimate: every answer is pressed with the mouse, and so is the way past it") {
    for (const ImVec2 size : sizes) {
        Stage stage(size);
        CAPTURE(size_words(size));
        for (int question = 0; question < 3; ++question) {
            const EstimateView::Question asked = stage.view.estimate.questions[std::size_t(question)];
            for (int answer = 0; answer < int(asked.answers.size()); ++answer) {
                const Actions actions =
                    press(stage, Screen::estimate, "estimate", asked.answers[std::size_t(answer)].c_str(),
                          asked.words.c_str());
                REQUIRE(find<AnswerEstimate>(actions) != nullptr);
                CHECK(find<AnswerEstimate>(actions)->question == question);
                CHECK(find<AnswerEstimate>(actions)->answer == answer);
            }
        }
        CHECK(find<SkipEstimate>(press(stage, Screen::estimate, "estimate", "Open the sheet without")) !=
              nullptr);
        CHECK(stage.scroll_room("estimate") == 0);
    }
}

TEST_CASE("estimate: arrows and Enter answer, and Enter alone does not") {
    Stage stage({1280, 720});
    stage.draw(Screen::estimate);
    stage.draw(Screen::estimate);
    CHECK(stage.key(Screen::estimate, ImGuiKey_Enter).empty());
    stage.key(Screen::estimate, ImGuiKey_DownArrow);
    stage.draw(Screen::estimate);
    stage.key(Screen::estimate, ImGuiKey_RightArrow);
    stage.draw(Screen::estimate);
    CHECK(find<AnswerEstimate>(stage.key(Screen::estimate, ImGuiKey_Enter)) != nullptr);
}

TEST_CASE("summary: with a fault, without one, and with the gate not reached nothing lies over anything") {
    Stage stage({1280, 720});
    check_summary(stage);
    stage.view.summary.fault = {};
    stage.view.summary.fault.none =
        "No known fault explains what was not stable. Begin with the worst moment.";
    stage.view.summary.strongest.clear();
    stage.view.summary.estimate.clear();
    stage.view.summary.decision = {"300 ft", false, false, false, "The gate at 300 ft was not reached."};
    check_summary(stage);
}

TEST_CASE("summary: its short forms ask for the detail, by a button, and show less") {
    for (const SheetDetail detail : {SheetDetail::brief, SheetDetail::last_three}) {
        Stage stage({1280, 720});
        stage.draw(Screen::summary);
        stage.draw(Screen::summary);
        const std::size_t whole = stage.glyphs("summary").size();
        CHECK_FALSE(stage.place_of(Screen::summary, "summary", "Show the detail").has_value());
        stage.view.summary.detail = detail;
        CHECK(find<ShowDetail>(press(stage, Screen::summary, "summary", "Show the detail")) != nullptr);
        CHECK(find<RestartSame>(press(stage, Screen::summary, "summary", "Same again")) != nullptr);
        CHECK(stage.glyphs("summary").size() < whole);
        check_summary(stage);
    }
}

TEST_CASE("summary: the lead to the measures scrolls to them") {
    Stage stage({1280, 720});
    press(stage, Screen::summary, "summary", "See how it was measured");
    stage.draw(Screen::summary);
    CHECK(stage.scrolled("summary") > 400);
}

TEST_CASE("criteria: less and more ask for the next step, and nothing beyond an end of the range") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{390, 844}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const Actions more =
            press(stage, Screen::criteria, "criteria", "more", "At 500 ft and above: Path within");
        REQUIRE(find<SetCriterion>(more) != nullptr);
        CHECK(find<SetCriterion>(more)->field == 0);
        CHECK(find<SetCriterion>(more)->value == doctest::Approx(0.55));
        const Actions less = press(stage, Screen::criteria, "criteria", "less", "At 300 ft: Path within");
        REQUIRE(find<SetCriterion>(less) != nullptr);
        CHECK(find<SetCriterion>(less)->field == 3);
        CHECK(find<SetCriterion>(less)->value == doctest::Approx(0.45));
        CHECK(press(stage, Screen::criteria, "criteria", "more", "At 500 ft and above: Fast by at most")
                  .empty());
        if (size.x > size.y) {  // in the upright window these lie below its edge
            const Actions pitch =
                press(stage, Screen::criteria, "criteria", "pitch", "The path is corrected with");
            REQUIRE(find<SetCriterion>(pitch) != nullptr);
            CHECK(find<SetCriterion>(pitch)->field == 5);
            CHECK(find<SetCriterion>(pitch)->value == 1.0);
        }
        stage.key(Screen::criteria, ImGuiKey_End);
        CHECK(find<ResetCriteria>(press(stage, Screen::criteria, "criteria", "Back to the usual")) !=
              nullptr);
        stage.key(Screen::criteria, ImGuiKey_Home);
        CHECK(find<CloseCriteria>(press(stage, Screen::criteria, "criteria", "Done")) != nullptr);
    }
}

TEST_CASE("take away: every file has its row, and the way back is there") {
    for (const ImVec2 size : sizes) {
        Stage stage(size);
        CAPTURE(size_words(size));
        const Actions gates = press(stage, Screen::take_away, "take away", "Gates (CSV)");
        REQUIRE(find<TakeAway>(gates) != nullptr);
        CHECK(find<TakeAway>(gates)->index == 2);
        CHECK(find<CloseTakeAway>(press(stage, Screen::take_away, "take away", "Back to the summary")) !=
              nullptr);
    }
}

TEST_CASE("screen and help: the instructor's criteria are opened from it") {
    for (const ImVec2 size : {ImVec2{1280, 720}, ImVec2{1024, 768}, ImVec2{1920, 1080}}) {
        Stage stage(size);
        CAPTURE(size_words(size));
        CHECK(find<OpenCriteria>(press(stage, Screen::screen_and_help, "screen and help",
                                       "What counts as stable")) != nullptr);
    }
}
