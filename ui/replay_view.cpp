#include "ui/replay_view.h"

#include <cmath>

#include "base/units.h"
#include "ui/format.h"
#include "ui/replay_keys.h"
#include "ui/views.h"

namespace slopewise {
namespace {

constexpr double ticks_a_second = 1.0 / tick_s;

// In a replay nothing of the panel is kept back, and the side view stands beside the seat's.
Settings uncovered(const Settings& settings) {
    Settings shown = settings;
    shown.display.eyes_outside = shown.display.side_profile = false;
    shown.display.covered = shown.display.failed = {};
    return shown;
}

ReplayPoint replay_point(const TrackPoint& point) {
    return {point.time_s * ticks_a_second,
            nm_from_m(point.distance_m),
            ft_from_m(point.eye_height_m),
            kt_from_mps(point.cas_mps),
            100.0 * point.lever,
            point.stick,
            point.flap_position};
}

std::vector<ReplayPoint> replay_points(const Track& track) {
    std::vector<ReplayPoint> points;
    points.reserve(track.points.size());
    for (const TrackPoint& point : track.points) points.push_back(replay_point(point));
    return points;
}

// "1:02.50".
std::string clock_words(double tick) {
    const auto hundredths = static_cast<long>(std::floor(100.0 * tick / ticks_a_second + 1e-6));
    const std::string seconds = number_words(static_cast<double>(hundredths % 6000) / 100.0, 2);
    return std::to_string(hundredths / 6000) + (seconds.size() < 5 ? ":0" : ":") + seconds;
}

// "1 min 12 s".
std::string duration_words(double seconds) {
    const auto whole = static_cast<long>(seconds + 0.5);
    return (whole >= 60 ? std::to_string(whole / 60) + " min " : "") + std::to_string(whole % 60) + " s";
}

std::string trouble_words(const ReplayedFlight& flight, const std::string& name) {
    if (!differs(flight)) return {};
    const double from_s = static_cast<double>(flight.rewind.first_diverged_tick) * tick_s;
    return name + " no longer flies the same from " + duration_words(from_s) +
           " on (this version's model differs). " +
           (flight.along_track ? "Shown is the track as it was flown."
                               : "No track was kept with it: shown is what its controls do now, not what "
                                 "was flown.");
}

std::string more_or_less(double value, const char* unit, const char* more, const char* less) {
    const std::string size = number_words(std::abs(value));
    return size == "0" ? std::string("as ") + (more[0] == 'h' ? "high" : "fast")
                       : size + " " + unit + " " + (value > 0 ? more : less);
}

void other_view(const ReplaySession& session, ReplayView& view) {
    view.compared.clear();
    view.other_is_there = false;
    if (!session.other) return;
    const auto there = point_at_distance(*session.other, session.shown.point.distance_m);
    view.compared = "Dashed: " + view.other_name + ", at the same distance to the aim point: ";
    if (!there) {
        view.compared += "it never was this far out or in.";
        return;
    }
    view.other_is_there = true;
    view.other_now = replay_point(*there);
    view.other_pitch_rad = there->pitch_rad;
    view.compared +=
        more_or_less(view.other_now.height_ft - view.now.height_ft, "ft", "higher", "lower") + ", " +
        more_or_less(view.other_now.airspeed_kt - view.now.airspeed_kt, "kt", "faster", "slower") + ".";
}

void place_view(const ReplaySession& session, ReplayView& view) {
    const StandsAt stands = stands_at(session);
    view.at_mark = stands.since_ticks < 0.5;
    view.place = session.marks[stands.mark].name;
    if (!view.at_mark) view.place += " + " + number_words(stands.since_ticks * tick_s, 1) + " s";
}

// Along a kept track the instruments and the lights are as the track has them.
void show_as_kept(const ReplaySession& session, FlightView& flight) {
    const TrackPoint& point = session.shown.point;
    const Scenario& scenario = session.seat.scenario;
    flight.instruments.airspeed_kt = kt_from_mps(point.cas_mps);
    flight.instruments.altitude_ft = ft_from_m(point.wheel_height_m);
    flight.instruments.stall_warning = false;  // a track does not tell
    for (int i = 0; i < scenario.lights.pattern; ++i) {
        const double white = point.white_fraction[static_cast<std::size_t>(i)];
        LampView& lamp = flight.scene.lamps[static_cast<std::size_t>(i)];
        lamp.shows = white >= 0.0;
        if (lamp.shows) lamp.white_fraction = white;
    }
    light_picture(scenario, point.white_fraction, flight.lights);
}

}  // namespace

void replay_words(const ReplaySession& session, const Settings& settings, View& view) {
    const Scenario& scenario = session.seat.scenario;
    const Tolerances& tolerances = scenario.lesson.tolerances;
    flight_words(session.seat, uncovered(settings), view.flight);
    view.flight.keys = replay_key_hints();
    ReplayView& replay = view.replay;
    replay.setup = place_words(scenario) + ": " + setup_words(scenario);
    replay.angle = "View " + number_words(horizontal_fov_deg) + "\u00b0 across";
    replay.trouble = trouble_words(session.flight, "This recording");
    replay.name = session.flight.name;
    replay.flown = replay_points(session.flight.track);
    replay.other.clear();
    replay.other_name.clear();
    if (session.other) {
        const std::string trouble = trouble_words(*session.other, "The recording it is compared with");
        if (!replay.trouble.empty() && !trouble.empty()) replay.trouble += " ";
        replay.trouble += trouble;
        replay.other_name = session.other->name;
        replay.other = replay_points(session.other->track);
    }
    replay.target_kt = kt_from_mps(scenario.lesson.target_cas_mps);
    replay.slow_kt = kt_from_mps(tolerances.slow_mps);
    replay.fast_kt = kt_from_mps(tolerances.fast_mps);
    replay.most_flap = scenario.aircraft.flap_count - 1;
    replay.marks = session.marks;
    replay.last_tick = static_cast<double>(last_tick(session.flight));
    replay.length = "of " + clock_words(replay.last_tick);
}

void replay_view(const ReplaySession& session, const Settings& settings, View& view) {
    flight_view(session.seat, uncovered(settings).display, false, session.shown.blend, view.flight);
    if (session.flight.along_track) show_as_kept(session, view.flight);
    ReplayView& replay = view.replay;
    replay.now = replay_point(session.shown.point);
    replay.pitch_rad = session.shown.point.pitch_rad;
    other_view(session, replay);
    place_view(session, replay);
    replay.tick = session.tick;
    replay.clock = clock_words(session.tick);
    replay.playing = session.playing;
    replay.speed =
        "\u00d7 " + number_words(replay_speeds[session.speed], replay_speeds[session.speed] < 0.5   ? 2
                                                               : replay_speeds[session.speed] < 1.0 ? 1
                                                                                                    : 0);
    replay.slowest = session.speed == 0;
    replay.fastest = session.speed + 1 == replay_speeds.size();
    replay.shows = session.shows;
}

}  // namespace slopewise
