// The commands of the command-line program: each takes its arguments and returns what to print, so that
// tests can call them and only main() prints.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "cli/options.h"

namespace slopewise::cli {

enum ExitCode { good = 0, bad_input = 1, wrong_usage = 2 };

struct Outcome {
    int exit_code = good;
    std::string out;    // for standard output
    std::string error;  // for standard error
};

// A bad input or a wrong usage, said in one line.
Outcome complaint(ExitCode code, std::string_view command, const std::string& reason);

// One command: how it is called, and what it does once its arguments have been read.
struct Command {
    Usage usage;
    Outcome (*run)(const Arguments& arguments);
};

const Command& check_command();
const Command& lights_command();
const Command& atmosphere_command();
const Command& brief_command();
const Command& performance_command();
const Command& fly_command();
const Command& replay_command();
const Command& review_command();
const Command& progress_command();
const Command& evidence_command();
const Command& handout_command();

// The whole program; `words` are the arguments after its own name.
Outcome run(std::span<const std::string_view> words);

}  // namespace slopewise::cli
