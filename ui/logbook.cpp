#include "ui/logbook.h"

#include <algorithm>
#include <set>

namespace slopewise {
namespace {

std::vector<const IndexRow*> rows_where(const Logbook& logbook, std::string_view student, bool deleted) {
    std::vector<const IndexRow*> found;
    for (const IndexRow& row : logbook.rows)
        if (row.student == student && (row.deleted_unix_s != 0) == deleted) found.push_back(&row);
    return found;
}

}  // namespace

const IndexRow* find_row(const Logbook& logbook, std::string_view id) {
    const auto found = std::ranges::lower_bound(logbook.rows, id, {}, &IndexRow::id);
    return found != logbook.rows.end() && found->id == id ? &*found : nullptr;
}

std::vector<const IndexRow*> rows_of(const Logbook& logbook, std::string_view student) {
    return rows_where(logbook, student, false);
}

std::vector<const IndexRow*> deleted_rows_of(const Logbook& logbook, std::string_view student) {
    return rows_where(logbook, student, true);
}

std::vector<std::string> students_of(const Logbook& logbook) {
    std::set<std::string> names;
    for (const IndexRow& row : logbook.rows) names.insert(row.student);
    return {names.begin(), names.end()};
}

std::vector<AttemptRow> trend_rows(const Logbook& logbook, std::string_view student) {
    std::vector<AttemptRow> rows;
    for (const IndexRow* row : rows_of(logbook, student))
        if (!row->cut_off) rows.push_back(row->row);
    return rows;
}

}  // namespace slopewise
