// What a lesson asks for, as data: requirements of one flight, and in how many flights they must be met.
#pragma once

#include <array>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise {

inline constexpr double no_limit = std::numeric_limits<double>::infinity();

struct Requirement {
    enum class Kind {
        stable_at_gate,
        stable_to_50_ft,
        stable_or_around,
        right_decision,
        no_miss,
        path_share,
        speed_share,
        path_at_gate,
        speed_at_gate,
        sink_at_gate,
        speed_always,
        speed_held,
        path_bias,
        path_change_at_end,
        path_crossings,
        path_angle,
        level_until_path,
        power_reversals,
        power_off_below,
        landing_flap_by,
        trimmed_at_gate,
        flap_bump,
        flap_speed,
        first_input,
        touchdown,
        above_leader,
        go_around_power,
        go_around_flap,
        go_around_speed,
    };

    Kind kind = Kind::stable_to_50_ft;
    double least = -no_limit, most = no_limit;  // in SI, shares and events a minute
    double height_m = 0.0;                      // of the wheels, where the kind asks for one

    friend bool operator==(const Requirement&, const Requirement&) = default;
};

// The unit in which a kind's limits are written and said, and how much of SI one of it is.
struct LimitUnit {
    std::string_view key;    // "percent", as a limit's key ends: "least_percent"
    std::string_view words;  // " %"
    double si = 1.0;
    int decimals = 0;
};

struct RequirementKind {
    enum class Limits { none, least, most, either };  // either: one of the two or both
    enum class Height { none, gate, any };            // a gate's, or any

    std::string_view name;
    std::string_view words;  // what is measured: "time in path tolerance"
    Limits limits = Limits::none;
    LimitUnit unit;
    double low = 0.0, high = 0.0;  // what a limit may be, in that unit
    Height height = Height::none;
};

inline constexpr std::size_t requirement_kind_count = 29;
extern const std::array<RequirementKind, requirement_kind_count> requirement_kinds;  // in the order of Kind

const RequirementKind& kind_of(const Requirement& requirement);

// "time in path tolerance: at least 80 %", "stable from 300 ft down to 50 ft".
std::string requirement_words(const Requirement& requirement);

// The limits alone: "at least 80 %", "−5 to +10 kt"; empty where there are none.
std::string limit_words(const Requirement& requirement);

// A value in the kind's own unit: "84 %".
std::string value_words(const RequirementKind& kind, double value);

inline constexpr std::size_t most_requirements = 8;
inline constexpr int most_runs_counted = 20;

// No requirements: a lesson that is only to be flown.
struct Success {
    std::vector<Requirement> requirements;
    int passes = 0, runs = 0;  // met in so many of the last so many unaided runs

    friend bool operator==(const Success&, const Success&) = default;
};

// "3 of the last 4 unaided runs".
std::string runs_words(const Success& success);

}  // namespace slopewise
