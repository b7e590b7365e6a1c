#include "ui/card_session.h"

#include <algorithm>

#include "base/exact_math.h"
#include "drill/control_deck.h"

namespace slopewise {
namespace {

constexpr double longest_frame_s = 0.25;
// The mark stays where an approach may end: from well before the threshold to the runway's far half.
constexpr double least_mark_m = -600.0, most_mark_m = 900.0;

const Card& present(const CardSession& session) { return session.quiz.cards[present_card(session.quiz)]; }

const ControlCards* control_cards(const CardSession& session) {
    return std::get_if<ControlCards>(&session.quiz.drill.settings);
}

// The eye of this aeroplane there, moving as the picture says.
void stand_at(FlightSession& seat, const Picture& picture, const Point3& eye) {
    FlightState state = seat.scenario.start_state;
    state.pitch_rad = picture.pitch_rad;
    state.x_m = state.z_m = 0.0;
    const Point3 from_reference = eye_position(seat.scenario.aircraft, state);
    state.x_m = eye.x_m - from_reference.x_m;
    state.z_m = eye.z_m - from_reference.z_m;
    state.vx_mps = picture.ground_speed_mps;
    state.vz_mps = picture.ground_speed_mps * exact::tan(picture.path_rad);
    state.flap = picture.flap;
    seat.attempt.flight = seat.before = state;
    seat.attempt.controls.flap = static_cast<std::uint8_t>(picture.flap);
    seat.instruments = settled_instruments(state);
}

void show_card(CardSession& session) {
    const Card& card = present(session);
    session.shown_s = session.owed_s = session.mark_m = 0.0;
    session.marked_tick = -1.0;
    session.appeared = false;
    session.predicted = {};
    session.flies_prediction = false;
    session.replay.reset();
    if (const ControlCards* settings = control_cards(session)) {
        const Scenario scenario = control_scenario(*settings, session.base);
        session.moved = stepped_controls(*settings, scenario, static_cast<ControlStep>(card.control_step));
        session.seat = begin_session(scenario);
    } else if (card.flight >= 0) {
        const FaultFlight& flight = *session.quiz.flights[static_cast<std::size_t>(card.flight)];
        session.replay = begin_replay(flight.recording, flight.scenario, Criteria{}, &flight.track);
        session.replay->marks.resize(1);  // its start; the others would tell
        session.replay->playing = true;
    } else {
        stand_at(session.seat, card.picture, eye_at(card.picture, 0.0));
    }
}

void say(CardSession& session, SaidAnswer said) {
    said.reaction_s = session.shown_s;
    answer(session.quiz, said);
}

// The prediction is flown; then it is judged.
void fly_prediction(CardSession& session, double passed_s) {
    const double run_s = control_cards(session)->run_s;
    session.owed_s += passed_s;
    for (; session.owed_s >= tick_s && time_s(session.seat.attempt) < run_s; session.owed_s -= tick_s)
        tick_session(session.seat, session.moved);
    if (time_s(session.seat.attempt) < run_s) return;
    session.flies_prediction = false;
    answer(session.quiz, session.predicted);
}

}  // namespace

std::optional<CardSession> begin_cards(const Drill& drill, const Scenario& base, const Criteria& criteria,
                                       std::uint64_t seed) {
    CardSession session;
    session.quiz = begin_quiz(drill, base, criteria, seed);
    if (session.quiz.cards.empty()) return std::nullopt;
    session.base = base;
    session.seat = begin_session(base);
    show_card(session);
    return session;
}

void advance_cards(CardSession& session, double passed_s) {
    // What passed before the card was drawn, dealing it among that, is not of its exposure.
    const double counted_s = session.appeared ? std::clamp(passed_s, 0.0, longest_frame_s) : 0.0;
    session.appeared = true;
    if (session.replay) advance_replay(*session.replay, counted_s);
    if (session.flies_prediction) return fly_prediction(session, counted_s);
    if (session.quiz.revealed) return;
    session.shown_s += counted_s;
    const CardView card = shown_card(session);
    if (control_cards(session) == nullptr && card.flight < 0) stand_at(session.seat, card.picture, card.eye);
}

CardView shown_card(const CardSession& session) { return card_view(session.quiz, session.shown_s); }

void choose_answer(CardSession& session, int choice) {
    const CardView card = shown_card(session);
    if (card.revealed || card.moving || session.flies_prediction) return;
    if (choice < 0 || choice >= static_cast<int>(card.choices.size())) return;
    SaidAnswer said;
    said.choice = choice;
    if (card.kind == AnswerKind::moment_and_choice) {
        if (session.marked_tick < 0.0) return;
        said.mark_s = session.marked_tick * tick_s;
        session.replay->playing = false;
    }
    if (control_cards(session) == nullptr) return say(session, said);
    said.reaction_s = session.shown_s;
    session.predicted = said;
    session.flies_prediction = true;
}

void move_mark(CardSession& session, double beyond_aim_m) {
    const CardView card = shown_card(session);
    if (card.kind != AnswerKind::place || card.revealed || card.moving) return;
    session.mark_m = std::clamp(beyond_aim_m, least_mark_m, most_mark_m);
}

void mark_moment(CardSession& session) {
    if (session.replay && !shown_card(session).revealed) session.marked_tick = session.replay->tick;
}

bool go_on(CardSession& session) {
    const CardView card = shown_card(session);
    if (card.revealed) {
        if (is_finished(session.quiz)) return false;
        next_card(session.quiz);
        show_card(session);
    } else if (card.kind == AnswerKind::place && !card.moving) {
        SaidAnswer said;
        said.marked = true;
        said.mark_m = session.mark_m;
        say(session, said);
    }
    return true;
}

}  // namespace slopewise
