// What the replay screen shows besides the view from the seat: the attempt from the side, its traces, its
// marks.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace slopewise {

// One point of an attempt, as it is plotted.
struct ReplayPoint {
    double tick = 0;         // 120 a second
    double distance_nm = 0;  // to the aim point along the ground, negative beyond it
    double height_ft = 0;    // of the eye above the aim point
    double airspeed_kt = 0;
    double lever_percent = 0;
    double stick = 0;  // -1 pushed ... +1 pulled
    double flap = 0;   // where the flap is, in settings
};

// A place worth going to.
struct ReplayMark {
    enum class Kind { start, end, gate, lights, input, evidence, worst };
    Kind kind = Kind::start;
    std::int64_t tick = 0;
    std::string name;  // "500 ft gate"
};

// A step that can be seen: 1/10 s.
inline constexpr int replay_step_ticks = 12;

enum class ReplayShows { both, seat, side };

struct ReplayView {
    std::string setup;    // "Four-seat tourer, Larkmoor 27, by day: 3 NM, on the path, calm"
    std::string angle;    // "View 40° across": stated because angles are what is taught
    std::string trouble;  // that a recording no longer flies the same; empty mostly
    std::vector<ReplayPoint> flown;
    ReplayPoint now;
    double pitch_rad = 0;                            // now
    double target_kt = 0, slow_kt = 0, fast_kt = 0;  // speed band: target - slow ... target + fast
    int most_flap = 0;                               // setting

    // The attempt it is compared with, at the same distance to the aim point; no points: none.
    std::vector<ReplayPoint> other;
    std::string name, other_name;  // "this attempt", "attempt of 12 March"
    bool other_is_there = false;   // false: it was never at this distance
    ReplayPoint other_now;
    double other_pitch_rad = 0;
    std::string compared;  // "Compared at the same distance to the aim point: 60 ft higher, 4 kt faster."

    std::vector<ReplayMark> marks;
    double tick = 0, last_tick = 0;
    std::string clock;     // "1:12.3"
    std::string length;    // "of 2:40.0"
    std::string place;     // "500 ft gate", "500 ft gate + 3.2 s"
    bool at_mark = false;  // it stands at it, not after it
    bool playing = false;
    std::string speed;  // "× 0.5"
    bool slowest = false, fastest = false;
    ReplayShows shows = ReplayShows::both;
};

}  // namespace slopewise
