#include <algorithm>

#include "base/units.h"
#include "cli/commands.h"
#include "cli/data_files.h"
#include "cli/format.h"
#include "cli/recording_input.h"
#include "data/progress_json.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--json", "", "answer in JSON"},
    {"--csv", "", "answer in CSV, a row an attempt"},
    {"--limit", "H", "of the learning curve, 1 to 5; 2.5 if not given, 3 is strict"}};

std::string progress_text(const Progress& progress) {
    std::string text;
    for (std::size_t i = 0; i < progress.rows.size(); ++i) {
        const AttemptRow& r = progress.rows[i];
        text +=
            format("%4zu  %-20s bias %+5.2f deg  scatter %4.2f deg  %-8s %s%s\n", i + 1, r.lesson.c_str(),
                   deg_from_rad(r.path_rad.bias), deg_from_rad(r.path_rad.scatter),
                   std::string(decision_names[static_cast<std::size_t>(r.decision)]).c_str(),
                   std::string(learning_result_words[static_cast<std::size_t>(r.learning_result())]).c_str(),
                   r.unaided ? "" : " (aided)");
    }
    const CusumParameters& p = progress.parameters;
    text += format(
        "\nLC-CUSUM: inadequate %.0f %% failures, adequate %.0f %%, limit %.1f; a pass adds %.3f, a failure "
        "%.3f\n",
        100.0 * p.inadequate_failure_rate, 100.0 * p.adequate_failure_rate, p.limit, pass_score(p),
        failure_score(p));
    text += progress.signal_at < 0 ? "It has not signalled.\n"
                                   : format("It signalled at attempt %d.\n", progress.signal_at + 1);
    if (progress.relapse_at >= 0)
        text += format("A relapse showed at attempt %d.\n", progress.relapse_at + 1);
    text += format("Decisions at the gate: %d right, %d missed, %d cautious.\n", progress.decisions[1],
                   progress.decisions[2], progress.decisions[3]);
    if (progress.stop != StopHint::none)
        text += std::string(stop_hint_words[static_cast<std::size_t>(progress.stop)]) + "\n";
    text += "\n" + evidence_words(progress.evidence) + "\n";
    for (const EvidenceItem& item : progress.evidence)
        text += std::string(item.complete ? "  complete  " : "  not yet   ") + item.what + " (" + item.found +
                ")\n";
    return text;
}

Outcome progress(const Arguments& arguments) {
    Numbers numbers(arguments);
    CusumParameters parameters;
    parameters.limit = numbers.number("--limit", parameters.limit, 1.0, 5.0);
    if (!numbers.problem().empty()) return complaint(bad_input, "progress", numbers.problem());
    std::vector<AttemptRow> rows;
    std::vector<Problem> problems;
    for (const std::string& path : arguments.words) {
        for (Problem& problem : each_recorded_flight(path, Criteria{}, [&](const RecordedFlight& recorded) {
                 if (!recorded.cut_off)
                     rows.push_back(attempt_row(recorded.flight, recorded.recording.circumstances));
             }))
            problems.push_back(std::move(problem));
    }
    if (rows.empty() && problems.empty())
        return complaint(bad_input, "progress", "none of these attempts came to its end");
    if (rows.empty()) return {bad_input, "", problem_lines(problems)};
    // By time where all of it is known; else in the order given.
    if (std::ranges::all_of(rows, [](const AttemptRow& row) { return row.started_unix_s > 0; }))
        std::ranges::stable_sort(rows, {}, &AttemptRow::started_unix_s);
    const Progress result = progress_of(std::move(rows), parameters, DrillResults{});
    Outcome outcome;
    outcome.out = arguments.has("--json")  ? progress_json(result)
                  : arguments.has("--csv") ? csv_text(progress_table(result))
                                           : progress_text(result);
    if (problems.empty()) return outcome;
    // What could be read is shown; what could not is named, and the exit code says so.
    outcome.exit_code = bad_input;
    outcome.error = problem_lines(problems) + "slopewise progress: these are left out of what is shown\n";
    return outcome;
}

}  // namespace

const Command& progress_command() {
    static const Command command{
        {"progress", "FILES...", 1, 10000,
         "How a student comes on over recorded flights: trend, learning curve, evidence.",
         "FILES are of one student: recordings, attempts that the page handed over, or the student's whole "
         "file; "
         "in the order flown where they carry no time.",
         options},
        progress};
    return command;
}

}  // namespace slopewise::cli
