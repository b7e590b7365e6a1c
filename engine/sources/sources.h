// Where every taught number comes from, and how sure we are of it: one entry a number, or a few that belong
// together. What is said here is held to the constants in the code by tests/engine/test_sources.cpp.
#pragma once

#include <array>
#include <span>
#include <string_view>
#include <vector>

namespace slopewise {

enum class SourceTopic {
    lights,
    path,
    runway,
    speed,
    sink_and_wind,
    gates,
    measures,
    help,
    learning,
    cautions
};
inline constexpr std::array<std::string_view, 10> source_topic_names{
    "Lights",           "Path and picture",    "Runway", "Speed",    "Sink and wind",
    "Gates and limits", "Measures and faults", "Help",   "Learning", "Cautions"};

// Never more than is true: a figure read in a copy or a quotation of its document was read in a secondary
// place; one that was only remembered says so until somebody has seen the document.
enum class Sureness { read, secondary, calculated, memory, common_practice };
inline constexpr std::array<std::string_view, 5> sureness_words{
    "read in the document", "read in a secondary place", "calculated", "from memory, not confirmed",
    "common practice, no source"};

constexpr std::string_view words_of(Sureness sureness) {
    return sureness_words[static_cast<std::size_t>(sureness)];
}

struct TaughtNumber {
    std::string_view id;  // "papi_settings"
    SourceTopic topic;
    std::string_view says;      // in the units of the screens
    std::string_view document;  // empty only where it is common practice
    std::string_view section;   // where in it, or how it was come by; may be empty
    Sureness sureness;
};

// All of them, by topic in the order of SourceTopic.
const std::vector<TaughtNumber>& taught_numbers();

// Null when there is none of that id.
const TaughtNumber* find_taught_number(std::string_view id);

}  // namespace slopewise
