#include "ui/flight_session.h"

#include <algorithm>
#include <cmath>

#include "data/recording_file.h"
#include "ui/flight_help.h"
#include "ui/views.h"

namespace slopewise {
namespace {

constexpr std::int64_t second_ticks = static_cast<std::int64_t>(1.0 / tick_s + 0.5);
constexpr std::size_t roomy_s = 300;  // an approach from 3 NM takes four minutes at most

// A warning that comes and goes at the edge of the stall stays for half a second: nothing on the screen may
// flash more than three times a second (WCAG 2.2, success criterion 2.3.1).
constexpr std::int64_t warning_lasts_ticks = second_ticks / 2;

// A finger that rests on a key is no input: from here on a hand has done something.
constexpr double moved_stick = 0.02, moved_lever = 0.01;

bool has_moved(const FlightSession& session, const Controls& student) {
    const ControlPositions now = positions_of(student);
    const ControlPositions& start = session.scenario.start_trim.controls;
    return std::abs(now.stick) > moved_stick || std::abs(now.throttle - start.throttle) > moved_lever ||
           now.flap != start.flap;
}

// A flight of twenty minutes is stopped there: more could not be read again, and would be lost.
Events advance(FlightSession& session, const Controls& controls) {
    if (session.attempt.tick >= most_recording_ticks) return {.came_to_rest = true};
    session.before = session.attempt.flight;
    const Events events = tick(session.scenario, session.attempt, controls);
    session.instruments = advance_instruments(session.instruments, session.attempt.flight);
    session.stalling = stall_warning(session.scenario, session.attempt)
                           ? warning_lasts_ticks
                           : std::max<std::int64_t>(session.stalling - 1, 0);
    if (session.peeking && session.attempt.end == End::none) ++session.peeks.back().ticks;
    advance_guidance(session);
    if (session.attempt.end == End::none)
        advance_gates(session.gates, wheel_height_m(session.scenario.aircraft, session.attempt.flight));
    record(session.recording, controls, session.attempt);
    extend(session.track, session.scenario, session.attempt, events);
    if (events.scoring_ended) review_session(session);
    return events;
}

InstrumentSet either(const InstrumentSet& a, const InstrumentSet& b) {
    InstrumentSet both;
    for (const InstrumentName& one : instrument_names) both.*one.which = a.*one.which || b.*one.which;
    return both;
}

}  // namespace

FlightSession begin_session(Scenario scenario, const Criteria& criteria, const HelpPlan& plan) {
    FlightSession session;
    session.criteria = criteria;
    session.help.plan = plan;
    session.scenario = std::move(scenario);
    session.attempt = begin_attempt(session.scenario);
    session.before = session.attempt.flight;
    session.instruments = settled_instruments(session.attempt.flight);
    session.recording = begin_recording(session.scenario.lesson);
    session.track = begin_track(session.scenario, session.attempt);
    session.recording.changes.reserve(60 * roomy_s);
    session.recording.hashes.reserve(roomy_s);
    session.track.points.reserve(roomy_s * second_ticks / track_interval_ticks);
    session.peeks.reserve(roomy_s);
    session.piece.reserve(8192);
    begin_sharing(session);
    session.gates = begin_gates(wheel_height_m(session.scenario.aircraft, session.attempt.flight));
    return session;
}

FlightSession session_of(KeptAttempt kept, Scenario scenario, const Criteria& criteria) {
    FlightSession session;
    session.scenario = std::move(scenario);
    session.criteria = criteria;
    session.reviewed = review_kept(kept, session.scenario, criteria);
    session.attempt = replay(kept.recording, session.scenario).attempt;
    session.attempt.end = kept.end;
    session.before = session.attempt.flight;
    session.instruments = settled_instruments(session.attempt.flight);
    session.recording = std::move(kept.recording);
    session.track = std::move(kept.track);
    session.paused = true;
    session.id = std::move(kept.id);
    session.kept_ticks = session.recording.ticks;
    session.from_logbook = true;
    return session;
}

KeptAttempt kept_of(const FlightSession& session) {
    KeptAttempt kept{session.id, session.attempt.end == End::none, session.attempt.end, session.recording,
                     session.track};
    kept.recording.circumstances.aids = recorded_aids(session);
    return kept;
}

RecordedAids recorded_aids(const FlightSession& session) {
    const AidsUsed& used = session.aids;
    RecordedAids aids;
    aids.guide_s = shown_s(session.help);
    aids.guide_calls = session.help.calls;
    aids.guide_ready = used.guide_ready;
    if (used.call_outs) aids.call_outs = session.call_outs.said;
    aids.magnifier = used.magnifier;
    aids.lamp_letters = used.lamp_letters;
    aids.lamp_shapes = used.lamp_shapes;
    aids.side_profile = used.side_profile;
    aids.lost_s = session.lost_s;
    aids.lights_hidden = session.scenario.lesson.aids.lights == LessonAids::Lights::hidden;
    aids.partner_s = static_cast<double>(session.sharing.partner_ticks) * tick_s;
    aids.airspeed_hidden = used.covered.airspeed || used.failed.airspeed;
    aids.covered = names_of(used.covered);
    aids.failed = names_of(used.failed);
    if (!used.eyes_outside) return aids;
    std::int64_t inside = 0, longest = 0;
    for (const Peek& peek : session.peeks) {
        inside += peek.ticks;
        longest = std::max(longest, peek.ticks);
    }
    const double scored_s = session.track.points[session.track.scored - 1].time_s;
    aids.peeks = static_cast<int>(session.peeks.size());
    aids.panel_share = scored_s > 0.0 ? std::min(1.0, static_cast<double>(inside) * tick_s / scored_s) : 0.0;
    aids.longest_peek_s = static_cast<double>(longest) * tick_s;
    return aids;
}

Display shown_display(const FlightSession& session, const Display& display) {
    const LessonAids& kept_back = session.scenario.lesson.aids;
    Display shown = display;
    shown.covered.airspeed |= kept_back.airspeed_hidden;
    shown.eyes_outside |= kept_back.eyes_outside;
    return shown;
}

bool shows_lights(const FlightSession& session, double wheel_height_m) {
    return lights_shown(session.scenario.lesson.aids, wheel_height_m, session.acted);
}

bool shows_side_profile(const FlightSession& session, const Display& display) {
    return display.side_profile || session.scenario.lesson.side_profile;
}

void watch(FlightSession& session, const Display& wanted, bool peek, bool calls_for_help) {
    const Display display = shown_display(session, wanted);
    watch_help(session, display, calls_for_help);
    session.gates.height_shown = !display.covered.altimeter && !display.failed.altimeter;
    if (session.attempt.end != End::none) return;
    AidsUsed& aids = session.aids;
    aids.magnifier |= display.magnifier;
    aids.lamp_letters |= display.magnifier && display.lamp_letters;
    aids.lamp_shapes |= display.magnifier && display.lamp_shapes;
    aids.side_profile |= shows_side_profile(session, display);
    aids.eyes_outside |= display.eyes_outside;
    aids.covered = either(aids.covered, display.covered);
    aids.failed = either(aids.failed, display.failed);

    const bool looks = peek && display.eyes_outside;
    if (looks && !session.peeking) session.peeks.push_back({session.attempt.tick, 0});
    session.peeking = looks;
}

Events tick_session(FlightSession& session, const Controls& student) {
    session.acted |= has_moved(session, student);
    return advance(session, shared_controls(session, student));
}

Events tick_with(FlightSession& session, const Controls& controls) {
    session.acted |= has_moved(session, controls);
    return advance(session, controls);
}

void review_session(FlightSession& session) {
    if (session.from_logbook) return;
    const RecordedAids& aids = session.recording.circumstances.aids = recorded_aids(session);
    session.reviewed = review_flight(session.scenario, session.criteria, session.track, session.attempt.end,
                                     aids.panel_share);
}

}  // namespace slopewise
