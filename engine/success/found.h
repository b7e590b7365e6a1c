// What a flight shows for one requirement, before it is held to the limits.
#pragma once

#include <string>

#include "review/review.h"

namespace slopewise {

struct Flown {
    const Scenario& scenario;
    const Criteria& criteria;
    TrackPoints points;  // scored
    const Review& review;
};

struct Found {
    enum class Kind { figure, yes, no, not_due };

    Kind kind = Kind::not_due;
    double least = 0.0, most = 0.0;  // a figure, in SI; the same unless it has a range
    std::string words;               // of the other kinds
};

Found find(const Flown& flown, const Requirement& requirement);

}  // namespace slopewise
