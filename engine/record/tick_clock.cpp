#include "record/tick_clock.h"

#include "flight/dynamics.h"

namespace slopewise {
namespace {

constexpr double most_owed_s = 0.25;

}  // namespace

int TickClock::due(double wall_s, bool running) {
    const double passed_s = last_wall_s_ < 0.0 ? 0.0 : wall_s - last_wall_s_;
    last_wall_s_ = wall_s;
    if (!running) {
        owed_s_ = 0.0;
        return 0;
    }
    owed_s_ += passed_s > 0.0 ? passed_s : 0.0;  // a clock set back owes nothing
    if (owed_s_ > most_owed_s) owed_s_ = most_owed_s;
    const int ticks = static_cast<int>(owed_s_ / tick_s);
    owed_s_ -= ticks * tick_s;
    return ticks;
}

double TickClock::fraction() const { return owed_s_ / tick_s; }

}  // namespace slopewise
