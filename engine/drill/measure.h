// The figures that drills are judged by: their names, words and units, in one table.
#pragma once

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace slopewise {

enum class Measure {
    // cards
    right_percent,
    median_s,
    misses,
    half_degree_percent,
    bias_deg,
    scatter_deg,
    bias_ft,
    scatter_ft,
    impact_error_ft,
    when_percent,
    what_percent,
    // flown
    held_s,
    bump_ft,
    retrim_s,
    hands_off_kt,
    path_percent,
    speed_percent,
    crossings_per_min,
    decision_s,
    full_power_s,
    climb_s,
    pitch_deg,
    slow_kt,
    flap_stages,
    flap_out_of_turn,
    steps_in_order,
    stable_at_gate,
    commands,
};

struct MeasureWords {
    std::string_view id;     // in files: "right_percent"
    std::string_view words;  // "answered right"
    std::string_view unit;   // " %", with its space; may be empty
    int decimals = 0;
    bool yes_or_no = false;  // 1 or 0 in files
};

inline constexpr std::array<MeasureWords, 28> measure_words{{
    {"right_percent", "answered right", " %", 0},
    {"median_s", "half of the answers take", " s", 2},
    {"misses", "unstable, and called stable or continued", "", 0},
    {"half_degree_percent", "right within half a degree of the path", " %", 0},
    {"bias_deg", "bias (+ seen too high, or marked too far)", "\u00b0", 2},
    {"scatter_deg", "scatter", "\u00b0", 2},
    {"bias_ft", "bias (+ seen too high, or marked too far)", " ft", 0},
    {"scatter_ft", "scatter", " ft", 0},
    {"impact_error_ft", "mean miss of the mark, from the nearest stop", " ft", 0},
    {"when_percent", "marked at the right time", " %", 0},
    {"what_percent", "named right", " %", 0},
    {"held_s", "speed held without a break, after the worst flap step", " s", 0},
    {"bump_ft", "height gained at a flap step", " ft", 0},
    {"retrim_s", "re-trimming after a flap step takes", " s", 0},
    {"hands_off_kt", "speed change hands off", " kt", 1},
    {"path_percent", "path in tolerance", " %", 1},
    {"speed_percent", "speed in tolerance", " %", 1},
    {"crossings_per_min", "crossings of the path a minute", "", 1},
    {"decision_s", "go-around begun after the call", " s", 1},
    {"full_power_s", "full power after that", " s", 1},
    {"climb_s", "climbing after the call", " s", 1},
    {"pitch_deg", "greatest pitch", "\u00b0", 1},
    {"slow_kt", "slowest below target", " kt", 0},
    {"flap_stages", "flap stages raised", "", 0},
    {"flap_out_of_turn", "flap raised sinking, or all at once", "", 0},
    {"steps_in_order", "steps in order, of power, climb, flap, trim", "", 0},
    {"stable_at_gate", "stable at the gate", "", 0, true},
    {"commands", "commands given", "", 0},
}};

constexpr const MeasureWords& words_of(Measure measure) {
    return measure_words[static_cast<std::size_t>(measure)];
}

// Empty when there is none of that id.
std::optional<Measure> measure_of(std::string_view id);

// One figure, in the unit of its measure.
struct Figure {
    Measure measure = Measure::right_percent;
    double value = 0.0;

    friend bool operator==(const Figure&, const Figure&) = default;
};

// Null where it is not among them: not known.
const Figure* find_figure(std::span<const Figure> figures, Measure measure);

// "95 %", "0.25°", "yes".
std::string value_text(Measure measure, double value);

// "answered right: 95 %".
std::string figure_text(const Figure& figure);

}  // namespace slopewise
