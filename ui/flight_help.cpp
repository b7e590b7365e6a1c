#include "ui/flight_help.h"

#include <algorithm>

#include "base/exact_math.h"

namespace slopewise {
namespace {

// Long enough to be read with one look, and gone before the next may come.
constexpr auto caption_lasts_ticks = static_cast<std::int64_t>(3.0 / tick_s + 0.5);

// Beyond this the cue would leave the middle of the picture; that it is far off is seen as well.
constexpr double most_over_aim_rad = rad_from_deg(2.0);

bool is_needed(const FlightSession& session) {
    return session.calls_for_help || session.help.key_held || session.help.shown() ||
           may_come_by_itself(session.help.plan) || session.call_outs.on;
}

void advance_call_outs(FlightSession& session, const TrackPoint& now) {
    session.caption_ticks = std::max<std::int64_t>(session.caption_ticks - 1, 0);
    if (session.attempt.end != End::none) return;
    const CallOut call = advance_calls(session.call_outs, session.criteria,
                                       call_truth(session.scenario, now, session.speed_shown));
    if (call == CallOut::none) return;
    session.caption = session.to_speak = call;
    session.caption_ticks = caption_lasts_ticks;
}

}  // namespace

void watch_help(FlightSession& session, const Display& display, bool calls_for_help) {
    HelpPlan& plan = session.help.plan;
    session.calls_for_help = calls_for_help;
    session.speed_shown = !display.covered.airspeed && !display.failed.airspeed;
    plan.by_itself = display.help_by_itself;
    session.call_outs.on = display.call_outs && !plan.unaided_run;
    if (session.attempt.end != End::none) return;
    session.aids.guide_ready |= may_come_by_itself(plan);
    session.aids.call_outs |= session.call_outs.on;
}

void advance_guidance(FlightSession& session) {
    if (!is_needed(session)) return;
    const Scenario& scenario = session.scenario;
    const TrackPoint now = observe(scenario, session.attempt);
    const PathTruth truth{now.path_error_rad,
                          path_motion(now, scenario.surroundings.runway.lights.nominal_path_rad),
                          now.wheel_height_m, session.attempt.end == End::none};
    advance_help(session.help, truth, session.calls_for_help);
    advance_call_outs(session, now);
}

PathHelpView path_help_view(const FlightSession& session, const TrackPoint& now) {
    const PathHelp& help = session.help;
    if (!help.shown() || now.distance_m <= 0.0) return {};
    const double over_rad = exact::atan(help.ahead_m / now.distance_m);
    return {help.opacity, std::clamp(over_rad, -most_over_aim_rad, most_over_aim_rad)};
}

void guidance_caption(const FlightSession& session, std::string& words) {
    if (session.help.call == HelpCall::unaided_run) words = "This run is flown unaided: no path help";
    else if (session.help.call == HelpCall::too_low) words = "Below 200 ft no path help: the aim point";
    else if (session.call_outs.on && session.caption_ticks > 0 && session.attempt.end == End::none)
        words = call_out_words(session.caption, session.criteria.convention);
}

}  // namespace slopewise
