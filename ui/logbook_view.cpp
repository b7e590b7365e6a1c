#include <algorithm>

#include "base/units.h"
#include "lesson/approach_choice.h"
#include "review/diagnosis/fault.h"
#include "ui/civil_time.h"
#include "ui/format.h"
#include "ui/logbook_views.h"
#include "ui/student_name.h"

namespace slopewise {
namespace {

constexpr std::size_t most_problems_told = 5;
constexpr const char* nothing_to_say = "\u2013";

std::string fault_title(const AttemptRow& row) {
    if (row.priority_fault.empty()) return "none found";
    const Fault* fault = find_fault(row.priority_fault);
    return fault != nullptr ? std::string(fault->title) : row.priority_fault;
}

std::string marks_of(const IndexRow& row, bool unkept) {
    std::string marks;
    const auto add = [&](bool holds, const char* mark) {
        if (holds) marks += (marks.empty() ? "" : ", ") + std::string(mark);
    };
    add(!row.row.unaided, "aided");
    add(row.cut_off, "cut off");
    add(unkept, "not kept");
    return marks;
}

LogbookRowView row_view(const IndexRow& kept, bool unkept, const Catalog& catalog,
                        std::int64_t ahead_of_utc_s) {
    const AttemptRow& row = kept.row;
    LogbookRowView view;
    view.id = kept.id;
    view.when = when_words(row.started_unix_s, ahead_of_utc_s);
    view.lesson = lesson_title(catalog, row.lesson);
    view.marks = marks_of(kept, unkept);
    view.path_bias = signed_words(deg_from_rad(row.path_rad.bias), 2) + "\u00b0";
    view.path_scatter = "\u00b1" + number_words(deg_from_rad(row.path_rad.scatter), 2) + "\u00b0";
    view.speed_bias = signed_words(kt_from_mps(row.speed_mps.bias), 1) + " kt";
    view.speed_scatter = "\u00b1" + number_words(kt_from_mps(row.speed_mps.scatter), 1) + " kt";
    view.unstable = row.gate_reached && !row.stable_at_gate;
    view.missed = row.decision == Decision::miss;
    view.stability = !row.gate_reached ? "not reached" : row.stable_at_gate ? "stable" : "not stable";
    view.decision = row.decision == Decision::none
                        ? nothing_to_say
                        : std::string(decision_names[static_cast<std::size_t>(row.decision)]);
    view.fault = fault_title(row);
    return view;
}

void make_students(const Logbook& logbook, const std::string& student, LogbookView& view) {
    std::vector<std::string> names = students_of(logbook);
    if (std::ranges::find(names, student) == names.end()) names.push_back(student);
    std::ranges::sort(names);
    view.students.clear();
    for (const std::string& name : names) view.students.push_back({name, student_words(name)});
}

void make_rows(const Logbook& logbook, const Catalog& catalog, const std::string& student,
               std::int64_t ahead_of_utc_s, LogbookView& view) {
    view.rows.clear();
    view.deleted.clear();
    const std::vector<const IndexRow*> rows = rows_of(logbook, student);
    view.rows.reserve(rows.size());
    for (std::size_t i = rows.size(); i-- > 0;)
        view.rows.push_back(
            row_view(*rows[i], logbook.unkept.contains(rows[i]->id), catalog, ahead_of_utc_s));
    const std::vector<const IndexRow*> deleted = deleted_rows_of(logbook, student);
    for (std::size_t i = deleted.size(); i-- > 0;)
        view.deleted.push_back({deleted[i]->id, when_words(deleted[i]->row.started_unix_s, ahead_of_utc_s) +
                                                    ", " + lesson_title(catalog, deleted[i]->row.lesson)});
    view.count = std::to_string(rows.size()) + (rows.size() == 1 ? " attempt" : " attempts");
    const auto unkept =
        std::ranges::count_if(rows, [&](const IndexRow* row) { return logbook.unkept.contains(row->id); });
    view.count += unkept == 0 ? " kept" : ", " + std::to_string(unkept) + " of them not kept";
}

void make_choice(const LogbookChoice& choice, LogbookView& view) {
    const auto found = std::ranges::find(view.rows, choice.attempt, &LogbookRowView::id);
    const std::size_t at = found == view.rows.end() ? 0 : static_cast<std::size_t>(found - view.rows.begin());
    view.chosen = view.rows.empty() ? -1 : static_cast<int>(at);
    view.earlier = at + 1 < view.rows.size() ? view.rows[at + 1].id : "";
}

std::string standing_words(Logbook::Standing standing) {
    switch (standing) {
    case Logbook::Standing::opening: return "The logbook is being opened.";
    case Logbook::Standing::refused: return "Attempts cannot be kept on this device now.";
    case Logbook::Standing::open: break;
    }
    return {};
}

void make_import(const std::optional<Logbook::Import>& import, LogbookView& view) {
    view.importing.clear();
    view.problems.clear();
    view.import_runs = import && import->running;
    if (!import) return;
    if (import->running)
        view.importing = "Taking in " + import->file + ": " + std::to_string(import->line) + " lines read, " +
                         std::to_string(import->added) + " attempts added, " + std::to_string(import->known) +
                         " already here.";
    for (const Problem& problem : import->problems) {
        if (view.problems.size() == most_problems_told) break;
        view.problems.push_back(to_text(problem));
    }
    if (import->problems.size() > most_problems_told)
        view.problems.push_back("and " + std::to_string(import->problems.size() - most_problems_told) +
                                " more");
}

}  // namespace

std::string lesson_title(const Catalog& catalog, const std::string& id) {
    if (id == own_approach_id) return "Approach of own choice";
    const Lesson* lesson = find_lesson(catalog, id);
    return lesson != nullptr ? lesson->title : id;
}

void logbook_view(const Logbook& logbook, const Catalog& catalog, const std::string& student,
                  const LogbookChoice& choice, LogbookView& view) {
    view.standing = standing_words(logbook.standing);
    view.trouble = logbook.trouble;
    view.news = logbook.news;
    view.writes_by_finger = choice.writes_by_finger;
    view.is_loading = !logbook.wanted.empty();
    make_import(logbook.import, view);
    if (view.made_edition != logbook.edition || view.made_student != student ||
        view.made_ahead_of_utc_s != choice.ahead_of_utc_s) {
        view.student = {student, student_words(student)};
        view.gate = "At " + number_words(Criteria{}.decision_gate_ft) + " ft";
        make_students(logbook, student, view);
        make_rows(logbook, catalog, student, choice.ahead_of_utc_s, view);
        view.made_edition = logbook.edition;
        view.made_student = student;
        view.made_ahead_of_utc_s = choice.ahead_of_utc_s;
    }
    make_choice(choice, view);
}

}  // namespace slopewise
