#include "station/station_failures.h"

#include <algorithm>

namespace slopewise {

bool has_failed(const Scenario& scenario, const Attempt& attempt, Failure::Kind kind, int unit) {
    const Lesson& lesson = scenario.lesson;
    for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.failure_count); ++i) {
        const Failure& failure = lesson.failures[i];
        if (failure.kind != kind || (unit >= 0 && failure.unit != unit)) continue;
        const bool from_start = failure.trigger == Failure::Trigger::time && failure.at <= 0.0;
        if (from_start || attempt.conditions.failed[i]) return true;
    }
    return false;
}

void remove_failures(Lesson& lesson, Failure::Kind kind) {
    const auto begin = lesson.failures.begin(), end = begin + lesson.failure_count;
    const auto left =
        std::remove_if(begin, end, [&](const Failure& failure) { return failure.kind == kind; });
    lesson.failure_count = static_cast<int>(left - begin);
}

void add_failure(Lesson& lesson, Failure::Kind kind, double amount, int unit) {
    if (lesson.failure_count == static_cast<int>(most_failures)) {
        std::move(lesson.failures.begin() + 1, lesson.failures.end(), lesson.failures.begin());
        --lesson.failure_count;
    }
    Failure failure;
    failure.kind = kind;
    failure.amount = amount;
    failure.unit = unit;
    lesson.failures[static_cast<std::size_t>(lesson.failure_count++)] = failure;
}

}  // namespace slopewise
