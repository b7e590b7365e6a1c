#include "base/interpolate.h"
#include "base/units.h"
#include "lesson/attempt.h"
#include "review/words.h"
#include "ui/format.h"
#include "ui/input.h"
#include "ui/views.h"

namespace slopewise {
namespace {

// The view axis lies a little below the body axis, as a pilot looks over the nose.
constexpr double view_depression_rad = rad_from_deg(1.0);

FlightState blended(const FlightSession& session, double blend) {
    const FlightState& a = session.before;
    FlightState b = session.attempt.flight;
    b.x_m = lerp(a.x_m, b.x_m, blend);
    b.z_m = lerp(a.z_m, b.z_m, blend);
    b.pitch_rad = lerp(a.pitch_rad, b.pitch_rad, blend);
    return b;
}

RunwayView runway_view(const Runway& runway) {
    const AimingPointMarking marking = aiming_point_marking(runway.length_m);
    return {runway.length_m,  runway.width_m,  runway.slope,        runway.aim_distance_m,
            marking.length_m, marking.width_m, marking.inner_gap_m, runway.designator};
}

SceneView scene_view(const FlightSession& session, double blend) {
    const Scenario& scenario = session.scenario;
    const FlightState flight = blended(session, blend);
    const Point3 eye = eye_position(scenario.aircraft, flight);
    SceneView scene;
    scene.camera = {eye.x_m, eye.y_m, eye.z_m, flight.pitch_rad - view_depression_rad,
                    rad_from_deg(horizontal_fov_deg)};
    scene.runway = runway_view(scenario.surroundings.runway);
    scene.lamp_count = scenario.lights.count;
    for (int i = 0; i < scenario.lights.count; ++i) {
        const LightUnit& unit = scenario.lights.units[static_cast<std::size_t>(i)];
        scene.lamps[static_cast<std::size_t>(i)] = {unit.lens.x_m, unit.lens.y_m, unit.lens.z_m,
                                                    unit_white_fraction(unit, eye), unit_faces(unit, eye)};
    }
    scene.look_over_rad = scenario.aircraft.geometry.look_over_rad;
    scene.body_pitch_rad = flight.pitch_rad;
    return scene;
}

InstrumentsView instruments_view(const FlightSession& session) {
    const Scenario& scenario = session.scenario;
    const Aircraft& aircraft = scenario.aircraft;
    const TrackPoint now = observe(scenario, session.attempt);
    InstrumentsView view;
    view.airspeed_kt = kt_from_mps(now.cas_mps);
    view.altitude_ft = ft_from_m(now.wheel_height_m);  // set to read height above the threshold
    view.vertical_speed_fpm = fpm_from_mps(session.instruments.vertical_speed_mps);
    view.power_percent = 100.0 * now.power;
    view.lever_percent = 100.0 * now.lever;
    view.flap_index = now.flap_setting;
    view.flap_position = now.flap_position;
    for (int i = 0; i < aircraft.flap_count; ++i)
        view.flap_names.push_back(aircraft.flaps[static_cast<std::size_t>(i)].name);
    view.trim = now.trim;
    view.stick = now.stick;
    view.stall_warning = stall_warning(scenario, session.attempt);
    view.vs0_kt = kt_from_mps(stall_speed_mps(aircraft, landing_flap(aircraft)));
    view.vs1_kt = kt_from_mps(stall_speed_mps(aircraft, 0));
    view.vfe_kt = kt_from_mps(aircraft.flaps[static_cast<std::size_t>(landing_flap(aircraft))].max_speed_mps);
    view.vno_kt = kt_from_mps(aircraft.normal_max_mps);
    view.vne_kt = kt_from_mps(aircraft.never_exceed_mps);
    view.target_kt = kt_from_mps(scenario.lesson.target_cas_mps);
    return view;
}

std::string caption_words(const FlightSession& session, const InstrumentsView& instruments) {
    if (instruments.stall_warning) return "Stall warning: lower the nose";
    const auto flap = static_cast<std::size_t>(instruments.flap_index);
    const double limit_kt = kt_from_mps(session.scenario.aircraft.flaps[flap].max_speed_mps);
    if (instruments.airspeed_kt > limit_kt)
        return "Too fast for this flap: limit " + number_words(limit_kt) + " kt";
    return {};
}

std::string status_words(const FlightSession& session) {
    if (session.attempt.end == End::went_around) return "Going around, unscored";
    if (session.attempt.on_ground) return "On the ground, unscored";
    if (session.attempt.end != End::none) return "Unscored: land or go around";
    return {};
}

}  // namespace

std::string setup_words(const Scenario& scenario) {
    const Start& start = scenario.lesson.start;
    const double offset_deg = deg_from_rad(start.offset_rad);
    const char* side =
        offset_deg > 0.05 ? "above the path" : (offset_deg < -0.05 ? "below the path" : "on the path");
    const double headwind_kt = kt_from_mps(
        headwind_at_mps(scenario.surroundings.wind, wheel_height_m(scenario.aircraft, scenario.start_state)));
    std::string words = number_words(nm_from_m(start.distance_m)) + " NM, " + side + ", ";
    words += headwind_kt < 0.5 ? "calm" : number_words(headwind_kt) + " kt headwind";
    return words;
}

FlightView flight_view(const FlightSession& session, const Settings& settings, double blend) {
    FlightView view;
    view.scene = scene_view(session, blend);
    view.instruments = instruments_view(session);
    view.paused = session.paused;
    view.scored = session.attempt.end == End::none;
    view.status = status_words(session);
    view.caption = caption_words(session, view.instruments);
    view.setup =
        setup_words(session.scenario) + ", view " + number_words(horizontal_fov_deg) + "\u00b0 across";
    view.lights = light_picture(session.scenario, observe(session.scenario, session.attempt).white_fraction);
    view.keys = key_hints(settings);
    view.can_mirror = session.scenario.lesson.start.offset_rad != 0.0;
    return view;
}

}  // namespace slopewise
