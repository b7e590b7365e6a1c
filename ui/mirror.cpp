#include "ui/mirror.h"

#include <cmath>

#include "ui/format.h"

namespace slopewise {
namespace {

std::string sentence(const LabelledValue& value) {
    return value.label + ": " + value.value + (value.unit.empty() ? "" : " " + value.unit) +
           (value.note.empty() ? "" : " (" + value.note + ")") + "\n";
}

std::string choices_text(const View& view) {
    std::string text = "Slopewise. Choose an approach.\n";
    for (const std::string& line : view.caution) text += line + "\n";
    return text + view.choice.sentence + "\n" + view.choice.problem;
}

std::string briefing_text(const BriefingView& briefing) {
    std::string text = "Briefing. " + briefing.title + "\n" + briefing.aim + "\n";
    for (const LabelledValue& value : briefing.numbers) text += sentence(value);
    for (const LabelledValue& value : briefing.heights) text += sentence(value);
    for (const auto& row : briefing.lights)
        text += row.where + ": " + row.lights.words + ". " + row.meaning + "\n";
    for (const std::string& line : briefing.reminders) text += line + "\n";
    for (const KeyHint& hint : briefing.keys) text += hint.key + ": " + hint.meaning + "\n";
    return text;
}

std::string flight_text(const FlightView& flight) {
    std::string text = "Flying. " + flight.setup + "\n";
    if (flight.paused) text += "Paused.\n";
    return text + flight.status + "\n" + flight.caption;
}

std::string instruments_text(const FlightView& flight) {
    const InstrumentsView& shown = flight.instruments;
    return "Airspeed " + number_words(shown.airspeed_kt) + " kt\nHeight " + number_words(shown.altitude_ft) +
           " ft\nVertical speed " + number_words(10.0 * std::round(shown.vertical_speed_fpm / 10.0)) +
           " ft/min\nPower " + number_words(shown.power_percent) + " %\nFlap " +
           shown.flap_names[static_cast<std::size_t>(shown.flap_index)] + "\nLights " + flight.lights.words;
}

std::string gate_text(const GateRow& gate) {
    if (!gate.reached) return "Gate " + gate.height + ": not reached\n";
    return "Gate " + gate.height + ": path " + gate.deviation_deg + " deg, " + gate.deviation_ft +
           " ft; lights " + gate.lights.words + "; speed " + gate.speed + " kt; sink " + gate.sink +
           " ft/min; power " + gate.power + " %; flap " + gate.flap + "\n";
}

std::string summary_text(const SummaryView& summary) {
    std::string text =
        summary.title + ". " + summary.setup + "\n" + summary.ended + "\n" + summary.worst + "\n";
    for (const GateRow& gate : summary.gates) text += gate_text(gate);
    for (const LabelledValue& value : summary.path_figures) text += "Path " + sentence(value);
    for (const LabelledValue& value : summary.speed_figures) text += "Speed " + sentence(value);
    for (const ShareBar& bar : summary.in_tolerance) text += bar.label + ": " + bar.value + "\n";
    for (const ShareBar& bar : summary.light_pictures)
        text += "Lights " + bar.label + ": " + bar.value + "\n";
    for (const std::string& line : summary.definitions) text += line + "\n";
    return text;
}

std::string screen_text(Screen screen, const View& view) {
    const std::string text = view.notice.empty() ? "" : view.notice + "\n";
    switch (screen) {
    case Screen::choices: return text + choices_text(view);
    case Screen::stick_sense:
        return text + "Which key should lower the nose? Press it: the up key or the down key.";
    case Screen::briefing: return text + briefing_text(view.briefing);
    case Screen::flight: return text + flight_text(view.flight);
    case Screen::summary: return text + summary_text(view.summary);
    }
    return text;
}

}  // namespace

Mirror make_mirror(Screen screen, const View& view) {
    return {screen_text(screen, view), screen == Screen::flight ? instruments_text(view.flight) : ""};
}

}  // namespace slopewise
