#include "lesson/success.h"

#include <cmath>
#include <cstdio>

#include "base/units.h"

namespace slopewise {
namespace {

using Limits = RequirementKind::Limits;
using Height = RequirementKind::Height;

constexpr LimitUnit percent{"percent", " %", 0.01, 0};
constexpr LimitUnit degrees{"deg", "\u00b0", rad_from_deg(1.0), 2};
constexpr LimitUnit knots{"kt", " kt", mps_from_kt(1.0), 1};
constexpr LimitUnit feet{"ft", " ft", m_from_ft(1.0), 0};
constexpr LimitUnit sink{"fpm", " ft/min", mps_from_fpm(1.0), 0};
constexpr LimitUnit seconds{"s", " s", 1.0, 1};
constexpr LimitUnit per_minute{"per_min", " a minute", 1.0, 1};
constexpr LimitUnit nothing{};

std::string number_words(const LimitUnit& unit, double value, bool signed_too) {
    char text[40];
    const double shown = std::abs(value / unit.si);
    std::snprintf(text, sizeof text, "%.*f", unit.decimals, shown);
    const bool zero = std::string_view(text).find_first_of("123456789") == std::string_view::npos;
    const char* sign = zero ? "" : value < 0.0 ? "\u2212" : (signed_too ? "+" : "");
    return std::string(sign) + text;
}

std::string height_words(const Requirement& requirement) {
    char text[40];
    std::snprintf(text, sizeof text, "%.0f ft", ft_from_m(requirement.height_m));
    return text;
}

}  // namespace

constexpr std::array<RequirementKind, requirement_kind_count> requirement_kinds{{
    {"stable_at_gate", "stable at {}", Limits::none, nothing, 0, 0, Height::gate},
    {"stable_to_50_ft", "stable from {} down to 50 ft", Limits::none, nothing, 0, 0, Height::gate},
    {"stable_or_around", "stable from {} down to 50 ft, or rightly gone around", Limits::none, nothing, 0, 0,
     Height::gate},
    {"right_decision", "the right decision at the gate", Limits::none, nothing, 0, 0, Height::none},
    {"no_miss", "no unstable approach continued past the gate", Limits::none, nothing, 0, 0, Height::none},
    {"path_share", "time in path tolerance", Limits::least, percent, 1, 100, Height::none},
    {"speed_share", "time in speed tolerance", Limits::least, percent, 1, 100, Height::none},
    {"path_at_gate", "path error at {}", Limits::either, degrees, -3, 3, Height::gate},
    {"speed_at_gate", "speed beside target at {}", Limits::either, knots, -30, 30, Height::gate},
    {"sink_at_gate", "sink beside what the path asks for at {}", Limits::either, sink, -1000, 1000,
     Height::gate},
    {"speed_always", "speed beside target all the way", Limits::either, knots, -30, 30, Height::none},
    {"speed_held", "speed held in tolerance before and after each flap step", Limits::least, seconds, 5, 300,
     Height::none},
    {"path_bias", "mean path error", Limits::either, degrees, -3, 3, Height::none},
    {"path_change_at_end", "change of the path error from 200 ft, or a lower start, to 50 ft", Limits::either,
     degrees, -3, 3, Height::none},
    {"path_crossings", "crossings of the path", Limits::most, per_minute, 0, 30, Height::none},
    {"path_angle", "lowest angle to the aim point above {}", Limits::least, degrees, 1, 6, Height::any},
    {"level_until_path", "height lost before the path was met", Limits::most, feet, 10, 500, Height::none},
    {"power_reversals", "power reversals", Limits::most, per_minute, 0, 60, Height::none},
    {"power_off_below", "power off below {}", Limits::none, nothing, 0, 0, Height::any},
    {"landing_flap_by", "flap for landing set by {}", Limits::none, nothing, 0, 0, Height::any},
    {"trimmed_at_gate", "stick held at {}", Limits::most, percent, 1, 50, Height::gate},
    {"flap_bump", "height gained after a flap step", Limits::most, feet, 5, 200, Height::none},
    {"flap_speed", "time above a flap's limit speed", Limits::most, seconds, 0, 30, Height::none},
    {"first_input", "the first input the right way, after", Limits::most, seconds, 1, 60, Height::none},
    {"touchdown", "straight-on touchdown beyond the aim point", Limits::either, feet, -2000, 3000,
     Height::none},
    {"above_leader", "least height above the leader's path", Limits::least, feet, -50, 300, Height::none},
    {"go_around_power", "full power after the go-around began", Limits::most, seconds, 1, 10, Height::none},
    {"go_around_flap", "flap raised in stages, and only when climbing", Limits::none, nothing, 0, 0,
     Height::none},
    {"go_around_speed", "slowest speed in the go-around beside target", Limits::least, knots, -30, 30,
     Height::none},
}};

const RequirementKind& kind_of(const Requirement& requirement) {
    return requirement_kinds[static_cast<std::size_t>(requirement.kind)];
}

std::string value_words(const RequirementKind& kind, double value) {
    return number_words(kind.unit, value, kind.limits == Limits::either || kind.low < 0.0) +
           std::string(kind.unit.words);
}

std::string limit_words(const Requirement& requirement) {
    const RequirementKind& kind = kind_of(requirement);
    const bool least = requirement.least > -no_limit, most = requirement.most < no_limit;
    if (least && most)
        return number_words(kind.unit, requirement.least, true) + " to " +
               value_words(kind, requirement.most);
    if (least) return "at least " + value_words(kind, requirement.least);
    return most ? "at most " + value_words(kind, requirement.most) : "";
}

std::string requirement_words(const Requirement& requirement) {
    std::string words(kind_of(requirement).words);
    if (const std::size_t at = words.find("{}"); at != std::string::npos)
        words.replace(at, 2, height_words(requirement));
    const std::string limits = limit_words(requirement);
    return limits.empty() ? words : words + ": " + limits;
}

std::string runs_words(const Success& success) {
    return std::to_string(success.passes) + " of the last " + std::to_string(success.runs) + " unaided runs";
}

}  // namespace slopewise
