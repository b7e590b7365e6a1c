// Aircraft, lessons and hands drawn at random, for properties that must hold whatever they are.
#pragma once

#include "base/random.h"
#include "lesson/attempt.h"

namespace slopewise::test {

// How many flights the properties are tried on: the build says, and takes fewer where each costs more.
#ifndef SLOPEWISE_RANDOM_FLIGHTS
#define SLOPEWISE_RANDOM_FLIGHTS 1000
#endif
inline constexpr int random_flight_count = SLOPEWISE_RANDOM_FLIGHTS;

double random_between(Random& random, double low, double high);

// One of the shipped aircraft with every figure moved within what an aircraft file may hold; without a flaw.
Aircraft random_aircraft(Random& random);

// A runway with any slope, elevation, path and lights a file may hold.
Runway random_runway(Random& random);

// Steady, logarithmic or tabulated; 15 kt from behind to 40 kt from ahead.
Wind random_wind(Random& random);

// A start that can be flown from 1 to 3 NM, near the path, with all the weather, happenings in the air and
// failures that a lesson may hold; now and then none of one kind.
Scenario random_scenario(Random& random);

// Anything the hands can hold, now and then to the stops, which is where things break.
Controls random_controls(Random& random);

}  // namespace slopewise::test
