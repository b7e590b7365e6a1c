// One drill before it begins, and its items.
#include <cmath>

#include "base/units.h"
#include "drill/drill_words.h"
#include "ui/app.h"
#include "ui/drill_views.h"
#include "ui/format.h"
#include "ui/replay_view.h"
#include "ui/views.h"

namespace slopewise {
namespace {

// Nothing of the panel is kept back here but what the card does not show.
Display display_for(const Settings& settings, bool side_shown) {
    Display shown = settings.display;
    shown.eyes_outside = false;
    shown.side_profile = side_shown;
    shown.covered = shown.failed = {};
    return shown;
}

// Of a still the airspeed alone, and at a gate what else can be read off a still panel.
InstrumentSet covered_by(DrillKind kind) {
    InstrumentSet covered;
    for (const InstrumentName& one : instrument_names) covered.*one.which = true;
    covered.airspeed = false;
    if (kind == DrillKind::gate_call) covered.altimeter = covered.vertical_speed = covered.flap = false;
    return covered;
}

// Where the horizon is not to help, haze hides it: of the sky's brightness a fifth is left at the aim point.
void hide_horizon(const Card& card, SceneView& scene) { scene.sky.visibility_m = 2.5 * card.distance_m; }

void see_still(const App& app, const CardSession& session, const CardView& card, View& view) {
    FlightView& flight = view.flight;
    Display display = display_for(app.settings, false);
    if (card.picture.airspeed_shown) display.covered = covered_by(kind_of(session.quiz.drill));
    flight_view(session.seat, display, false, 1.0, flight);
    if (!card.picture.lights_shown) flight.scene.lamp_count = 0;
    if (!card.picture.horizon_shown)
        hide_horizon(session.quiz.cards[present_card(session.quiz)], flight.scene);
    flight.instruments.airspeed_kt = kt_from_mps(card.picture.cas_mps);
    flight.instruments.stall_warning = false;
    flight.caption.clear();
}

void see_card(const App& app, const CardSession& session, const CardView& card, View& view) {
    DrillView& sheet = view.drill;
    const bool words_old = view.edition != app.edition;
    view.edition = app.edition;
    sheet.picture_shown = card.picture_shown;
    if (session.replay) {
        if (words_old) replay_words(*session.replay, app.settings, view);
        replay_view(*session.replay, app.settings, view);
        view.replay.marks = session.replay->marks;
        sheet.replayed = sheet.side_shown = sheet.dials_shown = true;
        return;
    }
    if (words_old) flight_words(session.seat, app.settings, view.flight);
    if (kind_of(session.quiz.drill) != DrillKind::one_control) {
        sheet.dials_shown = card.picture_shown && card.picture.airspeed_shown;
        return see_still(app, session, card, view);
    }
    sheet.dials_shown = true;
    sheet.side_shown = session.flies_prediction || card.revealed;
    flight_view(session.seat, display_for(app.settings, sheet.side_shown), false, 1.0, view.flight);
    // A prediction is made from what is known of the aeroplane, not read off the lights.
    view.flight.caption.clear();
}

std::string clock_words(double tick) { return number_words(tick * tick_s, 1) + " s"; }

std::string state_words(const CardSession& session, const CardView& card) {
    if (card.moving) return "Watch: the picture moves.";
    if (card.kind == AnswerKind::place) return "Mark: " + place_phrase(session.mark_m) + ".";
    if (session.replay) {
        if (session.marked_tick >= 0.0) return "Marked at " + clock_words(session.marked_tick) + ".";
        return card.revealed ? "" : "Press M, or the button, where the fault shows. Then say which it is.";
    }
    if (session.flies_prediction) {
        const double whole_s = std::floor(time_s(session.seat.attempt));
        return "It is flown: " + number_words(whole_s) + " s.";
    }
    return "";
}

std::string go_on_words(const CardSession& session, const CardView& card) {
    if (card.revealed) return is_finished(session.quiz) ? "The result" : "Next";
    return card.kind == AnswerKind::place && !card.moving ? "Mark it here" : "";
}

void card_sheet(const App& app, const CardSession& session, View& view) {
    DrillView& sheet = view.drill;
    const CardView card = shown_card(session);
    see_card(app, session, card, view);
    sheet.stage = card.revealed              ? DrillView::Stage::revealed
                  : session.flies_prediction ? DrillView::Stage::flown
                                             : DrillView::Stage::asked;
    sheet.place = std::to_string(card.number) + " of " + std::to_string(card.of);
    sheet.question = card.question;
    if (card.facts_shown) sheet.facts = card.facts;
    if (card.picture_shown) sheet.spoken = card.spoken;
    else sheet.gone = "The picture is gone. Answer from what you saw.";
    sheet.choices = card.choices;
    sheet.asks_place = card.kind == AnswerKind::place && !card.moving;
    sheet.asks_moment = session.replay && !card.revealed;
    sheet.playing = session.replay && session.replay->playing;
    sheet.can_answer = !card.revealed && !card.moving && !session.flies_prediction &&
                       (!sheet.asks_moment || session.marked_tick >= 0.0);
    sheet.mark_m = session.mark_m;
    sheet.said = session.predicted.choice;
    sheet.state = state_words(session, card);
    sheet.go_on = go_on_words(session, card);
    if (!card.revealed) return;
    const JudgedAnswer& judged = session.quiz.answers[present_card(session.quiz)];
    sheet.right = card.right;
    sheet.right_choice = card.right_choice;
    sheet.said = judged.said.choice;
    sheet.true_place_shown = card.kind == AnswerKind::place;
    sheet.true_place_m = card.true_place_m;
    sheet.reveal = card.reveal;
    if (judged.said.reaction_s >= 0.0)
        sheet.reaction = "Answered after " + number_words(judged.said.reaction_s, 1) + " s.";
}

void told_sheet(const App& app, const FlownDrill& flown, View& view) {
    DrillView& sheet = view.drill;
    const FlightSession& session = *app.flight;
    if (view.edition != app.edition) flight_words(session, app.settings, view.flight);
    view.edition = app.edition;
    flight_view(session, display_for(app.settings, true), false, app.clock.fraction(), view.flight);
    const FlownView shown = flown_view(flown, session.attempt);
    sheet.stage = DrillView::Stage::told;
    sheet.picture_shown = sheet.dials_shown = sheet.side_shown = true;
    sheet.share = shown.share + ".";
    sheet.task = shown.say;
    sheet.question = "What should the pilot do now?";
    for (const std::string_view words : command_words) sheet.choices.emplace_back(words);
    sheet.can_answer = !session.paused;
    sheet.playing = !session.paused;
    sheet.state = session.paused ? "Paused." : "";
}

void about_sheet(const App& app, const Drill& drill, DrillView& sheet) {
    sheet.aim = drill.aim;
    sheet.why = drill.why;
    sheet.how = drill.how;
    sheet.mistakes = drill.mistakes;
    sheet.source = source_text(drill.source);
    sheet.trouble = app.drills.trouble;
    sheet.place = is_flown(drill) ? "One flight" : std::to_string(drill.items) + " items";
    for (const DrillCriterion& one : drill.criteria)
        sheet.passes.push_back(criterion_text(one) + " (" + source_text(one.source) + ")");
    sheet.go_on = "Begin";
}

}  // namespace

void drill_view(const App& app, View& view) {
    const Drill& drill = *find_drill(app.catalog, app.drills.id);
    DrillView& sheet = view.drill;
    sheet = {};
    sheet.title = drill.title;
    sheet.back = app.drills.behind == Screen::drills ? "Drills" : "Back";
    if (app.drills.flown) told_sheet(app, *app.drills.flown, view);
    else if (app.drills.cards) card_sheet(app, *app.drills.cards, view);
    else about_sheet(app, drill, sheet);
}

}  // namespace slopewise
