#include <filesystem>
#include <optional>

#include "base/units.h"
#include "cli/commands.h"
#include "cli/data_files.h"
#include "cli/format.h"
#include "cli/recording_input.h"
#include "cli/summary_answer.h"
#include "data/criteria_file.h"
#include "data/review_json.h"
#include "debrief/estimate.h"
#include "debrief/sheet.h"
#include "review/diagnosis/correction.h"
#include "review/track_csv.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--json", "", "answer in JSON"},
    {"--csv", "DIR", "write the tables into that folder, which must be there, with a dictionary of columns"},
    {"--html", "FILE.html", "write the one-page sheet there; a browser prints it"},
    {"--student", "NAME", "name or code, for the sheet"},
    {"--criteria", "FILE.json", "what counts as stable; the usual if not given"},
};

std::string review_text(const ReviewedFlight& flight) {
    const Review& review = flight.review;
    std::string text =
        flight.scenario.lesson.title + "\n" + summary_text(review.summary, flight.track) + "\n";
    for (std::size_t i = 0; i < review.stability.size(); ++i)
        if (review.summary.gates[i].reached)
            text += row(format("at %.0f ft", review.summary.gates[i].height_ft),
                        stability_words(review.stability[i]));
    text +=
        row("decision at the gate", std::string(decision_names[static_cast<std::size_t>(review.decision)]));
    const Finding* priority = flight.diagnosis.priority();
    if (priority == nullptr) return text + "\n" + no_fault_words(flight) + "\n";
    const Fault& fault = *priority->fault;
    text += "\n" + std::string(fault.title) + "\n";
    text += row("symptom", std::string(fault.symptom)) + row("cause", std::string(fault.cause)) +
            row("could lead to", std::string(fault.could_lead_to)) +
            row("correction", std::string(correction_of(fault, flight.criteria.convention)));
    for (std::size_t i = 1; i < flight.diagnosis.findings.size(); ++i)
        text += row(i == 1 ? "also seen" : "", std::string(flight.diagnosis.findings[i].fault->title));
    return text;
}

// Written, or the outcome that says why not.
std::optional<Outcome> write(const std::string& path, const std::string& text) {
    std::string reason;
    if (write_file(path, text, reason)) return std::nullopt;
    return complaint(bad_input, "review", path + " cannot be written: " + reason);
}

std::optional<Outcome> write_tables(const std::string& folder, const ReviewedFlight& flight) {
    if (std::error_code ignored; !std::filesystem::is_directory(folder, ignored))
        return complaint(bad_input, "review",
                         "--csv " + folder + " is no folder; allowed: a folder that is there, to write into");
    for (const Table& table : flight_tables(flight))
        if (auto failed = write(folder + "/" + std::string(table.title) + ".csv", csv_text(table)))
            return failed;
    if (auto failed = write(folder + "/track.csv", track_csv(flight.track))) return failed;
    return write(folder + "/dictionary.csv", flight_dictionary(flight));
}

// What the student thought, if it was asked, against what was.
std::string estimate_text(const RecordedFlight& recorded) {
    const std::optional<Estimate>& estimate = recorded.recording.circumstances.estimate;
    return estimate ? row("estimate", estimate_sentence(*estimate, recorded.flight)) : "";
}

// The criteria asked for, or the problems of their file.
Result<Criteria> criteria_of(const Arguments& arguments) {
    if (!arguments.has("--criteria")) return success(Criteria{});
    const std::string path(arguments.value_of("--criteria"));
    Result<std::string> text = read_file(path);
    if (!text.ok()) return failure<Criteria>(std::move(text.problems));
    return read_criteria(*text.value, path);
}

Outcome review(const Arguments& arguments) {
    const Result<Criteria> criteria = criteria_of(arguments);
    if (!criteria.ok()) return {bad_input, "", problem_lines(criteria.problems)};
    const Result<RecordedFlight> recorded = review_file(arguments.words[0], *criteria.value);
    if (!recorded.ok()) return {bad_input, "", problem_lines(recorded.problems)};
    const ReviewedFlight& flight = recorded.value->flight;
    if (arguments.has("--csv"))
        if (auto failed = write_tables(std::string(arguments.value_of("--csv")), flight)) return *failed;
    if (arguments.has("--html")) {
        SheetFacts facts = sheet_facts(recorded.value->recording.circumstances, flight);
        if (arguments.has("--student")) facts.student = std::string(arguments.value_of("--student"));
        if (auto failed = write(std::string(arguments.value_of("--html")), sheet_html(flight, facts)))
            return *failed;
    }
    Outcome outcome;
    outcome.out =
        arguments.has("--json") ? review_json(flight) : review_text(flight) + estimate_text(*recorded.value);
    if (flight.first_diverged_tick >= 0)
        outcome.error = format(
            "slopewise review: this recording no longer flies the same, first seen at tick "
            "%lld; what follows is of the %s\n",
            static_cast<long long>(flight.first_diverged_tick),
            recorded.value->by_kept_track ? "track that was kept with it" : "new flight");
    return outcome;
}

}  // namespace

const Command& review_command() {
    static const Command command{
        {"review", "FILE", 1, 1, "The debrief of a recorded flight: measures, decision, one priority fault.",
         "FILE is what slopewise fly --record wrote, or an attempt that the page handed over. It is flown "
         "with the "
         "shipped aircraft and runways.",
         options},
        review};
    return command;
}

}  // namespace slopewise::cli
