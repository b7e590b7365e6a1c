#include "ui/sky_view.h"

#include <algorithm>
#include <cmath>

#include "world/runway_lights.h"
#include "world/visibility.h"

namespace slopewise {

namespace {

constexpr double windsock_height_m = 6.0;

// Runway lights are off on a clear day (common practice, no source).
bool lights_on(const Outlook& outlook) {
    return background_of(outlook.light) != Background::day || outlook.rain || outlook.visibility_m < 8000.0;
}

}  // namespace

SkyView sky_view(const Scenario& scenario, double time_s) {
    const Outlook& outlook = scenario.lesson.outlook;
    const Background background = background_of(outlook.light);
    SkyView sky;
    sky.light = static_cast<SkyView::Light>(outlook.light);
    sky.ground_lights = outlook.ground_lights;
    sky.overcast = outlook.overcast;
    sky.rain = outlook.rain;
    sky.visibility_m = outlook.visibility_m;
    sky.threshold_lux = threshold_lux(background);
    sky.lights_setting = lights_on(outlook) ? brightness_setting(background) : 0.0;
    sky.headwind_mps = headwind_at_mps(scenario.surroundings.wind, windsock_height_m);
    sky.time_s = time_s;
    return sky;
}

CountrysideView countryside_view(const Countryside& countryside) {
    return {static_cast<CountrysideView::Kind>(countryside.kind), countryside.seed};
}

double lamp_brightness(const Outlook& outlook, const Point3& lens, const Point3& eye) {
    const Background background = background_of(outlook.light);
    const double distance_m =
        std::max(1.0, std::hypot(lens.x_m - eye.x_m, lens.y_m - eye.y_m, lens.z_m - eye.z_m));
    const double lux =
        illuminance_lux(unit_intensity_cd(background), distance_m, extinction_per_m(outlook.visibility_m));
    return std::log10(std::max(1e-12, lux) / threshold_lux(background));
}

}  // namespace slopewise
