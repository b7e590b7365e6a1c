#include "ui/class_table_view.h"

#include <algorithm>

#include "base/units.h"
#include "debrief/sheet_facts.h"
#include "ui/app.h"
#include "ui/format.h"

namespace slopewise {
namespace {

constexpr std::size_t most_problems_told = 12;
constexpr std::size_t most_rows_told = 50;

std::string count_words(std::size_t count, const char* one, const char* more) {
    return std::to_string(count) + (count == 1 ? one : more);
}

ClassTableView::Row row_view(const ClassRow& row) {
    const bool known = row.unaided > 0;
    std::string attempts = std::to_string(row.attempts);
    if (row.unaided < row.attempts) attempts += " (" + std::to_string(row.unaided) + ")";
    return {row.student,
            row.title,
            std::move(attempts),
            known ? signed_words(deg_from_rad(row.bias_rad), 2) + "\u00b0" : "\u2013",
            known ? "\u00b1" + number_words(deg_from_rad(row.scatter_rad), 2) + "\u00b0" : "\u2013",
            row.last_unix_s > 0 ? date_text(row.last_unix_s) : "not known",
            fault_words(row)};
}

std::string summary_words(const ClassTableDesk& desk) {
    const ClassFiles& files = desk.files;
    if (files.files == 0) return "";
    std::string words =
        count_words(static_cast<std::size_t>(students_in(desk.rows)), " student, ", " students, ") +
        count_words(files.attempts.size(), " attempt, from ", " attempts, from ") +
        count_words(static_cast<std::size_t>(files.files), " file", " files");
    if (files.cut_off > 0) words += "; " + std::to_string(files.cut_off) + " cut off, not counted";
    if (files.twice > 0) words += "; " + std::to_string(files.twice) + " met twice, counted once";
    return words + ".";
}

void make_news(const ClassTableDesk& desk, std::vector<std::string>& news) {
    news.clear();
    if (desk.reader)
        news.push_back("Reading " + desk.reader->file + ": " +
                       count_words(static_cast<std::size_t>(desk.reader->attempts), " attempt so far.",
                                   " attempts so far."));
    if (!desk.news.empty()) news.push_back(desk.news);
    const std::vector<Problem>& problems = desk.files.problems;
    const std::size_t told = std::min(problems.size(), most_problems_told);
    for (std::size_t i = 0; i < told; ++i) news.push_back("Not read: " + to_text(problems[i]));
    if (told < problems.size())
        news.push_back("and " + std::to_string(problems.size() - told) + " more problems");
}

}  // namespace

void class_table_view(const App& app, ClassTableView& view) {
    const ClassTableDesk& desk = app.room.table;
    if (view.made_edition == desk.edition && !desk.reading) return;
    view.reading = desk.reading;
    make_news(desk, view.news);
    if (view.made_edition == desk.edition) return;
    view.rows.clear();
    for (const ClassRow& row : desk.rows) view.rows.push_back(row_view(row));
    view.sorted_by = static_cast<int>(desk.sorted_by);
    view.falling = desk.falling;
    view.summary = summary_words(desk);
    view.made_edition = desk.edition;
}

void class_table_text(const ClassTableView& view, std::string& text) {
    text += "A class in a table.\n";
    if (!view.summary.empty()) text += view.summary + "\n";
    for (const std::string& words : view.news) text += words + "\n";
    const std::size_t told = std::min(view.rows.size(), most_rows_told);
    for (std::size_t i = 0; i < told; ++i) {
        const ClassTableView::Row& row = view.rows[i];
        text += row.student + ". " + row.lesson + ". Attempts " + row.attempts + ". Off the path " +
                row.bias + ", spread " + row.spread + ". Last " + row.last + ". Fault: " + row.fault + ".\n";
    }
    if (told < view.rows.size()) text += "and " + std::to_string(view.rows.size() - told) + " more rows\n";
}

}  // namespace slopewise
