#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic measures = SourceTopic::measures;

constexpr TaughtNumber entries[] = {
    {"measured_points", measures, "Bias and scatter are of 10 points a second.", "", "", common_practice},
    {"measured_bands", measures, "The approach is told in bands that end at 2 NM, 500, 300, 200 and 50 ft.",
     "", "", common_practice},
    {"measured_turns", measures, "A stick that turns back counts from 3 % of its travel, a lever from 2 %.",
     "", "", common_practice},
    {"measured_inputs", measures,
     "An answer counts from 5 % of the stick's travel, or from 2 % of the lever's.", "", "", common_practice},
    {"measured_answers", measures,
     "A change of the lights is answered within 5 s; a correction overshoots within 20 s.", "", "",
     common_practice},
    {"measured_lever_step", measures, "A lever step is what it moves within 2 s.", "", "", common_practice},
    {"measured_flap", measures,
     "Ballooning is looked for within 6 s of a step of flap, re-trimming within 20 s.", "", "",
     common_practice},
    {"measured_held_stick", measures, "The stick held at the end is the mean of the last 30 s.", "", "",
     common_practice},
    {"measured_aim", measures, "Where the path pointed is told at 500, 300, 200 and 100 ft.", "", "",
     common_practice},
    {"measured_go_around", measures, "A go-around is told with the minute after it began, 60 s.", "", "",
     common_practice},
    {"fault_sink", measures, "Sinking too fast: beyond 1,000 ft/min.", "FSF ALAR Tool Kit, Briefing Note 7.1",
     "at most 1,000 ft/min, as a magazine quotes it", secondary},
    {"fault_flap", measures, "Landing flap late: not set by 400 ft.", "", "", common_practice},
    {"fault_balloon", measures, "Ballooning: more than 40 ft gained on the path at a step of flap.", "", "",
     common_practice},
    {"fault_idle", measures, "No power left to take off: idling for long below 500 ft.", "", "",
     common_practice},
    {"fault_inside", measures, "Staring inside: 35 % of the time on the panel. Never inside: less than 5 %.",
     "", "", common_practice},
    {"fault_near_ground", measures,
     "Ducking under, levelling off early and chasing the lights: from 200 ft down.", "", "", common_practice},
    {"fault_order", measures, "Which fault is told first: the one that can lead to the worst.", "", "",
     common_practice},
};

}  // namespace

std::span<const TaughtNumber> measure_entries() { return entries; }

}  // namespace slopewise
