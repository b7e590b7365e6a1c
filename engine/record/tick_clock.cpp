#include "record/tick_clock.h"

#include "flight/dynamics.h"

namespace slopewise {
namespace {

constexpr double most_owed_s = 0.25;
constexpr double measured_for_s = 4.0;

}  // namespace

int TickClock::due(double wall_s, bool running) {
    const double passed_s = last_wall_s_ ? wall_s - *last_wall_s_ : 0.0;
    last_wall_s_ = wall_s;
    lost_s_ = 0.0;
    if (!running) {
        *this = {};
        last_wall_s_ = wall_s;
        return 0;
    }
    owed_s_ += passed_s > 0.0 ? passed_s : 0.0;  // a clock set back owes nothing
    if (owed_s_ > most_owed_s) {
        lost_s_ = owed_s_ - most_owed_s;
        owed_s_ = most_owed_s;
    }
    measure(passed_s);
    const int ticks = static_cast<int>(owed_s_ / tick_s);
    owed_s_ -= ticks * tick_s;
    return ticks;
}

// A sleep says nothing of how fast the machine is.
void TickClock::measure(double passed_s) {
    if (passed_s <= 0.0 || passed_s >= sleep_from_s) return;
    measured_s_ += passed_s;
    measured_lost_s_ += lost_s_;
    if (measured_s_ < measured_for_s) return;
    share_ = 1.0 - measured_lost_s_ / measured_s_;
    measured_s_ = measured_lost_s_ = 0.0;
}

double TickClock::fraction() const { return owed_s_ / tick_s; }

}  // namespace slopewise
