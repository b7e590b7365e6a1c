#include "drill/evidence.h"

#include "base/units.h"

namespace slopewise {
namespace {

// What was not measured is no evidence.
std::optional<DrillResults::Lamps> lamps_of(const DrillResult& result) {
    const Figure* right = find_figure(result.figures, Measure::right_percent);
    const Figure* median = find_figure(result.figures, Measure::median_s);
    if (right == nullptr || median == nullptr) return std::nullopt;
    return DrillResults::Lamps{result.items, right->value / 100.0, median->value};
}

std::optional<DrillResults::Pictures> pictures_of(const DrillResult& result) {
    const Figure* right = find_figure(result.figures, Measure::half_degree_percent);
    const Figure* bias = find_figure(result.figures, Measure::bias_deg);
    if (right == nullptr || bias == nullptr) return std::nullopt;
    return DrillResults::Pictures{rad_from_deg(bias->value), right->value / 100.0};
}

}  // namespace

DrillResults evidence_of(std::span<const DrillResult> results) {
    DrillResults evidence;
    for (const DrillResult& result : results) {
        if (!result.finished) continue;
        switch (result.kind) {
        case DrillKind::read_the_lights: evidence.lamps = lamps_of(result); break;
        case DrillKind::read_the_picture: evidence.pictures = pictures_of(result); break;
        case DrillKind::one_control: evidence.knowledge = result.passed(); break;
        default: break;
        }
    }
    return evidence;
}

}  // namespace slopewise
