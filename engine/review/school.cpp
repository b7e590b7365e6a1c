#include "review/school.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

double gust_factor_mps(const Lesson& lesson) {
    double factor_mps = 0.0;
    for (int i = 0; i < lesson.air_event_count; ++i) {
        const AirEvent& event = lesson.air_events[static_cast<std::size_t>(i)];
        if (event.kind == AirEvent::Kind::gust) factor_mps = std::max(factor_mps, std::abs(event.along_mps));
    }
    return factor_mps;
}

double gust_allowance_mps(const Lesson& lesson, double gust_share) {
    return gust_share * gust_factor_mps(lesson);
}

Lesson with_gust_allowance(Lesson lesson, double gust_share) {
    const double allowance_mps = gust_allowance_mps(lesson, gust_share);
    lesson.target_cas_mps += allowance_mps;
    lesson.start.cas_mps += allowance_mps;
    return lesson;
}

}  // namespace slopewise
