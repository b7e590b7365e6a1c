#include "world/visibility.h"

#include "base/exact_math.h"

namespace slopewise {

double extinction_per_m(double visibility_m) { return 3.0 / visibility_m; }

double illuminance_lux(double intensity_cd, double distance_m, double extinction_per_m) {
    return intensity_cd * exact::exp(-extinction_per_m * distance_m) / (distance_m * distance_m);
}

double threshold_lux(Background background) {
    switch (background) {
    case Background::day: return 1e-4;
    case Background::dusk: return 1e-5;
    case Background::night: return 8e-7;
    }
    return 0.0;
}

double visual_range_m(double intensity_cd, double extinction_per_m, Background background) {
    const double threshold = threshold_lux(background);
    double low = 0.01, high = 1e6;  // illuminance falls with distance: halve the interval
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (illuminance_lux(intensity_cd, middle, extinction_per_m) > threshold ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

double contrast_left(double distance_m, double extinction_per_m) {
    return exact::exp(-extinction_per_m * (distance_m > 0.0 ? distance_m : 0.0));
}

double unit_intensity_cd(Background background) {
    switch (background) {
    case Background::day: return 15000.0;
    case Background::dusk: return 5000.0;
    case Background::night: return 1500.0;
    }
    return 0.0;
}

}  // namespace slopewise
