#include "question/set_up.h"

#include <algorithm>
#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "drill/drill_words.h"
#include "review/deviations.h"
#include "world/sight.h"

namespace slopewise {
namespace {

// The start from which straight flight is there after `run_s`.
DrillStart before(const DrillStart& there, double run_s, const Scenario& base) {
    const double nominal_rad = base.surroundings.runway.lights.nominal_path_rad;
    const double line_rad = nominal_rad + there.offset_rad;
    const double path_rad = line_rad + there.steeper_rad;
    const double height_m = there.distance_m * exact::tan(line_rad);
    const double speed_mps = base.lesson.target_cas_mps + there.faster_mps - there.headwind_mps;
    const double back_m = speed_mps * run_s;
    const double start_line_rad =
        exact::atan2(height_m + back_m * exact::tan(path_rad), there.distance_m + back_m);
    DrillStart start = there;
    start.distance_m = there.distance_m + back_m;
    start.offset_rad = start_line_rad - nominal_rad;
    start.steeper_rad = path_rad - start_line_rad;
    return start;
}

double within(double value, double least, double most) { return std::clamp(value, least, most); }

}  // namespace

Lesson question_lesson(const Question& question, const Scenario& base) {
    Lesson lesson = scenario_from(before(question.stands, question.run_s, base), base).lesson;
    lesson.outlook = question.outlook.value_or(Outlook{});
    for (const Failure& failure : question.failures) {
        if (lesson.failure_count == static_cast<int>(most_failures)) break;
        lesson.failures[static_cast<std::size_t>(lesson.failure_count++)] = failure;
    }
    return lesson;
}

Question question_here(QuestionKind kind, const Scenario& scenario, const Attempt& attempt) {
    const TrackPoint now = observe(scenario, attempt);
    const double nominal_rad = scenario.surroundings.runway.lights.nominal_path_rad;
    Question question;
    question.kind = kind;
    DrillStart& there = question.stands;
    // Within what a file may say, so that it is read back the same.
    there.distance_m = within(now.distance_m, m_from_nm(0.25), m_from_nm(9.0));
    there.offset_rad = within(now.path_error_rad, rad_from_deg(-2.0), rad_from_deg(3.0));
    const double path_rad = exact::atan2(now.sink_mps, std::max(now.ground_speed_mps, 1.0));
    there.steeper_rad =
        within(path_rad - nominal_rad - there.offset_rad, rad_from_deg(-5.0), rad_from_deg(5.0));
    there.faster_mps =
        within(now.cas_mps - scenario.lesson.target_cas_mps, mps_from_kt(-15.0), mps_from_kt(30.0));
    there.flap_short = std::clamp(landing_flap(scenario.aircraft) - now.flap_setting, 0, 3);
    there.headwind_mps = within(now.headwind_mps, mps_from_kt(-15.0), mps_from_kt(40.0));
    question.runway_id = scenario.surroundings.runway.id;
    if (scenario.lesson.outlook != Outlook{}) question.outlook = scenario.lesson.outlook;
    for (int i = 0; i < scenario.lesson.failure_count; ++i) {
        const auto at = static_cast<std::size_t>(i);
        if (!attempt.conditions.failed[at] || question.failures.size() == most_question_failures) continue;
        Failure failure = scenario.lesson.failures[at];
        failure.trigger = Failure::Trigger::time;
        failure.at = 0.0;
        question.failures.push_back(failure);
    }
    return question;
}

std::string stands_words(const Question& question) {
    const DrillStart& there = question.stands;
    const double off_kt = kt_from_mps(there.faster_mps), wind_kt = kt_from_mps(there.headwind_mps);
    std::string words =
        distance_phrase(there.distance_m) + ", " + path_phrase(there.offset_rad, there.distance_m);
    if (std::abs(off_kt) >= 0.5)
        words += drill_format(", %.0f kt %s", std::abs(off_kt), off_kt < 0.0 ? "slow" : "fast");
    if (const double steeper_deg = deg_from_rad(there.steeper_rad); std::abs(steeper_deg) >= 0.05)
        words += drill_format(", %.1f\u00b0 %s than the line to the aim point", std::abs(steeper_deg),
                              steeper_deg < 0.0 ? "flatter" : "steeper");
    if (std::abs(wind_kt) >= 0.5)
        words += drill_format(", %.0f kt %s", std::abs(wind_kt), wind_kt < 0.0 ? "tailwind" : "headwind");
    if (there.flap_short > 0) words += ", flap short of landing flap";
    if (!question.runway_id.empty()) words += ", at " + question.runway_id;
    if (question.outlook && question.outlook->light != Daylight::day)
        words += question.outlook->light == Daylight::low_sun
                     ? ", low sun"
                     : ", " + std::string(daylight_names[static_cast<std::size_t>(question.outlook->light)]);
    if (!question.failures.empty()) words += ", with a failure";
    return words;
}

}  // namespace slopewise
