// How a school flies and words things, apart from any lesson: its own aircraft, its limits, when it sets
// flap, what it adds for gusts, in which units it speaks and with which hand its students fly.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "flight/aircraft.h"
#include "lesson/lesson.h"
#include "review/criteria.h"

namespace slopewise {

enum class RunwayUnit { metres, feet };
inline constexpr std::array<std::string_view, 2> runway_unit_names{"m", "ft"};

enum class PressureUnit { hectopascals, inches_of_mercury };
inline constexpr std::array<std::string_view, 2> pressure_unit_names{"hPa", "inHg"};

// The hand that has the stick keys; the other has the levers.
enum class StickHand { right, left };
inline constexpr std::array<std::string_view, 2> stick_hand_names{"right", "left"};

// A flap setting, and the height by which it is set.
struct ScheduledFlap {
    double by_height_m = 0.0;  // of the wheels above the threshold
    int setting = 0;           // of the lever, 0: up
};

// An aircraft file, whole: the numbers, and the text they were read from.
struct SchoolAircraft {
    Aircraft aircraft;
    std::string text;  // JSON
};

inline constexpr std::size_t most_school_name = 60;  // characters
inline constexpr std::size_t most_flap_steps = 4;

struct School {
    std::string name;  // at most 60 characters; empty: none given
    Criteria criteria;
    double gust_share = 0.5;  // of the gust factor, added to the target speed
    RunwayUnit runway_unit = RunwayUnit::metres;
    PressureUnit pressure_unit = PressureUnit::hectopascals;
    StickHand stick_hand = StickHand::right;
    std::array<ScheduledFlap, most_flap_steps> flap_schedule{};  // the highest first
    std::size_t flap_step_count = 0;                             // 0: none, landing flap from the start
    std::optional<SchoolAircraft> aircraft;
};

// How much the wind rises over its mean in the gusts that a lesson places (m/s); 0: none.
double gust_factor_mps(const Lesson& lesson);

// What is added to the still-air approach speed: a share of the gust factor, by custom one half (Airplane
// Flying Handbook, FAA-H-8083-3, approach and landing in turbulent air: add one half of the gust factor; read
// in an extract).
double gust_allowance_mps(const Lesson& lesson, double gust_share);

// The lesson flown that much faster, from the start on.
Lesson with_gust_allowance(Lesson lesson, double gust_share);

}  // namespace slopewise
