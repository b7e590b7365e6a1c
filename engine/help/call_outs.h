// The instructor's short calls while a student flies: from a short list, only outside tolerance, one at a
// time and seldom. A call only outside a band stays in the memory that a call all the time does not reach
// (Cruz et al. 2018; read in abstract; Sherwood 1988; recalled). The list and the figures are common
// practice, no source.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "help/path_motion.h"
#include "review/criteria.h"
#include "review/deviations.h"

namespace slopewise {

enum class CallOut { none, not_stable, slow, sink, low, high };
inline constexpr std::size_t call_out_kinds = 6;

// "slow". What mends a low path is named as the school has it: "low - power", "low - pitch", or both.
std::string_view call_out_words(CallOut call, Convention convention);

inline constexpr double between_calls_s = 4.0;  // from the beginning of one to that of the next, at least
inline constexpr double call_after_s = 1.0;     // outside tolerance for so long, so that no gust is called

struct CallTruth {
    Deviations off;
    PathMotion motion;
    double sink_mps = 0.0;  // positive down
    double height_m = 0.0;  // of the wheels above the threshold
    bool landing_flap = true;
    bool speed_shown = true;  // a covered or failed airspeed is not given away
};

struct CallOuts {
    bool on = false;
    int said = 0;
    CallOut last = CallOut::none;
    std::int64_t since_last_ticks = 0;                // counted while `last` is one
    bool gate_judged = false;                         // the decision gate lies behind
    std::array<int, call_out_kinds> outside_ticks{};  // of each, in a row
};

// One tick of 1/120 s; returns what is said from now on, none in nearly every tick.
//
// Low and high are not called while the path is returned to properly; nor is anything within the limits that
// hold at this height. "Not stable" is called once, where the decision gate is passed outside them.
CallOut advance_calls(CallOuts& calls, const Criteria& criteria, const CallTruth& truth);

// From a point of the track.
CallTruth call_truth(const Scenario& scenario, const TrackPoint& now, bool speed_shown);

}  // namespace slopewise
