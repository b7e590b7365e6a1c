#include "base/units.h"
#include "cli/commands.h"
#include "cli/data_files.h"
#include "cli/format.h"
#include "cli/summary_answer.h"
#include "data/recording_file.h"
#include "lesson/demonstrate.h"
#include "record/recording.h"
#include "review/track_csv.h"

namespace slopewise::cli {
namespace {

constexpr Option options[] = {
    {"--pilot", "NAME", "the model pilot who flies, good or with a fault; good if not given"},
    {"--seed", "N", "of the unsteadiness of the hand, 0 to 4294967295; 1 if not given"},
    {"--vary-air", "", "the seed shapes the turbulence too; else it is the lesson's own"},
    {"--runs", "N", "so many flights, seed after seed, 1 to 10000: a line of JSON each"},
    {"--track", "FILE.csv", "write the track there"},
    {"--record", "FILE.json", "write the recording there, for slopewise replay"},
    {"--json", "", "answer in JSON"},
};

// Who flies what.
struct Order {
    Scenario scenario;
    std::string pilot;
    std::uint64_t seed = 1;
    bool vary_air = false;
};

struct Flight {
    Track track;
    Summary summary;
    Recording recording;
};

Flight fly_whole(const Order& order) {
    Scenario scenario = order.scenario;
    if (order.vary_air) scenario.lesson.seed = order.seed;
    Flight flight;
    Attempt attempt = begin_attempt(scenario);
    ModelPilot pilot = pilot_for(scenario, *pilot_skill(order.pilot), order.seed);
    flight.track = begin_track(scenario, attempt);
    flight.recording = begin_recording(scenario.lesson);
    demonstrate(scenario, attempt, pilot, [&](const Controls& controls, const Events& events) {
        record(flight.recording, controls, attempt);
        extend(flight.track, scenario, attempt, events);
    });
    flight.summary = summarise(scenario, flight.track, attempt.end);
    return flight;
}

std::string hash_text(std::uint64_t hash) { return format("%016llx", static_cast<unsigned long long>(hash)); }

Json flight_json(const Order& order, const Flight& flight) {
    Json json{{"lesson", order.scenario.lesson.id}, {"pilot", order.pilot}, {"seed", order.seed}};
    add_summary(json, flight.summary, flight.track);
    json["ticks"] = flight.recording.ticks;
    json["state_hash"] = hash_text(flight.recording.final_hash);
    return json;
}

std::string text_answer(const Order& order, const Flight& flight, bool same) {
    std::string text = order.scenario.lesson.title + "\n" + summary_text(flight.summary, flight.track);
    text += row("flight", format("pilot %s, seed %llu, %lld ticks", order.pilot.c_str(),
                                 static_cast<unsigned long long>(order.seed),
                                 static_cast<long long>(flight.recording.ticks)));
    text += row("state hash", hash_text(flight.recording.final_hash));
    return text + row("flown again", same ? "the same, bit for bit" : "not the same");
}

// Written, or the outcome that says why not.
std::optional<Outcome> write_asked(const Arguments& arguments, std::string_view option,
                                   const std::string& text) {
    if (!arguments.has(option)) return std::nullopt;
    const std::string path(arguments.value_of(option));
    std::string reason;
    if (write_file(path, text, reason)) return std::nullopt;
    return complaint(bad_input, "fly", std::string(option) + " " + path + " cannot be written: " + reason);
}

Outcome fly_series(const Order& first, std::uint64_t runs) {
    Outcome outcome;
    Order order = first;
    for (std::uint64_t i = 0; i < runs; ++i) {
        order.seed = first.seed + i;
        outcome.out +=
            flight_json(order, fly_whole(order)).dump(-1, ' ', false, Json::error_handler_t::replace);
        outcome.out += "\n";
    }
    return outcome;
}

Outcome fly_once(const Order& order, const Arguments& arguments) {
    const Flight flight = fly_whole(order);
    if (auto failed = write_asked(arguments, "--track", track_csv(flight.track))) return *failed;
    if (auto failed = write_asked(arguments, "--record", recording_text(flight.recording))) return *failed;
    Scenario flown = order.scenario;
    flown.lesson = flight.recording.lesson;
    const Replay again = replay(flight.recording, flown);
    const bool same = again.first_diverged_tick < 0;

    Outcome outcome;
    if (arguments.has("--json")) {
        Json json = flight_json(order, flight);
        json["replay_same"] = same;
        json["replay_state_hash"] = hash_text(state_hash(again.attempt));
        outcome.out = json_text(json);
    } else {
        outcome.out = text_answer(order, flight, same);
    }
    if (!same) {
        outcome.exit_code = bad_input;
        outcome.error =
            format("slopewise fly: the record flies differently from tick %lld on: a fault of ours\n",
                   static_cast<long long>(again.first_diverged_tick));
    }
    return outcome;
}

Outcome fly_lesson(const Arguments& arguments) {
    Numbers numbers(arguments);
    Order order;
    order.seed = numbers.whole("--seed", 1, 0, 4294967295u);
    const std::uint64_t runs = numbers.whole("--runs", 1, 1, 10000);
    order.pilot = pilot_names[numbers.one_of("--pilot", 0, pilot_names)];
    order.vary_air = arguments.has("--vary-air");
    if (!numbers.problem().empty()) return complaint(bad_input, "fly", numbers.problem());
    for (const std::string_view option : {"--track", "--record"}) {
        if (arguments.has("--runs") && arguments.has(option))
            return complaint(wrong_usage, "fly", std::string(option) + " is for one flight, not with --runs");
    }
    const Result<Scenario> scenario = find_scenario(arguments.words[0]);
    if (!scenario.ok()) return {bad_input, "", problem_lines(scenario.problems)};
    order.scenario = *scenario.value;
    return arguments.has("--runs") ? fly_series(order, runs) : fly_once(order, arguments);
}

}  // namespace

const Command& fly_command() {
    static const Command command{
        {"fly", "LESSON", 1, 1, "A model pilot flies a lesson; the deviation summary of that flight.",
         "LESSON is the id of a shipped lesson or a lesson file. Pilots: good, late_power, over_control,\n"
         "needle_chasing, low_stretch, duck_under, late_flap, light_chasing, ignores_wind, presses_on.\n"
         "The same lesson, pilot and seed give the same state hash on every machine. A single flight is "
         "flown\n"
         "again from its record and compared.",
         options},
        fly_lesson};
    return command;
}

}  // namespace slopewise::cli
