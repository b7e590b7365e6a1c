#include "cli/recording_input.h"

#include "cli/data_files.h"
#include "data/recording_file.h"
#include "logbook/student_file.h"

namespace slopewise::cli {
namespace {

using Each = std::function<void(RecordedFlight)>;

std::vector<Problem> from_recording(const std::string& text, const std::string& path,
                                    const Criteria& criteria, const Each& each) {
    Result<Recording> recording = read_recording(text, path);
    if (!recording.ok()) return std::move(recording.problems);
    std::vector<Problem> problems = check_lesson(shipped_catalog(), recording.value->lesson, path);
    if (!problems.empty()) return problems;
    const Scenario scenario = scenario_of(shipped_catalog(), recording.value->lesson);
    RecordedFlight result;
    result.flight = review_recording(*recording.value, scenario, criteria);
    result.recording = std::move(*recording.value);
    each(std::move(result));
    return {};
}

std::vector<Problem> from_kept(KeptAttempt kept, const std::string& path, const Criteria& criteria,
                               const Each& each) {
    std::vector<Problem> problems = check_lesson(shipped_catalog(), kept.recording.lesson, path);
    if (!problems.empty()) return problems;
    RecordedFlight result;
    result.flight = review_kept(kept, scenario_of(shipped_catalog(), kept.recording.lesson), criteria);
    result.cut_off = kept.cut_off;
    result.by_kept_track = result.flight.first_diverged_tick >= 0;
    result.recording = std::move(kept.recording);
    each(std::move(result));
    return {};
}

std::vector<Problem> from_student_file(const std::string& text, const std::string& path,
                                       const Criteria& criteria, const Each& each) {
    std::vector<Problem> unknown;
    StudentFile file = read_student_file(text, path, [&](KeptAttempt kept) {
        for (Problem& problem : from_kept(std::move(kept), path, criteria, each))
            unknown.push_back(std::move(problem));
    });
    file.problems.insert(file.problems.end(), unknown.begin(), unknown.end());
    return std::move(file.problems);
}

}  // namespace

std::vector<Problem> each_recorded_flight(const std::string& path, const Criteria& criteria,
                                          const Each& each) {
    const Result<std::string> text = read_file(path, most_student_file_bytes);
    if (!text.ok()) return text.problems;
    if (looks_like_student_file(*text.value)) return from_student_file(*text.value, path, criteria, each);
    if (!looks_like_kept_attempt(*text.value)) return from_recording(*text.value, path, criteria, each);
    Result<KeptAttempt> kept = read_kept_attempt(*text.value, path);
    return kept.ok() ? from_kept(std::move(*kept.value), path, criteria, each) : std::move(kept.problems);
}

Result<RecordedFlight> review_file(const std::string& path, const Criteria& criteria) {
    std::optional<RecordedFlight> found;
    int count = 0;
    std::vector<Problem> problems = each_recorded_flight(path, criteria, [&](RecordedFlight flight) {
        if (++count == 1) found = std::move(flight);
    });
    if (count > 1)
        return failure<RecordedFlight>(
            {{path, 0, "", "holds " + std::to_string(count) + " attempts", "one attempt or recording"}});
    if (problems.empty() && !found) problems.push_back({path, 0, "", "holds no attempt", "one"});
    if (!problems.empty()) return failure<RecordedFlight>(std::move(problems));
    return success(std::move(*found));
}

}  // namespace slopewise::cli
