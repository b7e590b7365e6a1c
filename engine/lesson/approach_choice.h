// The student's plain choice of approach: where it starts, on which side of the path, in what headwind.
#pragma once

#include <array>

#include "lesson/lesson.h"

namespace slopewise {

enum class StartSide { above, on, below };

// The other side of the path: high becomes low by the same angle.
StartSide mirrored(StartSide side);

struct ApproachChoice {
    int distance_nm = 3;
    StartSide side = StartSide::on;
    double headwind_kt = 0.0;  // 0 to 20
};

inline constexpr std::array<int, 3> choice_distances_nm{1, 2, 3};
inline constexpr double most_headwind_kt = 20.0;

// How far off the path "above" and "below" start, in degrees: four white or four red, and half as much
// again as the tolerance (common practice, no source).
inline constexpr double off_path_deg = 0.7;

// The id of every chosen approach: none of the lessons that ship.
inline constexpr const char* own_approach_id = "own_approach";

// The base lesson flown from the chosen start, in a steady wind, under that id.
Lesson lesson_of(const ApproachChoice& choice, const Lesson& base);

}  // namespace slopewise
