#include "tests/screens/sample_syllabus.h"

namespace slopewise {

LessonsView sample_lessons() {
    LessonsView view;
    view.going_on = "Next: 4, Speed by attitude and trim.";
    int number = 0;
    for (const char* title : {"Before the first landing lesson", "Later", "For ground school"}) {
        view.groups.push_back({title, {}});
        for (int i = 0; i < 8; ++i) {
            ++number;
            view.groups.back().rows.push_back(
                {"lesson_" + std::to_string(number), std::to_string(number), "From above and from below",
                 "Say at a glance what the slope lights tell you, and act on it at once, in small steps.",
                 "12 flown, 10 unaided. Criterion not met yet: 2 of last 4, 3 of 4 asked for.", number == 4});
        }
    }
    view.chosen = 3;
    return view;
}

LessonCardView sample_lesson_card() {
    LessonCardView view;
    view.id = "lesson_5";
    view.number = "5";
    view.title = "Path by power";
    view.aim = "Hold two white and two red with the throttle alone, in small steps taken off in time.";
    view.why = "A small change of power at the right moment keeps the path. A late one needs three more.";
    view.facts = {{"Start", "From 1.0 NM, then 2.0 NM, on the path, at 65 kt, flap landing."},
                  {"Wind", "Calm; from the fourth run on 0, 8 or 15 kt."},
                  {"Shown", "Lights shown after your first input, panel dark until you look at it."},
                  {"Controls", "You have power; the other pilot has pitch."}};
    view.criterion = {"time in path tolerance: at least 80 %", "crossings of the path: at most 2.0 a minute",
                      "in 3 of the last 4 unaided runs"};
    view.known = "Met in 2 of the last 3 unaided runs; 3 of the last 4 are asked for.";
    view.instructor = "I have the pitch; you have the power. A little power, wait, and take half of it off.";
    view.mistakes = {"Waits until two lamps have changed", "Adds too much", "Leaves the correction in"};
    view.sources = {"80 % of the time, at most two crossings a minute: common practice, no source"};
    view.next = "6, The last half mile.";
    view.next_id = "lesson_6";
    view.previous_id = "lesson_4";
    return view;
}

LessonResultView sample_lesson_result() {
    LessonResultView view;
    view.title = "Lesson 5: Path by power";
    view.rows = {{"time in path tolerance: at least 80 %", "84 %", "met", true, false},
                 {"crossings of the path: at most 2.0 a minute", "3.1 a minute", "not met", false, true},
                 {"flap raised in stages, and only when climbing", "", "not asked for", false, false}};
    view.runs = "Met in 2 of the last 3 unaided runs; 3 of the last 4 are asked for.";
    view.variation = "Run 5, seed 1: start 0.7\u00b0 high, headwind 8 kt, at sandholm.";
    view.varies = true;
    view.next_id = "lesson_6";
    return view;
}

}  // namespace slopewise
