#include "cli/options.h"

#include <charconv>
#include <cmath>

#include "data/fields.h"

namespace slopewise::cli {
namespace {

std::string shown(const Option& option) {
    std::string text(option.name);
    if (!option.value_name.empty()) text += " " + std::string(option.value_name);
    return text;
}

std::string allowed_options(const Usage& usage) {
    std::string text;
    for (const Option& option : usage.options) text += shown(option) + ", ";
    return text + "--help";
}

const Option* find_option(const Usage& usage, std::string_view name) {
    for (const Option& option : usage.options) {
        if (option.name == name) return &option;
    }
    return nullptr;
}

// A word that stands where an option does; "-3" is a number.
bool looks_like_option(std::string_view word) {
    return word.size() > 1 && word[0] == '-' && !(word[1] >= '0' && word[1] <= '9') && word[1] != '.';
}

// One option with its value, which follows as the next word or after "=". Returns what is wrong.
std::string read_option(const Usage& usage, std::span<const std::string_view> words, std::size_t& at,
                        Arguments& arguments) {
    const std::string_view word = words[at];
    const std::size_t equals = word.find('=');
    const std::string_view name = word.substr(0, equals);
    const Option* option = find_option(usage, name);
    if (option == nullptr) return "no option " + std::string(name) + "; allowed: " + allowed_options(usage);
    if (arguments.has(option->name)) return std::string(name) + " stands twice; allowed: once";

    const bool takes_value = !option->value_name.empty();
    std::string value;
    if (equals != std::string_view::npos) {
        if (!takes_value) return std::string(name) + " has a value; allowed: " + std::string(name) + " alone";
        value = word.substr(equals + 1);
    } else if (takes_value) {
        if (at + 1 >= words.size() || looks_like_option(words[at + 1])) {
            return std::string(name) + " has no value; allowed: " + shown(*option);
        }
        value = words[++at];
    }
    arguments.values.emplace_back(option->name, std::move(value));
    return "";
}

std::string missing_parts(const Usage& usage, const Arguments& arguments) {
    if (arguments.words.size() < usage.least_words) {
        return "no " + std::string(usage.words) + " given; usage: " + usage_line(usage);
    }
    if (arguments.words.size() > usage.most_words) {
        return "\"" + arguments.words[usage.most_words] +
               "\" is one word too many; usage: " + usage_line(usage);
    }
    for (const Option& option : usage.options) {
        if (option.required && !arguments.has(option.name)) {
            return std::string(option.name) + " is missing; usage: " + usage_line(usage);
        }
    }
    return "";
}

}  // namespace

bool Arguments::has(std::string_view option) const {
    for (const auto& [name, value] : values) {
        if (name == option) return true;
    }
    return false;
}

std::string_view Arguments::value_of(std::string_view option, std::string_view otherwise) const {
    for (const auto& [name, value] : values) {
        if (name == option) return value;
    }
    return otherwise;
}

Reading read_arguments(const Usage& usage, std::span<const std::string_view> words) {
    Reading reading;
    for (const std::string_view word : words) reading.help = reading.help || word == "--help";
    if (reading.help) return reading;
    for (std::size_t at = 0; at < words.size() && reading.wrong.empty(); ++at) {
        if (looks_like_option(words[at])) {
            reading.wrong = read_option(usage, words, at, reading.arguments);
        } else {
            reading.arguments.words.emplace_back(words[at]);
        }
    }
    if (reading.wrong.empty()) reading.wrong = missing_parts(usage, reading.arguments);
    return reading;
}

std::string usage_line(const Usage& usage) {
    std::string line = "slopewise " + std::string(usage.command);
    if (!usage.words.empty()) line += " " + std::string(usage.words);
    for (const Option& option : usage.options) {
        line += option.required ? " " + shown(option) : " [" + shown(option) + "]";
    }
    return line;
}

std::string help_text(const Usage& usage) {
    std::string text = std::string(usage.purpose) + "\n\nusage: " + usage_line(usage) + "\n\n";
    for (const Option& option : usage.options) {
        std::string left = "  " + shown(option);
        left.resize(left.size() < 30 ? 30 : left.size() + 1, ' ');
        text += left + std::string(option.help) + "\n";
    }
    text += "  --help                      this text\n";
    if (!usage.details.empty()) text += "\n" + std::string(usage.details) + "\n";
    return text;
}

void Numbers::complain(std::string_view option, std::string_view value, const std::string& allowed) {
    if (!problem_.empty()) return;
    problem_ = std::string(option) + " is \"" + std::string(value) + "\"; allowed: " + allowed;
}

double Numbers::number(std::string_view option, double otherwise, double low, double high) {
    if (!arguments_.has(option)) return otherwise;
    const std::string_view text = arguments_.value_of(option);
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool read = error == std::errc() && end == text.data() + text.size() && std::isfinite(value);
    if (read && value >= low && value <= high) return value;
    complain(option, text, "a number, " + number_text(low) + " to " + number_text(high));
    return otherwise;
}

std::size_t Numbers::one_of(std::string_view option, std::size_t otherwise,
                            std::span<const std::string_view> names) {
    if (!arguments_.has(option)) return otherwise;
    const std::string_view text = arguments_.value_of(option);
    std::string allowed;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i] == text) return i;
        allowed += (i > 0 ? ", \"" : "\"") + std::string(names[i]) + "\"";
    }
    complain(option, text, allowed);
    return otherwise;
}

std::uint64_t Numbers::whole(std::string_view option, std::uint64_t otherwise, std::uint64_t low,
                             std::uint64_t high) {
    if (!arguments_.has(option)) return otherwise;
    const std::string_view text = arguments_.value_of(option);
    std::uint64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool read = error == std::errc() && end == text.data() + text.size();
    if (read && value >= low && value <= high) return value;
    complain(option, text, "a whole number, " + std::to_string(low) + " to " + std::to_string(high));
    return otherwise;
}

}  // namespace slopewise::cli
