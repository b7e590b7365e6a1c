// What the air does and what has failed, as it stands at one tick of an attempt.
#pragma once

#include <array>
#include <optional>

#include "base/hash.h"
#include "lesson/scenario.h"

namespace slopewise {

struct Conditions {
    Turbulence turbulence;
    std::array<AirEventState, most_air_events> air_events{};
    std::array<bool, most_failures> failed{};
    Gust gust;                    // of the present tick
    double stuck_cas_mps = -1.0;  // what a stuck airspeed indicator shows
};

Conditions begin_conditions(const Scenario& scenario);

// Where the aeroplane is, for whatever waits for a time or a place.
struct Moment {
    double time_s = 0.0;
    double distance_m = 0.0;      // eye to aim point along the ground
    double wheel_height_m = 0.0;  // above the threshold
    double tas_mps = 0.0;
    Air air;
};

// Whether a lesson's conditions change at all during a flight.
bool conditions_change(const Lesson& lesson);

// Moves the conditions on by one tick.
void advance_conditions(Conditions& conditions, const Scenario& scenario, const Moment& moment);

Disturbance disturbance_of(const Scenario& scenario, const Conditions& conditions);
LightFaults light_faults(const Scenario& scenario, const Conditions& conditions);

// What the airspeed indicator shows (m/s, calibrated) when the truth is `cas_mps`; empty when blank.
std::optional<double> shown_airspeed_mps(const Scenario& scenario, const Conditions& conditions,
                                         double cas_mps);

void add_to_hash(Hash& hash, const Conditions& conditions);

}  // namespace slopewise
