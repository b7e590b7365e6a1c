#include "data/read_success.h"

#include <algorithm>

#include "base/units.h"
#include "lesson/gates.h"

namespace slopewise {
namespace {

using Limits = RequirementKind::Limits;
using Height = RequirementKind::Height;

std::array<std::string_view, requirement_kind_count> kind_names() {
    std::array<std::string_view, requirement_kind_count> names;
    for (std::size_t i = 0; i < names.size(); ++i) names[i] = requirement_kinds[i].name;
    return names;
}

double read_height_m(Fields& fields, Height height) {
    const double height_ft = fields.number("height_ft", {50.0, 5000.0});
    if (height == Height::gate && std::ranges::find(gate_heights_ft, height_ft) == gate_heights_ft.end())
        fields.report("height_ft", "is " + number_text(height_ft), "a gate: 1000, 500, 300, 200, 50");
    return m_from_ft(height_ft);
}

void read_limits(Fields& fields, const RequirementKind& kind, Requirement& requirement) {
    const std::string least = "least_" + std::string(kind.unit.key);
    const std::string most = "most_" + std::string(kind.unit.key);
    const bool needs_least = kind.limits == Limits::least, needs_most = kind.limits == Limits::most;
    const bool either = kind.limits == Limits::either;
    const Range allowed{kind.low, kind.high};
    if (needs_least || (either && fields.has(least)))
        requirement.least = kind.unit.si * fields.number(least, allowed);
    if (needs_most || (either && fields.has(most)))
        requirement.most = kind.unit.si * fields.number(most, allowed);
    if (either && requirement.least == -no_limit && requirement.most == no_limit)
        fields.report(least, "is missing", "it or /" + most + ", or both");
    if (requirement.least > requirement.most)
        fields.report(least, "is above /" + most, "at most as much as /" + most);
}

Requirement read_requirement(Fields& fields) {
    static constexpr std::string_view key = "what";
    Requirement requirement;
    const auto names = kind_names();
    requirement.kind = static_cast<Requirement::Kind>(fields.one_of(key, names));
    const RequirementKind& kind = kind_of(requirement);
    if (kind.height != Height::none) requirement.height_m = read_height_m(fields, kind.height);
    if (kind.limits != Limits::none) read_limits(fields, kind, requirement);
    fields.finish();
    return requirement;
}

}  // namespace

Success read_success(Fields fields) {
    Success success;
    for (Fields& requirement : fields.list("requirements", 1, most_requirements))
        success.requirements.push_back(read_requirement(requirement));
    success.runs = fields.integer("of_last_runs", 1, most_runs_counted);
    success.passes = fields.integer("passes", 1, most_runs_counted);
    if (success.passes > success.runs)
        fields.report("passes", "is " + std::to_string(success.passes), "at most /of_last_runs");
    fields.finish();
    return success;
}

}  // namespace slopewise
