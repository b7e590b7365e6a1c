// The runway's own lights as points: edge, threshold, end and approach.
#pragma once

#include <vector>

#include "ui/scene/point_light.h"
#include "ui/view.h"

namespace slopewise {

std::vector<PointLight> make_airfield_lights(const RunwayView& runway);

// `setting`: the share of full intensity; 0 draws none.
void draw_airfield_lights(const Painter& painter, std::span<const PointLight> lights, double setting);

}  // namespace slopewise
