#include "lesson/approach_choice.h"

#include "base/units.h"

namespace slopewise {

StartSide mirrored(StartSide side) {
    if (side == StartSide::above) return StartSide::below;
    if (side == StartSide::below) return StartSide::above;
    return StartSide::on;
}

Lesson lesson_of(const ApproachChoice& choice, const Lesson& base) {
    Lesson lesson = base;
    lesson.id = own_approach_id;
    const std::string distance = std::to_string(choice.distance_nm) + " NM";
    switch (choice.side) {
    case StartSide::above:
        lesson.title = "Final from " + distance + ", above the path";
        lesson.aim =
            "See that you are high, act at once, and take half the correction off before you arrive.";
        lesson.start.offset_rad = rad_from_deg(off_path_deg);
        break;
    case StartSide::on:
        lesson.title = "Final from " + distance + ", on the path";
        lesson.aim = "Stay on the path and at the target speed, and change as little as you can.";
        lesson.start.offset_rad = 0.0;
        break;
    case StartSide::below:
        lesson.title = "Final from " + distance + ", below the path";
        lesson.aim = "See that you are low, add power first, and meet the path from below.";
        lesson.start.offset_rad = rad_from_deg(-off_path_deg);
        break;
    }
    lesson.start.distance_m = m_from_nm(choice.distance_nm);
    lesson.wind = Wind{};
    lesson.wind.headwind_mps = mps_from_kt(choice.headwind_kt);
    return lesson;
}

}  // namespace slopewise
