// What a screen may ask for. Screens return these; `apply` in app.cpp is the only place that acts.
#pragma once

#include <string>
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

struct AnswerEstimate {
    int question, answer;  // into EstimateView; question -1: the one asked now
};
struct SkipEstimate {};  // open the sheet without
struct ShowDetail {};    // of an attempt whose sheet tells less at first
struct OpenTakeAway {};
struct CloseTakeAway {};
struct TakeAway {
    int index;  // into TakeAwayView::offers
};
struct OpenCriteria {};
struct CloseCriteria {};
struct SetCriterion {
    int field;  // counted through all groups of CriteriaView
    double value;
};
struct ResetCriteria {};
struct OpenReplay {};   // of the attempt just flown
struct CloseReplay {};  // back to where it was opened
struct DriveReplay {
    enum class Wish { play_or_pause, step, seek, mark, start, end, speed, change_view };
    Wish wish;
    double amount = 0;  // step: ticks; seek: tick; mark and speed: so many onwards, negative back
};
// ---- the logbook and the progress sheet ----
struct OpenLogbook {};
struct CloseLogbook {};
struct ChooseAttempt {
    std::string id;
};
struct OpenAttempt {
    std::string id;
};
struct ReplayAttempt {
    std::string id;
};
struct CompareAttempts {
    std::string id, other_id;
};
struct SaveAttempt {
    std::string id;
};
struct DeleteAttempt {
    std::string id;
};
struct BringBackAttempt {
    std::string id;
};
struct EraseAttempt {
    std::string id;
};                       // for good
struct WriteStudent {};  // the name, in the machine's own window
struct ChooseStudent {
    std::string name;
};
struct ExportStudent {};
struct ImportFile {};
struct OpenProgress {};
struct CloseProgress {};
struct ChooseProgressLesson {
    std::string id;
};  // empty: all lessons
struct SaveProgress {};

using Action =
    std::variant<ChooseDistance, ChoosePosition, ChooseHeadwind, OpenWhereAndWhen, CloseWhereAndWhen,
                 SetWhereAndWhen, AnswerStickSense, AskStickSense, OpenBriefing, StartFlight, TogglePause,
                 RestartSame, RestartMirrored, FlyOn, OpenSummary, GoToChoices, GoAround, MoveStick,
                 SetThrottle, SetFlap, SetTrim, ToggleSound, SaveTrack, OpenScreenAndHelp, CloseScreenAndHelp,
                 SetDisplay, TouchPanel, AnswerEstimate, SkipEstimate, ShowDetail, OpenTakeAway,
                 CloseTakeAway, TakeAway, OpenCriteria, CloseCriteria, SetCriterion, ResetCriteria,
                 OpenReplay, CloseReplay, DriveReplay, OpenLogbook, CloseLogbook, ChooseAttempt, OpenAttempt,
                 ReplayAttempt, CompareAttempts, SaveAttempt, DeleteAttempt, BringBackAttempt, EraseAttempt,
                 ChooseStudent, WriteStudent, ExportStudent, ImportFile, OpenProgress, CloseProgress,
                 ChooseProgressLesson, SaveProgress>;
using Actions = std::vector<Action>;

}  // namespace slopewise
