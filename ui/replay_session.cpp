#include "ui/replay_session.h"

#include <algorithm>
#include <cmath>

#include "ui/replay_marks.h"

namespace slopewise {
namespace {

constexpr double longest_frame_s = 0.25;
constexpr double at_a_mark_ticks = 0.5;

double last(const ReplaySession& session) { return static_cast<double>(last_tick(session.flight)); }

// A warning stays for half a second on the clock of whoever looks, so that it never flashes (see
// flight_session).
constexpr double warning_lasts_ticks = 60;

bool warns(const ReplaySession& session) {
    const FlownMoment& moment = session.shown.moment;
    const double lasts_ticks = warning_lasts_ticks * std::max(1.0, replay_speeds[session.speed]);
    return moment.stalled_tick >= 0 &&
           static_cast<double>(moment.attempt.tick - moment.stalled_tick) < lasts_ticks;
}

// What is shown follows the place.
void stand(ReplaySession& session) {
    session.shown = shown_at(session.flight, session.tick);
    FlightSession& seat = session.seat;
    seat.attempt = session.shown.moment.attempt;
    seat.before = session.shown.moment.before;
    seat.instruments = session.shown.moment.instruments;
    seat.stalling = warns(session) ? 1 : 0;
}

void go_to(ReplaySession& session, double tick) {
    session.tick = std::clamp(tick, 0.0, last(session));
    session.playing = false;
}

// So many marks onwards or back from where it stands.
void go_to_mark(ReplaySession& session, int marks_on) {
    const auto& marks = session.marks;
    const StandsAt stands = stands_at(session);
    const int on_it = stands.since_ticks < at_a_mark_ticks ? 0 : 1;
    const int wanted = static_cast<int>(stands.mark) + marks_on + (marks_on < 0 ? on_it : 0);
    const int limited = std::clamp(wanted, 0, static_cast<int>(marks.size()) - 1);
    go_to(session, static_cast<double>(marks[static_cast<std::size_t>(limited)].tick));
}

void play_or_pause(ReplaySession& session) {
    if (!session.playing && session.tick >= last(session)) session.tick = 0;  // once more from the start
    session.playing = !session.playing;
}

std::size_t changed_speed(std::size_t speed, int steps) {
    const int most = static_cast<int>(replay_speeds.size()) - 1;
    return static_cast<std::size_t>(std::clamp(static_cast<int>(speed) + steps, 0, most));
}

ReplayShows next_view(ReplayShows shows) {
    switch (shows) {
    case ReplayShows::both: return ReplayShows::seat;
    case ReplayShows::seat: return ReplayShows::side;
    case ReplayShows::side: return ReplayShows::both;
    }
    return shows;
}

}  // namespace

ReplaySession begin_replay(const Recording& recording, const Scenario& scenario, const Criteria& criteria,
                           const Track* kept) {
    ReplaySession session;
    session.flight = replayed_flight(recording, scenario, kept);
    session.marks = replay_marks(session.flight, criteria);
    session.seat = begin_session(scenario);
    session.seat.sharing = {};  // what flew was recorded, whoever held it
    session.seat.scenario.lesson.aids = {};
    stand(session);
    return session;
}

void compare_with(ReplaySession& session, const Recording& recording, const Scenario& scenario,
                  const Track* kept) {
    session.other = replayed_flight(recording, scenario, kept);
    session.other->name = "other attempt";
}

void advance_replay(ReplaySession& session, double passed_s) {
    if (!session.playing) return;
    const double wall_s = std::clamp(passed_s, 0.0, longest_frame_s);
    session.tick = std::min(session.tick + wall_s * replay_speeds[session.speed] / tick_s, last(session));
    if (session.tick >= last(session)) session.playing = false;
    stand(session);
}

void drive(ReplaySession& session, const DriveReplay& wish) {
    using Wish = DriveReplay::Wish;
    switch (wish.wish) {
    case Wish::play_or_pause: play_or_pause(session); break;
    case Wish::step: go_to(session, std::round(session.tick) + wish.amount); break;
    case Wish::seek: go_to(session, wish.amount); break;
    case Wish::mark: go_to_mark(session, static_cast<int>(wish.amount)); break;
    case Wish::start: go_to(session, 0); break;
    case Wish::end: go_to(session, last(session)); break;
    case Wish::speed: session.speed = changed_speed(session.speed, static_cast<int>(wish.amount)); break;
    case Wish::change_view: session.shows = next_view(session.shows); break;
    }
    stand(session);
}

StandsAt stands_at(const ReplaySession& session) {
    const auto& marks = session.marks;  // never empty: the start is one
    std::size_t mark = 0;
    while (mark + 1 < marks.size() &&
           static_cast<double>(marks[mark + 1].tick) <= session.tick + at_a_mark_ticks - 1e-9)
        ++mark;
    return {mark, std::max(0.0, session.tick - static_cast<double>(marks[mark].tick))};
}

}  // namespace slopewise
