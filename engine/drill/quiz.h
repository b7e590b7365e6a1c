// The cards of one drill being answered. No clock: the caller says how long an answer took.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "drill/card.h"
#include "drill/fault_deck.h"
#include "drill/result.h"

namespace slopewise {

// What a student says to a card; what its kind does not ask for is left alone.
struct SaidAnswer {
    int choice = -1;           // none: passed over, which is not right
    double mark_m = 0.0;       // of a place: beyond the aim point, negative short
    bool marked = false;       // a place was marked
    double mark_s = -1.0;      // of a moment: time of the approach played
    double reaction_s = -1.0;  // since the card appeared; -1: not answered
};

struct JudgedAnswer {
    SaidAnswer said;
    bool right = false;                           // of a place: within the range that the criterion gives
    bool when_right = false, what_right = false;  // of a moment and a choice
    double error_rad = 0.0;  // of what was said from the truth, positive too high or too far
    double error_m = 0.0;    // likewise, as a height or along the runway
};

struct Quiz {
    Drill drill;
    std::uint64_t seed = 0;
    Runway runway;
    std::vector<Card> cards;
    std::vector<std::shared_ptr<const FaultFlight>> flights;
    std::vector<JudgedAnswer> answers;
    bool revealed = false;  // the last answer's truth is being shown
};

// The cards of a drill that has cards, drawn by the seed. `base` gives the aeroplane, the runway, its lights
// and the target speed. Check that there are cards: there are none where its starts cannot be flown.
Quiz begin_quiz(const Drill& drill, const Scenario& base, const Criteria& criteria, std::uint64_t seed);

// Judges the present card and reveals it. Does nothing while a card is revealed, or after the last.
void answer(Quiz& quiz, const SaidAnswer& said);

// On to the next card.
void next_card(Quiz& quiz);

inline bool is_finished(const Quiz& quiz) { return quiz.answers.size() == quiz.cards.size(); }

// The place of the card shown; that of the last when all are answered.
std::size_t present_card(const Quiz& quiz);

// ---- what to show now ----

struct CardView {
    int number = 0, of = 0;      // "3 of 40"
    bool picture_shown = false;  // false once the exposure is over, until it is revealed
    Picture picture;
    Point3 eye;           // at this time of a clip
    bool moving = false;  // within a clip: not to be answered yet
    AnswerKind kind = AnswerKind::choice;
    std::string question;
    std::vector<std::string> facts;
    bool facts_shown = false;  // as the picture
    std::vector<std::string> choices;
    std::string spoken;
    int flight = -1;  // of Quiz::flights, to be played
    int control_step = -1;

    bool revealed = false;  // what follows is known only then
    bool right = false;
    int right_choice = -1;
    double true_place_m = 0.0;  // beyond the aim point
    std::string reveal;         // "Right. ..." or "Not right, you said: low. ..."
};

// At a time since the card appeared (s).
CardView card_view(const Quiz& quiz, double shown_s);

// The same as lines, for a screen reader.
std::vector<std::string> card_lines(const CardView& view);

// ---- what it came to ----

// Over all the answers so far, or the last `judged_over` of them.
DrillResult result_of(const Quiz& quiz);

}  // namespace slopewise
