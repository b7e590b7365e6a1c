// What a drill asks for, as data: a measure, its limit, and where the limit comes from.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>

#include "drill/measure.h"
#include "lesson/teaching.h"

namespace slopewise {

struct Source {
    std::string text;  // document and section; empty for common practice
    Certainty sure = Certainty::common_practice;
};

// "FAA AIM 2-1-2 (recalled)", or "common practice, no source".
std::string source_text(const Source& source);

struct DrillCriterion {
    enum class Relation { at_least, at_most, below, within };  // within: less than that either way

    Measure measure = Measure::right_percent;
    Relation relation = Relation::at_least;
    double limit = 0.0;  // in the measure's unit
    Source source;
};
inline constexpr std::array<std::string_view, 4> relation_names{"at_least", "at_most", "below", "within"};

bool holds(const DrillCriterion& criterion, double value);

// "answered right: at least 95 %", "stable at the gate: yes".
std::string criterion_text(const DrillCriterion& criterion);

// A criterion against the figures of one result.
struct JudgedCriterion {
    std::string asked;  // criterion_text
    std::string found;  // "90 %", "not measured"
    bool met = false;   // what was not measured is not met

    friend bool operator==(const JudgedCriterion&, const JudgedCriterion&) = default;
};
JudgedCriterion judged(const DrillCriterion& criterion, std::span<const Figure> figures);

}  // namespace slopewise
