#include "drill/card.h"

#include <algorithm>

#include "base/exact_math.h"

namespace slopewise {

Point3 eye_at(const Picture& picture, double time_s) {
    const double back_m = picture.ground_speed_mps * std::max(0.0, picture.clip_s - std::max(0.0, time_s));
    return {picture.eye.x_m - back_m, picture.eye.y_m,
            picture.eye.z_m - back_m * exact::tan(picture.path_rad)};
}

}  // namespace slopewise
