#include "evidence/class_table.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "base/units.h"
#include "debrief/sheet_facts.h"
#include "debrief/table.h"
#include "lesson/approach_choice.h"
#include "progress/progress.h"
#include "progress/run_feedback.h"
#include "review/diagnosis/fault.h"
#include "review/track_csv.h"

namespace slopewise {
namespace {

std::string title_of(const std::string& lesson, const ClassFiles& files, const Catalog& catalog) {
    if (lesson == own_approach_id) return "Approach of own choice";
    if (const Lesson* known = find_lesson(catalog, lesson)) return known->title;
    const auto told = files.titles.find(lesson);
    return told != files.titles.end() ? told->second : lesson;
}

double last_known(const std::vector<double>& values) {
    const auto found =
        std::find_if(values.rbegin(), values.rend(), [](double value) { return !std::isnan(value); });
    return found == values.rend() ? unknown : *found;
}

// `attempts`: of one student at one lesson, the oldest first.
ClassRow row_of(const std::vector<const ClassAttempt*>& attempts) {
    std::vector<AttemptRow> rows;
    rows.reserve(attempts.size());
    for (const ClassAttempt* attempt : attempts) rows.push_back(attempt->row);
    ClassRow row;
    row.student = attempts.front()->student;
    row.lesson = rows.front().lesson;
    row.attempts = static_cast<int>(rows.size());
    row.unaided = static_cast<int>(std::ranges::count_if(rows, &AttemptRow::unaided));
    for (const AttemptRow& one : rows) row.last_unix_s = std::max(row.last_unix_s, one.started_unix_s);
    const LastRuns last = last_runs(std::span(rows).first(rows.size() - 1), rows.back());
    row.fault = last.fault;
    row.fault_times = last.fault_times;
    row.fault_of = static_cast<int>(last.rows.size());
    const Progress progress = progress_of(std::move(rows), CusumParameters{}, DrillResults{});
    row.bias_rad = last_known(progress.median_bias_rad);
    row.scatter_rad = last_known(progress.median_scatter_rad);
    return row;
}

// Sorts by what `key` gives; rows of which it gives nothing (`has`) stand last.
template <class Key, class Has>
void sort_by(std::vector<ClassRow>& rows, bool falling, Key key, Has has) {
    std::stable_sort(rows.begin(), rows.end(), [&](const ClassRow& a, const ClassRow& b) {
        if (has(a) != has(b)) return has(a);
        return has(a) && (falling ? key(b) < key(a) : key(a) < key(b));
    });
}

std::string fault_title(const ClassRow& row) {
    const Fault* fault = find_fault(row.fault);
    return fault != nullptr ? std::string(fault->title) : row.fault;
}

// The columns of the file: one list for the header, the meanings and the cells.
struct FileColumn {
    std::string_view name, meaning;
    std::string (*text)(const ClassRow&);
};
constexpr FileColumn file_columns[] = {
    {"student", "the name or code flown under", [](const ClassRow& r) { return csv_cell(r.student); }},
    {"lesson", "its identity", [](const ClassRow& r) { return csv_cell(r.lesson); }},
    {"lesson_title", "as it is called", [](const ClassRow& r) { return csv_cell(r.title); }},
    {"attempts", "that came to their end", [](const ClassRow& r) { return std::to_string(r.attempts); }},
    {"unaided", "of those: no path guide was shown; only these count in the two columns after this",
     [](const ClassRow& r) { return std::to_string(r.unaided); }},
    {"median_bias_deg", "off the path, high positive: median of the last five unaided attempts; empty: none",
     [](const ClassRow& r) { return cell_text(deg_from_rad(r.bias_rad), 4); }},
    {"median_scatter_deg", "the spread about that: likewise",
     [](const ClassRow& r) { return cell_text(deg_from_rad(r.scatter_rad), 4); }},
    {"last_date", "UTC day of the last attempt; empty: not known",
     [](const ClassRow& r) { return date_text(r.last_unix_s); }},
    {"priority_fault", "that came most often in the last three attempts, of equals the latest; empty: none",
     [](const ClassRow& r) { return csv_cell(r.fault); }},
    {"priority_fault_times", "how often", [](const ClassRow& r) { return std::to_string(r.fault_times); }},
    {"priority_fault_of", "of so many attempts",
     [](const ClassRow& r) { return std::to_string(r.fault_of); }},
};

}  // namespace

std::vector<ClassRow> class_rows(const ClassFiles& files, const Catalog& catalog) {
    std::map<std::pair<std::string_view, std::string_view>, std::vector<const ClassAttempt*>> groups;
    for (const ClassAttempt& attempt : files.attempts)
        groups[{attempt.student, attempt.row.lesson}].push_back(&attempt);
    std::vector<ClassRow> rows;
    rows.reserve(groups.size());
    for (auto& [key, attempts] : groups) {
        // As a logbook has them: by identity, which is by time.
        std::ranges::stable_sort(attempts, {}, &ClassAttempt::id);
        rows.push_back(row_of(attempts));
        rows.back().title = title_of(rows.back().lesson, files, catalog);
    }
    sort_class_rows(rows, ClassColumn::lesson, false);
    sort_class_rows(rows, ClassColumn::student, false);
    return rows;
}

void sort_class_rows(std::vector<ClassRow>& rows, ClassColumn by, bool falling) {
    const auto always = [](const ClassRow&) { return true; };
    const auto known = [](const ClassRow& row) { return row.unaided > 0; };
    using Row = const ClassRow&;
    switch (by) {
    case ClassColumn::student:
        return sort_by(
            rows, falling, [](Row row) { return std::string_view(row.student); }, always);
    case ClassColumn::lesson:
        return sort_by(
            rows, falling, [](Row row) { return std::string_view(row.title); }, always);
    case ClassColumn::attempts:
        return sort_by(
            rows, falling, [](Row row) { return row.attempts; }, always);
    case ClassColumn::bias:
        return sort_by(
            rows, falling, [](Row row) { return std::abs(row.bias_rad); }, known);
    case ClassColumn::spread:
        return sort_by(
            rows, falling, [](Row row) { return row.scatter_rad; }, known);
    case ClassColumn::last:
        return sort_by(
            rows, falling, [](Row row) { return row.last_unix_s; },
            [](Row row) { return row.last_unix_s > 0; });
    case ClassColumn::fault:
        return sort_by(rows, falling, fault_title, [](Row row) { return !row.fault.empty(); });
    }
}

int students_in(std::span<const ClassRow> rows) {
    std::set<std::string_view> names;
    for (const ClassRow& row : rows) names.insert(row.student);
    return static_cast<int>(names.size());
}

std::string fault_words(const ClassRow& row) {
    if (row.fault.empty()) return "none";
    return std::to_string(row.fault_times) + " of " + std::to_string(row.fault_of) + ": " + fault_title(row);
}

std::string class_csv(std::span<const ClassRow> rows) {
    std::string text = std::string("# ") + file_caution + "\n", header;
    for (const FileColumn& column : file_columns) {
        text += "# " + std::string(column.name) + ": " + std::string(column.meaning) + "\n";
        header += (header.empty() ? "" : ",") + std::string(column.name);
    }
    text += header + "\n";
    for (const ClassRow& row : rows) {
        for (const FileColumn& column : file_columns)
            text += (&column == file_columns ? "" : ",") + column.text(row);
        text += "\n";
    }
    return text;
}

}  // namespace slopewise
