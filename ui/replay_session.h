// A replay in progress: what is replayed, where it stands, how fast it runs, what it is compared with.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "ui/action.h"
#include "ui/flight_session.h"
#include "ui/replayed_flight.h"

namespace slopewise {

inline constexpr std::array<double, 5> replay_speeds{0.25, 0.5, 1.0, 2.0, 4.0};

struct ReplaySession {
    ReplayedFlight flight;
    std::optional<ReplayedFlight> other;
    std::vector<ReplayMark> marks;
    double tick = 0;        // between 0 and the last
    std::size_t speed = 2;  // of replay_speeds
    bool playing = false;
    ReplayShows shows = ReplayShows::both;
    ShownMoment shown;   // where it stands
    FlightSession seat;  // the same as a flight, so that the flight screen's view is made from it
};

// `kept`: the track kept with the recording; null when there is none. Starts paused at the beginning.
ReplaySession begin_replay(const Recording& recording, const Scenario& scenario, const Criteria& criteria,
                           const Track* kept);

// Another attempt beside it; both keep their names.
void compare_with(ReplaySession& session, const Recording& recording, const Scenario& scenario,
                  const Track* kept);

// By the wall time since the last frame (s), a quarter of a second at most; stops at the end.
void advance_replay(ReplaySession& session, double passed_s);

// Does what was asked for. Whatever goes to a place pauses there.
void drive(ReplaySession& session, const DriveReplay& wish);

// The mark it stands at, or the last one passed.
struct StandsAt {
    std::size_t mark = 0;
    double since_ticks = 0;  // less than half a tick: at it
};
StandsAt stands_at(const ReplaySession& session);

}  // namespace slopewise
