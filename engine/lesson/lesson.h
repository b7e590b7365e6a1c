// A lesson as data: which aircraft on which runway, how the flight starts, the wind, what is held to, and
// what is taught with it.
#pragma once

#include <array>
#include <cstdint>
#include <string>

#include "lesson/aids.h"
#include "lesson/failure.h"
#include "lesson/hands.h"
#include "lesson/practice.h"
#include "lesson/start.h"
#include "lesson/success.h"
#include "lesson/syllabus.h"
#include "lesson/teaching.h"
#include "lesson/traffic.h"
#include "world/air_event.h"
#include "world/atmosphere.h"
#include "world/outlook.h"
#include "world/wind.h"

namespace slopewise {

// What counts as in tolerance. Path tolerances are the larger of an angle and a height, so that nobody
// is made to chase lights near the ground. Defaults: a stable approach as the FAA's light-aircraft
// elements and airman standards put it (+10/-5 kt: FAA-S-ACS-6C, PA.IV.B.S7); the path and sink figures
// are common practice, no source.
struct Tolerances {
    double path_rad = 0.0;      // 0.5 degrees
    double path_floor_m = 0.0;  // 30 ft
    double slow_mps = 0.0;      // 5 kt below target
    double fast_mps = 0.0;      // 10 kt above target
    double sink_mps = 0.0;      // 200 ft/min either side of the reference
};

inline constexpr std::size_t most_air_events = 8;
inline constexpr std::size_t most_failures = 8;

struct Lesson {
    std::string id;
    std::string title;  // "Final from 3 NM"
    std::string aim;    // one sentence
    std::string aircraft_id;
    std::string runway_id;
    double mass_kg = 0.0;  // 0: as the aircraft's file has it
    Start start;
    double target_cas_mps = 0.0;  // on final, gust allowance included
    Weather weather;
    Wind wind;
    Outlook outlook;
    double turbulence_w20_mps = 0.0;  // 0: smooth air
    std::uint64_t seed = 1;           // of the turbulence, so that everyone gets the same
    std::array<AirEvent, most_air_events> air_events{};
    int air_event_count = 0;
    std::array<Failure, most_failures> failures{};
    int failure_count = 0;
    bool side_profile = false;  // the path from the side is shown while it is flown
    Tolerances tolerances;
    int briefed_flap = -1;  // to land with; -1: the aircraft's landing flap
    bool glide = false;     // without power, down no path: the gates ask for a settled speed alone
    Traffic traffic;
    Hands hands = Hands::both;
    LessonAids aids;
    Practice practice;
    Success success;
    Syllabus syllabus;
    Teaching teaching;
};

}  // namespace slopewise
