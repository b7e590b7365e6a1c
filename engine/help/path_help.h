// The path help: a cue of where the aim point belongs, that is off by default, comes when it is called or
// when the student is off the path and not coming back, and fades as that is mended.
//
// Guidance that is always there improves the practice and harms what stays (Salmoni, Schmidt & Walter 1984;
// Schmidt & Wulf 1997; recalled). Help that the student calls served novices on final better than help that
// was imposed, and that better than none (Huet et al. 2009; read in abstract). Help by displacement was the
// useful form in landing (Lintern 1980; recalled), and closure belongs in it (help/path_motion.h). One that
// grows with the deviation worked in rowing (Sigrist et al. 2015; read in abstract). Every figure below is
// common practice, no source.
#pragma once

#include <array>
#include <cstdint>

#include "base/units.h"
#include "help/path_motion.h"

namespace slopewise {

// Less help by stages, forward and back by results (help/help_stage.h). At the last none comes by itself.
inline constexpr int last_help_stage = 3;
inline constexpr std::array<double, last_help_stage> help_trigger_rad{rad_from_deg(0.35), rad_from_deg(0.50),
                                                                      rad_from_deg(0.75)};
inline constexpr double near_trigger_m = m_from_ft(30.0);          // off the path by this is enough as well,
inline constexpr double near_trigger_below_m = m_from_ft(300.0);   // below this height
inline constexpr double help_after_s = 1.5;                        // off and not coming back for so long
inline constexpr double help_leaves_rad = rad_from_deg(0.25);      // nearer than this it goes again
inline constexpr double help_full_after_rad = rad_from_deg(0.50);  // beyond that, drawn in full
inline constexpr double no_help_below_m = m_from_ft(200.0);  // ever: there the aim point and small power
inline constexpr double call_lasts_s = 3.0;                  // while the key is held, and no longer
inline constexpr double called_opacity = 0.7;  // at least: what was asked for is seen on the path too

// What is decided before a run, for all of it.
struct HelpPlan {
    bool by_itself = false;    // it may come uncalled; off by default
    int stage = 0;             // 0 to last_help_stage
    bool unaided_run = false;  // a probe: no help at all
};

// Whether it could come by itself in this run, shown or not.
bool may_come_by_itself(const HelpPlan& plan);

struct PathTruth {
    double error_rad = 0.0;  // of the eye's elevation from the nominal path, positive high
    PathMotion motion;
    double height_m = 0.0;  // of the wheels above the threshold
    bool scored = true;     // after scoring there is none
};

// What became of a call.
enum class HelpCall { none, answered, unaided_run, too_low };

struct PathHelp {
    HelpPlan plan;
    int calls = 0;                 // answered ones
    std::int64_t shown_ticks = 0;  // called or not
    double opacity = 0.0;          // 0: not shown
    double ahead_m = 0.0;          // offset_ahead_m, while shown: what the cue shows

    HelpCall call = HelpCall::none;  // the last one, while its key is held
    bool key_held = false;
    int call_ticks = 0;  // that this call has lasted
    int off_ticks = 0;   // off the path and not coming back, in a row
    bool came = false;   // by itself, and has not gone again

    bool shown() const { return opacity > 0.0; }
};

// One tick of 1/120 s.
void advance_help(PathHelp& help, const PathTruth& truth, bool key_held);

double shown_s(const PathHelp& help);

}  // namespace slopewise
