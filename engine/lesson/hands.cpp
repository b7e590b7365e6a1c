#include "lesson/hands.h"

namespace slopewise {

Controls shared(Hands hands, const Controls& student, const Controls& instructor) {
    if (student.go_around && hands != Hands::watch) return student;
    if (instructor.go_around && hands != Hands::both) return instructor;
    Controls given = student_has_pitch(hands) ? student : instructor;
    given.throttle = student_has_power(hands) ? student.throttle : instructor.throttle;
    return given;
}

}  // namespace slopewise
