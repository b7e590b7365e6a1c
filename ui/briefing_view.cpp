#include "base/units.h"
#include "lesson/briefing.h"
#include "ui/format.h"
#include "ui/input.h"
#include "ui/key_meanings.h"
#include "ui/school_desk.h"
#include "ui/views.h"

namespace slopewise {
namespace {

std::vector<LabelledValue> number_rows(const Scenario& scenario, const Briefing& briefing) {
    const std::string flap = scenario.aircraft.flaps[static_cast<std::size_t>(briefing.flap)].name;
    const double headwind_kt = kt_from_mps(briefing.headwind_mps);
    return {
        {"Target speed", number_words(kt_from_mps(briefing.target_cas_mps)), "kt", "indicated"},
        {"Ground speed", number_words(kt_from_mps(briefing.ground_speed_mps)), "kt",
         headwind_kt < 0.5 ? "calm" : number_words(headwind_kt) + " kt headwind"},
        {"Sink", number_words(fpm_from_mps(briefing.sink_mps)), "ft/min", "about ground speed \u00d7 5"},
        {"Power", number_words(100.0 * briefing.power), "%", "of full"},
        {"Pitch", signed_words(deg_from_rad(briefing.pitch_rad), 1), "\u00b0", "nose against the horizon"},
        {"Flap", flap, "", "set at the start"}};
}

std::vector<LabelledValue> height_rows(const Briefing& briefing) {
    std::vector<LabelledValue> rows;
    for (const Briefing::PathHeight& point : briefing.heights) {
        const double distance_nm = nm_from_m(point.distance_m);
        rows.push_back({number_words(distance_nm, distance_nm < 1.0 ? 1 : 0) + " NM",
                        number_words(ft_from_m(point.height_m)), "ft", ""});
    }
    return rows;
}

std::string start_meaning(const Briefing& briefing) {
    const double offset_deg = deg_from_rad(briefing.start_offset_rad);
    if (offset_deg > 0.25) return "You start high: less power, nose down a little to keep the speed.";
    if (offset_deg < -0.25) return "You start low: more power first, then hold the attitude.";
    return "You start on the path, trimmed. Leave it alone.";
}

std::vector<BriefingView::Expectation> light_rows(const Scenario& scenario, const Briefing& briefing) {
    std::vector<BriefingView::Expectation> rows{
        {"At the start", picture_of(scenario, briefing.white_at_start), start_meaning(briefing)}};
    rows.push_back(
        {"On the path", picture_of(scenario, briefing.white_on_path), "Keep it so with small changes."});
    if (scenario.lights.pattern == 4) {
        rows.push_back({"A little high", picture_of(scenario, 3), "A little less power."});
        rows.push_back({"A little low", picture_of(scenario, 1), "A little more power."});
    } else {
        rows.push_back({"High", picture_of(scenario, scenario.lights.pattern), "Less power."});
    }
    rows.push_back({"Far too low", picture_of(scenario, 0), "Power now. If it stays, go around."});
    return rows;
}

// The setting with which the altimeter reads nothing on the threshold.
std::string altimeter_words(const Scenario& scenario, PressureUnit unit) {
    const Air air = air_at(air_column(scenario.lesson.weather), scenario.surroundings.runway.elevation_m);
    return "The altimeter is set to " + pressure_words(air.pressure_pa, unit) +
           " and reads from the runway up. The vertical speed lags.";
}

}  // namespace

BriefingView briefing_view(const Scenario& scenario, const Settings& settings) {
    const Briefing briefing = make_briefing(scenario);
    BriefingView view;
    view.title = scenario.lesson.title;
    view.place = place_words(scenario);
    view.aim = scenario.lesson.aim;
    view.numbers = number_rows(scenario, briefing);
    view.heights = height_rows(briefing);
    view.lights = light_rows(scenario, briefing);
    view.reminders = {"The aim point is the one spot that does not move. Keep it still.",
                      "Look out; glance at the airspeed; look out again.",
                      "Below 200 ft leave the lights alone: small power, steady attitude.",
                      altimeter_words(scenario, settings.school.pressure_unit)};
    if (const std::string flap = flap_schedule_words(settings.school, scenario.aircraft); !flap.empty())
        view.reminders.push_back(flap);
    view.keys = key_hints(settings);
    const bool shared = scenario.lesson.hands != Hands::both;
    // Those of this flight: starting again is for its end, handing over for where two share the controls.
    std::erase_if(view.keys, [&](const KeyHint& hint) {
        return hint.meaning == key_meaning::again || (hint.meaning == key_meaning::exchange && !shared);
    });
    return view;
}

}  // namespace slopewise
