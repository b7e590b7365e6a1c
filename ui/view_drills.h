// What the sheets of the drills show.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

// All drills, in the order they are learned in.
struct DrillsView {
    struct Row {
        std::string id;
        std::string title;  // "1. Read the lights"
        std::string about;  // what it practises, how many items, what passes
        std::string last;   // "Last result: passed", "Not done yet"
    };

    std::string student;
    std::vector<Row> rows;
    int next = 0;         // the first of them that was not passed last time
    std::string trouble;  // results that were kept and cannot be read; empty mostly
};

// One drill before it begins, or one of its items. The picture, the dials and the side view are in
// `View::flight`, a replay is in `View::replay`.
struct DrillView {
    enum class Stage {
        about,     // what it is; nothing is dealt yet
        asked,     // to be answered
        flown,     // the prediction stands and is being flown
        told,      // the student tells, the model flies
        revealed,  // what was right is shown
    };

    Stage stage = Stage::about;
    std::string title;  // "Read the lights"
    std::string place;  // "3 of 40"
    std::string back;   // where its way back leads: "Drills"

    // Before it begins.
    std::string aim, why, how, mistakes, source, trouble;
    std::vector<std::string> passes;

    // What is seen.
    bool picture_shown = false, dials_shown = false, side_shown = false;
    bool replayed = false;  // the side view is the replay's
    std::string gone;       // said where the picture was

    // What is asked.
    std::string question;
    std::vector<std::string> facts, choices;
    bool can_answer = false;  // the choices, now
    int said = -1;            // of the choices
    std::string state;        // "Mark: 230 ft beyond the aim point", "Playing", "Power 20 %"

    bool asks_place = false;  // a mark along the runway
    double mark_m = 0;        // of the student, beyond the aim point
    bool asks_moment = false, playing = false;

    // After the answer.
    bool right = false;
    int right_choice = -1;
    bool true_place_shown = false;
    double true_place_m = 0;  // beyond the aim point
    std::string reveal;       // "Right. ..."
    std::string reaction;     // "Answered after 1.2 s"

    std::string go_on;        // what Enter does: "Begin", "Mark it", "Next"; empty: nothing
    std::string spoken;       // instead of the picture, for a screen reader
    std::string task, share;  // while it is flown on this sheet
};

// What a drill came to.
struct DrillResultView {
    struct Limit {
        std::string asked, found;
        bool met = false;
    };

    std::string title;
    std::string verdict;  // "Passed.", "Not yet.", "Not finished: nothing is judged."
    std::string items;    // "38 of 40 right"; empty for a flight
    std::vector<Limit> limits;
    std::vector<std::string> figures;  // what else was measured
    std::string seed;                  // "Seed 17"
    std::string next;                  // what to do now
    std::string back;
};

// What the flight screen says of a drill that is flown on it; empty words: there is none.
struct FlownDrillView {
    std::string task;     // "Hold 65 kt: 23 of 60 s"
    std::string share;    // "You have power"
    bool called = false;  // the task is a call, to be answered at once

    bool there() const { return !task.empty(); }
};

}  // namespace slopewise
