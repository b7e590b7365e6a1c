#include "cli/commands.h"
#include "cli/data_files.h"
#include "data/school_file.h"
#include "handout/handout.h"
#include "handout/lesson_plan.h"
#include "lesson/approach_choice.h"
#include "lesson/where_and_when.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--plan", "", "the plan of a lesson of twenty minutes instead"},
    {"--school", "FILE", "of the school's criteria, convention and gust share, and its own aircraft"},
    {"--aircraft", "ID", "the school's own if it has one, else the tourer"},
    {"--runway", "ID", "larkmoor if not given"}};

struct Wanted {
    School school;
    Aircraft aircraft;
    Runway runway;
};

Result<Wanted> wanted_of(const Arguments& arguments) {
    const auto refuse = [](std::string what, const char* allowed) {
        return failure<Wanted>({{"slopewise handout", 0, "", std::move(what), allowed}});
    };
    Wanted wanted;
    if (arguments.has("--school")) {
        const std::string path(arguments.value_of("--school"));
        const Result<std::string> text = read_file(path);
        if (!text.ok()) return failure<Wanted>(text.problems);
        Result<School> school = read_school(*text.value, path);
        if (!school.ok()) return failure<Wanted>(std::move(school.problems));
        wanted.school = std::move(*school.value);
    }
    const std::string aircraft_id(arguments.value_of("--aircraft", WhereAndWhen{}.aircraft_id));
    const std::string runway_id(arguments.value_of("--runway", WhereAndWhen{}.runway_id));
    const bool own = wanted.school.aircraft &&
                     (!arguments.has("--aircraft") || wanted.school.aircraft->aircraft.id == aircraft_id);
    const Aircraft* aircraft =
        own ? &wanted.school.aircraft->aircraft : find_aircraft(shipped_catalog(), aircraft_id);
    const Runway* runway = find_runway(shipped_catalog(), runway_id);
    if (aircraft == nullptr)
        return refuse("has no aircraft \"" + aircraft_id + "\"", "the id of one that ships");
    if (runway == nullptr) return refuse("has no runway \"" + runway_id + "\"", "the id of one that ships");
    wanted.aircraft = *aircraft;
    wanted.runway = *runway;
    return success(std::move(wanted));
}

Outcome handout(const Arguments& arguments) {
    const Result<Wanted> wanted = wanted_of(arguments);
    if (!wanted.ok()) return {bad_input, "", problem_lines(wanted.problems)};
    const auto& [school, aircraft, runway] = *wanted.value;
    const Lesson free = lesson_of(ApproachChoice{}, *find_lesson(shipped_catalog(), "final_calm"));
    const Lesson lesson = lesson_at(free, {aircraft.id, runway.id, {}}, aircraft);
    const Scenario base = make_scenario(lesson, aircraft, runway);
    if (!base.start_trim.flyable)
        return complaint(bad_input, "handout", "it cannot be flown there: " + base.start_trim.reason);
    return {good, arguments.has("--plan") ? lesson_plan_html(base, school) : handout_html(base, school), ""};
}

}  // namespace

const Command& handout_command() {
    static const Command command{
        {"handout", "", 0, 0, "The numbers to take home from a class, as one HTML page to be printed.",
         "With --plan the lesson plan that goes with it. Print it from a browser on A4 or Letter.", options},
        handout};
    return command;
}

}  // namespace slopewise::cli
