#include "drill/picture_deck.h"

#include "base/units.h"
#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/still.h"
#include "world/sight.h"

namespace slopewise {
namespace {

constexpr double on_path_rad = rad_from_deg(0.05);

int choice_of(double error_rad) {
    return error_rad > on_path_rad ? picture_high : (error_rad < -on_path_rad ? picture_low : picture_on);
}

// What the eye could have seen: the runway's shape, and how far the aim point stands below the horizon.
std::string looks(int choice) {
    constexpr const char* words[] = {"The runway stood long and steep", "The runway had its usual shape",
                                     "The runway lay short and flat"};
    return words[choice];
}

Card card_of(const PictureCards& settings, const Scenario& base, double distance_m, double error_rad) {
    const Runway& runway = base.surroundings.runway;
    Card card;
    // The flight follows the nominal slope, so that the attitude does not give the answer away.
    card.picture = still_at(base, eye_on_line(runway, distance_m, error_rad), -runway.lights.nominal_path_rad,
                            base.lesson.target_cas_mps);
    card.picture.horizon_shown = settings.horizon_shown;
    card.exposure_s = settings.exposure_s;
    card.question = "High, on the path, or low?";
    card.choices = {"high", "on path", "low"};
    card.right = choice_of(error_rad);
    card.truth_rad = error_rad;
    card.distance_m = distance_m;
    const double below_deg = deg_from_rad(runway.lights.nominal_path_rad + error_rad);
    card.spoken = drill_format("Runway %s ahead, the aim point %.1f\u00b0 below the horizon.",
                               distance_phrase(distance_m).c_str(), below_deg);
    card.reveal = sentence(path_phrase(error_rad, distance_m)) + " at " + distance_phrase(distance_m) + ". " +
                  looks(card.right) +
                  drill_format("; the aim point stood %.1f\u00b0 below the horizon, %.1f\u00b0 on the path.",
                               below_deg, deg_from_rad(runway.lights.nominal_path_rad));
    return card;
}

}  // namespace

std::vector<Card> picture_deck(const PictureCards& settings, int items, const Scenario& base,
                               std::uint64_t seed) {
    Random random{seed};
    const std::size_t errors = settings.errors_rad.size();
    std::vector<Card> cards;
    for (const std::size_t i :
         draw_rounds(random, settings.distances_m.size() * errors, static_cast<std::size_t>(items)))
        cards.push_back(
            card_of(settings, base, settings.distances_m[i / errors], settings.errors_rad[i % errors]));
    return cards;
}

double said_rad(int choice, double half_rad) {
    return choice == picture_high ? half_rad : (choice == picture_low ? -half_rad : 0.0);
}

}  // namespace slopewise
