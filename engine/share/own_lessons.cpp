#include "share/own_lessons.h"

#include "data/fields.h"
#include "data/write_lesson.h"
#include "share/shared_lesson.h"

namespace slopewise {
namespace {

const std::string name = "Your own lessons";

constexpr int version = 1;

// "Your own lessons" with the number of one of them, as a person counts.
std::string name_of(std::size_t index) { return "Your own lesson " + std::to_string(index + 1); }

}  // namespace

std::string own_lessons_text(std::span<const Lesson> lessons) {
    std::string text = "{\"kind\":\"own_lessons\",\"version\":" + std::to_string(version) + ",\"lessons\":[";
    const char* between = "\n";
    for (const Lesson& lesson : lessons) {
        text += between + compact_json(lesson_text(lesson));
        between = ",\n";
    }
    return text + "]}\n";
}

OwnLessons read_own_lessons(std::string_view text, const Catalog& catalog) {
    OwnLessons own;
    if (text.empty()) return own;
    Result<JsonNode> parsed = parse_json(text, name, most_own_bytes);
    if (!parsed.ok()) {
        own.problems = std::move(parsed.problems);
        return own;
    }
    Fields fields(*parsed.value, name, "", own.problems);
    constexpr std::string_view kinds[] = {"own_lessons"};
    fields.one_of("kind", kinds);
    fields.integer("version", version, version);
    const JsonNode* list = fields.raw("lessons", JsonNode::Kind::list);
    fields.finish();
    if (list == nullptr || !own.problems.empty()) return own;
    if (list->items.size() > most_own_lessons) {
        fields.report("lessons", "are " + std::to_string(list->items.size()),
                      "at most " + std::to_string(most_own_lessons));
        return own;
    }
    for (std::size_t i = 0; i < list->items.size(); ++i) {
        Result<Lesson> lesson = read_shared_lesson(list->items[i], name_of(i), catalog);
        if (lesson.ok()) own.lessons.push_back(std::move(*lesson.value));
        for (Problem& problem : lesson.problems) own.problems.push_back(std::move(problem));
    }
    return own;
}

std::string own_lessons_limit(std::span<const Lesson> lessons) {
    if (lessons.size() > most_own_lessons)
        return "At most " + std::to_string(most_own_lessons) +
               " lessons are kept. Delete one, or hand it over first.";
    if (own_lessons_text(lessons).size() > most_own_bytes)
        return "All lessons together may be " + std::to_string(most_own_bytes / 1000) +
               " kB. Delete one, or hand it over first.";
    return "";
}

}  // namespace slopewise
