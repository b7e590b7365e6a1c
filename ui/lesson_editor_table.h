// What can be set of a lesson, as data: the table behind the editor's fields.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "data/catalog.h"
#include "ui/view_lessons.h"

namespace slopewise {

// One field in pilot units. Its range and its `path` are those of a lesson's file
// (engine/data/read_lesson.cpp).
struct LessonField {
    LessonEditorView::Kind kind = LessonEditorView::Kind::number;
    const char* label = "";
    const char* unit = "";
    const char* path = "";
    double least = 0, most = 0, step = 1;
    int decimals = 0;
    double (*amount)(const Lesson&, const Catalog&) = nullptr;
    void (*set_amount)(Lesson&, double, const Catalog&) = nullptr;
    std::vector<std::string> (*choices)(const Lesson&, const Catalog&) = nullptr;
    std::string (*words)(const Lesson&) = nullptr;
    void (*set_words)(Lesson&, const std::string&) = nullptr;
    std::size_t most_bytes = 0;
    bool (*offered)(const Lesson&) = [](const Lesson&) { return true; };
};

struct LessonFieldGroup {
    const char* title;
    std::span<const LessonField> fields;
};

std::span<const LessonFieldGroup> lesson_field_groups();

}  // namespace slopewise
