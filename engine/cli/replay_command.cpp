#include "cli/commands.h"
#include "cli/data_files.h"
#include "cli/format.h"
#include "cli/json_text.h"
#include "data/recording_file.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {{"--json", "", "answer in JSON"}};

Outcome answer(const Recording& recording, const Replay& again, bool as_json) {
    const bool same = again.first_diverged_tick < 0;
    if (as_json) {
        Json json{{"lesson", recording.lesson.id}, {"ticks", recording.ticks}, {"identical", same}};
        if (!same) json["first_tick_that_differs"] = again.first_diverged_tick;
        return {same ? good : bad_input, json_text(json), ""};
    }
    if (same) return {good, format("identical: %lld ticks\n", static_cast<long long>(recording.ticks)), ""};
    return {bad_input, "",
            format("slopewise replay: differs, first seen at tick %lld (hashes stand every %lld ticks)\n",
                   static_cast<long long>(again.first_diverged_tick),
                   static_cast<long long>(hash_interval_ticks))};
}

Outcome replay_file(const Arguments& arguments) {
    const std::string& path = arguments.words[0];
    const Result<std::string> text = read_file(path);
    if (!text.ok()) return {bad_input, "", problem_lines(text.problems)};
    const Result<Recording> recording = read_recording(*text.value, path);
    if (!recording.ok()) return {bad_input, "", problem_lines(recording.problems)};
    const Lesson& lesson = recording.value->lesson;
    const std::vector<Problem> problems = check_lesson(shipped_catalog(), lesson, path);
    if (!problems.empty()) return {bad_input, "", problem_lines(problems)};
    const Replay again = replay(*recording.value, scenario_of(shipped_catalog(), lesson));
    return answer(*recording.value, again, arguments.has("--json"));
}

}  // namespace

const Command& replay_command() {
    static const Command command{
        {"replay", "FILE", 1, 1, "Flies a recording again: identical, or the first tick that differs.",
         "FILE is what slopewise fly --record wrote. It is flown with the shipped aircraft and runways.",
         options},
        replay_file};
    return command;
}

}  // namespace slopewise::cli
