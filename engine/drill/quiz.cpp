#include "drill/quiz.h"

#include <cmath>

#include "base/units.h"
#include "drill/control_deck.h"
#include "drill/drill_words.h"
#include "drill/gate_deck.h"
#include "drill/impact_deck.h"
#include "drill/light_deck.h"
#include "drill/picture_deck.h"
#include "drill/quadrant_deck.h"

namespace slopewise {
namespace {

// A mark this near is called right on its card; what is judged is the mean miss (common practice, no source).
constexpr double near_mark_m = m_from_ft(300.0);

// Draws the cards of each kind; a flown drill has none.
struct Dealer {
    Quiz& quiz;
    const Scenario& base;
    const Criteria& criteria;

    int items() const { return quiz.drill.items; }
    void operator()(const LightCards& s) { quiz.cards = light_deck(s, items(), base, quiz.seed); }
    void operator()(const PictureCards& s) { quiz.cards = picture_deck(s, items(), base, quiz.seed); }
    void operator()(const ImpactCards& s) { quiz.cards = impact_deck(s, items(), base, quiz.seed); }
    void operator()(const ControlCards& s) { quiz.cards = control_deck(s, items(), base, quiz.seed); }
    void operator()(const QuadrantCards& s) {
        quiz.cards = quadrant_deck(s, items(), base, criteria.convention, quiz.seed);
    }
    void operator()(const GateCards& s) { quiz.cards = gate_deck(s, items(), base, criteria, quiz.seed); }
    void operator()(const FaultCards& s) {
        FaultDeck deck = fault_deck(s, items(), base, criteria, quiz.seed);
        quiz.cards = std::move(deck.cards);
        quiz.flights = std::move(deck.flights);
    }
    template <class Flown>
    void operator()(const Flown&) {}
};

// The least error asked for: what "high" and "low" stand for.
double least_error_rad(const PictureCards& settings) {
    double least_rad = 1.0;
    for (const double error_rad : settings.errors_rad)
        if (error_rad > 0.0 && error_rad < least_rad) least_rad = error_rad;
    return least_rad;
}

JudgedAnswer judged_place(const Quiz& quiz, const Card& card, const SaidAnswer& said) {
    JudgedAnswer judged{said};
    if (!said.marked) return judged;
    judged.error_m = said.mark_m - card.truth_m;
    judged.error_rad = mark_error_rad(card, quiz.runway, said.mark_m);
    judged.right = std::abs(judged.error_m) < near_mark_m;
    return judged;
}

JudgedAnswer judged_moment(const Quiz& quiz, const Card& card, const SaidAnswer& said) {
    JudgedAnswer judged{said};
    judged.when_right = mark_is_in_time(std::get<FaultCards>(quiz.drill.settings), card, said.mark_s);
    judged.what_right = said.choice == card.right;
    judged.right = judged.when_right && judged.what_right;
    return judged;
}

JudgedAnswer judged_choice(const Quiz& quiz, const Card& card, const SaidAnswer& said) {
    JudgedAnswer judged{said};
    judged.right = said.choice == card.right;
    const auto* pictures = std::get_if<PictureCards>(&quiz.drill.settings);
    if (pictures != nullptr && said.choice >= 0) {
        const double half_rad = least_error_rad(*pictures);
        judged.error_rad = said_rad(said.choice, half_rad) - said_rad(card.right, half_rad);
        judged.error_m = judged.error_rad * card.distance_m;
    }
    return judged;
}

std::string judged_words(const Card& card, const JudgedAnswer& judged) {
    if (card.kind == AnswerKind::place) {
        if (!judged.said.marked) return "Not marked. ";
        return drill_format("Your mark was %.0f ft %s it (%.1f\u00b0). ", std::abs(ft_from_m(judged.error_m)),
                            judged.error_m < 0.0 ? "short of" : "beyond",
                            std::abs(deg_from_rad(judged.error_rad)));
    }
    if (judged.right) return "Right. ";
    if (judged.what_right) return "The fault is right, the moment is not. ";
    if (judged.when_right) return "The moment is right, the fault is not. ";
    if (judged.said.choice < 0) return "Not answered. ";
    return "Not right, you said: " + card.choices[static_cast<std::size_t>(judged.said.choice)] + ". ";
}

}  // namespace

Quiz begin_quiz(const Drill& drill, const Scenario& base, const Criteria& criteria, std::uint64_t seed) {
    Quiz quiz;
    quiz.drill = drill;
    quiz.seed = seed;
    quiz.runway = base.surroundings.runway;
    std::visit(Dealer{quiz, base, criteria}, quiz.drill.settings);
    return quiz;
}

std::size_t present_card(const Quiz& quiz) {
    const std::size_t answered = quiz.answers.size();
    return answered > 0 && (quiz.revealed || is_finished(quiz)) ? answered - 1 : answered;
}

void answer(Quiz& quiz, const SaidAnswer& given) {
    if (quiz.revealed || is_finished(quiz)) return;
    const Card& card = quiz.cards[present_card(quiz)];
    SaidAnswer said = given;
    if (said.choice >= static_cast<int>(card.choices.size())) said.choice = -1;
    switch (card.kind) {
    case AnswerKind::choice: quiz.answers.push_back(judged_choice(quiz, card, said)); break;
    case AnswerKind::place: quiz.answers.push_back(judged_place(quiz, card, said)); break;
    case AnswerKind::moment_and_choice: quiz.answers.push_back(judged_moment(quiz, card, said)); break;
    }
    quiz.revealed = true;
}

void next_card(Quiz& quiz) { quiz.revealed = false; }

CardView card_view(const Quiz& quiz, double shown_s) {
    CardView view;
    if (quiz.cards.empty()) return view;
    const std::size_t place = present_card(quiz);
    const Card& card = quiz.cards[place];
    view.number = static_cast<int>(place) + 1;
    view.of = static_cast<int>(quiz.cards.size());
    view.revealed = place < quiz.answers.size();
    const double exposed_s = shown_s - card.picture.clip_s;
    view.picture_shown = view.revealed || card.exposure_s == 0.0 || exposed_s < card.exposure_s;
    view.facts_shown = view.picture_shown;
    view.picture = card.picture;
    view.moving = !view.revealed && shown_s < card.picture.clip_s;
    view.eye = view.moving ? eye_at(card.picture, shown_s) : card.picture.eye;
    view.kind = card.kind;
    view.question = card.question;
    view.facts = card.facts;
    view.choices = card.choices;
    view.spoken = card.spoken;
    view.flight = card.flight;
    view.control_step = card.control_step;
    if (!view.revealed) return view;
    const JudgedAnswer& judged = quiz.answers[place];
    view.right = judged.right;
    view.right_choice = card.kind == AnswerKind::place ? -1 : card.right;
    view.true_place_m = card.truth_m;
    view.reveal = judged_words(card, judged) + card.reveal;
    return view;
}

std::vector<std::string> card_lines(const CardView& view) {
    std::vector<std::string> lines{drill_format("Card %d of %d", view.number, view.of)};
    if (view.picture_shown && !view.spoken.empty()) lines.push_back(view.spoken);
    lines.push_back(view.question);
    for (std::size_t i = 0; i < view.choices.size(); ++i)
        lines.push_back(drill_format("%zu: ", i + 1) + view.choices[i]);
    if (view.revealed) lines.push_back(view.reveal);
    return lines;
}

}  // namespace slopewise
