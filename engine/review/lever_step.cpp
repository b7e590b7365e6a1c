#include "review/lever_step.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

double largest_lever_step(TrackPoints points) {
    double largest = 0.0;
    std::size_t first = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        while (points[i].time_s - points[first].time_s > lever_step_s + 1e-6) ++first;  // a rounding of times
        for (std::size_t j = first; j < i; ++j)
            largest = std::max(largest, std::abs(points[i].lever - points[j].lever));
    }
    return largest;
}

}  // namespace slopewise
