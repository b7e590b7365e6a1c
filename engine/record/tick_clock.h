// All time keeping of a live flight: turns the wall clock into whole ticks.
#pragma once

namespace slopewise {

// Owes ticks for the wall time that passed; never more than a quarter of a second at once, so that a
// stall or a sleeping tab slows the flight instead of making it jump.
class TickClock {
public:
    // Whole ticks due since the last call. While not running, time passes unowed.
    int due(double wall_s, bool running);

    // Share of a tick passed beyond the last whole one, 0 to 1: to blend the picture between two ticks.
    double fraction() const;

private:
    double last_wall_s_ = -1.0;
    double owed_s_ = 0.0;
};

}  // namespace slopewise
