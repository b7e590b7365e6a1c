#include "tests/screens/sample_drills.h"

namespace slopewise {

DrillsView sample_drills() {
    DrillsView view;
    view.student = "Kestrel 7";
    for (int i = 1; i <= 11; ++i)
        view.rows.push_back(
            {"drill" + std::to_string(i), std::to_string(i) + ". Speed by attitude, and trim",
             "Hold the target speed through every flap step with the attitude, and trim until "
             "it holds itself. 40 items. Passes: answered right: at least 95 %; half of the "
             "answers take: less than 1.50 s.",
             i < 3 ? "Last result: passed." : "Not done yet."});
    view.next = 2;
    return view;
}

DrillView sample_drill_about() {
    DrillView view;
    view.title = "Read the lights";
    view.place = "40 items";
    view.back = "Drills";
    view.aim = "Know at a glance what the lights say, from five miles to the last third of one.";
    view.why = "On final there is a second to look, and a lamp counted slowly is a lamp answered late.";
    view.how = "The lights show for a moment. Say what they mean as soon as you know; do not count aloud.";
    view.mistakes = "Red and white taken the wrong way round; counted from the wrong side.";
    view.source = "FAA Aeronautical Information Manual 2-1-2 (recalled)";
    view.passes = {"answered right: at least 95 % (common practice, no source)",
                   "half of the answers take: less than 1.50 s (common practice, no source)"};
    view.go_on = "Begin";
    return view;
}

DrillView sample_card() {
    DrillView view;
    view.stage = DrillView::Stage::asked;
    view.title = "Read the lights";
    view.place = "3 of 40";
    view.back = "Drills";
    view.picture_shown = true;
    view.question = "What do the lights say?";
    view.choices = {"well high", "slightly high", "on the path", "slightly low", "well low"};
    view.can_answer = true;
    return view;
}

DrillView sample_place() {
    DrillView view = sample_card();
    view.title = "Where would we hit";
    view.question = "Where would we hit, flying straight on? Mark the point that stood still.";
    view.choices.clear();
    view.can_answer = false;
    view.asks_place = true;
    view.mark_m = 120;
    view.state = "Mark: 390 ft beyond.";
    view.go_on = "Mark it here";
    return view;
}

DrillView sample_moment() {
    DrillView view = sample_card();
    view.title = "Find the fault";
    view.question = "Mark the moment the fault shows, and say which it is.";
    view.facts = {"From 2 NM, 0.5\u00b0 (106 ft) high"};
    view.choices = {"Power chased in large steps", "Low, and pulled up with the nose alone",
                    "Speed let go on short final", "Flap late, and the path lost with it"};
    view.dials_shown = view.side_shown = view.replayed = view.asks_moment = view.playing = true;
    view.state = "Marked at 42.1 s.";
    return view;
}

DrillView sample_told() {
    DrillView view = sample_card();
    view.stage = DrillView::Stage::told;
    view.title = "You tell, the model flies";
    view.place.clear();
    view.question = "What should the pilot do now?";
    view.choices = {"A little more power",
                    "A little less power",
                    "Nose up a little",
                    "Nose down a little",
                    "Flap",
                    "Trim",
                    "Wait",
                    "Go around"};
    view.dials_shown = view.side_shown = view.playing = true;
    view.share = "You tell, the model flies.";
    view.task = "A little more power";
    return view;
}

DrillView revealed(DrillView sheet) {
    sheet.stage = DrillView::Stage::revealed;
    sheet.can_answer = false;
    sheet.said = 0;
    sheet.right_choice = sheet.choices.empty() ? -1 : 1;
    sheet.true_place_shown = sheet.asks_place;
    sheet.true_place_m = -60;
    sheet.asks_moment = false;
    sheet.reveal =
        "Not right, you said: well high. It was slightly high: 3 white 1 red, 0.3\u00b0 (95 ft) high.";
    sheet.reaction = "Answered after 1.2 s.";
    sheet.go_on = "Next";
    return sheet;
}

DrillResultView sample_drill_result() {
    DrillResultView view;
    view.title = "Read the lights";
    view.verdict = "Not yet: not every limit was met.";
    view.items = "18 of 20 right (the last are judged)";
    view.limits = {{"answered right: at least 95 %", "90 %", false},
                   {"half of the answers take: less than 1.50 s", "1.21 s", true}};
    view.figures = {"bias (+ seen too high, or marked too far): 0.12\u00b0", "scatter: 0.20\u00b0"};
    view.seed = "Seed 4294967295: who takes the same seed has the same items.";
    view.next = "Not all criteria met. Next: the same drill once more.";
    view.back = "Drills";
    return view;
}

}  // namespace slopewise
