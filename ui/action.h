// What a screen may ask for. Screens return these; `apply` in app.cpp is the only place that acts.
#pragma once

#include <variant>
#include <vector>

#include "ui/display.h"
#include "ui/view.h"

namespace slopewise {

struct ChooseDistance {
    int distance_nm;
};
struct ChoosePosition {
    int index;
};  // into ChoiceView::positions
struct ChooseHeadwind {
    double headwind_kt;
};
struct OpenWhereAndWhen {};
struct CloseWhereAndWhen {};
struct SetWhereAndWhen {
    WhereAndWhenChoice choice;
};
struct AnswerStickSense {
    bool up_key_pushes;
};                        // true: the up key lowers the nose, as a stick pushed forward does
struct AskStickSense {};  // ask again
struct OpenBriefing {};
struct StartFlight {};
struct TogglePause {};
struct RestartSame {};
struct RestartMirrored {};
struct FlyOn {};  // after scoring ended: on to touchdown or go-around, unscored
struct OpenSummary {};
struct GoToChoices {};
struct GoAround {};  // full power, and the decision is logged
struct MoveStick {
    double stick;
};  // -1 pushed ... +1 pulled, from a mouse drag; 0 = let go
struct SetThrottle {
    double fraction;
};  // lever position 0 ... 1
struct SetFlap {
    int index;
};
struct SetTrim {
    double trim;
};  // -1 ... +1
struct ToggleSound {};
struct SaveTrack {};  // hand the recorded track to the user as a CSV file
struct OpenScreenAndHelp {};
struct CloseScreenAndHelp {};  // back to where it was opened
struct SetDisplay {
    Display display;
};
struct TouchPanel {
    bool held;
};  // a finger rests on the dials: a peek inside, while the panel is dark

using Action = std::variant<ChooseDistance, ChoosePosition, ChooseHeadwind, OpenWhereAndWhen,
                            CloseWhereAndWhen, SetWhereAndWhen, AnswerStickSense, AskStickSense, OpenBriefing,
                            StartFlight, TogglePause, RestartSame, RestartMirrored, FlyOn, OpenSummary,
                            GoToChoices, GoAround, MoveStick, SetThrottle, SetFlap, SetTrim, ToggleSound,
                            SaveTrack, OpenScreenAndHelp, CloseScreenAndHelp, SetDisplay, TouchPanel>;
using Actions = std::vector<Action>;

}  // namespace slopewise
