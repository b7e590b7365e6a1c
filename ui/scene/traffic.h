// Vehicles on the road under final: their size and pace tell the eye its height.
#pragma once

#include <array>

#include "ui/scene/ground_layout.h"
#include "ui/scene/painter.h"

namespace slopewise {

struct Vehicle {
    WorldPoint place;
    double heading_rad = 0;  // from the landing direction towards the right
    double length_m = 4.4, width_m = 1.8, height_m = 1.5;
    Rgb colour;
};

inline constexpr std::size_t vehicle_count = 9;

// Where they are at a time; they drive on the right and start over at the road's end.
std::array<Vehicle, vehicle_count> vehicles_at(const Course& road, double time_s);

void draw_traffic(const Painter& painter, const GroundLayout& ground, double time_s);

// Windows, street lamps and vehicles' lamps, where they are lit.
void draw_ground_lights(const Painter& painter, const GroundLayout& ground, double time_s);

}  // namespace slopewise
