// In which aircraft, at which airfield, in what light and weather an approach is flown.
#pragma once

#include <string>

#include "flight/aircraft.h"
#include "lesson/lesson.h"

namespace slopewise {

struct WhereAndWhen {
    std::string aircraft_id = "tourer";
    std::string runway_id = "larkmoor";
    Outlook outlook;

    friend bool operator==(const WhereAndWhen&, const WhereAndWhen&) = default;
};

// The lesson flown there and then, at that aircraft's approach speed and usual mass with its landing flap.
// `aircraft` must be the one that is named.
Lesson lesson_at(Lesson lesson, const WhereAndWhen& where_and_when, const Aircraft& aircraft);

}  // namespace slopewise
