#include "drill/impact_deck.h"

#include "base/exact_math.h"
#include "base/units.h"
#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/still.h"
#include "review/aim_point.h"

namespace slopewise {
namespace {

// From each distance a point in each quarter of the range, so that no sequence is easy: one who always marks
// the aim point must be far off somewhere.
constexpr std::size_t quarters = 4;

Card card_of(const ImpactCards& settings, const Scenario& base, double distance_m, std::size_t quarter,
             Random& random) {
    const Runway& runway = base.surroundings.runway;
    const double error_rad = settings.most_error_rad * draw_between(random, -1.0, 1.0);
    const double share = (static_cast<double>(quarter) + next_uniform(random)) / double(quarters);
    const double wanted_m = lerp(settings.beyond_aim_m.least, settings.beyond_aim_m.most, share);
    const Point3 eye = eye_on_line(runway, distance_m, error_rad);
    const double height_m = eye.z_m - aim_point(runway).z_m;
    const double path_rad = exact::atan2(height_m, distance_m + wanted_m);
    Card card;
    card.kind = AnswerKind::place;
    card.picture = still_at(base, eye, -path_rad, base.lesson.target_cas_mps);
    card.picture.clip_s = settings.clip_s;
    card.question = "Where would we hit, flying straight on? Mark the point that stood still.";
    card.distance_m = distance_m;
    card.truth_rad = path_rad;
    card.truth_m = impact_beyond_aim_m(height_m, distance_m, 1.0, exact::tan(path_rad));
    card.spoken =
        drill_format("Stopped %s from the aim point, %.0f feet above it, descending at %.1f\u00b0.",
                     distance_phrase(distance_m).c_str(), ft_from_m(height_m), deg_from_rad(path_rad));
    card.reveal = drill_format("Descending at %.1f\u00b0 from %s, the path met the runway ",
                               deg_from_rad(path_rad), distance_phrase(distance_m).c_str()) +
                  place_phrase(card.truth_m) + ".";
    return card;
}

}  // namespace

std::vector<Card> impact_deck(const ImpactCards& settings, int items, const Scenario& base,
                              std::uint64_t seed) {
    Random random{seed};
    std::vector<Card> cards;
    for (const std::size_t i :
         draw_rounds(random, quarters * settings.distances_m.size(), static_cast<std::size_t>(items)))
        cards.push_back(card_of(settings, base, settings.distances_m[i / quarters], i % quarters, random));
    return cards;
}

double mark_error_rad(const Card& card, const Runway& runway, double marked_beyond_m) {
    const double height_m = card.picture.eye.z_m - aim_point(runway).z_m;
    return card.truth_rad - exact::atan2(height_m, card.distance_m + marked_beyond_m);
}

}  // namespace slopewise
