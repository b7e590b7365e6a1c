// The gates: wheel heights above the threshold at which an approach is judged.
#pragma once

#include <array>

#include "base/units.h"

namespace slopewise {

inline constexpr std::array<double, 5> gate_heights_ft{1000.0, 500.0, 300.0, 200.0, 50.0};
inline constexpr double scoring_floor_ft = 50.0;  // what follows is shown, never scored
inline constexpr double scoring_floor_m = m_from_ft(scoring_floor_ft);

}  // namespace slopewise
