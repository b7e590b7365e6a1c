// Where a lesson stands in the syllabus. Nothing is locked: the order is advice.
#pragma once

#include <array>
#include <string>
#include <string_view>

namespace slopewise {

// A free approach has no place in the order. The core comes before the first landing lesson in the aeroplane.
enum class LessonGroup { free_approach, core, later, ground_school };
inline constexpr std::array<std::string_view, 4> lesson_group_names{"free_approach", "core", "later",
                                                                    "ground_school"};

inline constexpr int most_lessons_in_order = 25;

struct Syllabus {
    LessonGroup group = LessonGroup::free_approach;
    int place = 0;      // 1 to 25; 0: none
    std::string next;   // id of the lesson to go on with; empty: none
    std::string drill;  // id of the drill that is this lesson, which then has no flight; empty: it is flown

    friend bool operator==(const Syllabus&, const Syllabus&) = default;
};

}  // namespace slopewise
