// Reads a command's arguments: which options it knows, which words it needs, and numbers with their range.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/result.h"

namespace slopewise::cli {

struct Option {
    std::string_view name;        // "--eye-ft"
    std::string_view value_name;  // "H"; empty for a switch
    std::string_view help;
    bool required = false;
};

// How a command is called.
struct Usage {
    std::string_view command;  // "lights"
    std::string_view words;    // "FILE..." as shown; empty where it takes none
    std::size_t least_words = 0;
    std::size_t most_words = 0;
    std::string_view purpose;  // one line
    std::string_view details;  // for --help; may be empty
    std::span<const Option> options;
};

struct Arguments {
    std::vector<std::string> words;
    std::vector<std::pair<std::string_view, std::string>> values;  // option name, value ("" for a switch)

    bool has(std::string_view option) const;
    std::string_view value_of(std::string_view option, std::string_view otherwise = "") const;
};

// The arguments, or why they are wrong usage, in one line that names what is allowed.
struct Reading {
    Arguments arguments;
    bool help = false;  // --help stands among them; nothing else counts then
    std::string wrong;  // empty when all is well
};
Reading read_arguments(const Usage& usage, std::span<const std::string_view> words);

std::string usage_line(const Usage& usage);
std::string help_text(const Usage& usage);

// Collects the numbers a command needs; `problem` stays the first thing found wrong, ready to print:
// "--eye-ft is \"abc\"; allowed: a number, 0 to 20000".
class Numbers {
public:
    explicit Numbers(const Arguments& arguments) : arguments_(arguments) {}

    // Finite decimal numbers, ends included; `otherwise` where the option is not given.
    double number(std::string_view option, double otherwise, double low, double high);
    std::uint64_t whole(std::string_view option, std::uint64_t otherwise, std::uint64_t low,
                        std::uint64_t high);

    // The index of one of a few names.
    std::size_t one_of(std::string_view option, std::size_t otherwise,
                       std::span<const std::string_view> names);

    const std::string& problem() const { return problem_; }

private:
    void complain(std::string_view option, std::string_view value, const std::string& allowed);

    const Arguments& arguments_;
    std::string problem_;
};

}  // namespace slopewise::cli
