#include "tests/ui/drill_player.h"

#include <doctest/doctest.h>

namespace slopewise::test {

void DrillPlayer::begin(std::string_view id, std::uint64_t seed) {
    apply(app, OpenDrills{}, host);
    apply(app, OpenDrill{std::string(id)}, host);
    begin_drill(app, seed, host);
}

void DrillPlayer::wait(double seconds) {
    constexpr double frame_s = 1.0 / 30.0;
    advance_cards(*app.drills.cards, 0.0);  // the frame that shows the card first
    for (double left_s = seconds; left_s > 1e-9; left_s -= frame_s)
        advance_cards(*app.drills.cards, std::min(frame_s, left_s));
}

void DrillPlayer::answer_card(Answerer answerer, Random& random) {
    CardSession& cards = *app.drills.cards;
    const Card& card = cards.quiz.cards[present_card(cards.quiz)];
    const SaidAnswer said = answerer(cards.quiz, card, random);
    wait(card.picture.clip_s + std::max(0.0, said.reaction_s));
    if (card.kind == AnswerKind::place) {
        apply(app, MovePlaceMark{said.mark_m, false}, host);
        return go_on();
    }
    if (card.kind == AnswerKind::moment_and_choice) {
        apply(app, DriveReplay{DriveReplay::Wish::seek, said.mark_s / tick_s}, host);
        apply(app, DoWithDrill{DoWithDrill::Wish::mark_moment}, host);
    }
    apply(app, AnswerCard{said.choice}, host);
    for (int i = 0; i < 1000 && !cards.quiz.revealed; ++i) wait(0.1);  // a prediction is flown first
}

const DrillResult& DrillPlayer::play_cards(Answerer answerer, std::uint64_t seed) {
    Random random{seed + 1000};
    for (int i = 0; i < 300 && app.drills.cards; ++i) {
        answer_card(answerer, random);
        REQUIRE(app.drills.cards->quiz.revealed);
        go_on();
    }
    REQUIRE(app.screen == Screen::drill_result);
    return *app.drills.result;
}

const DrillResult& DrillPlayer::fly(StudentHands hands) {
    const Scenario& start = app.flight->scenario;
    Student student{start.start_trim.controls, start.start_state.pitch_rad, {}};
    constexpr int ten_minutes = 10 * 60 * 120;
    double wall_s = 100.0;
    app.clock.due(wall_s, false);
    for (int i = 0; i < ten_minutes && app.drills.flown; ++i) {
        const Controls held = hands(*app.drills.flown, app.flight->attempt, student);
        advance_drill_flight(app, held, wall_s += tick_s, host);
    }
    REQUIRE(app.screen == Screen::drill_result);
    return *app.drills.result;
}

}  // namespace slopewise::test
