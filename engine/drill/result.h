// What a drill came to: a record to be shown and kept.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "drill/drill.h"

namespace slopewise {

struct DrillResult {
    std::string drill_id;
    DrillKind kind = DrillKind::read_the_lights;
    std::uint64_t seed = 0;
    bool finished = false;            // every card answered, or the flight flown to its end
    int items = 0;                    // judged
    int right = 0;                    // of them
    std::vector<double> reactions_s;  // of those answered, in their order
    std::vector<Figure> figures;      // those that were measured
    std::vector<JudgedCriterion> criteria;

    bool passed() const;  // finished, and every criterion met

    friend bool operator==(const DrillResult&, const DrillResult&) = default;
};

// Judges the figures by the drill's criteria.
DrillResult drill_result(const Drill& drill, std::uint64_t seed, bool finished, std::vector<Figure> figures);

// For a screen and for a screen reader: the figures, a line each, then the criteria: "met: answered right: at
// least 95 %; found 100 %". The last line is the next action.
std::vector<std::string> result_lines(const DrillResult& result);

}  // namespace slopewise
