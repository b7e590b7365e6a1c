// What the class's screens may ask for.
#pragma once

#include <string>
#include <variant>

#include "ui/room_shown.h"

namespace slopewise {

struct OpenClassRoom {};
struct CloseClassRoom {};
struct ChooseClassPanel {
    int panel;  // of ClassRoomView::Panel
};
// What the class sees, one thing at a time.
struct ShowToClass {
    enum class What {
        black,
        lights,
        dials,
        side_profile,
        ghost,
        names,
        airspeed,  // these lie under a lid or do not
        altimeter,
        vertical_speed,
        power,
        flap,
        trim,
        stall_warning,
    };
    What what;  // the other way round from now
};
struct PutPanelAway {};  // the picture alone, or the panel again
struct FreezeOrRun {};   // the flight of the class

// ---- the questions ----
struct DoWithQuestions {
    enum class Wish {
        choose_set,  // id
        leave_set,   // back to the list
        next,        // what a clicker's next key does: ask, count again, reveal, run on, the next question
        previous,    // the clicker's other key
        go_to,       // question `which`
        count_hand,  // one more for choice `which`
        uncount_hand,
        show_counts,  // to the class before the reveal, or not
        discuss,      // count a second time
        hand_over,    // the set as a file
        take_in,      // a set from a file
        save_tally,   // as CSV
        edit,         // the set that is chosen: a copy of one's own when it is shipped
        add_here,     // a question of kind `which` about the approach as it stands
        set_words,    // of the question shown: `words`
        move_up,
        remove,
        remove_set,
        done,
    };
    Wish wish;
    int which = 0;
    std::string words;
};

// ---- the station ----
struct SetStation {
    int group, row, choice;  // into StationView
};

// ---- what stands in place of the flight, and what is drawn over it ----
struct DoWithBoard {
    enum class Wish {
        show_flight,
        show_stills,   // set `page`
        show_explain,  // page `page`
        reveal_labels,
        wipe,       // the ink
        take_back,  // its last line
    };
    Wish wish;
    int page = 0;
};
struct MoveInk {
    enum class Step { begin, draw, end, point, leave };
    Step step;
    InkPoint at;
};

// ---- the class window ----
struct DoWithClassWindow {
    enum class Wish { open, close, go_on_with };  // go_on_with: the run that a class window still shows
    Wish wish;
};

// ---- the class in a table ----
struct OpenClassTable {};
struct CloseClassTable {};
struct DoWithClassTable {
    enum class Wish {
        add_files,
        add_folder,
        sort_by,  // column `which`; again: the other way round
        clear,
        save,         // as CSV
        hand_out,     // the numbers, to be printed
        lesson_plan,  // likewise
    };
    Wish wish;
    int which = 0;
};

using ClassWish = std::variant<OpenClassRoom, CloseClassRoom, ChooseClassPanel, ShowToClass, PutPanelAway,
                               FreezeOrRun, DoWithQuestions, SetStation, DoWithBoard, MoveInk,
                               DoWithClassWindow, OpenClassTable, CloseClassTable, DoWithClassTable>;

}  // namespace slopewise
