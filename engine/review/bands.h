// The approach in bands, from far to near, so that feet far out do not swamp feet near the ground.
#pragma once

#include <array>
#include <string_view>

#include "review/control_activity.h"
#include "review/spread.h"

namespace slopewise {

inline constexpr std::array<std::string_view, 5> band_names{"beyond_2_nm", "2_nm_to_500_ft", "500_to_300_ft",
                                                            "300_to_200_ft", "200_to_50_ft"};

// Above 500 ft by the distance to the aim point, below by the wheel height.
std::size_t band_of(const TrackPoint& point);

struct Band {
    std::size_t points = 0;  // 0: the approach was never in it
    Spread path_rad, path_m, speed_mps;
    ControlActivity controls;
};

using Bands = std::array<Band, band_names.size()>;
Bands bands_of(const Scenario& scenario, TrackPoints points);

}  // namespace slopewise
