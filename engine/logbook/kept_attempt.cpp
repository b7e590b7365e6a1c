#include "logbook/kept_attempt.h"

#include "data/fields.h"
#include "data/recording_file.h"
#include "logbook/attempt_id.h"
#include "logbook/kept_track.h"
#include "logbook/text_sum.h"

namespace slopewise {
namespace {

// The text is {"slopewise_attempt":1,"sum":"16 digits", and then what is summed.
constexpr std::string_view opening = "{\"slopewise_attempt\":";
constexpr std::string_view sum_key = ",\"sum\":\"";
constexpr std::string_view sum_end = "\",";

constexpr std::string_view end_names[] = {"none", "reached_floor", "went_around", "ground_short", "overflew"};

// What follows the sum; empty, with the problem told, when the text is no kept attempt or was damaged.
std::string_view summed_part(std::string_view text, const std::string& file, std::vector<Problem>& problems) {
    const auto refuse = [&](const char* what, std::string allowed) {
        problems.push_back({file, 0, "", what, std::move(allowed)});
        return std::string_view{};
    };
    const std::string allowed = "an attempt of format " + std::to_string(kept_attempt_format);
    if (text.size() > most_kept_attempt_bytes)
        return refuse("is too large", "at most " + std::to_string(most_kept_attempt_bytes >> 20) + " MiB");
    if (!looks_like_kept_attempt(text)) return refuse("is no kept attempt", allowed);
    text.remove_prefix(opening.size());
    const std::string format = std::to_string(kept_attempt_format);
    if (!text.starts_with(format + std::string(sum_key)))
        return refuse("was written by another version of Slopewise", allowed);
    text.remove_prefix(format.size() + sum_key.size());
    if (text.size() < text_sum_digits + sum_end.size() ||
        text.substr(text_sum_digits, sum_end.size()) != sum_end)
        return refuse("is damaged", allowed);
    const std::string_view sum = text.substr(0, text_sum_digits);
    text.remove_prefix(text_sum_digits + sum_end.size());
    if (sum != text_sum(text)) return refuse("is damaged: its sum does not agree", "");
    return text;
}

}  // namespace

bool looks_like_kept_attempt(std::string_view text) { return text.starts_with(opening); }

std::string kept_attempt_text(const KeptAttempt& attempt) {
    std::string recording = recording_text(attempt.recording);
    std::erase(recording, '\n');  // raw ones stand between tokens only
    const std::string summed =
        "\"id\":\"" + attempt.id + "\",\"cut_off\":" + (attempt.cut_off ? "true" : "false") + ",\"end\":\"" +
        std::string(end_names[static_cast<std::size_t>(attempt.end)]) + "\",\"recording\":" + recording +
        ",\"track\":" + kept_track_text(attempt.track) + "}";
    return std::string(opening) + std::to_string(kept_attempt_format) + std::string(sum_key) +
           text_sum(summed) + std::string(sum_end) + summed;
}

Result<KeptAttempt> read_kept_attempt(std::string_view text, const std::string& file) {
    while (!text.empty() && (text.back() == '\n' || text.back() == '\r')) text.remove_suffix(1);
    std::vector<Problem> problems;
    const std::string_view summed = summed_part(text, file, problems);
    if (!problems.empty()) return failure<KeptAttempt>(std::move(problems));
    Result<JsonNode> parsed = parse_json("{" + std::string(summed), file, most_kept_attempt_bytes);
    if (!parsed.ok()) return failure<KeptAttempt>(std::move(parsed.problems));

    Fields fields(*parsed.value, file, "", problems);
    KeptAttempt attempt;
    attempt.id = fields.text("id", 40);
    if (!attempt.id.empty() && !is_attempt_id(attempt.id))
        fields.report("id", "is no identity of an attempt", attempt_id_words);
    attempt.cut_off = fields.flag_or("cut_off", false);
    attempt.end = static_cast<End>(fields.one_of("end", end_names));
    if (const JsonNode* node = fields.raw("recording", JsonNode::Kind::object)) {
        Result<Recording> recording = read_recording(*node, file);
        for (Problem& problem : recording.problems) {
            problem.path = "/recording" + problem.path;
            problems.push_back(std::move(problem));
        }
        if (recording.ok()) attempt.recording = std::move(*recording.value);
    }
    if (const JsonNode* node = fields.raw("track", JsonNode::Kind::object))
        attempt.track = read_kept_track(*node, file, problems);
    fields.finish();
    if (!problems.empty()) return failure<KeptAttempt>(std::move(problems));
    return success(std::move(attempt));
}

Result<std::string> kept_attempt_id(std::string_view text, const std::string& file) {
    constexpr std::string_view key = "\"id\":\"";
    std::vector<Problem> problems;
    const std::string_view summed = summed_part(text, file, problems);
    if (!problems.empty()) return failure<std::string>(std::move(problems));
    const std::string_view after = summed.starts_with(key) ? summed.substr(key.size()) : "";
    std::string id(after.substr(0, after.find('"')));
    if (!is_attempt_id(id))
        return failure<std::string>({{file, 0, "/id", "is no identity of an attempt", attempt_id_words}});
    return success(std::move(id));
}

KeptAttempt kept_from(std::string id, Recording recording, const Scenario& scenario) {
    KeptAttempt kept;
    kept.id = std::move(id);
    const Replay again = replay(recording, scenario, [&](const Attempt& attempt, const Events& events) {
        if (attempt.tick == 0) kept.track = begin_track(scenario, attempt);
        else extend(kept.track, scenario, attempt, events);
    });
    kept.end = again.attempt.end;
    kept.cut_off = kept.end == End::none;
    kept.recording = std::move(recording);
    return kept;
}

ReviewedFlight review_kept(const KeptAttempt& attempt, const Scenario& scenario, const Criteria& criteria) {
    ReviewedFlight again = review_recording(attempt.recording, scenario, criteria);
    if (again.first_diverged_tick < 0 || attempt.track.points.empty()) return again;
    ReviewedFlight kept = review_flight(scenario, criteria, attempt.track, attempt.end,
                                        attempt.recording.circumstances.aids.panel_share);
    kept.first_diverged_tick = again.first_diverged_tick;
    return kept;
}

}  // namespace slopewise
