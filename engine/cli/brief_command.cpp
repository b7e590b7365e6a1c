#include <algorithm>

#include "base/units.h"
#include "cli/commands.h"
#include "cli/data_files.h"
#include "cli/format.h"
#include "cli/json_text.h"
#include "lesson/briefing.h"
#include "review/words.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {{"--json", "", "answer in JSON"}};

std::string json_answer(const Scenario& scenario, const Briefing& briefing) {
    const Lesson& lesson = scenario.lesson;
    Json heights = Json::array();
    for (const Briefing::PathHeight& at : briefing.heights) {
        heights.push_back(
            {{"distance_nm", nm_from_m(at.distance_m)}, {"eye_height_ft", ft_from_m(at.height_m)}});
    }
    const Json json{
        {"lesson", lesson.id},
        {"title", lesson.title},
        {"aim", lesson.aim},
        {"aircraft", scenario.aircraft.name},
        {"runway", scenario.surroundings.runway.name},
        {"target_speed_kt", kt_from_mps(briefing.target_cas_mps)},
        {"ground_speed_kt", kt_from_mps(briefing.ground_speed_mps)},
        {"sink_fpm", fpm_from_mps(briefing.sink_mps)},
        {"power_percent", 100.0 * briefing.power},
        {"lever_percent", 100.0 * briefing.lever},
        {"pitch_deg", deg_from_rad(briefing.pitch_rad)},
        {"headwind_kt", kt_from_mps(briefing.headwind_mps)},
        {"flap_setting", briefing.flap},
        {"flap_name", scenario.aircraft.flaps[static_cast<std::size_t>(briefing.flap)].name},
        {"start_distance_nm", nm_from_m(lesson.start.distance_m)},
        {"start_eye_height_ft", ft_from_m(briefing.start_height_m)},
        {"start_off_path_deg", deg_from_rad(briefing.start_offset_rad)},
        {"path_heights", heights},
        {"white_count_on_path", briefing.white_on_path},
        {"white_count_at_start", briefing.white_at_start},
    };
    return json_text(json);
}

// Of all the lesson's air events, at the target speed.
double worst_f_factor(const Scenario& scenario) {
    const Lesson& lesson = scenario.lesson;
    const Air air = air_at(scenario.surroundings.air, scenario.surroundings.runway.elevation_m);
    const double tas_mps = tas_from_cas_mps(lesson.target_cas_mps, air);
    double worst = 0.0;
    for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.air_event_count); ++i)
        worst = std::max(worst, largest_f_factor(lesson.air_events[i], tas_mps));
    return worst;
}

std::string text_answer(const Scenario& scenario, const Briefing& briefing) {
    const Lesson& lesson = scenario.lesson;
    std::string text = lesson.title + "\n" + lesson.aim + "\n" + scenario.aircraft.name + ", " +
                       scenario.surroundings.runway.name + "\n\n";
    text += row("target speed", format("%.0f kt", kt_from_mps(briefing.target_cas_mps)));
    text += row("ground speed", format("%.0f kt", kt_from_mps(briefing.ground_speed_mps)));
    text += row("sink", format("%.0f ft/min", fpm_from_mps(briefing.sink_mps)));
    text += row("power", format("%.0f %%, lever at %.0f %%", 100.0 * briefing.power, 100.0 * briefing.lever));
    text += row("pitch", format("%+.1f deg", deg_from_rad(briefing.pitch_rad)));
    text += row("headwind on the way", format("%.0f kt", kt_from_mps(briefing.headwind_mps)));
    text += row("flap", scenario.aircraft.flaps[static_cast<std::size_t>(briefing.flap)].name);
    text += row("start",
                format("%.2f NM out at %.0f ft, %+.2f deg from the path", nm_from_m(lesson.start.distance_m),
                       ft_from_m(briefing.start_height_m), deg_from_rad(briefing.start_offset_rad)));
    for (const Briefing::PathHeight& at : briefing.heights) {
        text += row(format("path at %g NM", nm_from_m(at.distance_m)),
                    format("%.0f ft above the aim point", ft_from_m(at.height_m)));
    }
    if (lesson.air_event_count > 0)
        text += row("strongest air event",
                    format("F-factor %.2f; 0.1 and more is hazardous", worst_f_factor(scenario)));
    const LightSite::Kind kind = scenario.surroundings.runway.lights.kind;
    text += row("lights on the path", light_words(briefing.white_on_path, scenario.lights.pattern, kind));
    text += row("lights at the start", light_words(briefing.white_at_start, scenario.lights.pattern, kind));
    return text;
}

Outcome brief(const Arguments& arguments) {
    const Result<Scenario> scenario = find_scenario(arguments.words[0]);
    if (!scenario.ok()) return {bad_input, "", problem_lines(scenario.problems)};
    const Briefing briefing = make_briefing(*scenario.value);
    if (!briefing.flyable)
        return complaint(bad_input, "brief", "the lesson cannot be flown: " + briefing.reason);
    return {good,
            arguments.has("--json") ? json_answer(*scenario.value, briefing)
                                    : text_answer(*scenario.value, briefing),
            ""};
}

}  // namespace

const Command& brief_command() {
    static const Command command{
        {"brief", "LESSON", 1, 1,
         "The briefing of a lesson: speed, power, pitch, sink, heights and lights to expect.",
         "LESSON is the id of a shipped lesson or a lesson file. Speed, power, pitch and sink are those of "
         "steady\n"
         "flight down the path in the middle of the approach, with landing flap.",
         options},
        brief};
    return command;
}

}  // namespace slopewise::cli
