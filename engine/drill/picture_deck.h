// Cards of the runway without lights: high, on the path or low.
#pragma once

#include <cstdint>
#include <vector>

#include "drill/card.h"
#include "drill/drill.h"

namespace slopewise {

inline constexpr int picture_high = 0, picture_on = 1, picture_low = 2;  // the choices, in their order

// Each distance with each error as often as the others, shuffled. An error within 0.05 degrees is on the
// path.
std::vector<Card> picture_deck(const PictureCards& settings, int items, const Scenario& base,
                               std::uint64_t seed);

// The angle that an answer says: that of the least error asked for, high or low; zero for on the path.
// `half_rad` is that error.
double said_rad(int choice, double half_rad);

}  // namespace slopewise
