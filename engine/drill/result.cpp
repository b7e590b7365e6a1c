#include "drill/result.h"

#include <algorithm>

#include "drill/drill_words.h"

namespace slopewise {

bool DrillResult::passed() const {
    return finished && !criteria.empty() &&
           std::ranges::all_of(criteria, [](const JudgedCriterion& one) { return one.met; });
}

DrillResult drill_result(const Drill& drill, std::uint64_t seed, bool finished, std::vector<Figure> figures) {
    DrillResult result;
    result.drill_id = drill.id;
    result.kind = kind_of(drill);
    result.seed = seed;
    result.finished = finished;
    result.figures = std::move(figures);
    for (const DrillCriterion& criterion : drill.criteria)
        result.criteria.push_back(judged(criterion, result.figures));
    return result;
}

std::vector<std::string> result_lines(const DrillResult& result) {
    std::vector<std::string> lines;
    if (result.items > 0) lines.push_back(drill_format("%d of %d right", result.right, result.items));
    for (const Figure& figure : result.figures) lines.push_back(figure_text(figure));
    for (const JudgedCriterion& one : result.criteria)
        lines.push_back((one.met ? "met: " : "not met: ") + one.asked + "; found " + one.found);
    if (!result.finished) lines.emplace_back("Not finished: nothing is judged.");
    else
        lines.emplace_back(
            result.passed()
                ? "All criteria met in this run. Next: the same again on another day, with another seed."
                : "Not all criteria met. Next: the same drill once more.");
    return lines;
}

}  // namespace slopewise
