#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"
#include "lesson/attempt.h"
#include "review/words.h"
#include "ui/format.h"
#include "ui/input.h"
#include "ui/sky_view.h"
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

SceneView scene_view(const FlightSession& session, double blend) {
    const Scenario& scenario = session.scenario;
    const FlightState flight = blended(session, blend);
    const LightFaults faults = light_faults(scenario, session.attempt.conditions);
    const Point3 eye = eye_position(scenario.aircraft, flight);
    SceneView scene;
    scene.camera = {eye.x_m, eye.y_m, eye.z_m, flight.pitch_rad - view_depression_rad,
                    rad_from_deg(horizontal_fov_deg)};
    scene.runway = runway_view(scenario.surroundings.runway);
    scene.lamp_count = scenario.lights.count;
    for (int i = 0; i < scenario.lights.count; ++i) {
        const LightUnit& unit = scenario.lights.units[static_cast<std::size_t>(i)];
        scene.lamps[static_cast<std::size_t>(i)] = {unit.lens.x_m,
                                                    unit.lens.y_m,
                                                    unit.lens.z_m,
                                                    unit_white_fraction(scenario.lights, i, eye, faults),
                                                    unit_shows(scenario.lights, i, eye, faults),
                                                    lamp_brightness(scenario.lesson.outlook, unit.lens, eye)};
    }
    scene.sky = sky_view(scenario, time_s(session.attempt) + blend * tick_s);
    scene.look_over_rad = scenario.aircraft.geometry.look_over_rad;
    scene.body_pitch_rad = flight.pitch_rad;
    return scene;
}

// Arcs are painted on the dial, for the greatest mass whatever is flown.
double dial_stall_kt(const Aircraft& aircraft, int flap) {
    Aircraft heaviest = aircraft;
    heaviest.mass_kg = aircraft.most_mass_kg;
    return kt_from_mps(stall_speed_mps(heaviest, flap));
}

// What the dials and levers are labelled with.
void instrument_words(const Scenario& scenario, InstrumentsView& view) {
    const Aircraft& aircraft = scenario.aircraft;
    const int landing = landing_flap(aircraft);
    view.flap_names.clear();
    for (int i = 0; i < aircraft.flap_count; ++i)
        view.flap_names.push_back(aircraft.flaps[static_cast<std::size_t>(i)].name);
    view.vs0_kt = dial_stall_kt(aircraft, landing);
    view.vs1_kt = dial_stall_kt(aircraft, 0);
    view.vfe_kt = kt_from_mps(aircraft.flaps[static_cast<std::size_t>(landing)].max_speed_mps);
    view.vno_kt = kt_from_mps(aircraft.normal_max_mps);
    view.vne_kt = kt_from_mps(aircraft.never_exceed_mps);
    view.target_kt = kt_from_mps(scenario.lesson.target_cas_mps);
}

void instruments_view(const FlightSession& session, const Display& display, const TrackPoint& now,
                      InstrumentsView& view) {
    const auto shown_mps = shown_airspeed_mps(session.scenario, session.attempt.conditions, now.cas_mps);
    view.covered = display.covered;
    view.failed = display.failed;
    view.failed.airspeed |= !shown_mps;
    view.airspeed_kt = kt_from_mps(shown_mps.value_or(0.0));
    view.altitude_ft = ft_from_m(now.wheel_height_m);  // set to read height above the threshold
    view.vertical_speed_fpm = fpm_from_mps(session.instruments.vertical_speed_mps);
    view.power_percent = 100.0 * now.power;
    view.lever_percent = 100.0 * now.lever;
    view.flap_index = now.flap_setting;
    view.flap_position = now.flap_position;
    view.trim = now.trim;
    view.stick = now.stick;
    view.stall_warning = session.stalling > 0 && !view.covered.stall_warning && !view.failed.stall_warning;
}

void caption_words(const FlightSession& session, const InstrumentsView& instruments, std::string& words) {
    words.clear();
    if (instruments.stall_warning) {
        words = "Stall warning: lower the nose";
        return;
    }
    if (instruments.failed.airspeed || instruments.covered.airspeed) return;
    const auto flap = static_cast<std::size_t>(instruments.flap_index);
    const double limit_kt = kt_from_mps(session.scenario.aircraft.flaps[flap].max_speed_mps);
    if (instruments.airspeed_kt <= limit_kt) return;
    words = "Too fast for this flap: limit ";
    words.append(number_words(limit_kt)).append(" kt");
}

const char* status_words(const FlightSession& session) {
    if (session.attempt.end == End::went_around) return "Going around, unscored";
    if (session.attempt.on_ground) return "On the ground, unscored";
    if (session.attempt.end != End::none) return "Unscored: land or go around";
    return "";
}

// "view 40 degrees across, 0.6 of true size".
std::string view_words(const Display& display) {
    const std::string words = "view " + number_words(horizontal_fov_deg) + "\u00b0 across";
    const double share = share_of_true_size(display);
    if (share == 0) return words;
    return words +
           (std::abs(share - 1.0) < 0.05 ? ", true size" : ", " + number_words(share, 1) + " of true size");
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

void flight_words(const FlightSession& session, const Settings& settings, FlightView& view) {
    view.setup = setup_words(session.scenario) + ", " + outlook_words(session.scenario.lesson.outlook) +
                 ", " + view_words(settings.display);
    view.keys = key_hints(settings);
    view.caption.reserve(64);
    view.status.reserve(64);
    view.lights.words.reserve(32);
    view.can_mirror = session.scenario.lesson.start.offset_rad != 0.0;
    instrument_words(session.scenario, view.instruments);
    side_profile_words(session.scenario, view.side_profile);
}

void flight_view(const FlightSession& session, const Settings& settings, bool peek, double blend,
                 FlightView& view) {
    const Display& display = settings.display;
    const TrackPoint now = observe(session.scenario, session.attempt);
    view.scene = scene_view(session, blend);
    view.scene.magnifier = display.magnifier;
    view.scene.lamp_letters = display.lamp_letters;
    view.scene.lamp_shapes = display.lamp_shapes;
    view.scene.reduced_motion = display.reduced_motion;
    view.panel_dark = display.eyes_outside && !peek;
    instruments_view(session, display, now, view.instruments);
    view.paused = session.paused;
    view.scored = session.attempt.end == End::none;
    view.status = status_words(session);
    caption_words(session, view.instruments, view.caption);
    light_picture(session.scenario, now.white_fraction, view.lights);
    if (shows_side_profile(session, display)) side_profile_view(session, now, view.side_profile);
    else view.side_profile.flown.clear();
}

}  // namespace slopewise
