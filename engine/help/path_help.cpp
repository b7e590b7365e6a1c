#include "help/path_help.h"

#include <algorithm>
#include <cmath>

namespace slopewise {
namespace {

constexpr int ticks_in(double seconds) { return static_cast<int>(seconds / tick_s + 0.5); }

bool off_the_path(const HelpPlan& plan, const PathTruth& truth) {
    const double trigger_rad = help_trigger_rad[static_cast<std::size_t>(plan.stage)];
    return std::abs(truth.error_rad) > trigger_rad ||
           (truth.height_m < near_trigger_below_m && std::abs(truth.motion.offset_m) > near_trigger_m);
}

// The larger the error, the plainer.
double opacity_at(double error_rad) {
    return std::clamp((std::abs(error_rad) - help_leaves_rad) / help_full_after_rad, 0.0, 1.0);
}

void advance_call(PathHelp& help, const PathTruth& truth, bool key_held) {
    const bool pressed = key_held && !help.key_held;
    help.key_held = key_held;
    if (!key_held) help.call = HelpCall::none;
    if (pressed) {
        help.call = !truth.scored                      ? HelpCall::none
                    : help.plan.unaided_run            ? HelpCall::unaided_run
                    : truth.height_m < no_help_below_m ? HelpCall::too_low
                                                       : HelpCall::answered;
        help.call_ticks = 0;
        if (help.call == HelpCall::answered) ++help.calls;
    }
    if (help.call == HelpCall::answered && ++help.call_ticks > ticks_in(call_lasts_s))
        help.call = HelpCall::none;
}

void advance_coming(PathHelp& help, const PathTruth& truth) {
    if (!may_come_by_itself(help.plan)) return;
    const bool returning = returns_properly(truth.motion);
    help.off_ticks = off_the_path(help.plan, truth) && !returning ? help.off_ticks + 1 : 0;
    if (help.off_ticks > ticks_in(help_after_s)) help.came = true;
    if (std::abs(truth.error_rad) < help_leaves_rad || returning) help.came = false;
}

}  // namespace

bool may_come_by_itself(const HelpPlan& plan) {
    return plan.by_itself && !plan.unaided_run && plan.stage < last_help_stage;
}

void advance_help(PathHelp& help, const PathTruth& truth, bool key_held) {
    advance_call(help, truth, key_held);
    advance_coming(help, truth);
    const bool allowed = truth.scored && truth.height_m >= no_help_below_m;
    if (!allowed && help.call == HelpCall::answered) help.call = HelpCall::none;
    if (!allowed) help.came = false;

    help.opacity = help.came ? opacity_at(truth.error_rad) : 0.0;
    if (help.call == HelpCall::answered) help.opacity = std::max(opacity_at(truth.error_rad), called_opacity);
    help.ahead_m = help.shown() ? offset_ahead_m(truth.motion) : 0.0;
    if (help.shown()) ++help.shown_ticks;
}

double shown_s(const PathHelp& help) { return static_cast<double>(help.shown_ticks) * tick_s; }

}  // namespace slopewise
