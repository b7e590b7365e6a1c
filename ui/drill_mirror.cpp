#include "ui/drill_mirror.h"

namespace slopewise {
namespace {

void add_line(std::string& text, const std::string& line) {
    if (!line.empty()) text += line + "\n";
}

std::string about_text(const DrillView& sheet) {
    std::string text = sheet.aim + "\n" + sheet.why + "\n" + sheet.how + "\n";
    add_line(text, "What usually goes wrong: " + sheet.mistakes);
    for (const std::string& line : sheet.passes) text += "Passes: " + line + "\n";
    add_line(text, "Source: " + sheet.source);
    add_line(text, sheet.trouble);
    return text;
}

std::string item_text(const DrillView& sheet) {
    std::string text;
    add_line(text, sheet.spoken);
    add_line(text, sheet.gone);
    add_line(text, sheet.share);
    add_line(text, sheet.task);
    add_line(text, sheet.question);
    for (const std::string& fact : sheet.facts)
        if (sheet.spoken.find(fact) == std::string::npos) add_line(text, fact);
    for (std::size_t i = 0; i < sheet.choices.size(); ++i)
        text += std::to_string(i + 1) + ": " + sheet.choices[i] + "\n";
    add_line(text, sheet.state);
    if (sheet.stage != DrillView::Stage::revealed) return text;
    add_line(text, sheet.reveal);
    add_line(text, sheet.reaction);
    return text;
}

}  // namespace

std::string drills_text(const DrillsView& sheet) {
    std::string text = "Drills. Student: " + sheet.student + "\n";
    add_line(text, sheet.trouble);
    for (const DrillsView::Row& row : sheet.rows)
        text += row.title + ": " + row.about + " " + row.last + "\n";
    return text;
}

std::string drill_text(const DrillView& sheet) {
    std::string text = "Drill: " + sheet.title + (sheet.place.empty() ? "" : ", " + sheet.place) + "\n";
    text += sheet.stage == DrillView::Stage::about ? about_text(sheet) : item_text(sheet);
    if (!sheet.go_on.empty()) text += "Enter: " + sheet.go_on + "\n";
    return text;
}

std::string drill_result_text(const DrillResultView& sheet) {
    std::string text = "Drill result: " + sheet.title + "\n" + sheet.verdict + "\n";
    add_line(text, sheet.items);
    for (const DrillResultView::Limit& limit : sheet.limits)
        text += (limit.met ? "met: " : "not met: ") + limit.asked + "; found " + limit.found + "\n";
    for (const std::string& figure : sheet.figures) add_line(text, figure);
    add_line(text, sheet.seed);
    add_line(text, sheet.next);
    return text;
}

}  // namespace slopewise
