// What a screen may ask for. Screens return these; only the `act`s of act.h act on them.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "ui/class_wishes.h"
#include "ui/device_wishes.h"
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
struct OpenFirstPage {};
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
    double stick;  // -1 pushed ... +1 pulled, from a drag; 0 = let go
    bool by_thumb = false;
};
struct SetThrottle {
    double fraction;  // lever position 0 ... 1
    bool by_thumb = false;
};
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

struct CallHelp {
    bool held;
};  // a finger rests on the button of the path help

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
struct OpenSchool {};
struct CloseSchool {};
struct ChooseForSchool {
    int row, choice;  // into SchoolView
};
struct HandOverSchool {};  // as a file
struct TakeInSchool {};    // from a file that the user chooses
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
// ---- the lessons of the syllabus ----
struct OpenLessons {};
struct CloseLessons {};
struct ChooseLesson {
    std::string id;
};  // in the list
struct OpenLesson {
    std::string id;
};  // its card
struct FlyLesson {
    std::string id;
};                           // by way of the briefing
struct OpenFirstLesson {};   // its card
struct FlyNextRun {};        // of the lesson just flown, as its practice has it
struct FlyNow {};            // the approach chosen, with no briefing
struct ExchangeControls {};  // "I have control", "You have control"
// ---- drills ----
struct OpenDrills {};
struct CloseDrills {};
struct OpenDrill {
    std::string id;
};
struct BeginDrill {};  // the one that is open, with a seed of its own
struct AnswerCard {
    int choice;  // into DrillView::choices; of the student who tells, the command
};
struct MovePlaceMark {
    double metres;  // beyond the aim point
    bool onwards;   // from where the mark stands instead
};
struct DoWithDrill {
    enum class Wish {
        go_on,        // what stands in DrillView::go_on
        mark_moment,  // of the approach that is played, where it stands
        again,        // the same seed
        again_anew,   // another seed
        leave,        // back to where it was opened
    };
    Wish wish;
};

// ---- one's own lessons ----
struct OpenOwnLessons {};
struct CloseOwnLessons {};  // of the sheets about them: back to the one before
struct SetLessonField {
    int field;  // LessonEditorView::Field::number
    double amount;
    std::string words;  // of a text
};
struct DoWithLesson {
    enum class Wish {
        choose,     // in the list
        write_new,  // from the usual approach
        write_on,   // the one that is being written
        open,       // to be changed
        copy,       // a second one like it
        keep,       // the one that is being written
        fly_draft,  // by way of the briefing, as all flying of these
        fly,
        hand_over,  // as a file
        copy_link,  // to be pasted
        remove,
        bring_back,
        take_in,  // from a file
        look_at_arrived,
        fly_arrived,
        keep_arrived,
        leave_arrived,
    };
    Wish wish;
    std::string id;  // where one of the list is meant
};
// ---- where the numbers come from ----
struct OpenSources {};
struct CloseSources {};  // back to where it was opened
struct ChooseSourceTopic {
    int topic;  // into SourcesView::topics
};

// By subject, one `act_*.cpp` each; one list of all costs the compiler seconds and a gigabyte a screen.
using ChoicesWish = std::variant<ChooseDistance, ChoosePosition, ChooseHeadwind, OpenWhereAndWhen,
                                 CloseWhereAndWhen, SetWhereAndWhen, AnswerStickSense, AskStickSense,
                                 OpenFirstPage, OpenBriefing, GoToChoices, FlyNow>;
using FlightWish =
    std::variant<StartFlight, TogglePause, RestartSame, RestartMirrored, FlyOn, GoAround, MoveStick,
                 SetThrottle, SetFlap, SetTrim, TouchPanel, CallHelp, ExchangeControls>;
using SettingsWish =
    std::variant<ToggleSound, OpenScreenAndHelp, CloseScreenAndHelp, SetDisplay, OpenSchool, CloseSchool,
                 ChooseForSchool, HandOverSchool, TakeInSchool, OpenCriteria, CloseCriteria, SetCriterion,
                 ResetCriteria, OpenSources, CloseSources, ChooseSourceTopic>;
using DebriefWish = std::variant<AnswerEstimate, SkipEstimate, OpenSummary, ShowDetail, OpenTakeAway,
                                 CloseTakeAway, TakeAway, SaveTrack, OpenReplay, CloseReplay, DriveReplay>;
using LogbookWish =
    std::variant<OpenLogbook, CloseLogbook, ChooseAttempt, OpenAttempt, ReplayAttempt, CompareAttempts,
                 SaveAttempt, DeleteAttempt, BringBackAttempt, EraseAttempt, ChooseStudent, WriteStudent,
                 ExportStudent, ImportFile, OpenProgress, CloseProgress, ChooseProgressLesson, SaveProgress>;
using LessonsWish =
    std::variant<OpenLessons, CloseLessons, ChooseLesson, OpenLesson, FlyLesson, OpenFirstLesson, FlyNextRun,
                 OpenOwnLessons, CloseOwnLessons, SetLessonField, DoWithLesson, OpenDrills, CloseDrills,
                 OpenDrill, BeginDrill, AnswerCard, MovePlaceMark, DoWithDrill>;
using Action = std::variant<ChoicesWish, FlightWish, SettingsWish, DebriefWish, LogbookWish, LessonsWish,
                            ClassWish, DeviceWish>;
using Actions = std::vector<Action>;

}  // namespace slopewise
