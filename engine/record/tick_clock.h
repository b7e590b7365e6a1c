// All time keeping of a live flight: turns the wall clock into whole ticks.
#pragma once

#include <optional>

namespace slopewise {

// Longer waits between two frames are no slow machine: it slept, or the page was frozen (common practice, no
// source: the slowest machine that was tried drew a frame in a second).
inline constexpr double sleep_from_s = 5.0;

// Below this share of the wall's time a flight is told to be slow: a tenth is about what a listener notices
// of a tempo (common practice, no source), and what a sink of 500 ft/min is read to.
inline constexpr double slow_below = 0.9;

// Owes ticks for the wall time that passed; never more than a quarter of a second at once, so that a
// stall or a sleeping tab slows the flight instead of making it jump.
class TickClock {
public:
    // Whole ticks due since the last call, 30 at most. While not running, time passes unowed.
    int due(double wall_s, bool running);

    // Share of a tick passed beyond the last whole one, 0 to 1: to blend the picture between two ticks.
    double fraction() const;

    // Share of the wall's time that the flight was given in the last four running seconds; 1 on a machine
    // that keeps up.
    double share() const { return share_; }
    bool slow() const { return share_ < slow_below; }

    // Wall time (s) that the last call did not give to a running flight.
    double lost_s() const { return lost_s_; }

private:
    void measure(double passed_s);

    std::optional<double> last_wall_s_;  // empty before the first call
    double owed_s_ = 0.0;
    double lost_s_ = 0.0;
    double share_ = 1.0;
    double measured_s_ = 0.0, measured_lost_s_ = 0.0;  // of the four seconds that go on
};

}  // namespace slopewise
