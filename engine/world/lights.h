// The visual-approach slope lights: where each unit stands, the angle it is set to, and what the eye
// sees of it. Four-unit PAPI, two-unit APAPI and two-bar VASI, on the left, the right or both sides.
#pragma once

#include <array>
#include <string_view>

#include "base/units.h"
#include "world/runway.h"

namespace slopewise {

struct LightUnit {
    Point3 lens;
    double setting_rad = 0.0;     // eye above this: white; below: red
    double transition_rad = 0.0;  // width of the blend between them
};

// The units whose colours make the picture come first: a PAPI's or APAPI's from the one nearest the runway
// outwards, a VASI's near bar before its far bar. Units that only repeat one (the other side, a bar's
// further boxes) follow.
struct LightSystem {
    static constexpr int most_units = 8;

    std::array<LightUnit, most_units> units{};
    int count = 0;
    int pattern = 0;  // the first so many units make the picture
};

// Width of a PAPI unit's blend between red and white: not more than 3 minutes of arc (ICAO Annex 14 Vol I,
// 5.3.5, read in a secondary source). The whole of it is used: the change is as soft as the standard allows.
inline constexpr double papi_transition_rad = rad_from_minutes(3.0);

// A VASI's bars pass through mixed shades where a PAPI changes almost at once (Horonjeff, Planning and
// Design of Airports, 5th ed., p. 302); a quarter of a degree is our figure, no source.
inline constexpr double vasi_transition_rad = rad_from_deg(0.25);

// Names of the kinds, in the order of LightSite::Kind; and of the sides, in the order of LightSite::Side.
inline constexpr std::array<std::string_view, 4> light_kind_names{"papi", "papi_harmonised", "apapi", "vasi"};
inline constexpr std::array<std::string_view, 3> light_side_names{"left", "right", "both"};

// Settings about the nominal path from the unit nearest the runway outwards, in minutes of arc.
// PAPI +30 +10 -10 -30; agreeing with an electronic glide path for tall aircraft +35 +15 -15 -35; APAPI
// +15 -15 (FAA AC 150/5345-28 as given by a maker's manual). VASI near bar -15, far bar +15 (from memory,
// low confidence).
LightSystem make_lights(const Runway& runway);

// What has gone wrong with the lights; nothing has, by default.
struct LightFaults {
    std::array<bool, LightSystem::most_units> out{};
    std::array<double, LightSystem::most_units> aim_error_rad{};  // added to the setting
    bool all_out = false;
    double condensation = 0.0;  // 0 clear lenses ... 1 red fails to a pale mixture (from memory: UK CAP 637)
};

// Elevation of the eye above the horizontal at a unit's lens (rad), by the slant distance along the
// ground to that unit.
double unit_eye_angle_rad(const LightUnit& unit, const Point3& eye);

// Unit i as the eye sees it: 0 red, 1 white, a blend inside the transition. Condensation mixes white into
// the red, so that "too low" can look like "on the path": the coding fails unsafe.
double unit_white_fraction(const LightSystem& lights, int unit, const Point3& eye,
                           const LightFaults& faults = {});

// Whether unit i shows at all: alight, and the eye within its beam, 15 degrees either side of the axis (our
// figure; obstacles are only kept clear within 10: AIM 2-1-2).
bool unit_shows(const LightSystem& lights, int unit, const Point3& eye, const LightFaults& faults = {});

// Number of units of the picture seen white (more white than red); -1 where none shows.
int white_count(const LightSystem& lights, const Point3& eye, const LightFaults& faults = {});

// ---- the site's own figures ----

// Least eye height over the threshold that still shows the on-path picture (MEHT): the angle of the unit next
// below the path less 2 minutes, from the lights to the threshold over level ground (m).
double meht_m(const Runway& runway, const LightSystem& lights);

// Eye height over the threshold on the nominal path (m).
double threshold_crossing_m(const Runway& runway);

}  // namespace slopewise
