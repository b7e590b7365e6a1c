#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic gates = SourceTopic::gates;

constexpr std::string_view acs = "FAA-S-ACS-6C, Private Pilot Airman Certification Standards";
constexpr std::string_view alar = "FSF ALAR Tool Kit, Briefing Note 7.1";

constexpr TaughtNumber entries[] = {
    {"gate_1000", gates, "A gate at 1,000 ft.", alar,
     "stable by then in instrument conditions, as a magazine quotes it", secondary},
    {"gate_500", gates, "A gate at 500 ft, by which a straight-in approach is stable.", "FAA AC 91-79A",
     "2.1.4: stable by 500 ft in visual conditions, as a training text quotes it", secondary},
    {"gate_300", gates, "The gate at which to decide is at 300 ft.",
     "Training slides on stabilised approaches", "light aircraft in the circuit", secondary},
    {"gate_200", gates, "A gate at 200 ft.", "", "", common_practice},
    {"gate_50", gates, "Scoring ends at 50 ft, from where landing distances are counted.", "14 CFR",
     "23.2130(a)", read},
    {"gate_means", gates, "At a gate: means over 2 s before to 2 s after.", "", "", common_practice},
    {"limit_path", gates, "Path: within 0.5\u00b0 or 30 ft, the larger.", "", "", common_practice},
    {"limit_sink", gates,
     "Sink: within 250 ft/min of what the path asks for at 500 ft and above, within 200 ft/min below.", "",
     "", common_practice},
    {"limit_most_sink", gates, "Sink at 300 ft and above: at most 800 ft/min.",
     "FAA Airplane Flying Handbook", "approaches, not seen", memory},
    {"limit_most_sink_near", gates, "Sink at 200 ft and below: at most 700 ft/min.", "", "", common_practice},
    {"limit_settled", gates,
     "In the 10 s before the gate at which to decide: pitch within 4.0\u00b0, no lever step over 20 %.", "",
     "", common_practice},
    {"limit_power", gates, "From 500 ft down power is at least 1 % above idle.", "", "", common_practice},
    {"limit_configuration", gates, "From 500 ft down landing flap is set.", alar,
     "in the landing configuration, as a magazine quotes it", secondary},
    {"decision_time", gates, "To decide there are 3 s.", "", "", common_practice},
    {"decision_rule", gates, "What cannot be held within its limits is gone around from.", acs, "PA.IV.B.S11",
     read},
    {"answer_band", gates, "A path error to answer is over 0.25\u00b0 and over 15 ft.", "", "",
     common_practice},
    {"go_around_seen", gates, "The lever at 95 % or more and climbing for 2 s is a go-around, said or not.",
     "", "", common_practice},
};

}  // namespace

std::span<const TaughtNumber> gate_entries() { return entries; }

}  // namespace slopewise
