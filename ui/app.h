// The program: its state, and the one straight line that every frame follows.
#pragma once

#include <optional>

#include "data/catalog.h"
#include "lesson/approach_choice.h"
#include "record/tick_clock.h"
#include "ui/class_room.h"
#include "ui/controller_desk.h"
#include "ui/debrief_state.h"
#include "ui/drill_desk.h"
#include "ui/flight_session.h"
#include "ui/host.h"
#include "ui/input.h"
#include "ui/key_desk.h"
#include "ui/lesson_editor.h"
#include "ui/logbook.h"
#include "ui/logbook_choice.h"
#include "ui/program_desk.h"
#include "ui/replay_session.h"
#include "ui/screens/screens.h"
#include "ui/settings.h"
#include "ui/syllabus_desk.h"

namespace slopewise {

struct App {
    Catalog catalog;  // const after loading
    Settings settings;
    ApproachChoice choice;
    std::optional<FlightSession> flight;
    PilotHands hands;
    TickClock clock;
    Screen screen = Screen::choices;
    Screen home = Screen::choices;            // the first page or the choices, whichever was last seen
    Screen after_question = Screen::choices;  // where answering the stick question leads
    Screen after_help = Screen::choices;      // where closing "screen and help" leads
    Screen after_about = Screen::choices;     // where closing "about" leads
    Screen after_sources = Screen::choices;   // where closing "where the numbers come from" leads
    int source_topic = 0;                     // 0: all of them
    DebriefState debrief;
    std::optional<ReplaySession> replay;
    std::optional<std::string> school_import;  // the text so far of the school's file that is being read
    std::string school_file;                   // its name
    std::vector<std::string> school_news;      // what became of it
    Screen after_replay = Screen::summary;     // where closing it leads
    UiState ui;
    bool can_fill_screen = false;  // the window can take the whole screen
    std::string notice;            // something the user should know; empty mostly
    Logbook logbook;
    LogbookChoice logbook_choice;
    LessonDesk lessons;  // one's own
    DrillDesk drills;
    SyllabusDesk syllabus;
    ClassRoom room;
    KeyDesk keys;
    ControllerDesk controllers;
    ProgramDesk program;
    std::vector<StoreEvent> store_events;  // of this frame; its memory is used again
    Mirror mirror;                         // last told
    View view;                             // last shown; its memory is used again
    int edition = 0;  // counts flights and settings: what words stand through a flight are made from
};

// The program at its first screen, with the settings kept by the host.
App make_app(Catalog catalog, Host& host);

// In flight, neither paused nor waiting for an answer.
bool flying(const App& app);

// Whatever runs stands still: the flight, the replay.
void pause(App& app);

// The approach chosen on the first sheets, or the lesson that is flown instead.
Scenario chosen_scenario(const App& app);

// The lesson whose aircraft, runway and tolerances every chosen approach shares.
const Lesson* base_lesson(const Catalog& catalog);

// One frame: input in once, time in whole ticks, one view, one screen, its wishes applied.
void frame(App& app, const RawInput& raw, Host& host);

// The only place that changes the program by a wish.
void apply(App& app, const Action& action, Host& host);

}  // namespace slopewise
