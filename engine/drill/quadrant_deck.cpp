#include "drill/quadrant_deck.h"

#include <cmath>

#include "base/units.h"
#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/still.h"

namespace slopewise {
namespace {

constexpr Quadrant corners[] = {Quadrant::high_fast, Quadrant::high_slow, Quadrant::low_fast,
                                Quadrant::low_slow};

bool is_high(Quadrant quadrant) { return quadrant == Quadrant::high_fast || quadrant == Quadrant::high_slow; }
bool is_fast(Quadrant quadrant) { return quadrant == Quadrant::high_fast || quadrant == Quadrant::low_fast; }
bool is_power(FirstAction action) {
    return action == FirstAction::more_power || action == FirstAction::less_power;
}

// Why, and what comes next, in the school's words.
std::string reason(FirstAction action, Convention convention) {
    if (is_power(action))
        return action == FirstAction::more_power
                   ? "Too little energy: power first, then the attitude for the speed."
                   : "Too much energy: power off first, then the attitude for the speed.";
    switch (convention) {
    case Convention::power_for_path:
        return "The nose mends the speed, and the path comes along; then set the power for the path.";
    case Convention::pitch_for_path:
        return "The nose mends the path, and the speed comes along; then set the power for the speed.";
    case Convention::both: break;
    }
    return "Height and speed change places by the nose; then set the power.";
}

Card card_of(const QuadrantCards& settings, const Scenario& base, Quadrant quadrant, Convention convention,
             Random& random) {
    const double distance_m = settings.distances_m[draw_index(random, settings.distances_m.size())];
    const double error_rad = (is_high(quadrant) ? 1.0 : -1.0) * draw_from(random, settings.error_rad);
    const double off_mps = (is_fast(quadrant) ? 1.0 : -1.0) * draw_from(random, settings.speed_error_mps);
    const double target_mps = base.lesson.target_cas_mps;
    const Runway& runway = base.surroundings.runway;
    const FirstAction action = first_action(quadrant);
    Card card;
    card.picture = still_at(base, eye_on_line(runway, distance_m, error_rad), -runway.lights.nominal_path_rad,
                            target_mps + off_mps);
    card.picture.lights_shown = true;
    card.picture.airspeed_shown = true;
    card.exposure_s = settings.exposure_s;
    card.question = "What do you move first?";
    card.facts = {drill_format("Airspeed %.0f kt, target %.0f", kt_from_mps(target_mps + off_mps),
                               kt_from_mps(target_mps))};
    for (int i = 0; i < 4; ++i) card.choices.push_back(action_words(static_cast<FirstAction>(i), convention));
    card.right = static_cast<int>(action);
    card.truth_rad = error_rad;
    card.distance_m = distance_m;
    const std::string state =
        path_phrase(error_rad, distance_m) +
        drill_format(", %.0f kt %s", std::abs(kt_from_mps(off_mps)), off_mps < 0.0 ? "slow" : "fast");
    card.spoken = state + ".";
    card.reveal =
        state + ": " + card.choices[static_cast<std::size_t>(card.right)] + ". " + reason(action, convention);
    return card;
}

}  // namespace

FirstAction first_action(Quadrant quadrant) {
    if (is_high(quadrant) == is_fast(quadrant))
        return is_high(quadrant) ? FirstAction::less_power : FirstAction::more_power;
    return is_high(quadrant) ? FirstAction::nose_down : FirstAction::nose_up;
}

std::string action_words(FirstAction action, Convention convention) {
    constexpr const char* words[] = {"more power", "less power", "nose up", "nose down"};
    const std::string plain = words[static_cast<std::size_t>(action)];
    if (convention == Convention::both) return plain;
    const bool for_path = is_power(action) == (convention == Convention::power_for_path);
    return plain + (for_path ? ", for the path" : ", for the speed");
}

std::vector<Card> quadrant_deck(const QuadrantCards& settings, int items, const Scenario& base,
                                Convention convention, std::uint64_t seed) {
    Random random{seed};
    std::vector<Card> cards;
    for (const std::size_t i : draw_rounds(random, std::size(corners), static_cast<std::size_t>(items)))
        cards.push_back(card_of(settings, base, corners[i], convention, random));
    return cards;
}

}  // namespace slopewise
