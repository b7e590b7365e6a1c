#include "review/answers.h"

#include <cmath>

namespace slopewise {
namespace {

constexpr double stick_mean_s = 1.0;
constexpr double rounding_s = 1e-6;  // times of a track are multiples of a tick, rounded

double stick_before(TrackPoints points, std::size_t at) {
    double sum = 0.0, count = 0.0;
    for (std::size_t i = at + 1;
         i-- > 0 && points[at].time_s - points[i].time_s <= stick_mean_s + rounding_s;) {
        sum += points[i].stick;
        count += 1.0;
    }
    return sum / count;
}

// Which way the hands have moved since: +1 for more height (lever up, stick pulled), -1 for less, 0 not yet.
int input_since(const Criteria& criteria, const TrackPoint& start, double start_stick,
                const TrackPoint& now) {
    const double lever = now.lever - start.lever, stick = now.stick - start_stick;
    if (criteria.convention != Convention::pitch_for_path && std::abs(lever) >= lever_input)
        return lever > 0.0 ? 1 : -1;
    if (criteria.convention != Convention::power_for_path && std::abs(stick) >= stick_input)
        return stick > 0.0 ? 1 : -1;
    return 0;
}

PathAnswer answer_from(const Criteria& criteria, TrackPoints points, std::size_t begin) {
    PathAnswer answer;
    answer.begin = begin;
    answer.high = points[begin].path_error_rad > 0.0;
    const int wanted = answer.high ? -1 : 1;
    const double stick = stick_before(points, begin);
    bool moved = false;
    for (std::size_t i = begin + 1; i < points.size(); ++i) {
        const double elapsed_s = points[i].time_s - points[begin].time_s;
        const int way = input_since(criteria, points[begin], stick, points[i]);
        if (way != 0 && !moved) {
            moved = true;
            answer.wrong_way_first = way != wanted;
        }
        if (way == wanted && answer.reaction_s < 0.0) answer.reaction_s = elapsed_s;
        if (within_answer_band(criteria, points[i]) || (points[i].path_error_rad > 0.0) != answer.high) {
            answer.settling_s = elapsed_s;
            break;
        }
    }
    return answer;
}

}  // namespace

bool within_answer_band(const Criteria& criteria, const TrackPoint& point) {
    return std::abs(point.path_error_rad) <= criteria.answer_rad ||
           std::abs(point.path_offset_m) <= criteria.answer_floor_m;
}

std::vector<PathAnswer> path_answers(const Criteria& criteria, TrackPoints points) {
    std::vector<PathAnswer> answers;
    bool out = false, high = false;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const bool now_out = !within_answer_band(criteria, points[i]);
        const bool now_high = points[i].path_error_rad > 0.0;
        if (now_out && (!out || now_high != high)) {
            if (!answers.empty()) {
                PathAnswer& last = answers.back();
                const double back_s = points[last.begin].time_s + last.settling_s;
                last.overshot = last.settling_s >= 0.0 && last.high != now_high &&
                                points[i].time_s - back_s <= overshoot_s + rounding_s;
            }
            answers.push_back(answer_from(criteria, points, i));
        }
        out = now_out;
        high = now_high;
    }
    return answers;
}

std::vector<LightAnswer> light_answers(const Criteria& criteria, TrackPoints points, int units) {
    std::vector<LightAnswer> answers;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const int before = points[i - 1].white_count, now = points[i].white_count;
        if (before < 0 || now < 0 || before == now || 2 * now == units) continue;
        LightAnswer answer;
        answer.begin = i;
        answer.white_count = now;
        const int wanted = 2 * now > units ? -1 : 1;
        const double stick = stick_before(points, i);
        for (std::size_t j = i + 1; j < points.size(); ++j) {
            const double elapsed_s = points[j].time_s - points[i].time_s;
            if (elapsed_s > light_answer_s + rounding_s) break;
            const int way = input_since(criteria, points[i], stick, points[j]);
            if (way == 0) continue;
            answer.reaction_s = elapsed_s;
            answer.wrong_way_first = way != wanted;
            break;
        }
        answers.push_back(answer);
    }
    return answers;
}

Answers answers_of(const std::vector<PathAnswer>& path, const std::vector<LightAnswer>& lights) {
    Answers all;
    for (const PathAnswer& answer : path) {
        ++all.path_errors;
        all.path_wrong_way += answer.wrong_way_first;
        all.overshoots += answer.overshot;
        if (answer.reaction_s >= 0.0) ++all.path_answered, all.path_reaction_s += answer.reaction_s;
        if (answer.settling_s >= 0.0) ++all.path_settled, all.path_settling_s += answer.settling_s;
    }
    for (const LightAnswer& answer : lights) {
        ++all.light_changes;
        all.lights_wrong_way += answer.wrong_way_first;
        if (answer.reaction_s >= 0.0) ++all.lights_answered, all.light_reaction_s += answer.reaction_s;
    }
    if (all.path_answered > 0) all.path_reaction_s /= all.path_answered;
    if (all.path_settled > 0) all.path_settling_s /= all.path_settled;
    if (all.lights_answered > 0) all.light_reaction_s /= all.lights_answered;
    return all;
}

}  // namespace slopewise
