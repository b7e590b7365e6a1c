// What counts as stable at each gate, and how a school words its advice. An instructor may edit all of it; it
// is printed on the sheet.
#pragma once

#include <array>
#include <string_view>

#include "base/units.h"

namespace slopewise {

// Limits at one gate. Path: the larger of the angle and the height, so that nobody is made to chase lights.
struct GateCriteria {
    double path_rad = rad_from_deg(0.5);
    double path_floor_m = m_from_ft(30.0);
    double slow_mps = mps_from_kt(5.0);          // below target
    double fast_mps = mps_from_kt(10.0);         // above target
    double sink_mps = mps_from_fpm(200.0);       // either side of the sink that the path asks for
    double most_sink_mps = mps_from_fpm(800.0);  // whatever the path asks for
};

// Which control the school says corrects the path: it decides what counts as the right first input, nothing
// else. The flight is the same.
enum class Convention { power_for_path, pitch_for_path, both };
inline constexpr std::array<std::string_view, 3> convention_names{"power_for_path", "pitch_for_path", "both"};

// Defaults: speed +10/-5 kt (FAA-S-ACS-6C, PA.IV.B.S7); sink of more than 800 ft/min as excessive (Airplane
// Flying Handbook, approaches, from memory); the rest is common practice, no source.
struct Criteria {
    GateCriteria far{rad_from_deg(0.5), m_from_ft(30.0),     mps_from_kt(5.0),
                     mps_from_kt(10.0), mps_from_fpm(250.0), mps_from_fpm(800.0)};  // at 500 ft and above
    GateCriteria decision;                                                          // at 300 ft
    GateCriteria near{rad_from_deg(0.5), m_from_ft(30.0),     mps_from_kt(5.0),
                      mps_from_kt(5.0),  mps_from_fpm(200.0), mps_from_fpm(700.0)};  // at 200 ft and below

    double decision_gate_ft = 300.0;  // the gate at which to continue or to go around; not in the file
    double decision_s = 3.0;          // within this time of it
    double most_pitch_range_rad = rad_from_deg(4.0);  // in the ten seconds before that gate
    double most_lever_step = 0.20;                    // likewise, share of travel
    double least_power_over_idle = 0.01;              // power below idle and this counts as idle
    bool landing_flap = true;                         // must be set at 500 ft and below
    Convention convention = Convention::both;

    // A path error larger than both of these is one to answer.
    double answer_rad = rad_from_deg(0.25);
    double answer_floor_m = m_from_ft(15.0);
};

// The limits that hold at a gate of this height.
const GateCriteria& criteria_at(const Criteria& criteria, double height_ft);

}  // namespace slopewise
