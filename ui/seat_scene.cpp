#include "ui/seat_scene.h"

#include "base/units.h"
#include "ui/sky_view.h"

namespace slopewise {
namespace {

// The view axis lies a little below the body axis, as a pilot looks over the nose.
constexpr double view_depression_rad = rad_from_deg(1.0);

RunwayView runway_view(const Runway& runway) {
    const AimingPointMarking marking = aiming_point_marking(runway.length_m);
    return {runway.length_m,
            runway.width_m,
            runway.slope,
            runway.aim_distance_m,
            marking.length_m,
            marking.width_m,
            marking.inner_gap_m,
            runway.designator,
            runway.edge_lights,
            runway.approach_lights,
            countryside_view(runway.countryside)};
}

}  // namespace

SceneView seen_from(const Scenario& scenario, const Seat& seat) {
    const Point3& eye = seat.eye;
    SceneView scene;
    scene.camera = {eye.x_m, eye.y_m, eye.z_m, seat.pitch_rad - view_depression_rad,
                    rad_from_deg(horizontal_fov_deg)};
    scene.runway = runway_view(scenario.surroundings.runway);
    scene.lamp_count = scenario.lights.count;
    for (int i = 0; i < scenario.lights.count; ++i) {
        const LightUnit& unit = scenario.lights.units[static_cast<std::size_t>(i)];
        scene.lamps[static_cast<std::size_t>(i)] = {unit.lens.x_m,
                                                    unit.lens.y_m,
                                                    unit.lens.z_m,
                                                    unit_white_fraction(scenario.lights, i, eye, seat.faults),
                                                    unit_shows(scenario.lights, i, eye, seat.faults),
                                                    lamp_brightness(scenario.lesson.outlook, unit.lens, eye)};
    }
    scene.sky = sky_view(scenario, seat.time_s);
    scene.look_over_rad = scenario.aircraft.geometry.look_over_rad;
    scene.body_pitch_rad = seat.pitch_rad;
    return scene;
}

}  // namespace slopewise
