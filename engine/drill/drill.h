// A drill as data: a part of the task practised by itself. What its cards or its flight are drawn from, and
// what it asks for. The seed makes the sequence, so that a whole class has the same.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "drill/criterion.h"
#include "drill/drill_start.h"

namespace slopewise {

struct Interval {
    double least = 0.0, most = 0.0;
};

// ---- cards ----

// The lights, shown for a moment.
struct LightCards {
    Interval exposure_s;
    Interval distance_m;          // drawn evenly by ratio: as many near as far
    double most_error_rad = 0.0;  // either side of the path
};

// The runway without lights: high, on the path or low.
struct PictureCards {
    std::vector<double> distances_m;
    std::vector<double> errors_rad;
    double exposure_s = 0.0;  // 0: until answered
    bool horizon_shown = true;
};

// Where would we hit: the picture moves, stops, and the point that stood still is to be marked.
struct ImpactCards {
    std::vector<double> distances_m;  // to the aim point, where it stops
    double clip_s = 0.0;              // it moves for so long before
    double most_error_rad = 0.0;      // of the eye from the path, either side
    Interval beyond_aim_m;            // of the point, negative short
};

// What one control does within some seconds, all else held.
struct ControlCards {
    DrillStart start;
    double run_s = 0.0;
    double lever_step = 0.0, stick_step = 0.0, trim_step = 0.0;             // shares of travel
    double same_speed_mps = 0.0, same_sink_mps = 0.0, same_height_m = 0.0;  // within this: the same
};

// High or low, fast or slow, for a moment: what is moved first?
struct QuadrantCards {
    std::vector<double> distances_m;
    double exposure_s = 0.0;
    Interval error_rad, speed_error_mps;  // sizes; the signs are drawn
};

// A stop at a gate with all its figures.
struct GateCards {
    std::vector<double> gates_ft;             // wheel heights
    std::vector<DrillStart> cases;            // how it passes the gate; the distance is the gate's
    double shift_rad = 0.0, shift_mps = 0.0;  // each case varied by at most so much
};

// A flawed approach by a model pilot: when and what.
struct FaultCards {
    struct Flight {
        std::string pilot;  // of `pilot_skill`
        DrillStart start;
    };
    std::vector<Flight> flights;
    std::vector<std::string> others;      // faults that may be offered beside the right one, by id
    std::vector<std::string> throughout;  // faults that show all the time: any moment is right
    double before_s = 0.0,
           after_s = 0.0;  // a mark counts from so long before a moment of evidence to after it
};

// ---- flown ----

// The speed held by attitude after each flap step; the path does not count.
struct SpeedHold {
    DrillStart start;
    double band_mps = 0.0;     // either side of the target
    double hold_s = 0.0;       // without a break, after each step
    double hands_off_s = 0.0;  // then with the stick let go
};

// The path held by power; the partner holds the speed with the nose.
struct PathByPower {
    std::vector<DrillStart> starts;  // one is drawn
    double band_rad = 0.0, band_floor_m = 0.0;
    double turbulence_w20_mps = 0.0;
};

// A go-around at a call that comes at a drawn time.
struct GoAroundCall {
    DrillStart start;
    Interval call_s;
    double look_s = 0.0;  // flown on for so long after the call
};

// The student tells, the model flies.
struct TellAndFly {
    std::vector<DrillStart> starts;                 // one is drawn
    double lever_step = 0.0, pitch_step_rad = 0.0;  // "a little"
    double trim_s = 0.0;                            // trims for so long when told
};

// ---- all of them ----

// In the order of the alternatives of `DrillSettings`.
enum class DrillKind {
    read_the_lights,
    read_the_picture,
    where_would_we_hit,
    one_control,
    quadrant_snap,
    gate_call,
    find_the_fault,
    speed_by_attitude,
    path_by_power,
    go_around,
    student_tells,
};
inline constexpr std::array<std::string_view, 11> drill_kind_names{
    "read_the_lights", "read_the_picture",  "where_would_we_hit", "one_control", "quadrant_snap", "gate_call",
    "find_the_fault",  "speed_by_attitude", "path_by_power",      "go_around",   "student_tells"};

using DrillSettings = std::variant<LightCards, PictureCards, ImpactCards, ControlCards, QuadrantCards,
                                   GateCards, FaultCards, SpeedHold, PathByPower, GoAroundCall, TellAndFly>;

struct Drill {
    std::string id;
    int place = 1;         // in the order they are learned in, from 1
    std::string title;     // "Read the lights"
    std::string aim;       // one sentence
    std::string why;       // one sentence
    std::string how;       // what to do
    std::string mistakes;  // what usually goes wrong
    Source source;
    int items = 1;        // cards; 1 for a flight
    int judged_over = 0;  // the last so many of them; 0: all
    DrillSettings settings;
    std::vector<DrillCriterion> criteria;  // all must be met
};

inline DrillKind kind_of(const Drill& drill) { return static_cast<DrillKind>(drill.settings.index()); }
inline bool is_flown(const Drill& drill) { return kind_of(drill) >= DrillKind::speed_by_attitude; }

}  // namespace slopewise
