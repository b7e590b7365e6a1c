#include "progress/progress.h"

#include <cmath>

#include "base/units.h"
#include "progress/trend.h"

namespace slopewise {
namespace {

// The unaided attempts by themselves, and where each stands among all.
struct Unaided {
    std::vector<std::size_t> at;
    std::vector<double> bias_rad, scatter_rad;
    std::vector<bool> breaks;
};

Unaided unaided_of(std::span<const AttemptRow> rows) {
    Unaided unaided;
    const std::vector<bool> gaps = long_gaps(rows);
    bool gap = false;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        gap |= gaps[i];
        if (!rows[i].unaided) continue;
        unaided.breaks.push_back(gap);
        unaided.at.push_back(i);
        unaided.bias_rad.push_back(rows[i].path_rad.bias);
        unaided.scatter_rad.push_back(rows[i].path_rad.scatter);
        gap = false;
    }
    return unaided;
}

// Spread over all attempts; unknown at the others.
std::vector<double> spread_out(const std::vector<std::size_t>& at, const std::vector<double>& values,
                               std::size_t count) {
    std::vector<double> all(count, unknown);
    for (std::size_t i = 0; i < values.size(); ++i) all[at[i]] = values[i];
    return all;
}

// The learning curve of those that count, and a relapse after its signal.
void follow_learning(Progress& progress) {
    const LearningRow row = learning_row(progress.rows);
    const Cusum learning = learning_cusum(progress.parameters, row.passes);
    progress.learning_sums = spread_out(row.at, learning.sums, progress.rows.size());
    if (learning.signal_at < 0) return;
    const auto after = static_cast<std::size_t>(learning.signal_at) + 1;
    progress.signal_at = static_cast<int>(row.at[after - 1]);
    const std::vector<bool> since(row.passes.begin() + static_cast<std::ptrdiff_t>(after), row.passes.end());
    const Cusum relapse = relapse_cusum(progress.parameters, since);
    if (relapse.signal_at >= 0)
        progress.relapse_at = static_cast<int>(row.at[after + static_cast<std::size_t>(relapse.signal_at)]);
}

struct Source {
    const Progress& progress;
    std::size_t i;
    const AttemptRow& row() const { return progress.rows[i]; }
};
using S = const Source&;

constexpr Column<Source> columns[] = {
    {"attempt", 0, "in the order flown", [](S s) { return static_cast<double>(s.i + 1); }},
    {"started_unix_s", 0, "seconds since 1970 UTC; empty: not known",
     [](S s) { return known_if(s.row().started_unix_s > 0, double(s.row().started_unix_s)); }},
    {"unaided", 0, "1: no path guide was shown; only these count in trends",
     [](S s) { return double(s.row().unaided); }},
    {"start_offset_deg", 3, "from the path, high positive",
     [](S s) { return deg_from_rad(s.row().start_offset_rad); }},
    {"headwind_kt", 2, "mean of the approach", [](S s) { return kt_from_mps(s.row().headwind_mps); }},
    {"path_bias_deg", 4, "", [](S s) { return deg_from_rad(s.row().path_rad.bias); }},
    {"path_scatter_deg", 4, "", [](S s) { return deg_from_rad(s.row().path_rad.scatter); }},
    {"speed_bias_kt", 3, "", [](S s) { return kt_from_mps(s.row().speed_mps.bias); }},
    {"speed_scatter_kt", 3, "", [](S s) { return kt_from_mps(s.row().speed_mps.scatter); }},
    {"stable_at_gate", 0, "1: by all criteria; empty: not reached",
     [](S s) { return known_if(s.row().gate_reached, double(s.row().stable_at_gate)); }},
    {"decision", 0, "0 none, 1 right, 2 miss, 3 cautious",
     [](S s) { return static_cast<double>(s.row().decision); }},
    {"passed", 0, "1: stable at the gate and the right decision",
     [](S s) { return double(s.row().passed()); }},
    {"median_bias_deg", 4, "rolling median of five unaided attempts",
     [](S s) { return deg_from_rad(s.progress.median_bias_rad[s.i]); }},
    {"median_scatter_deg", 4, "likewise",
     [](S s) { return deg_from_rad(s.progress.median_scatter_rad[s.i]); }},
    {"in_learning_curve", 0, "1: unaided, and passed or missed; 0: left out of the learning curve",
     [](S s) { return double(!std::isnan(s.progress.learning_sums[s.i])); }},
    {"learning_sum", 4, "LC-CUSUM of those; empty: left out",
     [](S s) { return s.progress.learning_sums[s.i]; }},
};

}  // namespace

Progress progress_of(std::vector<AttemptRow> rows, const CusumParameters& parameters,
                     const DrillResults& drills) {
    Progress progress;
    progress.rows = std::move(rows);
    progress.parameters = parameters;
    const std::size_t count = progress.rows.size();
    const Unaided unaided = unaided_of(progress.rows);
    progress.median_bias_rad =
        spread_out(unaided.at, rolling_median(unaided.bias_rad, unaided.breaks), count);
    progress.median_scatter_rad =
        spread_out(unaided.at, rolling_median(unaided.scatter_rad, unaided.breaks), count);
    follow_learning(progress);
    for (const AttemptRow& row : progress.rows) ++progress.decisions[static_cast<std::size_t>(row.decision)];
    progress.stop = stop_hint(progress.rows);
    progress.evidence = evidence_list(progress.rows, parameters, drills);
    return progress;
}

Table progress_table(const Progress& progress) {
    Table table{"progress", "lesson", {}, {}};
    set_heads(table, columns);
    for (std::size_t i = 0; i < progress.rows.size(); ++i)
        add_row(table, columns, progress.rows[i].lesson, Source{progress, i});
    return table;
}

}  // namespace slopewise
