#include "ui/mirror.h"

#include <array>
#include <cmath>
#include <string_view>

#include "ui/about_view.h"
#include "ui/class_table_view.h"
#include "ui/class_views.h"
#include "ui/controllers_view.h"
#include "ui/debrief_mirror.h"
#include "ui/drill_mirror.h"
#include "ui/drive_class_link.h"
#include "ui/format.h"
#include "ui/key_meanings.h"
#include "ui/keys_view.h"
#include "ui/lesson_editor_mirror.h"
#include "ui/logbook_mirror.h"
#include "ui/sources_view.h"
#include "ui/stick_question.h"
#include "ui/syllabus_mirror.h"

namespace slopewise {
namespace {

std::string choices_text(const View& view) {
    std::string text = "Slopewise. Choose an approach.\n";
    for (const std::string& line : view.caution) text += line + "\n";
    if (!view.choice.student.empty()) text += "Student: " + view.choice.student + "\n";
    return text + view.choice.sentence + "\n" + view.choice.place + "\n" + view.choice.problem;
}

std::string where_and_when_text(const WhereAndWhenView& sheet) {
    std::string text = "Where and when. " + sheet.sentence + "\n";
    for (const auto& airfield : sheet.airfields) text += airfield.name + ": " + airfield.about + "\n";
    for (const auto& aircraft : sheet.aircraft) text += aircraft.name + ": " + aircraft.about + "\n";
    return text;
}

std::string briefing_text(const BriefingView& briefing) {
    std::string text = "Briefing. " + briefing.title + "\n" + briefing.place + "\n" + briefing.aim + "\n";
    if (!briefing.run.empty()) text += briefing.run + "\n";
    for (const LabelledValue& value : briefing.numbers) text += figure_sentence(value);
    for (const LabelledValue& value : briefing.heights) text += figure_sentence(value);
    for (const auto& row : briefing.lights)
        text += row.where + ": " + row.lights.words + ". " + row.meaning + "\n";
    for (const std::string& line : briefing.reminders) text += line + "\n";
    for (const KeyHint& hint : briefing.keys) text += hint.key + ": " + hint.meaning + "\n";
    return text;
}

// Where the bar stands; level with the aim point as far as an eye would call it so.
void path_help_text(const PathHelpView& help, std::string& text) {
    constexpr double level_rad = 0.1 * 3.14159265358979323846 / 180.0;
    if (help.opacity <= 0) return;
    text.append("Path help shown: the bar stands ");
    if (help.over_aim_rad > level_rad) text.append("above the aim point, you are high");
    else if (help.over_aim_rad < -level_rad) text.append("below the aim point, you are low");
    else text.append("level with the aim point");
    text.append(".\n");
}

// In flight the words are written into the memory of the last frame's.
void pads_text(const PadsView& pads, std::string& text) {
    if (!pads.shown()) return;
    text.append(pads.stick_left ? "Thumb pads: the stick at the left, power at the right. "
                                : "Thumb pads: power at the left, the stick at the right. ");
    text.append(pads.up_pushes ? "Thumb up: nose down.\n" : "Thumb up: nose up.\n");
}

void flight_text(const FlightView& flight, std::string& text) {
    text.append("Flying. ").append(flight.setup).append("\n");
    if (flight.paused) text.append("Paused.\n");
    if (flight.drill.there())
        text.append(flight.drill.share).append("\n").append(flight.drill.task).append("\n");
    if (flight.panel_dark)
        text.append("The panel is dark: ")
            .append(key_meaning::look_in_way(flight.keys))
            .append(" to look at it.\n");
    if (!flight.control.empty()) text.append(flight.control).append(".\n");
    path_help_text(flight.scene.path_help, text);
    if (!flight.paused) pads_text(flight.pads, text);
    text.append(flight.status).append("\n").append(flight.caption);
}

// A line for an instrument: what `tell` says of it, unless a lid or a failure leaves nothing to read.
template <class Tell>
void reading(const InstrumentsView& shown, bool InstrumentSet::*which, std::string_view name,
             std::string& text, Tell tell) {
    text.append(name).append(" ");
    if (shown.covered.*which) text.append("covered");
    else if (shown.failed.*which) text.append("failed, no reading");
    else tell();
    text.append("\n");
}

void instruments_text(const FlightView& flight, std::string& text) {
    const InstrumentsView& shown = flight.instruments;
    const auto number = [&](bool InstrumentSet::*which, std::string_view name, double value,
                            std::string_view unit) {
        reading(shown, which, name, text, [&] { text.append(number_words(value)).append(unit); });
    };
    number(&InstrumentSet::airspeed, "Airspeed", shown.airspeed_kt, " kt");
    number(&InstrumentSet::altimeter, "Height", shown.altitude_ft, " ft");
    const double tens_fpm = 10.0 * std::round(shown.vertical_speed_fpm / 10.0);
    number(&InstrumentSet::vertical_speed, "Vertical speed", tens_fpm, " ft/min");
    number(&InstrumentSet::power, "Power", shown.power_percent, " %");
    reading(shown, &InstrumentSet::flap, "Flap", text,
            [&] { text.append(shown.flap_names[static_cast<std::size_t>(shown.flap_index)]); });
    reading(shown, &InstrumentSet::trim, "Trim", text, [&] {
        const double percent = 100.0 * shown.trim;
        text.append(number_words(std::abs(percent))).append(percent < 0.0 ? " % nose down" : " % nose up");
    });
    reading(shown, &InstrumentSet::stall_warning, "Stall warning", text,
            [&] { text.append(shown.stall_warning ? "on" : "off"); });
    text.append("Lights ").append(flight.lights.words);
}

std::string gate_text(const GateRow& gate) {
    if (!gate.reached) return "Gate " + gate.height + ": not reached\n";
    return "Gate " + gate.height + ": path " + gate.deviation_deg + " deg, " + gate.deviation_ft +
           " ft; lights " + gate.lights.words + "; speed " + gate.speed + " kt; sink " + gate.sink +
           " ft/min; power " + gate.power + " %; flap " + gate.flap + "; " + gate.stability + "\n";
}

std::string summary_text(const SummaryView& summary) {
    std::string text = summary.title + ". " + summary.setup + "\n" + summary.ended + "\n";
    if (!summary.stop.empty()) text += summary.stop + "\n";
    text += lesson_result_text(summary.lesson);
    if (summary.detail != SheetDetail::full) return text + judgement_text(summary);
    text += summary.worst + "\n" + judgement_text(summary);
    for (const GateRow& gate : summary.gates) text += gate_text(gate);
    for (const LabelledValue& value : summary.path_figures) text += "Path " + figure_sentence(value);
    for (const LabelledValue& value : summary.speed_figures) text += "Speed " + figure_sentence(value);
    for (const ShareBar& bar : summary.in_tolerance) text += bar.label + ": " + bar.value + "\n";
    for (const PictureShare& share : summary.light_pictures)
        text += "Lights " + share.picture.words + ": " + share.value + "\n";
    text += measures_text(summary.measures);
    for (const std::string& line : summary.definitions) text += line + "\n";
    return text;
}

// Where it stands is told while it stands still; while it plays, only what it passes.
std::string replay_text(const ReplayView& replay) {
    std::string text = "Replay. " + replay.setup + "\n";
    if (!replay.trouble.empty()) text += replay.trouble + "\n";
    text += replay.playing ? "Playing" : "Paused at " + replay.clock + " " + replay.length;
    text += ", speed " + replay.speed + "\n";
    constexpr std::array<std::string_view, 3> shows{"seat and side", "seat", "side"};
    text.append("Shown from: ").append(shows[static_cast<std::size_t>(replay.shows)]).append("\n");
    const std::size_t since = replay.playing ? replay.place.find(" + ") : std::string::npos;
    text.append(replay.at_mark ? "At: " : "After: ").append(replay.place.substr(0, since)).append("\n");
    return replay.playing || replay.compared.empty() ? text : text + replay.compared + "\n";
}

std::string on_off(std::string_view what, bool on) { return std::string(what) + (on ? ": on\n" : ": off\n"); }

std::string screen_and_help_text(const View& view) {
    constexpr std::array<std::string_view, 3> looks{"standard", "high contrast", "night"};
    const Display& d = view.display;
    std::string text =
        "Screen and help.\nLook: " + std::string(looks[static_cast<std::size_t>(d.look)]) + "\n";
    text += on_off("Projector text", d.projector_text) + on_off("Less motion", d.reduced_motion) +
            on_off("Eyes outside", d.eyes_outside) + on_off("Side profile", d.side_profile) +
            on_off("Path help by itself", d.help_by_itself) + on_off("Call-outs", d.call_outs) +
            on_off("Magnifier", d.magnifier) + on_off("Letters in the magnifier", d.lamp_letters) +
            on_off("Shapes in the magnifier", d.lamp_shapes);
    for (const InstrumentName& one : instrument_names)
        text += on_off(std::string(one.title) + " covered", d.covered.*one.which);
    for (const InstrumentName& one : instrument_names)
        text += on_off(std::string(one.title) + " failed", d.failed.*one.which);
    text += "Screen width: " + number_words(d.screen_width_cm) +
            " cm\nViewing distance: " + number_words(d.viewing_distance_cm) + " cm\n" +
            view.screen_and_help.true_size + "\n";
    text += on_off("Sound", view.sound.audible) + "Volume: " + percent_words(view.sound.volume) + "\n";
    for (const std::string& line : view.screen_and_help.help) text += line + "\n";
    for (const KeyHint& hint : view.screen_and_help.keys) text += hint.key + ": " + hint.meaning + "\n";
    return text;
}

std::string school_text(const SchoolView& school) {
    std::string text = "School.\n";
    for (const std::string& line : school.facts) text += line + "\n";
    for (const SchoolView::Row& row : school.rows)
        text += row.label + ": " +
                (row.chosen < 0 ? "as in its file" : row.choices[static_cast<std::size_t>(row.chosen)]) +
                "\n";
    for (const std::string& line : school.news) text += line + "\n";
    return text;
}

void screen_text(Screen screen, const View& view, std::string& text) {
    if ((screen == Screen::welcome || screen == Screen::choices) && view.about.update_waits)
        text.append(update_words).append(".\n");
    if (!view.notice.empty()) text.append(view.notice).append("\n");
    switch (screen) {
    case Screen::choices: text += choices_text(view); break;
    case Screen::where_and_when: text += where_and_when_text(view.where_and_when); break;
    case Screen::stick_sense: text += stick_question_text(view.stick_question); break;
    case Screen::briefing: text += briefing_text(view.briefing); break;
    case Screen::flight: flight_text(view.flight, text); break;
    case Screen::summary: text += summary_text(view.summary); break;
    case Screen::estimate: text += estimate_text(view.estimate); break;
    case Screen::take_away: text += take_away_text(view.take_away); break;
    case Screen::school: text += school_text(view.school); break;
    case Screen::criteria: text += criteria_sheet_text(view.criteria); break;
    case Screen::screen_and_help: text += screen_and_help_text(view); break;
    case Screen::replay: text += replay_text(view.replay); break;
    case Screen::logbook: text += logbook_text(view.logbook); break;
    case Screen::progress: text += progress_text(view.progress); break;
    case Screen::sources: text += sources_text(view.sources); break;
    case Screen::own_lessons: text += own_lessons_text(view.own_lessons); break;
    case Screen::lesson_editor: text += lesson_editor_text(view.lesson_editor); break;
    case Screen::welcome: text += welcome_text(view); break;
    case Screen::lessons: text += lessons_text(view.lessons); break;
    case Screen::lesson_card: text += lesson_card_text(view.lesson_card); break;
    case Screen::arrived_lesson: text += arrived_lesson_text(view.arrived_lesson); break;
    case Screen::class_room: class_room_text(view, text); break;
    case Screen::class_window: class_window_text(view, text); break;
    case Screen::class_table: class_table_text(view.class_table, text); break;
    case Screen::keys: text += keys_text(view.keys); break;
    case Screen::controllers: text += controllers_text(view.controllers); break;
    case Screen::about: text += about_text(view); break;
    case Screen::drills: text += drills_text(view.drills); break;
    case Screen::drill: text += drill_text(view.drill); break;
    case Screen::drill_result: text += drill_result_text(view.drill_result); break;
    }
}

}  // namespace

void make_mirror(Screen screen, const View& view, Mirror& mirror) {
    mirror.screen.reserve(512);
    mirror.instruments.reserve(256);
    mirror.screen.clear();
    mirror.instruments.clear();
    screen_text(screen, view, mirror.screen);
    const DrillView& drill = view.drill;
    const bool drill_flies =
        screen == Screen::drill && (drill.stage == DrillView::Stage::told || drill.replayed);
    if (screen == Screen::flight || screen == Screen::replay || screen == Screen::class_room ||
        (screen == Screen::class_window && view.class_picture.waiting.empty()) || drill_flies)
        instruments_text(view.flight, mirror.instruments);
    if (screen == Screen::controllers) mirror.instruments += controllers_live_text(view.controllers);
    if (screen == Screen::replay) mirror.instruments.append("\nPosition ").append(view.replay.clock);
}

}  // namespace slopewise
