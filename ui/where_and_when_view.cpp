// The sheet "Where and when": each airfield and aircraft with a line about it, and the light of the hour.
#include <algorithm>
#include <array>
#include <cmath>

#include "base/units.h"
#include "ui/format.h"
#include "ui/views.h"

namespace slopewise {
namespace {

// Steps of visibility that are offered, km: poor, the least many schools fly circuits in, ordinary, clear
// (common practice, no source).
constexpr std::array<double, 4> visibilities_km{3, 5, 10, 30};

std::string lights_words(const LightSite& site) {
    std::string words;
    switch (site.kind) {
    case LightSite::Kind::papi: words = "PAPI"; break;
    case LightSite::Kind::papi_harmonised: words = "PAPI set for a glide path"; break;
    case LightSite::Kind::apapi: words = "APAPI"; break;
    case LightSite::Kind::vasi: words = "VASI"; break;
    }
    switch (site.side) {
    case LightSite::Side::left: return words + " left";
    case LightSite::Side::right: return words + " right";
    case LightSite::Side::both: return words + " on both sides";
    }
    return words;
}

std::string slope_words(double slope) {
    if (slope == 0.0) return "level";
    const double percent = 100.0 * std::abs(slope);
    return number_words(percent, percent == std::round(percent) ? 0 : 1) +
           (slope > 0.0 ? " % up" : " % down");
}

std::string about(const Runway& runway, RunwayUnit unit) {
    constexpr std::array<const char*, 3> country{"farmland", "woodland", "coast"};
    const bool feet = unit == RunwayUnit::feet;
    const auto length = [&](double m) { return number_words(feet ? ft_from_m(m) : m); };
    return length(runway.length_m) + " \u00d7 " + length(runway.width_m) + (feet ? " ft, " : " m, ") +
           slope_words(runway.slope) + ", " + lights_words(runway.lights) + ", " +
           country[static_cast<std::size_t>(runway.countryside.kind)];
}

std::string about(const Aircraft& aircraft) {
    return number_words(kt_from_mps(aircraft.approach_speed_mps)) + " kt approach, " +
           number_words(aircraft.mass_kg) + " kg";
}

// All of them, and which is chosen.
template <class Thing, class About>
int list(const std::vector<Thing>& things, const std::string& chosen_id,
         std::vector<WhereAndWhenView::Option>& options, About about_thing) {
    int chosen = 0;
    for (const Thing& thing : things) {
        if (thing.id == chosen_id) chosen = static_cast<int>(options.size());
        options.push_back({thing.name, about_thing(thing)});
    }
    return chosen;
}

int visibility_step(double visibility_m) {
    const auto step = std::lower_bound(visibilities_km.begin(), visibilities_km.end(), visibility_m / 1000.0);
    return static_cast<int>(
        std::min<std::ptrdiff_t>(step - visibilities_km.begin(), visibilities_km.size() - 1));
}

}  // namespace

WhereAndWhenView where_and_when_view(const Catalog& catalog, const WhereAndWhen& chosen,
                                     const Scenario& scenario, RunwayUnit runway_unit) {
    WhereAndWhenView view;
    view.chosen.airfield = list(catalog.runways, chosen.runway_id, view.airfields,
                                [&](const Runway& runway) { return about(runway, runway_unit); });
    view.chosen.aircraft = list(catalog.aircraft, chosen.aircraft_id, view.aircraft,
                                [](const Aircraft& aircraft) { return about(aircraft); });
    view.lights = {"Day", "Low sun", "Dusk", "Night"};
    view.chosen.light = static_cast<int>(chosen.outlook.light);
    for (const double km : visibilities_km) view.visibilities.push_back(number_words(km) + " km");
    view.chosen.visibility = visibility_step(chosen.outlook.visibility_m);
    view.chosen.ground_lights = chosen.outlook.ground_lights;
    view.chosen.overcast = chosen.outlook.overcast;
    view.chosen.rain = chosen.outlook.rain;
    view.asks_for_ground_lights = background_of(chosen.outlook.light) != Background::day;
    view.sentence = place_words(scenario);
    return view;
}

WhereAndWhen where_and_when(const Catalog& catalog, const WhereAndWhenChoice& choice) {
    WhereAndWhen chosen;
    chosen.runway_id = catalog.runways[static_cast<std::size_t>(choice.airfield)].id;
    chosen.aircraft_id = catalog.aircraft[static_cast<std::size_t>(choice.aircraft)].id;
    chosen.outlook.light = static_cast<Daylight>(choice.light);
    chosen.outlook.visibility_m = 1000.0 * visibilities_km[static_cast<std::size_t>(choice.visibility)];
    chosen.outlook.ground_lights = choice.ground_lights;
    chosen.outlook.overcast = choice.overcast;
    chosen.outlook.rain = choice.rain;
    return chosen;
}

std::string outlook_words(const Outlook& outlook) {
    constexpr std::array<const char*, 4> light{"by day", "in a low sun", "at dusk", "at night"};
    std::string words = light[static_cast<std::size_t>(outlook.light)];
    if (background_of(outlook.light) != Background::day && !outlook.ground_lights) words += ", dark ground";
    if (outlook.overcast) words += ", overcast";
    if (outlook.rain) words += ", rain";
    if (outlook.visibility_m < 1000.0 * visibilities_km.back())
        words += ", visibility " + number_words(outlook.visibility_m / 1000.0) + " km";
    return words;
}

std::string place_words(const Scenario& scenario) {
    return scenario.aircraft.name + ", " + scenario.surroundings.runway.name + ", " +
           outlook_words(scenario.lesson.outlook);
}

}  // namespace slopewise
