#include "sources/entries.h"

namespace slopewise {
namespace {

using enum Sureness;
constexpr SourceTopic speed = SourceTopic::speed;
constexpr SourceTopic sink = SourceTopic::sink_and_wind;

constexpr std::string_view acs = "FAA-S-ACS-6C, Private Pilot Airman Certification Standards";
constexpr std::string_view knowledge = "FAA Pilot's Handbook of Aeronautical Knowledge";
constexpr std::string_view dryden = "MIL-F-8785C";

constexpr TaughtNumber entries[] = {
    {"target_speed", speed,
     "The target is the flight manual's approach speed; without one, not more than 1.3 times the stalling "
     "speed with landing flap.",
     acs, "PA.IV.B.S7", read},
    {"target_ratio", speed, "The aircraft here approach at 1.30 to 1.34 times that speed.",
     "The aircraft's own data", "approach speed over stalling speed", calculated},
    {"speed_limits", speed, "The speed is at most 5 kt below the target and 10 kt above it.", acs,
     "PA.IV.B.S7", read},
    {"speed_near", speed, "At 200 ft and below it is at most 5 kt either way.", "", "", common_practice},
    {"gust_allowance", speed, "In gusts the target is raised by half of gust less wind.",
     "FAA Airplane Flying Handbook", "Turbulent Air Approach and Landing, in an earlier edition", read},
    {"airspeed_arcs", speed,
     "White arc: from the stalling speed with landing flap to the flap's limit. Green: from the stalling "
     "speed with flap up.",
     knowledge, "markings of the airspeed indicator", read},
    {"vertical_speed_lag", speed, "The vertical speed shows 95 % of a change after 7.5 s.", knowledge,
     "lag of the instrument, not seen", memory},
    {"height_setting", speed, "The altimeter reads from the runway up.", "", "", common_practice},

    {"sink_formula", sink,
     "Sink in ft/min is ground speed in kt \u00d7 101.3 \u00d7 the path's tangent: 345 at 65 kt on "
     "3.0\u00b0.",
     "Geometry", "1 kt is 101.27 ft/min", calculated},
    {"sink_rule", sink, "About ground speed \u00d7 5: at 65 kt 325 ft/min, which is 5.8 % too little.",
     "Rule of thumb", "in several study texts; its error is calculated", secondary},
    {"sink_in_headwind", sink,
     "At 65 kt through the air on 3.0\u00b0: 345 ft/min in calm air, 292 in 10 kt of headwind, 239 in 20.",
     "Geometry", "the same with the ground speed", calculated},
    {"headwinds", sink, "The headwind is up to 20 kt.", "", "", common_practice},
    {"wind_over_grass", sink,
     "A wind that fades towards the ground: logarithmic, over grass with a roughness of 0.03 m, stated for "
     "10 m.",
     "WMO Guide to Instruments and Methods of Observation", "Davenport's classes, not seen", memory},
    {"turbulence_vertical", sink, "Vertical gusts in turbulence have a deviation of 0.1 of W20.", dryden,
     "low-altitude model, as two programs give it", secondary},
    {"turbulence_levels", sink, "W20 of 15 kt is light turbulence, 30 kt moderate, 45 kt severe.", dryden,
     "30 kt as a model library gives it, the others remembered", memory},
};

}  // namespace

std::span<const TaughtNumber> speed_and_sink_entries() { return entries; }

}  // namespace slopewise
