#include "ui/lesson_editor_mirror.h"

#include "ui/debrief_mirror.h"

namespace slopewise {
namespace {

void line(std::string& text, const std::string& words) {
    if (!words.empty()) text += words + "\n";
}

std::string value_words(const LessonEditorView::Field& field) {
    switch (field.kind) {
    case LessonEditorView::Kind::on_off: return field.amount > 0.5 ? "on" : "off";
    case LessonEditorView::Kind::choice:
    case LessonEditorView::Kind::list: {
        const auto index = static_cast<std::size_t>(field.amount);
        return index < field.choices.size() ? field.choices[index] : "";
    }
    default: return field.value + (field.unit.empty() ? "" : " " + field.unit);
    }
}

}  // namespace

std::string own_lessons_text(const OwnLessonsView& sheet) {
    std::string text = "Your own lessons. " + sheet.count + "\n";
    line(text, sheet.trouble);
    line(text, sheet.news);
    if (!sheet.draft.empty()) line(text, "Being written: " + sheet.draft);
    if (!sheet.arrived.empty()) line(text, "Not yet kept or left: " + sheet.arrived);
    for (std::size_t i = 0; i < sheet.rows.size(); ++i)
        line(text, (static_cast<int>(i) == sheet.chosen ? "Chosen: " : "") + sheet.rows[i].title + ". " +
                       sheet.rows[i].about);
    for (const OwnLessonsView::Row& row : sheet.deleted) line(text, "Deleted: " + row.title);
    return text;
}

std::string lesson_editor_text(const LessonEditorView& sheet) {
    std::string text = "Writing a lesson. " + sheet.standing + "\n";
    line(text, sheet.news);
    for (const std::string& problem : sheet.problems) line(text, problem);
    for (const LessonEditorView::Group& group : sheet.groups) {
        line(text, group.title + ":");
        for (const LessonEditorView::Field& field : group.fields) {
            line(text, (field.label.empty() ? "" : field.label + " ") + value_words(field));
            if (!field.problem.empty()) line(text, "To put right: " + field.problem);
        }
    }
    for (const LabelledValue& value : sheet.figures) text += figure_sentence(value);
    line(text, sheet.also);
    return text;
}

std::string arrived_lesson_text(const ArrivedLessonView& sheet) {
    std::string text = sheet.from + ". " + (sheet.title.empty() ? "It is not taken in." : sheet.title) + "\n";
    line(text, sheet.aim);
    for (const LabelledValue& value : sheet.holds) text += figure_sentence(value);
    for (const std::string& problem : sheet.problems) line(text, problem);
    line(text, sheet.known);
    return text;
}

}  // namespace slopewise
