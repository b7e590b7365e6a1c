// Every wish of a screen, and what it does: one `act` each, in the file its heading names. Nothing else
// changes the program by a wish.
#pragma once

#include "ui/action.h"
#include "ui/app.h"
#include "ui/host.h"

namespace slopewise {

// act_choices.cpp
void act(App& app, const ChooseDistance& wish, Host& host);
void act(App& app, const ChoosePosition& wish, Host& host);
void act(App& app, const ChooseHeadwind& wish, Host& host);
void act(App& app, const OpenWhereAndWhen& wish, Host& host);
void act(App& app, const CloseWhereAndWhen& wish, Host& host);
void act(App& app, const SetWhereAndWhen& wish, Host& host);
void act(App& app, const AnswerStickSense& wish, Host& host);
void act(App& app, const AskStickSense& wish, Host& host);
void act(App& app, const OpenFirstPage& wish, Host& host);
void act(App& app, const OpenBriefing& wish, Host& host);
void act(App& app, const GoToChoices& wish, Host& host);
void act(App& app, const FlyNow& wish, Host& host);

// act_flight.cpp
void act(App& app, const StartFlight& wish, Host& host);
void act(App& app, const TogglePause& wish, Host& host);
void act(App& app, const RestartSame& wish, Host& host);
void act(App& app, const RestartMirrored& wish, Host& host);
void act(App& app, const FlyOn& wish, Host& host);
void act(App& app, const GoAround& wish, Host& host);
void act(App& app, const MoveStick& wish, Host& host);
void act(App& app, const SetThrottle& wish, Host& host);
void act(App& app, const SetFlap& wish, Host& host);
void act(App& app, const SetTrim& wish, Host& host);
void act(App& app, const TouchPanel& wish, Host& host);
void act(App& app, const CallHelp& wish, Host& host);
void act(App& app, const ExchangeControls& wish, Host& host);

// act_settings.cpp
void act(App& app, const ToggleSound& wish, Host& host);
void act(App& app, const SetVolume& wish, Host& host);
void act(App& app, const ToggleFullScreen& wish, Host& host);
void act(App& app, const OpenScreenAndHelp& wish, Host& host);
void act(App& app, const CloseScreenAndHelp& wish, Host& host);
void act(App& app, const SetDisplay& wish, Host& host);
void act(App& app, const OpenSchool& wish, Host& host);
void act(App& app, const CloseSchool& wish, Host& host);
void act(App& app, const ChooseForSchool& wish, Host& host);
void act(App& app, const HandOverSchool& wish, Host& host);
void act(App& app, const TakeInSchool& wish, Host& host);
void act(App& app, const OpenCriteria& wish, Host& host);
void act(App& app, const CloseCriteria& wish, Host& host);
void act(App& app, const SetCriterion& wish, Host& host);
void act(App& app, const ResetCriteria& wish, Host& host);
void act(App& app, const OpenSources& wish, Host& host);
void act(App& app, const CloseSources& wish, Host& host);
void act(App& app, const ChooseSourceTopic& wish, Host& host);

// act_debrief.cpp
void act(App& app, const AnswerEstimate& wish, Host& host);
void act(App& app, const SkipEstimate& wish, Host& host);
void act(App& app, const OpenSummary& wish, Host& host);
void act(App& app, const ShowDetail& wish, Host& host);
void act(App& app, const OpenTakeAway& wish, Host& host);
void act(App& app, const CloseTakeAway& wish, Host& host);
void act(App& app, const TakeAway& wish, Host& host);
void act(App& app, const SaveTrack& wish, Host& host);
void act(App& app, const OpenReplay& wish, Host& host);
void act(App& app, const CloseReplay& wish, Host& host);
void act(App& app, const DriveReplay& wish, Host& host);

// act_logbook.cpp
void act(App& app, const OpenLogbook& wish, Host& host);
void act(App& app, const CloseLogbook& wish, Host& host);
void act(App& app, const ChooseAttempt& wish, Host& host);
void act(App& app, const OpenAttempt& wish, Host& host);
void act(App& app, const ReplayAttempt& wish, Host& host);
void act(App& app, const CompareAttempts& wish, Host& host);
void act(App& app, const SaveAttempt& wish, Host& host);
void act(App& app, const DeleteAttempt& wish, Host& host);
void act(App& app, const BringBackAttempt& wish, Host& host);
void act(App& app, const EraseAttempt& wish, Host& host);
void act(App& app, const ChooseStudent& wish, Host& host);
void act(App& app, const WriteStudent& wish, Host& host);
void act(App& app, const ExportStudent& wish, Host& host);
void act(App& app, const ImportFile& wish, Host& host);
void act(App& app, const OpenProgress& wish, Host& host);
void act(App& app, const CloseProgress& wish, Host& host);
void act(App& app, const ChooseProgressLesson& wish, Host& host);
void act(App& app, const SaveProgress& wish, Host& host);

// act_lessons.cpp
void act(App& app, const OpenLessons& wish, Host& host);
void act(App& app, const CloseLessons& wish, Host& host);
void act(App& app, const ChooseLesson& wish, Host& host);
void act(App& app, const OpenLesson& wish, Host& host);
void act(App& app, const FlyLesson& wish, Host& host);
void act(App& app, const OpenFirstLesson& wish, Host& host);
void act(App& app, const FlyNextRun& wish, Host& host);
void act(App& app, const OpenOwnLessons& wish, Host& host);
void act(App& app, const CloseOwnLessons& wish, Host& host);
void act(App& app, const SetLessonField& wish, Host& host);
void act(App& app, const DoWithLesson& wish, Host& host);
void act(App& app, const OpenDrills& wish, Host& host);
void act(App& app, const CloseDrills& wish, Host& host);
void act(App& app, const OpenDrill& wish, Host& host);
void act(App& app, const BeginDrill& wish, Host& host);
void act(App& app, const AnswerCard& wish, Host& host);
void act(App& app, const MovePlaceMark& wish, Host& host);
void act(App& app, const DoWithDrill& wish, Host& host);

// After every change of the settings: they are kept, and what words were made from them is made anew.
void keep_settings(App& app, Host& host);

// act_class.cpp
void act(App& app, const OpenClassRoom& wish, Host& host);
void act(App& app, const CloseClassRoom& wish, Host& host);
void act(App& app, const ChooseClassPanel& wish, Host& host);
void act(App& app, const ShowToClass& wish, Host& host);
void act(App& app, const PutPanelAway& wish, Host& host);
void act(App& app, const FreezeOrRun& wish, Host& host);

// act_ask.cpp
void act(App& app, const DoWithQuestions& wish, Host& host);

// act_station.cpp
void act(App& app, const SetStation& wish, Host& host);

// act_boards.cpp
void act(App& app, const DoWithBoard& wish, Host& host);
void act(App& app, const MoveInk& wish, Host& host);

// act_class_window.cpp
void act(App& app, const DoWithClassWindow& wish, Host& host);

// act_keys.cpp
void act(App& app, const OpenKeys& wish, Host& host);
void act(App& app, const CloseKeys& wish, Host& host);
void act(App& app, const DoWithKeys& wish, Host& host);

// act_controllers.cpp
void act(App& app, const OpenControllers& wish, Host& host);
void act(App& app, const CloseControllers& wish, Host& host);
void act(App& app, const DoWithController& wish, Host& host);

// act_program.cpp
void act(App& app, const OpenAbout& wish, Host& host);
void act(App& app, const CloseAbout& wish, Host& host);
void act(App& app, const DoWithProgram& wish, Host& host);

// act_class_table.cpp
void act(App& app, const OpenClassTable& wish, Host& host);
void act(App& app, const CloseClassTable& wish, Host& host);
void act(App& app, const DoWithClassTable& wish, Host& host);

}  // namespace slopewise
