// What was taken in and can be flown is flown.
#pragma once

#include <string_view>

#include "lesson/attempt.h"

namespace slopewise::test {

// 2,000 ticks by hands that the bytes draw, to the stops and back: all that moves must stay finite and within
// what the aeroplane has. Nothing where the start is not flyable.
void fly_a_while(const Scenario& scenario, std::string_view bytes);

// From 3 NM as the shipped approaches are, in this aircraft and on this runway.
void fly_final(const Aircraft& aircraft, const Runway& runway, std::string_view bytes);

// The same of a lesson that names shipped ones.
void fly_lesson(const Lesson& lesson, std::string_view bytes);

}  // namespace slopewise::test
