// What the sheets of the syllabus draw: all its lessons, the card of one, and what a flight was to its
// lesson.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

struct LessonsView {
    struct Row {
        std::string id, number, title, aim;
        std::string known;  // "4 flown, 3 of them unaided. Met in 2 of the last 3 unaided runs; ..."
        bool next = false;  // the one to go on with
    };
    struct Group {
        std::string title;
        std::vector<Row> rows;
    };
    std::vector<Group> groups;
    int chosen = -1;       // counted through all groups
    std::string going_on;  // "Next: 4, Speed by attitude."

    int made_edition = -1;  // of the logbook and the drills; the rows are made again only when one differs
    std::string made_student;
};

struct LessonFact {
    std::string name, words;  // "Start", "2 NM, on the path, at 65 kt"
};

struct LessonCardView {
    std::string id, number, title, aim, why;
    std::vector<LessonFact> facts;       // start, wind, what is shown, who has which control
    std::vector<std::string> criterion;  // what is asked for, a line each
    std::string known;                   // of the attempts so far
    std::string instructor;              // as it is said
    std::vector<std::string> mistakes, sources;
    std::string next;  // "Next: 6, The last half mile."; empty at the end of the order
    std::string next_id, previous_id;
    std::string drill;  // id of the drill that is this lesson; empty: it is flown
    std::string drill_title;
};

// What the flight just flown was to its lesson; without a title it was none of the syllabus.
struct LessonResultView {
    struct Row {
        std::string asked, flown, verdict;
        bool met = false, missed = false;  // neither: not asked for in this flight
    };
    std::string title;  // "Lesson 5: Path by power"
    std::vector<Row> rows;
    std::string runs;       // "Met in 2 of the last 3 unaided runs; 3 of the last 4 are asked for."
    std::string variation;  // "Run 5, seed 1: start 0.7° high, headwind 8 kt."
    bool reached = false;   // as many runs met it as are asked for
    bool varies = false;    // another run begins otherwise
    std::string next_id;    // of the lesson to go on with; empty: none
};

}  // namespace slopewise
