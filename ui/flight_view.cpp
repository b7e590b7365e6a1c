#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"
#include "lesson/attempt.h"
#include "review/words.h"
#include "ui/flight_help.h"
#include "ui/format.h"
#include "ui/input.h"
#include "ui/key_meanings.h"
#include "ui/seat_scene.h"
#include "ui/views.h"

namespace slopewise {
namespace {

// A larger aircraft comes down its path with its nose a little up (common practice, no source).
constexpr double leader_pitch_rad = rad_from_deg(3.0);

FlightState blended(const FlightSession& session, double blend) {
    const FlightState& a = session.before;
    FlightState b = session.attempt.flight;
    b.x_m = lerp(a.x_m, b.x_m, blend);
    b.z_m = lerp(a.z_m, b.z_m, blend);
    b.pitch_rad = lerp(a.pitch_rad, b.pitch_rad, blend);
    return b;
}

// The larger aircraft ahead; the line it came down on only once that has been judged.
LeaderView leader_view(const FlightSession& session, double at_s) {
    const Lesson& lesson = session.scenario.lesson;
    const Traffic& traffic = lesson.traffic;
    if (!traffic.there()) return {};
    const Runway& runway = session.scenario.surroundings.runway;
    const LeaderPlace place = leader_at(traffic, runway, lesson.start.distance_m, at_s);
    LeaderView view;
    view.there = true;
    view.x_m = place.x_m;
    view.z_m = place.z_m;
    view.pitch_rad = place.on_ground ? 0.0 : leader_pitch_rad;
    view.span_m = traffic.span_m;
    view.since_touchdown_s = place.since_touchdown_s;
    view.touchdown_x_m = traffic.touchdown_m;
    view.touchdown_z_m = leader_path_height_m(traffic, runway, traffic.touchdown_m);
    view.path_rad = traffic.path_rad;
    view.path_shown = session.attempt.end != End::none;
    return view;
}

SceneView scene_view(const FlightSession& session, double blend) {
    const Scenario& scenario = session.scenario;
    const FlightState flight = blended(session, blend);
    const double at_s = time_s(session.attempt) + blend * tick_s;
    SceneView scene = seen_from(scenario, {eye_position(scenario.aircraft, flight), flight.pitch_rad, at_s,
                                           light_faults(scenario, session.attempt.conditions)});
    scene.leader = leader_view(session, at_s);
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

void caption_words(const FlightSession& session, const InstrumentsView& instruments,
                   const std::vector<KeyHint>& keys, std::string& words) {
    words.clear();
    exchange_caption(session, key_meaning::key_for(keys, key_meaning::exchange, "C"), words);
    if (!words.empty() && !instruments.stall_warning) return;
    if (instruments.stall_warning) {
        words = "Stall warning: lower the nose";
        return;
    }
    const auto flap = static_cast<std::size_t>(instruments.flap_index);
    const double limit_kt = kt_from_mps(session.scenario.aircraft.flaps[flap].max_speed_mps);
    const bool speed_shown = !instruments.failed.airspeed && !instruments.covered.airspeed;
    if (!speed_shown || instruments.airspeed_kt <= limit_kt) return guidance_caption(session, words);
    words = "Too fast for this flap: limit ";
    words.append(number_words(limit_kt)).append(" kt");
}

// A picture without lamps: its words are made again with the first lamp that is shown.
void hide(LightPicture& picture) {
    picture.white_fraction.clear();
    picture.words = "not shown";
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

// Said from the start where help would have come.
const char* unaided_words(const HelpPlan& plan, const Display& display) {
    return plan.unaided_run && (display.help_by_itself || display.call_outs) ? ", unaided run" : "";
}

}  // namespace

std::string setup_words(const Scenario& scenario) {
    const Start& start = scenario.lesson.start;
    const double offset_deg = deg_from_rad(start.offset_rad);
    const char* side =
        offset_deg > 0.05 ? "above the path" : (offset_deg < -0.05 ? "below the path" : "on the path");
    const double headwind_kt = kt_from_mps(
        headwind_at_mps(scenario.surroundings.wind, wheel_height_m(scenario.aircraft, scenario.start_state)));
    const double distance_nm = nm_from_m(start.distance_m);
    const bool whole = std::abs(distance_nm - std::round(distance_nm)) < 0.05;
    std::string words = number_words(distance_nm, whole ? 0 : 1) + " NM, " + side + ", ";
    words += headwind_kt < 0.5 ? "calm" : number_words(headwind_kt) + " kt headwind";
    return words;
}

void flight_words(const FlightSession& session, const Settings& settings, FlightView& view) {
    // How a run begins that is kept back is for the student to find out.
    const bool kept_back = !session.scenario.lesson.practice.set_ups.empty();
    view.setup = (kept_back ? "as you find it" : setup_words(session.scenario)) + ", " +
                 outlook_words(session.scenario.lesson.outlook) + ", " + view_words(settings.display) +
                 unaided_words(session.help.plan, settings.display);
    view.keys = key_hints(settings, shown_display(session, settings.display).eyes_outside);
    view.caption.reserve(64);
    view.status.reserve(64);
    view.lights.words.reserve(32);
    view.can_mirror = session.scenario.lesson.start.offset_rad != 0.0;
    instrument_words(session.scenario, view.instruments);
    side_profile_words(session.scenario, view.side_profile);
}

void flight_view(const FlightSession& session, const Display& wanted, bool peek, double blend,
                 FlightView& view) {
    const Display display = shown_display(session, wanted);
    const TrackPoint now = observe(session.scenario, session.attempt);
    view.scene = scene_view(session, blend);
    const bool lights = shows_lights(session, now.wheel_height_m);
    if (!lights) view.scene.lamp_count = 0;
    view.scene.path_help = path_help_view(session, now);
    view.scene.magnifier = display.magnifier;
    view.scene.lamp_letters = display.lamp_letters;
    view.scene.lamp_shapes = display.lamp_shapes;
    view.scene.reduced_motion = display.reduced_motion;
    view.panel_dark = display.eyes_outside && !peek;
    instruments_view(session, display, now, view.instruments);
    view.paused = session.paused;
    view.scored = session.attempt.end == End::none;
    view.status = status_words(session);
    caption_words(session, view.instruments, view.keys, view.caption);
    if (lights) light_picture(session.scenario, now.white_fraction, view.lights);
    else hide(view.lights);
    view.control = sharing_words(session);
    view.waits_for_answer = waits_for_answer(session);
    if (shows_side_profile(session, display)) side_profile_view(session, now, view.side_profile);
    else view.side_profile.flown.clear();
}

}  // namespace slopewise
