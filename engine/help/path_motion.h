// Whether the eye comes back to the path, and how soon: what the help and the call-outs judge by, rather than
// by the displacement alone.
#pragma once

#include "review/track.h"

namespace slopewise {

struct PathMotion {
    double offset_m = 0.0;         // of the eye above the nominal path
    double offset_rate_mps = 0.0;  // how fast that grows, positive up
};

// `nominal_path_rad`: of the lights. The rate is ground speed x tan(path) less the sink: what the path falls
// in a second less what the aeroplane does. (Geometry; the eye's small motion about the wheels is left out.)
PathMotion path_motion(const TrackPoint& now, double nominal_path_rad);

// Until the path is met at this rate; infinite when it is not being closed.
double time_to_path_s(const PathMotion& motion);

// A return that meets the path neither at once nor too late to see: in 5 to 25 s (common practice, no
// source).
inline constexpr double soonest_return_s = 5.0, latest_return_s = 25.0;
bool returns_properly(const PathMotion& motion);

// Where the eye will stand against the path on its present course after 12 s, which lies within those bounds:
// the displacement and its rate, weighted. Nothing while the path is held, and nothing while it is returned
// to at the rate that meets it by then; its sign turns when that is too fast. (Kaul, Collyer & Lintern 1980:
// a cue of the weighted sum of displacement and descent-rate error, which shows no error on the path or while
// returning to it at an appropriate closure, tracked better than one of rate alone; read in abstract. Linear
// in metres, not in angle: Lintern, Kaul & Sheppard 1981; read in abstract. The 12 s are ours.)
inline constexpr double cue_ahead_s = 12.0;
double offset_ahead_m(const PathMotion& motion);

}  // namespace slopewise
