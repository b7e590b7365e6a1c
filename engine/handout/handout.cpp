#include "handout/handout.h"

#include <cmath>

#include "base/units.h"
#include "debrief/criteria_words.h"
#include "debrief/html_text.h"
#include "drill/quadrant_deck.h"
#include "handout/handout_numbers.h"
#include "handout/page.h"
#include "review/words.h"

namespace slopewise {
namespace {

std::string whole(double value) { return format_html("%.0f", value); }
std::string degrees(double angle_rad, int decimals) {
    return format_html("%.*f\u00b0", decimals, deg_from_rad(angle_rad));
}
// With a true minus sign.
std::string signed_degrees(double angle_rad) {
    const std::string size = format_html("%.1f\u00b0", std::abs(deg_from_rad(angle_rad)));
    if (size.find_first_of("123456789") == std::string::npos) return size;
    return (angle_rad < 0.0 ? "\u2212" : "+") + size;
}
std::string heading(const std::string& words) { return "<h2>" + words + "</h2>"; }
std::string note(const std::string& words) { return "<p>" + words + "</p>"; }

std::string header(const Scenario& base, const School& school, const HandoutNumbers& numbers) {
    const std::string where =
        html_text(base.aircraft.name) + ", " +
        html_text(base.aircraft.flaps[static_cast<std::size_t>(landing_flap(base.aircraft))].name) +
        " flap, " + whole(base.aircraft.mass_kg) + " kg<br>" + html_text(base.surroundings.runway.name) +
        ", path " + degrees(numbers.path_rad, 1);
    return "<header><div><h1>Final approach: the numbers</h1><p>To take home. Look at them before you fly, "
           "not "
           "in flight.</p></div><p>" +
           (school.name.empty() ? std::string("School: ____________") : html_text(school.name)) + "<br>" +
           where + "</p></header>";
}

std::string wind_section(const HandoutNumbers& numbers, SourceMarks& marks) {
    std::vector<HtmlRow> rows;
    for (const HandoutWind& wind : numbers.winds) {
        const std::string knots = whole(kt_from_mps(wind.headwind_mps));
        if (!wind.flyable) {
            rows.push_back({knots, "cannot be flown steadily", "", "", "", ""});
            continue;
        }
        const double ground_kt = kt_from_mps(wind.ground_speed_mps);
        rows.push_back({knots, whole(ground_kt), whole(fpm_from_mps(wind.sink_mps)), whole(5.0 * ground_kt),
                        whole(100.0 * wind.power), signed_degrees(wind.pitch_rad)});
    }
    const std::string formula = marks.mark({"sink_formula"}), rule = marks.mark({"sink_rule"});
    return heading("On the path at " + whole(kt_from_mps(numbers.target_mps)) + " kt, by headwind" +
                   formula) +
           html_table(
               {"headwind kt", "ground speed kt", "sink ft/min", "\u00d7 5 rule" + rule, "power %", "pitch"},
               rows) +
           note(
               "A headwind holds you back over the ground while the path stays where it is: you come down "
               "more "
               "slowly and for longer, and that takes more power. Power and pitch are the program's own, "
               "steady, "
               "1.5 NM out.");
}

std::string speed_section(const HandoutNumbers& numbers, const School& school, SourceMarks& marks) {
    HtmlRow factors{"gusts over mean wind, kt"}, targets{"target speed, kt"};
    for (const HandoutGust& gust : numbers.gusts) {
        factors.push_back(whole(kt_from_mps(gust.factor_mps)));
        targets.push_back(whole(kt_from_mps(gust.target_mps)));
    }
    return heading("Target speed in gusts" + marks.mark({"target_speed", "gust_allowance"})) +
           html_table(factors, {targets}) +
           note(format_html(
               "The school adds %.0f %% of gust less wind, and nothing for a steady headwind. %.0f kt "
               "is %.2f times the stalling speed with landing flap, %.0f kt.",
               100.0 * school.gust_share, kt_from_mps(numbers.target_mps),
               numbers.target_mps / numbers.stall_mps, kt_from_mps(numbers.stall_mps)));
}

std::string height_section(const HandoutNumbers& numbers, SourceMarks& marks) {
    HtmlRow distances{"to the aim point, NM"}, heights{"eye above it, ft"}, halves{"half a degree, ft"};
    for (const HandoutHeight& at : numbers.heights) {
        distances.push_back(format_html("%g", nm_from_m(at.distance_m)));
        heights.push_back(whole(ft_from_m(at.height_m)));
        halves.push_back(whole(ft_from_m(at.half_degree_m)));
    }
    const std::string geometry = marks.mark({"path_heights"}), still = marks.mark({"aim_still"});
    return heading("Heights on the path" + geometry) + html_table(distances, {heights, halves}) +
           note(format_html(
                    "The wheels pass %.0f ft below the eye. On a steady path the aim point does not move",
                    ft_from_m(numbers.wheels_below_eye_m)) +
                still + ": it sinks in the windscreen when you go too far, it rises when you fall short.");
}

// What a picture says; `from_middle` is by how many whites it differs from the one on the path.
const char* light_meaning(int from_middle, int units) {
    if (from_middle == 0) return "on the path";
    if (2 * from_middle == units) return "high";
    if (2 * from_middle == -units) return "low";
    return from_middle > 0 ? "slightly high" : "slightly low";
}

std::string light_section(const Scenario& base, const HandoutNumbers& numbers, SourceMarks& marks) {
    std::vector<HtmlRow> rows;
    const LightSite::Kind kind = base.surroundings.runway.lights.kind;
    for (const HandoutLights& picture : numbers.lights) {
        const std::string angle = picture.to_rad == 0.0 ? "above " + degrees(picture.from_rad, 2)
                                  : picture.from_rad == 0.0
                                      ? "below " + degrees(picture.to_rad, 2)
                                      : degrees(picture.from_rad, 2) + " to " + degrees(picture.to_rad, 2);
        rows.push_back({html_text(light_words(picture.white, picture.units, kind)), angle,
                        light_meaning(picture.white - picture.units / 2, picture.units)});
    }
    const bool two = kind == LightSite::Kind::apapi, bars = kind == LightSite::Kind::vasi;
    const std::string source = bars  ? marks.mark({"vasi_settings", "vasi_picture"})
                               : two ? marks.mark({"apapi_settings", "apapi_picture"})
                                     : marks.mark({"papi_settings", "papi_pictures"});
    const std::string lined_up = marks.mark({"caution_lined_up"}), far = marks.mark({"caution_clearance"});
    return heading("The lights, by the angle of your eye" + source) +
           html_table({"picture", "angle", "you are"}, rows) +
           note("Do not start down by the lights before you are lined up" + lined_up +
                "; as a rule they are good to 3.4 NM" + far + ". All red: mend it now, or go around.");
}

std::string energy_section(const School& school) {
    constexpr Quadrant states[] = {Quadrant::high_fast, Quadrant::high_slow, Quadrant::low_fast,
                                   Quadrant::low_slow};
    constexpr const char* names[] = {"high and fast", "high and slow", "low and fast", "low and slow"};
    constexpr const char* energy[] = {"too much energy", "height for speed", "speed for height",
                                      "too little energy"};
    std::vector<HtmlRow> rows;
    for (std::size_t i = 0; i < 4; ++i)
        rows.push_back(
            {names[i], energy[i],
             "<b>" + html_text(action_words(first_action(states[i]), school.criteria.convention)) + "</b>"});
    return heading("What do you move first?") + html_table({"you are", "it is", "first"}, rows) +
           note(
               "Then the other control, then trim. Airplane Flying Handbook, energy management, from "
               "memory.");
}

std::string stable_section(const Aircraft& aircraft, const School& school, SourceMarks& marks) {
    std::vector<std::string> lines;
    for (const std::string& line : criteria_lines(school.criteria)) lines.push_back(html_text(line));
    std::string flap;
    for (std::size_t i = 0; i < school.flap_step_count; ++i) {
        const ScheduledFlap& step = school.flap_schedule[i];
        if (step.setting >= aircraft.flap_count) continue;
        flap += (flap.empty() ? "Flap: " : ", ") +
                aircraft.flaps[static_cast<std::size_t>(step.setting)].name + " by " +
                whole(ft_from_m(step.by_height_m)) + " ft";
    }
    if (!flap.empty()) lines.push_back(html_text(flap + "."));
    return heading("Stable, as the school has it" +
                   marks.mark({"gate_500", "gate_300", "speed_limits", "limit_path"})) +
           html_list(lines);
}

std::string go_around_section(const HandoutNumbers& numbers, const School& school, SourceMarks& marks) {
    const std::string gate = whole(school.criteria.decision_gate_ft);
    return heading("Not stable at " + gate + " ft: go around" + marks.mark({"decision_rule"})) +
           html_list({"<b>Power:</b> full, at once; the nose will want to rise, and you hold it.",
                      "<b>Attitude:</b> stop the descent, then climb at the flight manual's speed.",
                      "<b>Flap:</b> in stages, each only once you climb.", "<b>Trim,</b> then say it."}) +
           note(format_html(
               "Expect %.0f ft/min with landing flap still out, in calm standard air (the program's own "
               "figure). The order: Airplane Flying Handbook, go-arounds, from memory. The flight "
               "manual's steps come first. Nobody needs a reason to go around.",
               fpm_from_mps(numbers.go_around_climb_mps)));
}

}  // namespace

std::string handout_html(const Scenario& base, const School& school) {
    const HandoutNumbers numbers = handout_numbers(base, school);
    SourceMarks marks;
    // One after the other, so that the sources are numbered as they are read.
    std::string body = header(base, school, numbers);
    body += wind_section(numbers, marks);
    body += "<div class=\"two\"><div>" + speed_section(numbers, school, marks);
    body += height_section(numbers, marks) + energy_section(school) + "</div><div>";
    body += light_section(base, numbers, marks);
    body += go_around_section(numbers, school, marks) + "</div></div>";
    body += stable_section(base.aircraft, school, marks);
    body += "<h2>Notes</h2><div class=\"box\"></div>";
    return html_page(
        "Final approach: the numbers", body,
        "The airfields are invented, and so are the shipped aircraft and their numbers. Sources: " +
            marks.list());
}

}  // namespace slopewise
