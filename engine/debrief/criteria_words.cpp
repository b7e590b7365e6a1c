#include "debrief/criteria_words.h"

#include "debrief/html_text.h"

namespace slopewise {
namespace {

std::string gate_line(const char* where, const GateCriteria& gate) {
    return std::string(where) +
           format_html(
               ": path %.2f\u00b0 or %.0f ft, the larger; speed \u2212%.0f/+%.0f kt; sink \u00b1%.0f, "
               "at most %.0f ft/min.",
               deg_from_rad(gate.path_rad), ft_from_m(gate.path_floor_m), kt_from_mps(gate.slow_mps),
               kt_from_mps(gate.fast_mps), fpm_from_mps(gate.sink_mps), fpm_from_mps(gate.most_sink_mps));
}

const char* convention_words(Convention convention) {
    switch (convention) {
    case Convention::power_for_path: return "Power corrects the path";
    case Convention::pitch_for_path: return "Pitch corrects the path";
    case Convention::both: break;
    }
    return "Power or pitch corrects the path";
}

}  // namespace

std::vector<std::string> criteria_lines(const Criteria& c) {
    return {
        gate_line("500 ft and above", c.far), gate_line("300 ft", c.decision),
        gate_line("200 ft and below", c.near),
        format_html("At %.0f ft: %.0f s to decide; in the 10 s before, pitch within %.1f\u00b0 and no lever "
                    "step over %.0f %%. From 500 ft: %spower at least %.0f %% above idle.",
                    c.decision_gate_ft, c.decision_s, deg_from_rad(c.most_pitch_range_rad),
                    100.0 * c.most_lever_step, c.landing_flap ? "landing flap; " : "",
                    100.0 * c.least_power_over_idle),
        std::string(convention_words(c.convention)) +
            format_html("; an error to answer is over %.2f\u00b0 and %.0f ft.", deg_from_rad(c.answer_rad),
                        ft_from_m(c.answer_floor_m))};
}

std::string criteria_sentence(const Criteria& criteria) {
    std::string sentence = "Held to:";
    for (const std::string& line : criteria_lines(criteria)) sentence += " " + line;
    return sentence;
}

}  // namespace slopewise
