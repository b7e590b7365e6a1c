#include "ui/logbook_mirror.h"

#include <algorithm>

namespace slopewise {
namespace {

void line(std::string& text, const std::string& words) {
    if (!words.empty()) text += words + "\n";
}

void row_line(std::string& text, const LogbookRowView& row, const std::string& gate, bool chosen) {
    text += (chosen ? "Chosen: " : "") + row.when + ". " + row.lesson + ". Path " + row.path_bias +
            ", scatter " + row.path_scatter + "; speed " + row.speed_bias + ", scatter " + row.speed_scatter +
            ". " + gate + ": " + row.stability + ", decision " + row.decision + ". Fault: " + row.fault +
            "." + (row.marks.empty() ? "" : " Marked: " + row.marks + ".") + "\n";
}

}  // namespace

std::string logbook_text(const LogbookView& sheet) {
    std::string text = "Logbook. Student: " + sheet.student.words + "\n";
    line(text, sheet.standing);
    line(text, sheet.trouble);
    line(text, sheet.news);
    line(text, sheet.importing);
    for (const std::string& problem : sheet.problems) line(text, problem);
    if (!sheet.deleted.empty())
        line(text, "Deleted, can be brought back: " + std::to_string(sheet.deleted.size()));
    line(text, sheet.count);
    const std::size_t told = std::min(sheet.rows.size(), most_rows_told);
    for (std::size_t i = 0; i < told; ++i)
        row_line(text, sheet.rows[i], sheet.gate, static_cast<int>(i) == sheet.chosen);
    if (told < sheet.rows.size())
        line(text, "and " + std::to_string(sheet.rows.size() - told) + " older attempts");
    if (sheet.chosen >= static_cast<int>(told))
        row_line(text, sheet.rows[static_cast<std::size_t>(sheet.chosen)], sheet.gate, true);
    return text;
}

std::string progress_text(const ProgressView& sheet) {
    std::string text = "Progress. Student: " + sheet.student + "\n";
    line(text, sheet.nothing);
    for (const std::string& hint : sheet.hints) line(text, hint);
    for (std::size_t i = 0; i < sheet.lessons.size(); ++i) {
        const ProgressView::LessonCount& each = sheet.lessons[i];
        line(text, (static_cast<int>(i) == sheet.lesson ? "Chosen: " : "") + each.title + ": " + each.count +
                       " attempts, " + each.unaided + " unaided, " + each.aided + " aided");
    }
    line(text, "Learning curve. " + sheet.learning);
    for (const std::string& words : sheet.parameters) line(text, words);
    line(text, sheet.decisions);
    line(text, "Evidence: " + sheet.evidence_words);
    for (const ProgressView::Evidence& item : sheet.evidence)
        line(text, (item.complete ? "Complete: " : "Not yet: ") + item.what + ": " + item.found);
    return text;
}

}  // namespace slopewise
