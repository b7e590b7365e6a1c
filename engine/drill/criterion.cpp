#include "drill/criterion.h"

#include <cmath>

namespace slopewise {

std::string source_text(const Source& source) {
    const std::string sure(certainty_words[static_cast<std::size_t>(source.sure)]);
    return source.text.empty() ? sure : source.text + " (" + sure + ")";
}

bool holds(const DrillCriterion& criterion, double value) {
    switch (criterion.relation) {
    case DrillCriterion::Relation::at_least: return value >= criterion.limit;
    case DrillCriterion::Relation::at_most: return value <= criterion.limit;
    case DrillCriterion::Relation::below: return value < criterion.limit;
    case DrillCriterion::Relation::within: return std::abs(value) < criterion.limit;
    }
    return false;
}

std::string criterion_text(const DrillCriterion& criterion) {
    const std::string limit = value_text(criterion.measure, criterion.limit);
    const std::string words = std::string(words_of(criterion.measure).words) + ": ";
    if (words_of(criterion.measure).yes_or_no) return words + (holds(criterion, 1.0) ? "yes" : "no");
    switch (criterion.relation) {
    case DrillCriterion::Relation::at_least: return words + "at least " + limit;
    case DrillCriterion::Relation::at_most: return words + (limit == "0" ? "none" : "at most " + limit);
    case DrillCriterion::Relation::below: return words + "less than " + limit;
    case DrillCriterion::Relation::within: return words + "less than " + limit + " either way";
    }
    return words;
}

JudgedCriterion judged(const DrillCriterion& criterion, std::span<const Figure> figures) {
    const Figure* figure = find_figure(figures, criterion.measure);
    if (figure == nullptr) return {criterion_text(criterion), "not measured", false};
    return {criterion_text(criterion), value_text(figure->measure, figure->value),
            holds(criterion, figure->value)};
}

}  // namespace slopewise
