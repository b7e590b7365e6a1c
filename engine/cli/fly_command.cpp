#include "base/units.h"
#include "cli/commands.h"
#include "cli/data_files.h"
#include "cli/format.h"
#include "cli/summary_answer.h"
#include "lesson/demonstrate.h"
#include "record/recording.h"
#include "review/track_csv.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--pilot", "NAME", "the model pilot who flies: good"},
    {"--seed", "N", "of the unsteadiness of the hand, 0 to 4294967295; 1 if not given"},
    {"--track", "FILE.csv", "write the track there"},
    {"--json", "", "answer in JSON"},
};

struct Flight {
    Track track;
    Summary summary;
    Recording recording;
    Replay replay;

    bool replays() const { return replay.first_diverged_tick < 0; }
};

Flight fly_whole(const Scenario& scenario, std::uint64_t seed) {
    Flight flight;
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, seed);
    flight.track = begin_track(scenario, attempt);
    flight.recording = begin_recording(scenario.lesson);
    demonstrate(scenario, attempt, pilot, [&](const Controls& controls, const Events& events) {
        record(flight.recording, controls, attempt);
        extend(flight.track, scenario, attempt, events);
    });
    flight.summary = summarise(scenario, flight.track, attempt.end);
    flight.replay = replay(flight.recording, scenario);
    return flight;
}

std::string hash_text(std::uint64_t hash) { return format("%016llx", static_cast<unsigned long long>(hash)); }

std::string json_answer(const Scenario& scenario, std::uint64_t seed, const Flight& flight) {
    Json json{{"lesson", scenario.lesson.id}, {"pilot", "good"}, {"seed", seed}};
    add_summary(json, flight.summary, flight.track);
    json["ticks"] = flight.recording.ticks;
    json["state_hash"] = hash_text(flight.recording.final_hash);
    json["replay_same"] = flight.replays();
    json["replay_state_hash"] = hash_text(state_hash(flight.replay.attempt));
    return json_text(json);
}

std::string text_answer(const Scenario& scenario, std::uint64_t seed, const Flight& flight) {
    std::string text = scenario.lesson.title + "\n" + summary_text(flight.summary, flight.track);
    text += row("flight", format("pilot good, seed %llu, %lld ticks", static_cast<unsigned long long>(seed),
                                 static_cast<long long>(flight.recording.ticks)));
    text += row("state hash", hash_text(flight.recording.final_hash));
    return text + row("flown again", flight.replays() ? "the same, bit for bit" : "not the same");
}

Outcome fly_lesson(const Arguments& arguments) {
    Numbers numbers(arguments);
    const std::uint64_t seed = numbers.whole("--seed", 1, 0, 4294967295u);
    if (!numbers.problem().empty()) return complaint(bad_input, "fly", numbers.problem());
    const std::string pilot(arguments.value_of("--pilot", "good"));
    if (pilot != "good")
        return complaint(bad_input, "fly", "--pilot is \"" + pilot + "\"; allowed: \"good\"");
    const Result<Scenario> scenario = find_scenario(arguments.words[0]);
    if (!scenario.ok()) return {bad_input, "", problem_lines(scenario.problems)};

    const Flight flight = fly_whole(*scenario.value, seed);
    if (arguments.has("--track")) {
        const std::string path(arguments.value_of("--track"));
        std::string reason;
        if (!write_file(path, track_csv(flight.track), reason)) {
            return complaint(bad_input, "fly", "--track " + path + " cannot be written: " + reason);
        }
    }
    Outcome outcome{good,
                    arguments.has("--json") ? json_answer(*scenario.value, seed, flight)
                                            : text_answer(*scenario.value, seed, flight),
                    ""};
    if (!flight.replays()) {
        outcome.exit_code = bad_input;
        outcome.error =
            format("slopewise fly: the record flies differently from tick %lld on: a fault of ours\n",
                   static_cast<long long>(flight.replay.first_diverged_tick));
    }
    return outcome;
}

}  // namespace

const Command& fly_command() {
    static const Command command{
        {"fly", "LESSON", 1, 1, "A model pilot flies a lesson; the deviation summary of that flight.",
         "LESSON is the id of a shipped lesson or a lesson file. The same lesson, pilot and seed give the "
         "same\n"
         "state hash on every machine. The flight is flown again from its record and compared.",
         options},
        fly_lesson};
    return command;
}

}  // namespace slopewise::cli
