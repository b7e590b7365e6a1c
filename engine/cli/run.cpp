#include <array>

#include "cli/commands.h"

namespace slopewise::cli {
namespace {

std::array<const Command*, 11> all_commands() {
    return {&check_command(),       &lights_command(),   &atmosphere_command(), &brief_command(),
            &performance_command(), &fly_command(),      &replay_command(),     &review_command(),
            &progress_command(),    &evidence_command(), &handout_command()};
}

std::string command_names() {
    std::string names;
    for (const Command* command : all_commands()) names += std::string(command->usage.command) + ", ";
    return names + "--help";
}

std::string overall_help() {
    std::string text =
        "Slopewise without a window: the data, the lights, the air, the briefing and the flight.\n\n";
    for (const Command* command : all_commands()) {
        text += "  " + usage_line(command->usage) + "\n      " + std::string(command->usage.purpose) + "\n";
    }
    return text +
           "\n\"slopewise COMMAND --help\" says more. With --json the answer is JSON with the unit in every "
           "key.\n"
           "Exit status: 0 good; 1 bad input or data, the reason on standard error; 2 wrong usage.\n";
}

}  // namespace

Outcome complaint(ExitCode code, std::string_view command, const std::string& reason) {
    std::string line = "slopewise";
    if (!command.empty()) line += " " + std::string(command);
    return {code, "", line + ": " + reason + "\n"};
}

Outcome run(std::span<const std::string_view> words) {
    if (words.empty()) return complaint(wrong_usage, "", "no command given; allowed: " + command_names());
    if (words[0] == "--help") return {good, overall_help(), ""};
    for (const Command* command : all_commands()) {
        if (command->usage.command != words[0]) continue;
        const Reading reading = read_arguments(command->usage, words.subspan(1));
        if (reading.help) return {good, help_text(command->usage), ""};
        if (!reading.wrong.empty()) return complaint(wrong_usage, command->usage.command, reading.wrong);
        return command->run(reading.arguments);
    }
    return complaint(wrong_usage, "",
                     "no command \"" + std::string(words[0]) + "\"; allowed: " + command_names());
}

}  // namespace slopewise::cli
