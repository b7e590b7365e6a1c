// The lamps as they are seen from the approach, left to right, with their words.
#include <algorithm>

#include "review/words.h"
#include "ui/views.h"

namespace slopewise {
namespace {

std::ptrdiff_t white_lamps(const LightPicture& picture) {
    return std::count_if(picture.white_fraction.begin(), picture.white_fraction.end(),
                         [](double fraction) { return fraction > 0.5; });
}

}  // namespace

void light_picture(const Scenario& scenario, const std::array<double, 4>& from_inner, LightPicture& picture) {
    const auto white_before = white_lamps(picture);
    const std::size_t lamps_before = picture.white_fraction.size();
    picture.white_fraction.clear();
    for (const double fraction : from_inner) {
        if (fraction >= 0.0) picture.white_fraction.push_back(fraction);
    }
    const LightSite& site = scenario.surroundings.runway.lights;
    picture.stacked = site.kind == LightSite::Kind::vasi && picture.white_fraction.size() > 1;
    // A bar on the left has its inner unit rightmost; of two bars the near one is named first.
    if (picture.stacked || site.side != LightSite::Side::right)
        std::reverse(picture.white_fraction.begin(), picture.white_fraction.end());
    const auto white = white_lamps(picture);
    const std::size_t lamps = picture.white_fraction.size();
    if (picture.words.empty() || white != white_before || lamps != lamps_before)
        light_words(static_cast<int>(white), static_cast<int>(lamps), site.kind, picture.words);
}

LightPicture light_picture(const Scenario& scenario, const std::array<double, 4>& from_inner) {
    LightPicture picture;
    light_picture(scenario, from_inner, picture);
    return picture;
}

LightPicture picture_of(const Scenario& scenario, int white) {
    const LightSystem& lights = scenario.lights;
    std::array<double, 4> fractions{-1.0, -1.0, -1.0, -1.0};
    for (int i = 0; i < lights.pattern; ++i) {
        const auto set_lower = [&](const LightUnit& other) {
            return other.setting_rad < lights.units[static_cast<std::size_t>(i)].setting_rad;
        };
        const auto lower =
            std::count_if(lights.units.begin(), lights.units.begin() + lights.pattern, set_lower);
        fractions[static_cast<std::size_t>(i)] = lower < white ? 1.0 : 0.0;
    }
    return light_picture(scenario, fractions);
}

}  // namespace slopewise
