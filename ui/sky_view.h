// How the outside looks, from the lesson's outlook: finished figures for the picture.
#pragma once

#include "lesson/scenario.h"
#include "ui/view.h"

namespace slopewise {

SkyView sky_view(const Scenario& scenario, double time_s);

CountrysideView countryside_view(const Countryside& countryside);

// Decades of illuminance above the least that is noticed, of a slope-light unit at `lens` seen from `eye`.
double lamp_brightness(const Outlook& outlook, const Point3& lens, const Point3& eye);

}  // namespace slopewise
