#include "drill/light_deck.h"

#include <cmath>

#include "base/exact_math.h"
#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/still.h"
#include "review/words.h"
#include "world/sight.h"

namespace slopewise {
namespace {

bool clear_of_changes(const LightSystem& lights, const Point3& eye) {
    for (int i = 0; i < lights.pattern; ++i) {
        const LightUnit& unit = lights.units[static_cast<std::size_t>(i)];
        if (std::abs(unit_eye_angle_rad(unit, eye) - unit.setting_rad) < unit.transition_rad) return false;
    }
    return true;
}

// Far and near equally often by ratio.
double draw_distance_m(Random& random, const Interval& distance_m) {
    const double ratio = exact::log(distance_m.most / distance_m.least);
    return distance_m.least * exact::exp(ratio * next_uniform(random));
}

// Two draws in three fall clear of the changes even of the softest lights, so that the bound is never met.
Point3 draw_eye(Random& random, const LightCards& settings, const Scenario& base) {
    const double distance_m = draw_distance_m(random, settings.distance_m);
    Point3 eye{};
    for (int tries = 0; tries < 1000; ++tries) {
        const double error_rad = settings.most_error_rad * draw_between(random, -1.0, 1.0);
        eye = eye_on_line(base.surroundings.runway, distance_m, error_rad);
        if (clear_of_changes(base.lights, eye)) break;
    }
    return eye;
}

Card card_of(const Scenario& base, const Point3& eye, double exposure_s) {
    const PathDeviation deviation = path_deviation(base.surroundings.runway, eye);
    const int white = white_count(base.lights, eye);
    const std::string seen = light_words(white, base.lights.pattern, base.surroundings.runway.lights.kind);
    Card card;
    card.picture = still_at(base, eye);
    card.picture.lights_shown = true;
    card.exposure_s = exposure_s;
    card.question = "What do the lights say?";
    card.spoken = seen + ", " + distance_phrase(deviation.distance_m) + " from the aim point.";
    card.choices = light_choices(base.lights);
    card.right = light_choice(base.lights, white);
    card.truth_rad = deviation.angle_rad;
    card.truth_m = deviation.offset_m;
    card.distance_m = deviation.distance_m;
    card.reveal = seen + ": " + card.choices[static_cast<std::size_t>(card.right)] + ". The eye was " +
                  path_phrase(deviation.angle_rad, deviation.distance_m) + " at " +
                  distance_phrase(deviation.distance_m) + ".";
    return card;
}

}  // namespace

std::vector<std::string> light_choices(const LightSystem& lights) {
    if (lights.pattern == 2) return {"high", "on path", "low"};
    return {"well high", "slightly high", "on path", "slightly low", "well low"};
}

int light_choice(const LightSystem& lights, int white_count) { return lights.pattern - white_count; }

std::vector<Card> light_deck(const LightCards& settings, int items, const Scenario& base,
                             std::uint64_t seed) {
    Random random{seed};
    std::vector<Card> cards;
    for (int i = 0; i < items; ++i) {
        const Point3 eye = draw_eye(random, settings, base);
        cards.push_back(card_of(base, eye, draw_from(random, settings.exposure_s)));
    }
    return cards;
}

}  // namespace slopewise
