#include "success/judge.h"

#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "success/found.h"

namespace slopewise {
namespace {

// The figure against the limits. Limits come from pilot units, figures from the flight: neither is exact to
// more than this share.
constexpr double rounding = 1e-9;

bool within(const Requirement& requirement, const Found& found) {
    return found.least >= requirement.least - rounding && found.most <= requirement.most + rounding;
}

std::string figure_of(const RequirementKind& kind, const Found& found) {
    if (found.least == found.most) return value_words(kind, found.least);
    return value_words(kind, found.least) + " to " + value_words(kind, found.most);
}

JudgedRequirement judged(const Requirement& requirement, const Found& found) {
    JudgedRequirement result{requirement, Verdict::not_due, found.words};
    switch (found.kind) {
    case Found::Kind::figure:
        result.figure = figure_of(kind_of(requirement), found);
        result.verdict = within(requirement, found) ? Verdict::met : Verdict::not_met;
        break;
    case Found::Kind::yes: result.verdict = Verdict::met; break;
    case Found::Kind::no: result.verdict = Verdict::not_met; break;
    case Found::Kind::not_due: break;
    }
    return result;
}

}  // namespace

bool JudgedFlight::met() const {
    const auto is = [](Verdict verdict) {
        return [=](const JudgedRequirement& one) { return one.verdict == verdict; };
    };
    return std::ranges::any_of(requirements, is(Verdict::met)) &&
           std::ranges::none_of(requirements, is(Verdict::not_met));
}

JudgedFlight judge_flight(const Scenario& scenario, const Criteria& criteria, const Track& track,
                          const Review& review) {
    const Flown flown{scenario, criteria, scored_points(track), review};
    JudgedFlight flight;
    for (const Requirement& requirement : scenario.lesson.success.requirements)
        flight.requirements.push_back(judged(requirement, find(flown, requirement)));
    return flight;
}

std::string judged_words(const JudgedRequirement& judged) {
    return requirement_words(judged.requirement) + ". It was " + judged.figure + ": " +
           std::string(verdict_words[static_cast<std::size_t>(judged.verdict)]) + ".";
}

JudgedRuns judge_runs(const Success& success, const std::vector<bool>& met) {
    JudgedRuns runs;
    runs.counted = std::min(success.runs, static_cast<int>(met.size()));
    runs.met = static_cast<int>(std::count(met.end() - runs.counted, met.end(), true));
    runs.reached = success.passes > 0 && runs.met >= success.passes;
    return runs;
}

std::string runs_judged_words(const Success& success, const JudgedRuns& runs) {
    if (runs.counted == 0) return "No unaided run yet; " + runs_words(success) + " are asked for.";
    return "Met in " + std::to_string(runs.met) + " of the last " + std::to_string(runs.counted) +
           " unaided runs; " + std::to_string(success.passes) + " of the last " +
           std::to_string(success.runs) + " are asked for.";
}

}  // namespace slopewise
