// The flight from the side while it is flown: a point a second, and where it is now.
#include <algorithm>

#include "base/units.h"
#include "ui/views.h"

namespace slopewise {
namespace {

constexpr std::size_t points_a_sample = 10;  // of the track, which has ten a second

constexpr std::size_t roomy_s = 600;

}  // namespace

void side_profile_words(const Scenario& scenario, SideProfileView& view) {
    const Lesson& lesson = scenario.lesson;
    view.path_deg = deg_from_rad(scenario.surroundings.runway.lights.nominal_path_rad);
    view.wedge_deg = deg_from_rad(lesson.tolerances.path_rad);
    view.floor_ft = ft_from_m(lesson.tolerances.path_floor_m);
    view.far_nm = nm_from_m(lesson.start.distance_m);
    // Each unit stands at the aim point or close to it.
    const LightSystem& lights = scenario.lights;
    view.sector_deg.clear();
    for (int i = 0; i < lights.pattern; ++i)
        view.sector_deg.push_back(deg_from_rad(lights.units[static_cast<std::size_t>(i)].setting_rad));
    std::sort(view.sector_deg.begin(), view.sector_deg.end());
    view.sectors.clear();
    for (int white = 0; white <= lights.pattern; ++white) view.sectors.push_back(picture_of(scenario, white));
    view.calm.clear();
    view.calm_words.clear();
    view.flown.clear();
    view.flown.reserve(roomy_s);
}

void side_profile_view(const FlightSession& session, const TrackPoint& now, SideProfileView& view) {
    if (!view.flown.empty()) view.flown.pop_back();  // where it was in the last frame
    const std::vector<TrackPoint>& track = session.track.points;
    for (std::size_t i = view.flown.size() * points_a_sample; i < track.size(); i += points_a_sample)
        view.flown.push_back(profile_point(track[i]));
    view.flown.push_back(profile_point(now));
}

}  // namespace slopewise
