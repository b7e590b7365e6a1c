#include "tests/screens/sample_class.h"

namespace slopewise {

ClassRoomView sample_class_room() {
    ClassRoomView view;
    view.state = "Frozen at 1.2 NM, 493 ft";
    view.truth = "Path +0.80\u00b0, speed +14 kt, sink 535 ft/min, lights 4 white";
    view.link.standing = "Class window: follows";
    view.link.open = true;
    return view;
}

// The flight alone: a question lies over what is under it, and is tested by itself, like the boards.
ClassPictureView sample_class_picture() { return {}; }

AskView sample_questions() {
    AskView view;
    view.sets = {{"energy_states", "Energy states", "High or low, fast or slow, from the picture.", false}};
    view.set = 0;
    view.questions = {{"High or low? Fast or slow?", "1.2 NM, 0.8\u00b0 (102 ft) high, 14 kt fast", true},
                      {"High or low? Fast or slow?", "1 NM, 0.8\u00b0 (85 ft) low, 8 kt slow", false}};
    view.question = 0;
    view.answer = "Right: 1, high and fast. 0.8\u00b0 (105 ft) high and 14 kt fast.";
    view.next = "Run on, 10 s";
    view.tally = "9 of 14 right at first, 12 of 14 after talking";
    view.kept = "3 answered questions are kept.";
    return view;
}

StationView sample_station() {
    StationView view;
    view.groups = {{"Put it there",
                    {{"Distance, NM", {"3", "2", "1", "0.5"}, 2}, {"Path", {"High", "On it", "Low"}, 0}}},
                   {"Wind", {{"Headwind, kt", {"0", "5", "10", "15", "20", "25"}, 3}}}};
    view.who = "The one at the keys flies.";
    return view;
}

ClassTableView sample_class_table() {
    ClassTableView view;
    view.summary = "3 students, 31 attempts, from 3 files.";
    view.rows = {{"Heron 4", "Final approach, calm", "12, 9 unaided", "+0.12\u00b0", "\u00b10.21\u00b0",
                  "2026-11-20", "none"},
                 {"Heron 7", "Final approach, calm", "10, 8 unaided", "\u22120.34\u00b0", "\u00b10.48\u00b0",
                  "2026-11-24", "Stretching the approach with the nose (2 of 3)"},
                 {"Plover 1", "The last half mile", "9", "+0.05\u00b0", "\u00b10.30\u00b0", "2026-11-25",
                  "Power late (3 of 3)"}};
    return view;
}

}  // namespace slopewise
