#include "ui/syllabus_mirror.h"

namespace slopewise {
namespace {

std::string lesson_line(const LessonsView::Row& row) {
    return row.number + ", " + row.title + (row.next ? " (next)" : "") + ": " + row.aim + " " + row.known +
           "\n";
}

}  // namespace

std::string welcome_text(const View& view) {
    std::string text =
        "Slopewise. Here you practise the last miles before the runway. Keep two white and two red lights, "
        "keep the speed, and keep looking out. Nothing can break, and every flight ends by itself near the "
        "ground.\nEnter: start with lesson 1. F: fly a final now. S: all lessons. D: drills. C: choose an "
        "approach. L: logbook. K: your own lessons. T: teach a class. I: a class in a table. H: screen and "
        "help.\n";
    if (!view.choice.student.empty()) text += "Student: " + view.choice.student + "\n";
    for (const std::string& line : view.caution) text += line + "\n";
    return text;
}

// The chosen one first, since the arrow keys move it.
std::string lessons_text(const LessonsView& sheet) {
    std::string text = "Lessons. " + sheet.going_on + "\n", all;
    int index = 0;
    for (const LessonsView::Group& group : sheet.groups) {
        all += group.title + ".\n";
        for (const LessonsView::Row& row : group.rows) {
            if (index++ == sheet.chosen) text += "Chosen: " + lesson_line(row);
            all += lesson_line(row);
        }
    }
    return text + all;
}

std::string lesson_card_text(const LessonCardView& card) {
    std::string text = "Lesson " + card.number + ". " + card.title + "\n" + card.aim + "\n" + card.why + "\n";
    for (const LessonFact& fact : card.facts) text += fact.name + ": " + fact.words + "\n";
    text += "Asks for:\n";
    for (const std::string& line : card.criterion) text += line + "\n";
    if (!card.known.empty()) text += card.known + "\n";
    text += "An instructor would say: " + card.instructor + "\nCommon mistakes:\n";
    for (const std::string& line : card.mistakes) text += line + "\n";
    if (!card.next.empty()) text += "Next: " + card.next + "\n";
    text += "Where it comes from:\n";
    for (const std::string& line : card.sources) text += line + "\n";
    return text;
}

std::string lesson_result_text(const LessonResultView& result) {
    if (result.title.empty()) return {};
    std::string text = result.title + "\n";
    for (const LessonResultView::Row& row : result.rows)
        text += row.asked + ": " + row.verdict + (row.flown.empty() ? "" : ", " + row.flown) + "\n";
    text += result.runs + "\n" + result.variation + "\n";
    if (result.reached && !result.next_id.empty()) text += "Next lesson: the first button.\n";
    return text;
}

}  // namespace slopewise
