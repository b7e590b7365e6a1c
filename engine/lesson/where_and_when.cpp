#include "lesson/where_and_when.h"

namespace slopewise {

Lesson lesson_at(Lesson lesson, const WhereAndWhen& where_and_when, const Aircraft& aircraft) {
    lesson.aircraft_id = where_and_when.aircraft_id;
    lesson.runway_id = where_and_when.runway_id;
    lesson.outlook = where_and_when.outlook;
    lesson.mass_kg = 0.0;
    lesson.target_cas_mps = aircraft.approach_speed_mps;
    lesson.start.cas_mps = aircraft.approach_speed_mps;
    lesson.start.flap = landing_flap(aircraft);
    return lesson;
}

}  // namespace slopewise
