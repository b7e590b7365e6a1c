// One try at a lesson: controls in, events out, a tick at a time. Everything that moves is here and is
// a plain value; the same controls give the same bits in every build.
#pragma once

#include <cstdint>

#include "lesson/conditions.h"

namespace slopewise {

// How scoring ended.
enum class End {
    none,
    reached_floor,  // 50 ft wheel height near the runway
    went_around,    // said so, or full power and climbing
    ground_short,   // wheels on the ground before the threshold
    overflew,       // past the far end of the runway, never down to 50 ft
};

struct Attempt {
    std::int64_t tick = 0;
    FlightState flight;
    Conditions conditions;
    Controls controls;    // as last given
    End end = End::none;  // scoring goes on while none
    std::int64_t end_tick = -1;
    int climb_ticks = 0;  // at full power and climbing, in a row
    bool on_ground = false;
    bool at_rest = false;  // stopped on the ground: nothing moves any more
};

// What happened in one tick.
struct Events {
    bool scoring_ended = false;
    bool touched_down = false;
    bool came_to_rest = false;
};

Attempt begin_attempt(const Scenario& scenario);

// Advances one tick of 1/120 s with the controls held. Does nothing once at rest.
Events tick(const Scenario& scenario, Attempt& attempt, const Controls& controls);

inline double time_s(const Attempt& attempt) { return static_cast<double>(attempt.tick) * tick_s; }

// The motion through the air and the forces at this moment.
FlightForces forces_now(const Scenario& scenario, const Attempt& attempt);

// A hash of everything that moves, field by field.
std::uint64_t state_hash(const Attempt& attempt);

// The stall warning: within the warning margin of the stalling angle of attack, in the air.
bool stall_warning(const Scenario& scenario, const Attempt& attempt);

}  // namespace slopewise
