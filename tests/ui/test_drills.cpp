// The drills played through the program: a model student of the right skill passes each, one with a fault
// fails it for the right reason, nothing tells an answer early, and what came of it is kept.
#include <algorithm>
#include <string>

#include "tests/check.h"
#include "tests/ui/drill_player.h"
#include "tests/wish_in.h"
#include "ui/input.h"
#include "ui/logbook_views.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool met(const DrillResult& result, Measure measure) {
    const std::string words(words_of(measure).words);
    const auto found = std::ranges::find_if(
        result.criteria, [&](const JudgedCriterion& one) { return one.asked.starts_with(words); });
    REQUIRE(found != result.criteria.end());
    return found->met;
}

std::string told(const DrillResult& result) {
    std::string all;
    for (const std::string& line : result_lines(result)) all += line + "; ";
    return all;
}

struct CardRow {
    const char* drill;
    Answerer right, wrong;
    Measure fails;  // what the wrong one does not meet
};

const CardRow card_rows[] = {
    {"read_the_lights", says::right, says::red_for_white, Measure::right_percent},
    {"read_the_picture", says::sees_angle, says::high_is_normal, Measure::bias_deg},
    {"where_would_we_hit", says::marks_still_point, says::marks_aim_point, Measure::impact_error_ft},
    {"one_control", says::right, says::pull_is_climb, Measure::right_percent},
    {"quadrant_snap", says::right, says::nose_for_all, Measure::right_percent},
    {"gate_call", says::right, says::presses_on, Measure::misses},
    {"find_the_fault", says::sees_fault, says::sees_late, Measure::right_percent},
};

struct FlownRow {
    const char* drill;
    StudentHands right, wrong;
    Measure fails;
};

const FlownRow flown_rows[] = {
    {"speed_by_attitude", flies::speed_by_attitude, flies::speed_untrimmed, Measure::retrim_s},
    {"path_by_power", flies::path_by_power, flies::lever_untouched, Measure::path_percent},
    {"go_around", flies::go_around, flies::go_around_late, Measure::decision_s},
    {"student_tells", flies::tells_well, flies::tells_nothing, Measure::path_percent},
};

bool has(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

RawInput pressed(Key key) {
    RawInput raw;
    raw.pressed[static_cast<std::size_t>(key)] = true;
    return raw;
}

}  // namespace

TEST_CASE(
    "drills: every drill of cards is played through the program, passed by skill and failed by its fault") {
    for (const CardRow& row : card_rows) {
        CAPTURE(row.drill);
        DrillPlayer good;
        good.begin(row.drill);
        const DrillResult& passed = good.play_cards(row.right, 1);
        CHECK_MESSAGE(passed.passed(), told(passed));
        CHECK(has(good.text(), "Passed: every limit was met."));
        DrillPlayer poor;
        poor.begin(row.drill);
        const DrillResult& failed = poor.play_cards(row.wrong, 1);
        CHECK(failed.finished);
        CHECK_MESSAGE(!met(failed, row.fails), told(failed));
        CHECK(has(poor.text(), "Not yet"));
    }
}

TEST_CASE("drills: every drill that is flown is flown through the program, passed and failed likewise") {
    for (const FlownRow& row : flown_rows) {
        CAPTURE(row.drill);
        DrillPlayer good;
        good.begin(row.drill);
        const DrillResult& passed = good.fly(row.right);
        CHECK_MESSAGE(passed.passed(), told(passed));
        DrillPlayer poor;
        poor.begin(row.drill);
        const DrillResult& failed = poor.fly(row.wrong);
        CHECK_MESSAGE(!met(failed, row.fails), told(failed));
        CHECK_FALSE(poor.app.flight.has_value());  // it is no attempt, and leaves none behind
        CHECK(poor.host.store.rows.empty());
    }
}

TEST_CASE("drills: the text tells nothing of what is right before the answer, and all of it after") {
    for (const CardRow& row : card_rows) {
        CAPTURE(row.drill);
        DrillPlayer player;
        player.begin(row.drill);
        Random random{7};
        const CardSession& cards = *player.app.drills.cards;
        for (int i = 0; i < 3; ++i) {
            const std::string& reveal = cards.quiz.cards[present_card(cards.quiz)].reveal;
            REQUIRE_FALSE(reveal.empty());
            const View before = make_view(player.app);
            CHECK_FALSE(has(before.mirror.screen, reveal));
            CHECK(before.drill.right_choice == -1);
            CHECK_FALSE(before.drill.true_place_shown);
            player.answer_card(row.right, random);
            CHECK(has(player.text(), reveal));
            player.go_on();
        }
    }
}

TEST_CASE("drills: the lights are shown for their exposure on the frame's clock, then they are gone") {
    DrillPlayer player;
    player.begin("read_the_lights");
    const CardSession& cards = *player.app.drills.cards;
    const double exposure_s = cards.quiz.cards.front().exposure_s;
    player.wait(exposure_s - 0.02);
    CHECK(make_view(player.app).drill.picture_shown);
    CHECK(make_view(player.app).flight.scene.lamp_count > 0);
    player.wait(0.04);
    CHECK_FALSE(make_view(player.app).drill.picture_shown);
    CHECK(has(player.text(), "The picture is gone"));
    CHECK_FALSE(has(player.text(), cards.quiz.cards.front().spoken));
    CHECK(make_view(player.app).drill.can_answer);
    const double before_s = cards.shown_s;
    advance_cards(*player.app.drills.cards, 60.0);  // a page that nobody sees
    CHECK_NEAR(cards.shown_s - before_s, 0.25, 1e-9);
}

TEST_CASE("drills: the eye of a card stands where the card has it, and the dial shows its airspeed") {
    DrillPlayer player;
    player.begin("quadrant_snap");
    const Card& card = player.app.drills.cards->quiz.cards.front();
    const View view = make_view(player.app);
    CHECK_NEAR(view.flight.scene.camera.x_m, card.picture.eye.x_m, 1e-6);
    CHECK_NEAR(view.flight.scene.camera.z_m, card.picture.eye.z_m, 1e-6);
    CHECK_NEAR(view.flight.instruments.airspeed_kt, kt_from_mps(card.picture.cas_mps), 1e-9);
    CHECK(view.flight.scene.lamp_count == 4);  // the lights and the dial are what is read
    CHECK(view.flight.instruments.covered.altimeter);
}

TEST_CASE(
    "drills: a mark waits until the picture stands, moves by the arrows, and its miss is told in feet") {
    DrillPlayer player;
    player.begin("where_would_we_hit");
    const CardSession& cards = *player.app.drills.cards;
    apply(player.app, MovePlaceMark{100.0, false}, player.host);
    CHECK(cards.mark_m == 0.0);
    player.wait(cards.quiz.cards.front().picture.clip_s + 0.1);
    for (const Action& action : read_shortcuts(pressed(Key::up), Screen::drill))
        apply(player.app, action, player.host);
    CHECK_NEAR(cards.mark_m, 60.0, 1e-9);
    for (const Action& action : read_shortcuts(pressed(Key::left), Screen::drill))
        apply(player.app, action, player.host);
    CHECK_NEAR(cards.mark_m, 45.0, 1e-9);
    player.go_on();
    CHECK(has(player.text(), "Your mark was"));
    CHECK(has(player.text(), " ft "));
    CHECK(make_view(player.app).drill.true_place_shown);
}

TEST_CASE("drills: a prediction is flown for ten seconds before it is judged") {
    DrillPlayer player;
    player.begin("one_control");
    player.wait(1.0);
    apply(player.app, AnswerCard{0}, player.host);
    const CardSession& cards = *player.app.drills.cards;
    player.wait(9.5);
    CHECK_FALSE(cards.quiz.revealed);
    CHECK(make_view(player.app).drill.side_shown);
    CHECK(make_view(player.app).flight.side_profile.flown.size() > 10);
    player.wait(0.6);
    CHECK(cards.quiz.revealed);
    CHECK_NEAR(time_s(cards.seat.attempt), 10.0, 0.01);  // a tick
    CHECK_NEAR(cards.quiz.answers.front().said.reaction_s, 1.0, 1e-6);
}

TEST_CASE(
    "drills: a fault is named only after its moment is marked, and the replay shows no marks that tell") {
    DrillPlayer player;
    player.begin("find_the_fault");
    const CardSession& cards = *player.app.drills.cards;
    CHECK(make_view(player.app).replay.marks.size() == 1);
    apply(player.app, AnswerCard{0}, player.host);
    CHECK_FALSE(cards.quiz.revealed);
    player.wait(2.0);
    apply(player.app, DoWithDrill{DoWithDrill::Wish::mark_moment}, player.host);
    apply(player.app, AnswerCard{0}, player.host);
    CHECK(cards.quiz.revealed);
}

TEST_CASE("drills: numbers, Escape and D are heard where they belong") {
    CHECK(wish_in<AnswerCard>(read_shortcuts(pressed(Key::five), Screen::drill).front())->choice == 4);
    CHECK(wish_in<DoWithDrill>(read_shortcuts(pressed(Key::escape), Screen::drill).front())->wish ==
          DoWithDrill::Wish::leave);
    CHECK(wish_in<OpenDrills>(read_shortcuts(pressed(Key::d), Screen::choices).front()) != nullptr);
    DrillPlayer player;
    player.begin("path_by_power");
    CHECK(player.app.screen == Screen::flight);
    CHECK(has(player.text(), "You have power"));
    apply(player.app, GoToChoices{}, player.host);
    CHECK(player.app.screen == Screen::drills);
    CHECK_FALSE(player.app.drills.flown.has_value());
    CHECK(player.app.drills.kept.empty());  // what was not finished is not kept
}

TEST_CASE("drills: a result is kept for its student, read again, and is evidence on the progress sheet") {
    DrillPlayer player;
    player.app.settings.student = "Kestrel 7";
    player.begin("read_the_lights", 5);
    player.play_cards(says::right, 5);
    App again = make_app(shipped(), player.host);
    REQUIRE(again.drills.kept.size() == 1);
    CHECK(again.drills.kept.front().student == "Kestrel 7");
    CHECK(again.drills.kept.front().result.passed());
    again.settings.student = "Kestrel 7";
    apply(again, OpenProgress{}, player.host);
    const auto complete = [&] {
        const ProgressView sheet = make_view(again).progress;
        return std::ranges::count_if(sheet.evidence, [](const auto& item) { return item.complete; });
    };
    const auto with_the_lights = complete();
    again.settings.student = "Wren 2";  // who has done nothing yet
    CHECK(with_the_lights == complete() + 1);
}

TEST_CASE("drills: a damaged line is told, put aside, and costs itself alone") {
    DrillPlayer player;
    player.begin("gate_call");
    player.play_cards(says::right, 1);
    std::string& text = player.host.texts[std::string(drill_results_key)];
    text = "{\"student\":\"x\",\"result\":{\"kind\":1}}\n" + text;
    const std::string whole = text;
    const App again = make_app(shipped(), player.host);
    CHECK(again.drills.kept.size() == 1);
    CHECK(has(again.drills.trouble, "cannot be read"));
    CHECK(player.host.texts[std::string(damaged_drill_results_key)] == whole);
}
