// The command-line program: reads its arguments, prints what the command answers.
#include <cstdio>
#include <vector>

#include "cli/commands.h"

int main(int argc, char** argv) {
    const std::vector<std::string_view> words(argv + (argc > 0 ? 1 : 0), argv + argc);
    const slopewise::cli::Outcome outcome = slopewise::cli::run(words);
    std::fwrite(outcome.error.data(), 1, outcome.error.size(), stderr);
    std::fwrite(outcome.out.data(), 1, outcome.out.size(), stdout);
    if (std::fflush(stdout) != 0 || std::ferror(stdout) != 0) {
        std::fputs("slopewise: the answer could not be written\n", stderr);
        return slopewise::cli::bad_input;
    }
    return outcome.exit_code;
}
