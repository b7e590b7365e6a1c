// The cards of a drill while they are answered: what is seen now, for how long it has been, and what is said.
#pragma once

#include <optional>

#include "drill/quiz.h"
#include "record/tick_clock.h"
#include "ui/flight_session.h"
#include "ui/replay_session.h"

namespace slopewise {

struct CardSession {
    Quiz quiz;
    Scenario base;          // the aeroplane and the airfield of the cards
    FlightSession seat;     // standing where the card's picture is seen from, or flying its prediction
    double shown_s = 0.0;   // since the card appeared, on the frame's clock
    bool appeared = false;  // the frame that shows it first has passed

    // What is said so far of the present card.
    double mark_m = 0.0;  // along the runway, beyond the aim point
    SaidAnswer predicted;
    bool flies_prediction = false;
    Controls moved;             // the control that the card asks about, moved
    double owed_s = 0.0;        // of that flight
    double marked_tick = -1.0;  // of the approach that is played; negative: no moment is marked
    std::optional<ReplaySession> replay;
};

// The cards dealt and the first of them shown; none where its starts cannot be flown.
std::optional<CardSession> begin_cards(const Drill& drill, const Scenario& base, const Criteria& criteria,
                                       std::uint64_t seed);

// By the wall time since the last frame (s): at most a quarter of a second of it counts, so that a page that
// nobody sees does not use up an exposure.
void advance_cards(CardSession& session, double passed_s);

// What the card is like now.
CardView shown_card(const CardSession& session);

// One of the choices is taken. Nothing happens while the card still moves, after it was answered, and where
// a moment must be marked first.
void choose_answer(CardSession& session, int choice);

// Moves the mark along the runway (m beyond the aim point), within what can be seen of it.
void move_mark(CardSession& session, double beyond_aim_m);

// Marks the moment where the replay stands.
void mark_moment(CardSession& session);

// The mark along the runway stands; a revealed card gives way to the next. False after the last.
bool go_on(CardSession& session);

}  // namespace slopewise
