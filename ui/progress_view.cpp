#include <algorithm>
#include <cmath>
#include <map>

#include "base/units.h"
#include "debrief/table.h"
#include "progress/progress.h"
#include "progress/trend.h"
#include "ui/format.h"
#include "ui/logbook_views.h"
#include "ui/student_name.h"

namespace slopewise {
namespace {

std::vector<AttemptRow> chosen_rows(const Logbook& logbook, const std::string& student,
                                    const std::string& lesson) {
    std::vector<AttemptRow> rows = trend_rows(logbook, student);
    if (!lesson.empty()) std::erase_if(rows, [&](const AttemptRow& row) { return row.lesson != lesson; });
    return rows;
}

struct Counts {
    int all = 0, unaided = 0;

    void add(const AttemptRow& row) {
        ++all;
        unaided += row.unaided;
    }
};

ProgressView::LessonCount count_view(std::string id, std::string title, const Counts& counts) {
    return {std::move(id), std::move(title), std::to_string(counts.all), std::to_string(counts.unaided),
            std::to_string(counts.all - counts.unaided)};
}

void make_lessons(const std::vector<AttemptRow>& rows, const Catalog& catalog, const std::string& chosen,
                  ProgressView& view) {
    Counts whole;
    std::map<std::string, Counts> each;
    for (const AttemptRow& row : rows) {
        whole.add(row);
        each[row.lesson].add(row);
    }
    view.lessons = {count_view("", "All lessons", whole)};
    view.lesson = 0;
    for (const auto& [id, counts] : each) {
        if (id == chosen) view.lesson = static_cast<int>(view.lessons.size());
        view.lessons.push_back(count_view(id, lesson_title(catalog, id), counts));
    }
}

// How far off, either way: the median of five unaided attempts, begun afresh after a long gap.
struct Medians {
    std::vector<double> bias_rad, scatter_rad;
};

Medians medians_of(const std::vector<AttemptRow>& rows, const std::vector<bool>& gaps) {
    std::vector<double> bias_rad, scatter_rad;
    std::vector<bool> breaks;
    bool gap = false;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        gap |= gaps[i];
        if (!rows[i].unaided) continue;
        bias_rad.push_back(std::abs(rows[i].path_rad.bias));
        scatter_rad.push_back(rows[i].path_rad.scatter);
        breaks.push_back(gap);
        gap = false;
    }
    return {rolling_median(bias_rad, breaks), rolling_median(scatter_rad, breaks)};
}

float degrees(double angle_rad) { return static_cast<float>(deg_from_rad(angle_rad)); }

void make_points(const Progress& progress, ProgressView& view) {
    const std::vector<bool> gaps = long_gaps(progress.rows), begins = session_begins(progress.rows);
    const Medians medians = medians_of(progress.rows, gaps);
    view.points.clear();
    view.points.reserve(progress.rows.size());
    std::size_t unaided = 0;
    for (std::size_t i = 0; i < progress.rows.size(); ++i) {
        const AttemptRow& row = progress.rows[i];
        TrendPoint point;
        point.bias_deg = degrees(std::abs(row.path_rad.bias));
        point.scatter_deg = degrees(row.path_rad.scatter);
        point.unaided = row.unaided;
        point.begins_session = begins[i];
        point.after_long_gap = gaps[i] && i > 0;
        if (row.unaided) {
            point.median_bias_deg = degrees(medians.bias_rad[unaided]);
            point.median_scatter_deg = degrees(medians.scatter_rad[unaided]);
            // An attempt with no decision at the gate changes no sum and has none of its own.
            if (const double sum = progress.learning_sums[i]; !std::isnan(sum))
                point.learning_sum = static_cast<float>(sum);
            ++unaided;
        }
        view.points.push_back(point);
    }
}

std::string attempt_number(int index) { return "attempt " + std::to_string(index + 1); }

std::string learning_words(const Progress& progress) {
    double last = 0.0;
    for (const double sum : progress.learning_sums)
        if (!std::isnan(sum)) last = sum;
    if (progress.signal_at < 0)
        return "No signal yet: the sum is " + number_words(last, 2) + " of " +
               number_words(progress.parameters.limit, 1) + ".";
    std::string words = "It signalled at " + attempt_number(progress.signal_at);
    if (progress.relapse_at >= 0)
        return words + "; a relapse showed at " + attempt_number(progress.relapse_at) + ".";
    return words + "; no relapse has shown since.";
}

std::vector<std::string> parameter_words(const CusumParameters& p) {
    return {
        "LC-CUSUM over the unaided attempts. A pass: stable at the gate by all criteria, and the right "
        "decision there.",
        "Failing " + number_words(100.0 * p.inadequate_failure_rate) + " % is inadequate (p0 " +
            number_words(p.inadequate_failure_rate, 2) + "), failing " +
            number_words(100.0 * p.adequate_failure_rate) + " % adequate (p1 " +
            number_words(p.adequate_failure_rate, 2) + "). A pass adds " + number_words(pass_score(p), 3) +
            ", a failure takes off " + number_words(-failure_score(p), 3) + ".",
        "It signals at h " + number_words(p.limit, 1) + " (strict: " + number_words(strict_cusum_limit, 1) +
            "). It can be wrong: of students who still fail 40 %, about a quarter reach 2.5 within 30 "
            "attempts."};
}

std::string decision_words(const Progress& progress) {
    const auto count = [&](Decision decision) {
        return std::to_string(progress.decisions[static_cast<std::size_t>(decision)]);
    };
    return "Decisions at the gate: " + count(Decision::right) + " right, " + count(Decision::miss) +
           " missed, " + count(Decision::cautious) + " cautious. Gate not reached: " + count(Decision::none) +
           ".";
}

// Hints and evidence are of all lessons: sessions and days are the student's, not a lesson's.
void make_whole(const Progress& whole, std::int64_t now_unix_s, ProgressView& view) {
    view.hints.clear();
    if (whole.stop != StopHint::none && !refresher_due(whole.rows, now_unix_s) &&
        now_unix_s - whole.rows.back().started_unix_s <= session_gap_s)
        view.hints.emplace_back(stop_hint_words[static_cast<std::size_t>(whole.stop)]);
    if (refresher_due(whole.rows, now_unix_s))
        view.hints.emplace_back("The last approach was more than 14 days ago: a refresher is due.");
    view.evidence_words = evidence_words(whole.evidence);
    view.evidence.clear();
    for (const EvidenceItem& item : whole.evidence)
        view.evidence.push_back({item.what, item.found, item.complete});
}

}  // namespace

void progress_view(const Logbook& logbook, const Catalog& catalog, const std::string& student,
                   const LogbookChoice& choice, ProgressView& view, const DrillEvidence& drills) {
    if (view.made_edition == logbook.edition && view.made_drill_edition == drills.edition &&
        view.made_student == student && view.made_lesson == choice.lesson &&
        view.made_at_unix_s == choice.now_unix_s)
        return;
    view.student = student_words(student);
    const Progress whole = progress_of(trend_rows(logbook, student), CusumParameters{}, drills.results);
    make_lessons(whole.rows, catalog, choice.lesson, view);
    view.nothing = whole.rows.empty() ? "No attempt of this student has come to its end yet. Fly one: it is "
                                        "kept by itself and counted here."
                                      : "";
    make_whole(whole, choice.now_unix_s, view);

    const std::string& lesson = view.lessons[static_cast<std::size_t>(view.lesson)].id;
    const Progress progress =
        lesson.empty() ? whole
                       : progress_of(chosen_rows(logbook, student, lesson), whole.parameters, drills.results);
    make_points(progress, view);
    view.limit = progress.parameters.limit;
    view.strict_limit = strict_cusum_limit;
    view.signal_at = progress.signal_at;
    view.relapse_at = progress.relapse_at;
    view.learning = learning_words(progress);
    view.parameters = parameter_words(progress.parameters);
    view.decisions = decision_words(progress);
    view.made_edition = logbook.edition;
    view.made_drill_edition = drills.edition;
    view.made_student = student;
    view.made_lesson = choice.lesson;
    view.made_at_unix_s = choice.now_unix_s;
}

std::string progress_csv(const Logbook& logbook, const std::string& student, const LogbookChoice& choice) {
    return csv_text(progress_table(
        progress_of(chosen_rows(logbook, student, choice.lesson), CusumParameters{}, DrillResults{})));
}

}  // namespace slopewise
