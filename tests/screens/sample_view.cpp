#include "tests/screens/sample_view.h"

#include "tests/screens/sample_class.h"
#include "tests/screens/sample_devices.h"
#include "tests/screens/sample_drills.h"
#include "tests/screens/sample_lessons.h"
#include "tests/screens/sample_logbook.h"
#include "tests/screens/sample_syllabus.h"
#include "tests/ui/test_host.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "tests/screens/sample_replay.h"
#include "ui/sources_view.h"

namespace slopewise {
namespace {

constexpr double feet_per_nm = 6076.115;
constexpr double rad_per_deg = 0.017453292519943295;

// Changes of the four units, leftmost (outermost) first, and the width of a change, in degrees.
constexpr std::array<double, 4> unit_deg{2.5, 2.8333, 3.1667, 3.5};
constexpr double change_deg = 0.05;

std::array<double, 4> lamps_at(double path_deg) {
    std::array<double, 4> white{};
    for (std::size_t i = 0; i < white.size(); ++i)
        white[i] = std::clamp(0.5 + (path_deg - unit_deg[i]) / change_deg, 0.0, 1.0);
    return white;
}

LightPicture picture(int white) {
    LightPicture shown;
    for (int i = 0; i < 4; ++i) shown.white_fraction.push_back(i < white ? 1.0 : 0.0);
    if (white == 0) shown.words = "4 red";
    else if (white == 4) shown.words = "4 white";
    else shown.words = std::to_string(white) + " white " + std::to_string(4 - white) + " red";
    return shown;
}

ChoiceView choice() {
    ChoiceView view;
    view.distances_nm = {1, 2, 3};
    view.distance_nm = 3;
    view.positions = {"Above", "On", "Below"};
    view.position = 1;
    view.headwind_kt = 10;
    view.sentence = "3 NM, on the path, 10 kt headwind";
    view.place = "Four-seat tourer, Larkmoor 27, by day";
    view.student = "Kestrel 7";
    return view;
}

WhereAndWhenView where_and_when() {
    WhereAndWhenView view;
    view.airfields = {{"Hazelcombe 09", "700 \u00d7 18 m, level, APAPI left, woodland"},
                      {"Hazelcombe 16, 2 % up", "700 \u00d7 18 m, 2 % up, APAPI left, woodland"},
                      {"Larkmoor 27", "1500 \u00d7 30 m, level, PAPI left, farmland"},
                      {"Larkmoor 09, 1.5 % down", "1500 \u00d7 30 m, 1.5 % down, PAPI left, farmland"},
                      {"Sandholm 22", "2500 \u00d7 45 m, level, PAPI on both sides, coast"}};
    view.aircraft = {{"Heavier single", "75 kt approach, 1500 kg"},
                     {"Four-seat tourer", "65 kt approach, 1050 kg"},
                     {"Two-seat trainer", "57 kt approach, 740 kg"}};
    view.lights = {"Day", "Low sun", "Dusk", "Night"};
    view.visibilities = {"3 km", "5 km", "10 km", "30 km"};
    view.chosen = {2, 1, 3, 1, false, true, true};
    view.asks_for_ground_lights = true;
    view.sentence = "Four-seat tourer, Larkmoor 27, at night, dark ground, overcast, rain, visibility 5 km";
    return view;
}

std::vector<KeyHint> keys() {
    return {{"\u2191 \u2193", "stick: nose down / nose up"},
            {"E D", "more / less power"},
            {"F R", "flap down / up a step"},
            {"U J", "trim nose up / down"},
            {"G", "go around: full power"},
            {"X", "close the throttle"},
            {"P H", "pause / screen and help"},
            {"N M", "same again / mirror start"},
            {"S", "sound on / off"}};
}

BriefingView briefing() {
    BriefingView view;
    view.title = "Final approach from 3 NM";
    view.place = "Four-seat tourer, Larkmoor 27, by day";
    view.aim =
        "Hold the path and the airspeed from 3 NM down to 50 ft: more power than in calm air, and less sink.";
    view.numbers = {{"Target speed", "65", "kt", "indicated"},
                    {"Ground speed", "55", "kt", "10 kt headwind"},
                    {"Sink", "292", "ft/min", "about ground speed \u00d7 5"},
                    {"Power", "38", "%", "of full"},
                    {"Pitch", "\u22121.4", "\u00b0", "nose against the horizon"},
                    {"Flap", "landing", "", "set at the start"}};
    view.heights = {{"3 NM", "955", "ft", ""},
                    {"2 NM", "637", "ft", ""},
                    {"1 NM", "318", "ft", ""},
                    {"0.5 NM", "159", "ft", ""}};
    view.lights = {{"At the start", picture(2), "You start on the path, trimmed. Leave it alone."},
                   {"On the path", picture(2), "Keep it so with small changes."},
                   {"A little high", picture(3), "A little less power."},
                   {"A little low", picture(1), "A little more power."},
                   {"Far too low", picture(0), "Power now. If it stays, go around."}};
    view.reminders = {"The aim point is the one spot that does not move. Keep it still.",
                      "Look out; glance at the airspeed; look out again.",
                      "Below 200 ft leave the lights alone: small power, steady attitude.",
                      "The altimeter is set to read height above the runway."};
    view.keys = keys();
    return view;
}

SceneView scene() {
    SceneView view;
    // One mile and a half out, a touch low, the nose on its approach attitude.
    view.camera = {-2500.0, 0.0, 142.0, -0.042, 40.0 * rad_per_deg};
    view.runway = {1500, 30, 0, 300, 45, 6, 18, "27"};
    view.lamp_count = 4;
    const std::array<double, 4> white = lamps_at(2.9);
    for (int i = 0; i < 4; ++i) {
        const auto place = static_cast<std::size_t>(i);
        view.lamps[place] = {300.0, -(15.0 + 15.0 + 9.0 * (3 - i)), 0.6, white[place], true};
    }
    view.look_over_rad = 7.0 * rad_per_deg;
    view.body_pitch_rad = -0.024;
    return view;
}

InstrumentsView instruments() {
    InstrumentsView view;
    view.airspeed_kt = 66;
    view.altitude_ft = 462;
    view.vertical_speed_fpm = -310;
    view.power_percent = 37;
    view.lever_percent = 38;
    view.flap_index = 2;
    view.flap_position = 2;
    view.flap_names = {"up", "half", "landing"};
    view.trim = -0.12;
    view.stick = 0.08;
    view.vs0_kt = 48;
    view.vs1_kt = 54;
    view.vfe_kt = 85;
    view.vno_kt = 126;
    view.vne_kt = 158;
    view.target_kt = 65;
    return view;
}

FlightView flight() {
    FlightView view;
    view.scene = scene();
    view.instruments = instruments();
    view.setup = "3 NM, on the path, 10 kt headwind, view 40\u00b0 across";
    view.lights = picture(2);
    view.keys = keys();
    view.can_mirror = true;
    return view;
}

// A flight that sags at a mile and comes back late: the summary has something to say.
std::vector<ProfilePoint> profile() {
    std::vector<ProfilePoint> points;
    for (double out_nm = 3.0; out_nm >= 0.165; out_nm -= 0.01) {
        const double sag = -0.62 * std::exp(-std::pow((out_nm - 0.85) / 0.28, 2.0));
        const double path_deg = 3.0 + 0.18 * std::sin(2.4 * (3.0 - out_nm)) + sag;
        const double airspeed_kt = 65.0 + 3.0 * std::sin(1.9 * (3.0 - out_nm)) -
                                   7.0 * std::exp(-std::pow((out_nm - 0.7) / 0.22, 2.0));
        points.push_back({out_nm, out_nm * feet_per_nm * std::tan(path_deg * rad_per_deg), airspeed_kt,
                          lamps_at(path_deg)});
    }
    return points;
}

std::vector<GateRow> gates() {
    std::vector<GateRow> rows{{"1000 ft", "+0.04", "+13", picture(2), "+1", "\u221212", "38", "landing", true,
                               true, true, true, true, "stable"},
                              {"500 ft", "+0.09", "+15", picture(2), "\u22122", "+35", "35", "landing", true,
                               true, true, true, true, "stable"},
                              {"300 ft", "\u22120.61", "\u221258", picture(1), "\u22127", "+118", "34",
                               "landing", false, false, true, true, true, "stable"},
                              {"200 ft", "\u22120.34", "\u221222", picture(1), "\u22124", "\u2212236", "58",
                               "landing", true, true, false, true, true, "stable"},
                              {"50 ft", "+0.11", "+2", picture(2), "+3", "+20", "36", "landing", true, true,
                               true, true, true, "stable"}};
    for (GateRow& row : rows) row.stability = row.height == "50 ft" ? "stable, improving" : "stable";
    rows[2].stable = rows[3].stable = false;
    rows[2].stability = "not stable: low, slow";
    rows[3].stability = "not stable: sinking too little, power not settled";
    return rows;
}

FaultView fault() {
    FaultView view;
    view.title = "Low and slow";
    view.symptom = "Below the path and below the speed at the same time.";
    view.cause = "Late recognition: the speed was not looked at while the path was being mended.";
    view.could_lead_to = "A stall close to the ground, or the ground short of the runway.";
    view.correction =
        "Power at once and the nose to the attitude for the speed. Not mended by the gate: go around.";
    view.others = "Also seen: Late with the power; Pressing on from an unstable gate.";
    view.moments_nm = {1.05, 0.92};
    return view;
}

LastRunsView last_runs() {
    return {{"The last runs",
             {"", "Path bias", "scatter", "Speed bias", "scatter", "Decision"},
             {"", "\u00b0", "\u00b0", "kt", "kt", ""},
             {{"Two before", "+0.21", "0.34", "+2.1", "3.8", "right"},
              {"One before", "\u22120.12", "0.28", "\u22121.0", "3.1", "cautious"},
              {"This run", "\u22120.06", "0.21", "\u22120.8", "2.9", "miss"}}},
            "Most often: Low and slow, in 2 of 3."};
}

MeasuresView measures() {
    MeasuresView view;
    view.bands = {"Bias and scatter by distance; how busy the hands were",
                  {"", "Path bias", "scatter", "Path bias", "scatter", "Speed bias", "scatter", "Stick turns",
                   "Lever turns"},
                  {"", "\u00b0", "\u00b0", "ft", "ft", "kt", "kt", "/min", "/min"},
                  {{"Beyond 2 NM", "+0.11", "0.12", "+28", "31", "+1.2", "1.9", "2", "1"},
                   {"2 NM to 500 ft", "\u22120.02", "0.18", "\u22124", "33", "\u22120.4", "2.2", "4", "3"},
                   {"500 to 300 ft", "\u22120.41", "0.22", "\u221249", "24", "\u22124.8", "2.7", "7", "5"}}};
    view.short_bands = {"Bias and scatter by distance",
                        {"", "Path bias", "scatter", "Speed bias", "scatter"},
                        {"", "\u00b0", "\u00b0", "kt", "kt"},
                        {{"Beyond 2 NM", "+0.11", "0.12", "+1.2", "1.9"},
                         {"2 NM to 500 ft", "\u22120.02", "0.18", "\u22120.4", "2.2"},
                         {"500 to 300 ft", "\u22120.41", "0.22", "\u22124.8", "2.7"}}};
    view.groups = {
        {"Energy: share of time",
         {{"On path and speed", "74", "%", ""}, {"Low and slow", "12", "%", ""}},
         ""},
        {"Answers",
         {{"Path errors answered", "2 of 3", "", ""}, {"Time to a right-way input", "2.4", "s", "mean"}},
         ""},
        {"Where the path pointed",
         {{"At 500 ft", "+120", "ft", ""}, {"At 300 ft", "\u2013", "", "not reached"}},
         "Beyond the aim point; short of it is negative."},
        {"Touchdown, an estimate",
         {{"Straight on, no flare", "+640", "ft", "from the threshold"}},
         "Never scored: the flare is not flown here."}};
    view.held_to = {
        "500 ft and above: path 0.50\u00b0 or 30 ft, the larger; speed \u22125/+10 kt; sink \u00b1250, at "
        "most "
        "800 ft/min.",
        "Power or pitch corrects the path; an error to answer is over 0.25\u00b0 and 15 ft."};
    return view;
}

EstimateView estimate() {
    EstimateView view;
    view.questions = {{"The path was mostly", {"high", "on", "low"}, 1},
                      {"The speed was mostly", {"fast", "on speed", "slow"}, -1},
                      {"Stable at 300 ft", {"yes", "no"}, -1}};
    view.asking = 1;
    return view;
}

SchoolView school() {
    SchoolView view;
    view.rows = {{"The path is corrected with", {"power", "pitch", "either"}, 2},
                 {"Added for gusts, of the gust factor", {"nothing", "half", "all"}, -1},
                 {"Runways in", {"metres", "feet"}, 0},
                 {"The stick keys lie under the", {"right hand", "left hand"}, 0}};
    view.facts = {"Name: North field", "Own aircraft: none; its file may hold one.",
                  "Flap: approach by 1000 ft, landing by 500 ft."};
    view.news = {"The file was not taken in; everything is as it was.",
                 "school.json:3: /gust_percent is 140; allowed: 0 to 100"};
    return view;
}

CriteriaView criteria() {
    using Kind = CriteriaView::Kind;
    CriteriaView view;
    view.groups = {
        {"At 500 ft and above",
         0,
         {{Kind::number, "Path within", "0.50", "\u00b0", {}, 0.5, 0.1, 2.0, 0.05},
          {Kind::number, "Fast by at most", "30", "kt", {}, 30, 1, 30, 1},
          {Kind::number, "Sink at most", "800", "ft/min", {}, 800, 300, 2000, 50}}},
        {"At 300 ft", 3, {{Kind::number, "Path within", "0.50", "\u00b0", {}, 0.5, 0.1, 2.0, 0.05}}},
        {"Answering a path error",
         4,
         {{Kind::on_off, "Landing flap must be set", "1", "", {}, 1, 0, 1, 1},
          {Kind::choice, "The path is corrected with", "2", "", {"power", "pitch", "either"}, 2, 0, 2, 1}}}};
    view.usual = false;
    return view;
}

TakeAwayView take_away() {
    TakeAwayView view;
    view.offers = {{"Sheet to print", "one page of A4 or Letter; open it and print it"},
                   {"Figures (JSON)", "every table below in one file, with the diagnosis"},
                   {"Gates (CSV)", "a row for each gate"},
                   {"What the columns mean (CSV)", "every column of every table"}};
    view.handed_over = "Handed over: slopewise-final_calm-2026-03-14-gates.csv";
    return view;
}

SummaryView summary() {
    SummaryView view;
    view.title = "Deviation summary";
    view.ended = "Scoring ended at 50 ft wheel height, 0.18 NM from the aim point.";
    view.setup = "Four-seat tourer, Larkmoor 27: 3 NM, on the path, 10 kt headwind";
    view.worst =
        "Worst moment at 264 ft, 0.9 NM out: 0.6\u00b0 (58 ft) low, 7 kt slow, the lights showing 1 white 3 "
        "red.";
    view.profile = profile();
    view.target_kt = 65;
    view.slow_kt = 5;
    view.fast_kt = 10;
    view.worst_distance_nm = 0.85;
    view.gates = gates();
    view.path_figures = {{"Bias", "\u22120.06", "\u00b0", "mostly low"},
                         {"Scatter", "0.21", "\u00b0", "about that bias"}};
    view.speed_figures = {{"Bias", "\u22120.8", "kt", "mostly slow"},
                          {"Scatter", "2.9", "kt", "about that bias"}};
    view.in_tolerance = {{"Path within 0.5\u00b0 or 30 ft", 0.91, "91 %"},
                         {"Speed within \u22125 to +10 kt", 0.88, "88 %"},
                         {"Sink within 200 ft/min", 0.79, "79 %"},
                         {"All three at once", 0.74, "74 %"}};
    view.light_pictures = {{picture(4), 0.0, "0 %"},
                           {picture(3), 0.06, "6 %"},
                           {picture(2), 0.71, "71 %"},
                           {picture(1), 0.19, "19 %"},
                           {picture(0), 0.04, "4 %"}};
    view.definitions = {
        "Path: the angle of your eye above the aim point less 3.0\u00b0; plus is high.",
        "Speed: indicated airspeed less the target. Sink: less ground speed \u00d7 tan 3.0\u00b0.",
        "Gates: wheel height above the threshold; means over 2 s before to 2 s after.",
        "Bias and scatter: mean and standard deviation of the track, ten points a second, 186 s in all.",
        "The lights changed 7 times."};
    view.can_fly_on = true;
    view.can_mirror = true;
    view.estimate = "You said: on the path, fast, stable. It was: on the path, on speed, not stable. 1 of 3.";
    view.strongest = "Strongest: the path, in tolerance for 91 % of the approach.";
    view.decision = {"300 ft", true, false, true, "Not stable and continued: a miss."};
    view.fault = fault();
    view.last_runs = last_runs();
    view.measures = measures();
    return view;
}

}  // namespace

View sample_view() {
    View view;
    view.choice = choice();
    view.briefing = briefing();
    view.flight = flight();
    view.summary = summary();
    view.replay = sample_replay();
    view.where_and_when = where_and_when();
    view.estimate = estimate();
    view.criteria = criteria();
    view.school = school();
    view.take_away = take_away();
    view.logbook = sample_logbook(40);
    view.progress = sample_progress(40);
    view.sources = sources_view(Screen::summary, 0, test::shipped());
    view.own_lessons = sample_own_lessons(4);
    view.lesson_editor = sample_lesson_editor();
    view.arrived_lesson = sample_arrived_lesson();
    view.lessons = sample_lessons();
    view.lesson_card = sample_lesson_card();
    view.class_room = sample_class_room();
    view.class_picture = sample_class_picture();
    view.ask = sample_questions();
    view.station = sample_station();
    view.class_table = sample_class_table();
    view.keys = sample_keys();
    view.controllers = sample_controllers();
    view.about = sample_about();
    view.drills = sample_drills();
    view.drill = sample_card();
    view.drill_result = sample_drill_result();
    view.screen_and_help.true_size =
        "For true size the view of 40\u00b0 would have to be 44 cm wide; it is shown at 0.8 of that.";
    view.screen_and_help.help = {
        "With eyes outside the panel is dark. Hold V, or a finger on the dials, to look in; each look is "
        "counted for the summary.",
        "A screen is no test of colour vision."};
    view.screen_and_help.keys = keys();
    view.display.screen_width_cm = 34;
    view.display.viewing_distance_cm = 60;
    view.caution = {"Ground study aid. Not an approved training device: time may not be logged or credited.",
                    "Not for use in flight. The airfields and the aircraft are invented.",
                    "Your flight manual, your instructor and the local rules come first."};
    view.version = "0.1.0";
    return view;
}

}  // namespace slopewise
