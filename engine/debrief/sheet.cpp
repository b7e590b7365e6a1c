#include "debrief/sheet.h"

#include <algorithm>

#include "base/units.h"
#include "debrief/criteria_words.h"
#include "debrief/html_text.h"
#include "debrief/sheet_plot.h"
#include "debrief/sheet_style.h"
#include "review/diagnosis/correction.h"
#include "review/track_csv.h"
#include "review/words.h"

namespace slopewise {
namespace {

std::string element(const char* name, const std::string& inside) {
    return std::string("<") + name + ">" + inside + "</" + name + ">";
}

// A cell with a number; underlined and bold where it is out.
std::string cell(const std::string& value, bool in = true) {
    return std::string(in ? "<td>" : "<td class=\"out\">") + value + "</td>";
}

// With its sign; a value that rounds to zero has none.
std::string signed_text(double value, int decimals) {
    const std::string text = format_html("%+.*f", decimals, value);
    return text.find_first_of("123456789") == std::string::npos ? text.substr(1) : text;
}

std::string header(const ReviewedFlight& flight, const SheetFacts& facts) {
    const Lesson& lesson = flight.scenario.lesson;
    std::string who = html_text(facts.student.empty() ? "Student: ____________" : facts.student);
    if (!facts.date.empty()) who += "<br>" + html_text(facts.date);
    return "<header><div>" + element("h1", html_text(lesson.title)) + element("p", html_text(lesson.aim)) +
           "</div><p>" + who + "<br>" + html_text(flight.scenario.aircraft.name) + ", " +
           html_text(flight.scenario.surroundings.runway.name) + "</p></header>";
}

std::string gate_row(const std::string& name, const GateValue& gate, LightSite::Kind lights,
                     const std::string& words) {
    return "<tr>" + cell(name) +
           cell(signed_text(deg_from_rad(gate.mean.path_rad), 2) + "\u00b0", gate.mean.path_in) +
           cell(signed_text(ft_from_m(gate.mean.path_m), 0), gate.mean.path_in) +
           cell(light_words(gate.white_count, units_showing(gate.white_fraction), lights)) +
           cell(signed_text(kt_from_mps(gate.mean.speed_mps), 0), gate.mean.speed_in) +
           cell(format_html("%.0f", fpm_from_mps(gate.sink_mps)), gate.mean.sink_in) +
           cell(format_html("%.0f", 100.0 * gate.power)) +
           cell(format_html("%.1f", deg_from_rad(gate.pitch_rad))) +
           cell(format_html("%d", gate.flap_setting)) + "<td class=\"words\">" + html_text(words) +
           "</td></tr>";
}

std::string gate_rows(const ReviewedFlight& flight) {
    const Summary& summary = flight.review.summary;
    const GateValue& start = flight.review.start;
    std::string rows = gate_row(format_html("%.0f ft", start.height_ft), start, summary.light_kind, "start");
    for (std::size_t i = 0; i < summary.gates.size(); ++i) {
        const GateValue& gate = summary.gates[i];
        const std::string name = format_html("%.0f ft", gate.height_ft);
        rows += gate.reached
                    ? gate_row(name, gate, summary.light_kind, stability_words(flight.review.stability[i]))
                    : "<tr>" + cell(name) + "<td class=\"words\" colspan=\"9\">not reached</td></tr>";
    }
    return rows;
}

std::string gate_section(const ReviewedFlight& flight) {
    return "<h2>At the gates</h2><table><tr><th>wheels</th><th>path</th><th>ft</th><th>lights</th><th>kt "
           "off</th>"
           "<th>sink ft/min</th><th>power %</th><th>pitch \u00b0</th><th>flap</th><th class=\"words\">by the "
           "criteria</th></tr>" +
           gate_rows(flight) +
           "</table><p>Means over two seconds either side (at the start, of the first two); out of the "
           "lesson's tolerance is bold and underlined. Decision at the gate: <b>" +
           std::string(decision_names[static_cast<std::size_t>(flight.review.decision)]) + "</b>.</p>";
}

std::string band_section(const ReviewedFlight& flight) {
    constexpr const char* names[] = {"beyond 2 NM", "2 NM to 500 ft", "500 to 300 ft", "300 to 200 ft",
                                     "200 to 50 ft"};
    std::string rows;
    for (std::size_t i = 0; i < flight.review.bands.size(); ++i) {
        const Band& band = flight.review.bands[i];
        if (band.points == 0) continue;
        rows += "<tr>" + cell(names[i]) + cell(signed_text(deg_from_rad(band.path_rad.bias), 2) + "\u00b0") +
                cell(format_html("%.2f\u00b0", deg_from_rad(band.path_rad.scatter))) +
                cell(signed_text(kt_from_mps(band.speed_mps.bias), 1)) +
                cell(format_html("%.1f", kt_from_mps(band.speed_mps.scatter))) +
                cell(format_html("%.0f", band.controls.stick_reversals_per_min())) + "</tr>";
    }
    return "<div><h2>By distance</h2><table><tr><th></th><th>path bias</th><th>scatter</th><th>kt "
           "bias</th><th>scatter</th>"
           "<th>stick turns/min</th></tr>" +
           rows + "</table></div>";
}

std::string figure(const char* name, const std::string& value) {
    return "<tr><td>" + std::string(name) + "</td><td>" + value + "</td></tr>";
}

std::string figures_section(const ReviewedFlight& flight) {
    const Review& review = flight.review;
    std::string rows = figure("all in tolerance", format_html("%.0f %%", 100.0 * review.summary.all_share));
    if (review.answers.path_answered > 0)
        rows += figure("answer to a path error", format_html("%.1f s", review.answers.path_reaction_s));
    if (review.answers.path_errors > 0)
        rows += figure("first input the wrong way",
                       format_html("%d of %d", review.answers.path_wrong_way, review.answers.path_errors));
    if (review.aim.ducking_known)
        rows += figure("path, 200 to 50 ft", signed_text(deg_from_rad(review.aim.ducking_rad), 2) + "\u00b0");
    if (review.touchdown.known)
        rows += figure("straight on, no flare",
                       signed_text(ft_from_m(review.touchdown.from_aim_m), 0) + " ft from the aim");
    if (review.go_around.flown)
        rows += figure("go-around from", format_html("%.0f ft", ft_from_m(review.go_around.height_m)));
    return "<div><h2>Whole approach</h2><table>" + rows + "</table></div>";
}

std::string fault_section(const ReviewedFlight& flight) {
    std::string text = element("p", html_text(strongest_sentence(flight.review.summary)));
    const Finding* priority = flight.diagnosis.priority();
    if (priority == nullptr) return text + element("p", html_text(no_fault_words(flight)));
    const Fault& fault = *priority->fault;
    text += "<div class=\"fault\"><h2>One thing to work on: " + html_text(fault.title) +
            "</h2><p><b>Seen:</b> " + html_text(fault.symptom) + " <b>Why:</b> " + html_text(fault.cause) +
            " <b>Could lead to:</b> " + html_text(fault.could_lead_to) + "</p><p><b>Next time:</b> " +
            html_text(correction_of(fault, flight.criteria.convention)) + "</p></div>";
    std::string others;
    for (std::size_t i = 1; i < flight.diagnosis.findings.size(); ++i)
        others +=
            (others.empty() ? "Also seen: " : "; ") + std::string(flight.diagnosis.findings[i].fault->title);
    return others.empty() ? text : text + element("p", html_text(others + "."));
}

// So much as leaves the page one page; what is cut off is marked.
std::string shortened(std::string_view text) {
    constexpr std::size_t most = 300;
    if (text.size() <= most) return std::string(text);
    std::size_t end = most;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;  // inside a character
    return std::string(text.substr(0, end)) + "\u2026";
}

std::string room_to_write(const SheetFacts& facts) {
    std::string words = html_text(facts.estimate);
    if (!words.empty() && !facts.own_words.empty()) words += "<br>";
    return "<div class=\"columns\"><div><h2>In the student's own words</h2><div class=\"box\">" + words +
           html_text(shortened(facts.own_words)) +
           "</div></div><div><h2>Instructor</h2><div class=\"box\"></div></div></div>"
           "<p class=\"ticks\"><span>\u2610 discussed</span><span>\u2610 repeat</span><span>\u2610 "
           "proceed</span>"
           "<span>Initials ________</span><span>Date ____________</span></p>";
}

std::string footer(const ReviewedFlight& flight, const SheetFacts& facts) {
    const Lesson& lesson = flight.scenario.lesson;
    const Tolerances& t = lesson.tolerances;
    std::string text = html_text(file_caution) +
                       " Practice record only. Not for use in flight; the flight manual, the instructor and "
                       "local rules come first.<br>";
    text += format_html(
        "Tolerances: path %.2f\u00b0 or %.0f ft, the larger; speed -%.0f/+%.0f kt of %.0f; sink %.0f ft/min "
        "either side. ",
        deg_from_rad(t.path_rad), ft_from_m(t.path_floor_m), kt_from_mps(t.slow_mps), kt_from_mps(t.fast_mps),
        kt_from_mps(lesson.target_cas_mps), fpm_from_mps(t.sink_mps));
    text += format_html("Headwind %.0f kt, turbulence %.0f kt, seed %llu. ",
                        kt_from_mps(lesson.wind.headwind_mps), kt_from_mps(lesson.turbulence_w20_mps),
                        static_cast<unsigned long long>(lesson.seed));
    text += html_text(criteria_sentence(flight.criteria)) + " ";
    if (!facts.aids.empty()) text += html_text(facts.aids) + " ";
    if (!facts.device.empty()) text += "Flown with: " + html_text(facts.device) + ". ";
    return "<footer>" + text + html_text(facts.version) + "</footer>";
}

}  // namespace

std::string strongest_sentence(const Summary& summary) {
    const double best = std::max({summary.path_share, summary.speed_share, summary.sink_share});
    if (best < 0.5) return "";
    const char* what = best == summary.path_share    ? "the path"
                       : best == summary.speed_share ? "the airspeed"
                                                     : "the sink";
    return format_html("Strongest: %s, in tolerance for %.0f %% of the approach.", what, 100.0 * best);
}

std::string sheet_html(const ReviewedFlight& flight, const SheetFacts& facts) {
    return "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>" +
           html_text(flight.scenario.lesson.title) +
           "</title><meta name=\"viewport\" content=\"width=device-width\"><style>" + sheet_style +
           "</style></head><body>" + header(flight, facts) +
           element("p", html_text(end_sentence(flight.review.summary)) + " " +
                            html_text(worst_sentence(flight.review.summary, flight.track))) +
           sheet_plot(flight) + gate_section(flight) + "<div class=\"columns\">" + band_section(flight) +
           figures_section(flight) + "</div>" + fault_section(flight) + room_to_write(facts) +
           footer(flight, facts) + "</body></html>\n";
}

}  // namespace slopewise
