// What the screens draw: pilot units and finished words, made once a frame from the engine's state.
// A screen knows nothing else of the flight, so no screen can grow into the engine.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "ui/debrief_view.h"
#include "ui/display.h"
#include "ui/labelled_value.h"
#include "ui/scene_view.h"
#include "ui/view_about.h"
#include "ui/view_class.h"
#include "ui/view_controllers.h"
#include "ui/view_drills.h"
#include "ui/view_keys.h"
#include "ui/view_lessons.h"
#include "ui/view_logbook.h"
#include "ui/view_pads.h"
#include "ui/view_replay.h"
#include "ui/view_sources.h"
#include "ui/view_syllabus.h"

namespace slopewise {

// ---- the instrument shelf ----

struct InstrumentsView {
    double airspeed_kt = 0, altitude_ft = 0, vertical_speed_fpm = 0;  // as the instruments show them
    InstrumentSet covered;
    InstrumentSet failed;      // no hand, no number, no warning
    double power_percent = 0;  // what the engine gives now
    double lever_percent = 0;  // where the throttle lever stands
    int flap_index = 0;        // where the flap lever stands
    double flap_position = 0;  // where the flap is, in units of the lever's steps (1.4 = on the way to 2)
    std::vector<std::string> flap_names;
    double trim = 0;             // -1 nose down ... +1 nose up
    double stick = 0;            // -1 pushed ... +1 pulled, measured from the trimmed position
    bool stall_warning = false;  // sounds now: never while it is covered or failed
    double vs0_kt = 0, vs1_kt = 0, vfe_kt = 0, vno_kt = 0, vne_kt = 0;  // the coloured arcs' ends
    double target_kt = 0;
};

// ---- finished words ----

struct KeyHint {
    std::string key;      // "E / D"
    std::string meaning;  // "more / less power"
};

// The white/red picture of the slope lights as seen from the approach.
struct LightPicture {
    // Of each unit, leftmost first, or of each bar, the far one first; empty when nothing is seen.
    std::vector<double> white_fraction;
    bool stacked = false;  // bars one beyond the other, the far one seen above
    std::string words;     // "2 white 2 red"
};

struct ChoiceView {
    std::vector<int> distances_nm;       // 1, 2, 3
    int distance_nm = 0;                 // chosen
    std::vector<std::string> positions;  // "Above", "On", "Below" the path
    int position = 0;                    // index of the chosen one
    double headwind_kt = 0;              // 0 ... 20
    double max_headwind_kt = 20;
    std::string sentence;  // "3 NM, on the path, 10 kt headwind"
    std::string place;     // "Four-seat tourer, Larkmoor 27, by day"
    std::string problem;   // why it cannot be flown; empty when it can
    std::string student;   // name or code of who flies; empty: none given
};

// What is chosen on the sheet "Where and when": indices into its lists.
struct WhereAndWhenChoice {
    int airfield = 0, aircraft = 0, light = 0, visibility = 0;
    bool ground_lights = true, overcast = false, rain = false;
};

struct WhereAndWhenView {
    struct Option {
        std::string name;   // "Larkmoor 27"
        std::string about;  // "1500 x 30 m, level, PAPI left, farmland"
    };
    std::vector<Option> airfields, aircraft;
    std::vector<std::string> lights, visibilities;  // "Day", "10 km"
    WhereAndWhenChoice chosen;
    bool asks_for_ground_lights = false;  // only when it is dark enough to see them
    std::string sentence;                 // "Four-seat tourer, Larkmoor 27, at night, rain"
};

struct BriefingView {
    std::string title;                   // "Final approach from 3 NM"
    std::string place;                   // "Four-seat tourer, Larkmoor 27, by day"
    std::string aim;                     // one sentence
    std::vector<LabelledValue> numbers;  // target speed, ground speed, sink, power, pitch, flap, wind
    std::vector<LabelledValue> heights;  // "3 NM" -> "955" "ft"
    struct Expectation {
        std::string where;  // "On the path", "At the start"
        LightPicture lights;
        std::string meaning;  // "Keep it there"
    };
    std::vector<Expectation> lights;
    std::vector<std::string> reminders;  // short spoken sentences
    std::vector<KeyHint> keys;
    std::string back = "Back to choices";  // where its way back leads
    std::string run;                       // "Run 5, seed 1: start 0.7° high."; empty: no lesson's run
};

struct ProfilePoint {
    double distance_nm = 0;  // to the aim point along the ground
    double height_ft = 0;    // of the eye above the aim point
    double airspeed_kt = 0;
    std::array<double, 4> white_fraction{};  // left to right; -1 where a unit shows nothing
};

// The path that is to be flown, and how far from it is good enough.
struct PathView {
    double path_deg = 3;     // nominal angle
    double wedge_deg = 0.5;  // half-width of the tolerance wedge
    double floor_ft = 30;    // and its least half-height
};

// The approach from the side while it is flown; no flown points: it is not shown.
struct SideProfileView : PathView {
    double far_nm = 3;                  // where the approach began
    std::vector<double> sector_deg;     // angles at which the lights' picture changes, lowest first
    std::vector<LightPicture> sectors;  // below the lowest of them, between them, above the highest
    std::vector<ProfilePoint> flown;    // as it came; the last is where it is now
    std::vector<ProfilePoint> calm;     // the same hands in calm air beside it; none: not shown
    std::string calm_words;             // what became of them: "calm air, same hands: 120 ft higher"
};

struct FlightView {
    SceneView scene;
    InstrumentsView instruments;
    bool paused = false;
    bool scored = true;   // false once scoring has ended
    std::string status;   // "Paused", "Unscored: fly on or go around"; empty in normal flight
    std::string caption;  // one short call ("Stall warning"); empty when there is none
    std::string setup;    // "3 NM, on the path, 10 kt headwind, view 40° across"
    LightPicture lights;  // what they show now, for the text mirror
    std::vector<KeyHint> keys;
    bool can_mirror = false;
    bool panel_dark = false;   // eyes outside, and no peek now
    std::string_view control;  // "You have power, I have pitch"; empty: everything, as a matter of course
    bool waits_for_answer = false;  // a control is offered, and nothing moves before the answer
    SideProfileView side_profile;
    FlownDrillView drill;
    PadsView pads;
};

// ---- the deviation summary ----

struct GateRow {
    std::string height;         // "500 ft"
    std::string deviation_deg;  // "+0.12"
    std::string deviation_ft;   // "+20"
    LightPicture lights;
    std::string speed;                                     // "+3"  (kt against target)
    std::string sink;                                      // "-40" (ft/min against reference)
    std::string power;                                     // "32"
    std::string flap;                                      // "landing"
    bool path_in = true, speed_in = true, sink_in = true;  // within tolerance
    bool reached = true;                                   // false: "not reached", the other words are empty
    bool stable = true;                                    // by the criteria of this gate
    std::string stability;  // "stable", "stable, improving", "not stable: low, slow"
};

struct ShareBar {         // one row of "share of time"
    std::string label;    // "Path within 0.5° or 30 ft"
    double fraction = 0;  // 0 ... 1
    std::string value;    // "84 %"
};

struct PictureShare {  // one of the light pictures, and for how much of the time it was seen
    LightPicture picture;
    double fraction = 0;  // 0 ... 1
    std::string value;    // "76 %"
};

struct SummaryView : PathView {
    std::string title;  // "Deviation summary"
    std::string ended;  // "Scoring ended at 50 ft wheel height, 0.18 NM from the aim point"
    std::string setup;
    std::string worst;  // the one sentence naming the worst moment
    std::vector<ProfilePoint> profile;
    double target_kt = 0, slow_kt = 0, fast_kt = 0;  // speed band: target - slow ... target + fast
    bool stacked_lights = false;                     // the profile's lights are bars, the far one first
    double worst_distance_nm = -1;                   // where the worst moment was; negative: none
    std::vector<GateRow> gates;
    std::vector<LabelledValue> path_figures, speed_figures;  // bias, scatter
    std::vector<ShareBar> in_tolerance;
    std::vector<PictureShare> light_pictures;  // all white first
    std::vector<std::string> definitions;      // what was measured, against what
    bool can_fly_on = false;
    bool from_logbook = false;  // opened to be looked at
    bool can_mirror = false;
    SheetDetail detail = SheetDetail::full;
    std::string stop;       // "Ten approaches flown in this session: stop for today."; empty mostly
    std::string estimate;   // "You said: ... It was: ... 1 of 3."; empty: nothing was said
    std::string strongest;  // "Strongest: the path, ..."; empty: nothing was
    DecisionView decision;
    FaultView fault;
    LastRunsView last_runs;
    MeasuresView measures;
    LessonResultView lesson;
};

// ---- how it is shown ----

struct ScreenAndHelpView {
    std::string true_size;          // what the stated size and distance make of the view's angles
    std::vector<std::string> help;  // short sentences, for who needs a hand
    std::vector<KeyHint> keys;
    bool in_flight = false;  // it was opened from a flight, which waits
    bool can_fill_screen = false;
};

// How the flight sounds now.
struct SoundView {
    bool audible = false;  // false: silence
    double volume = 0.8;   // share of the loudest
    double power = 0.0;    // 0 to 1
    double airspeed_kt = 0.0;
    bool stall_warning = false;
    double rpm = 0.0;        // of the propeller
    bool on_runway = false;  // the wheels roll
    int gate_chimes = 0;     // that were heard in this flight so far: one more sounds once
};

// A screen as plain text, for the page around the canvas.
struct Mirror {
    std::string screen;       // told when it changes
    std::string instruments;  // in flight: there to be read, never spoken unasked

    friend bool operator==(const Mirror&, const Mirror&) = default;
};

// Asked once: which key, or on a touched screen which way of the thumb, lowers the nose.
struct StickQuestionView {
    std::string asks = "Which key should lower the nose?";
    std::string up = "Up key", down = "Down key";
    bool by_thumb = false;
};

// Kept from frame to frame: what is made anew is written over what it held.
struct View {
    int edition = -1;  // of the words that stand through a flight
    ChoiceView choice;
    WhereAndWhenView where_and_when;
    StickQuestionView stick_question;
    BriefingView briefing;
    FlightView flight;
    SummaryView summary;
    ReplayView replay;  // besides the view from the seat, which is in `flight`
    ScreenAndHelpView screen_and_help;
    EstimateView estimate;
    CriteriaView criteria;
    SchoolView school;
    TakeAwayView take_away;
    LogbookView logbook;
    ProgressView progress;
    SourcesView sources;
    OwnLessonsView own_lessons;
    LessonEditorView lesson_editor;
    ArrivedLessonView arrived_lesson;
    DrillsView drills;
    DrillView drill;
    DrillResultView drill_result;
    LessonsView lessons;
    LessonCardView lesson_card;
    ClassRoomView class_room;
    ClassPictureView class_picture;
    AskView ask;
    StationView station;
    ClassTableView class_table;
    KeysView keys;
    ControllersView controllers;
    AboutView about;
    Display display;
    std::vector<std::string> caution;  // the usual cautions, a sentence each
    SoundView sound;
    std::string version;
    std::string notice;  // something to know once ("settings cannot be kept"); empty mostly
    Mirror mirror;
};

}  // namespace slopewise
