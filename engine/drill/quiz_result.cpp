// The figures of the cards answered.
#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "drill/quiz.h"
#include "progress/trend.h"
#include "review/spread.h"

namespace slopewise {
namespace {

// The cards and answers that count.
struct Judged {
    const Quiz& quiz;
    std::size_t first = 0;

    std::size_t count() const { return quiz.answers.size() - first; }
    const Card& card(std::size_t i) const { return quiz.cards[first + i]; }
    const JudgedAnswer& answer(std::size_t i) const { return quiz.answers[first + i]; }
};

Judged judged_of(const Quiz& quiz) {
    const auto over = static_cast<std::size_t>(quiz.drill.judged_over);
    const std::size_t answered = quiz.answers.size();
    return {quiz, over > 0 && answered > over ? answered - over : 0};
}

// The share of answers for which `is(i)`, among those for which `counts(i)`; nothing where none counts.
template <class Counts, class Is>
void add_percent(std::vector<Figure>& figures, Measure measure, const Judged& judged, Counts&& counts,
                 Is&& is) {
    int all = 0, some = 0;
    for (std::size_t i = 0; i < judged.count(); ++i) {
        if (!counts(i)) continue;
        ++all;
        some += is(i);
    }
    if (all > 0) figures.push_back({measure, 100.0 * some / all});
}

// Bias and scatter of the errors of the answers for which `counts(i)`.
template <class Counts>
void add_errors(std::vector<Figure>& figures, const Judged& judged, Counts&& counts) {
    std::vector<double> errors_deg, errors_ft;
    for (std::size_t i = 0; i < judged.count(); ++i) {
        if (!counts(i)) continue;
        errors_deg.push_back(deg_from_rad(judged.answer(i).error_rad));
        errors_ft.push_back(ft_from_m(judged.answer(i).error_m));
    }
    if (errors_deg.empty()) return;
    const Spread deg = spread_of(errors_deg), ft = spread_of(errors_ft);
    figures.push_back({Measure::bias_deg, deg.bias});
    figures.push_back({Measure::scatter_deg, deg.scatter});
    figures.push_back({Measure::bias_ft, ft.bias});
    figures.push_back({Measure::scatter_ft, ft.scatter});
}

// Within half a degree of the path, where a bias shows: further off, any answer but the right one is gross.
void add_picture_figures(std::vector<Figure>& figures, const Judged& judged) {
    const auto near_path = [&](std::size_t i) {
        return std::abs(judged.card(i).truth_rad) < rad_from_deg(0.55);
    };
    add_percent(figures, Measure::half_degree_percent, judged, near_path,
                [&](std::size_t i) { return judged.answer(i).right; });
    add_errors(figures, judged,
               [&](std::size_t i) { return near_path(i) && judged.answer(i).said.choice >= 0; });
}

// The mean miss is that of the nearest stop, where the picture says most; every one of those must be marked.
void add_impact_figures(std::vector<Figure>& figures, const Judged& judged, const ImpactCards& settings) {
    const double nearest_m = *std::ranges::min_element(settings.distances_m);
    double sum_ft = 0.0, count = 0.0;
    bool all_marked = true;
    for (std::size_t i = 0; i < judged.count(); ++i) {
        if (judged.card(i).distance_m > nearest_m) continue;
        all_marked &= judged.answer(i).said.marked;
        sum_ft += std::abs(ft_from_m(judged.answer(i).error_m));
        count += 1.0;
    }
    if (count > 0.0 && all_marked) figures.push_back({Measure::impact_error_ft, sum_ft / count});
    add_errors(figures, judged, [&](std::size_t i) { return judged.answer(i).said.marked; });
}

void add_gate_figures(std::vector<Figure>& figures, const Judged& judged) {
    double misses = 0.0;
    for (std::size_t i = 0; i < judged.count(); ++i)
        misses += judged.card(i).right == 1 && judged.answer(i).said.choice == 0;
    figures.push_back({Measure::misses, misses});
}

void add_fault_figures(std::vector<Figure>& figures, const Judged& judged) {
    const auto every = [](std::size_t) { return true; };
    add_percent(figures, Measure::when_percent, judged, every,
                [&](std::size_t i) { return judged.answer(i).when_right; });
    add_percent(figures, Measure::what_percent, judged, every,
                [&](std::size_t i) { return judged.answer(i).what_right; });
}

}  // namespace

DrillResult result_of(const Quiz& quiz) {
    const Judged judged = judged_of(quiz);
    std::vector<Figure> figures;
    std::vector<double> reactions_s;
    int right = 0;
    for (std::size_t i = 0; i < judged.count(); ++i) {
        right += judged.answer(i).right;
        if (judged.answer(i).said.reaction_s >= 0.0) reactions_s.push_back(judged.answer(i).said.reaction_s);
    }
    add_percent(
        figures, Measure::right_percent, judged, [](std::size_t) { return true; },
        [&](std::size_t i) { return judged.answer(i).right; });
    if (!reactions_s.empty()) figures.push_back({Measure::median_s, median_of(reactions_s)});
    switch (kind_of(quiz.drill)) {
    case DrillKind::read_the_picture: add_picture_figures(figures, judged); break;
    case DrillKind::where_would_we_hit:
        add_impact_figures(figures, judged, std::get<ImpactCards>(quiz.drill.settings));
        break;
    case DrillKind::gate_call: add_gate_figures(figures, judged); break;
    case DrillKind::find_the_fault: add_fault_figures(figures, judged); break;
    default: break;
    }
    const bool finished = is_finished(quiz) && !quiz.cards.empty();
    DrillResult result = drill_result(quiz.drill, quiz.seed, finished, std::move(figures));
    result.items = static_cast<int>(judged.count());
    result.right = right;
    result.reactions_s = std::move(reactions_s);
    return result;
}

}  // namespace slopewise
