// What an instructor can set with one press: rows of choices. Each is a pure function from the approach as it
// stands to the lesson that begins there with that one thing changed and all others kept.
#pragma once

#include <array>
#include <cstdint>

#include "lesson/attempt.h"
#include "world/outlook.h"

namespace slopewise {

enum class StationRow : std::uint8_t {
    distance,       // choices: `station_distances_nm`
    path,           // high, on, low
    speed,          // fast, on, slow
    flap,           // the aircraft's settings
    headwind,       // `headwinds_kt`, the same at every height
    gusts,          // off, some, strong
    light,          // day, low sun, dusk, night
    ground_lights,  // lit, dark
    visibility,     // `station_visibilities_m`
    sky,            // clear, overcast, overcast with rain
    unit_out,       // none, each unit of the picture from the runway outwards, all
    unit_misaimed,  // none, each unit
    lenses,         // clear, misted
    airspeed,       // works, blank, stuck
    flap_failure,   // works, stuck
    power,          // all, half, none
};
inline constexpr std::size_t station_row_count = 16;

inline constexpr std::array<double, 4> station_distances_nm{3.0, 2.0, 1.0, 0.5};

// High and low: as the student's own choice of approach has it (`off_path_deg`). Fast and slow: clear of the
// speed tolerance of +10/-5 kt, and what a landing flap's limit still allows (common practice, no source).
inline constexpr double station_speed_step_kt = 10.0;

// The wind 20 ft above the ground that makes the turbulence: light and moderate of MIL-F-8785C.
inline constexpr std::array<double, 3> station_w20_kt{0.0, 15.0, 30.0};

// Clear air, haze, and the 5 km and 1.5 km of visual flight in Europe (SERA.5001, from memory).
inline constexpr std::array<double, 5> station_visibilities_m{30000.0, 10000.0, 5000.0, 3000.0, 1500.0};

// A misaimed unit is set too high by the step between two units of a PAPI, so that it tells what its
// neighbour should.
inline constexpr double station_misaimed_minutes = 20.0;

// How misted lenses are, 0 to 1: most of the red is gone (our figure; `world/lights` says from where).
inline constexpr double station_mist = 0.8;

// Of the power, what partial power leaves (common practice, no source).
inline constexpr double station_partial_power = 0.5;

int choice_count(StationRow row, const Scenario& scenario);

// The choice that is as it stands now; -1: none of them. A place or a speed counts as a choice within a
// quarter of the step to the next, a distance within a twentieth of a sea mile.
int choice_now(StationRow row, const Scenario& scenario, const Attempt& attempt);

// The lesson with that one thing changed; `choice` is less than the row's count. Whether it can be flown, the
// scenario made of it says. Choosing a place, a speed or a flap puts the flight steady and parallel to the
// path.
Lesson with_choice(StationRow row, int choice, const Scenario& scenario, const Attempt& attempt,
                   const Start& began);

// The lesson begun where it was put last; and there on the other side of the path.
Lesson begun_again(const Scenario& scenario, const Start& began);
Lesson begun_mirrored(const Scenario& scenario, const Start& began);

// The approach as it stands with nothing failing.
Lesson with_nothing_failing(const Scenario& scenario, const Attempt& attempt, const Start& began);

}  // namespace slopewise
