#include "share/shared_lesson.h"

#include "data/read_lesson.h"
#include "share/unseen.h"

namespace slopewise {
namespace {

bool is_lesson(const JsonNode& node) {
    for (const auto& [name, value] : node.members)
        if (name == "kind") return value.text == "lesson";
    return false;
}

}  // namespace

Result<Lesson> read_shared_lesson(std::string_view json, const std::string& from, const Catalog& catalog) {
    Result<JsonNode> parsed = parse_json(json, from);
    if (!parsed.ok()) return failure<Lesson>(std::move(parsed.problems));
    return read_shared_lesson(*parsed.value, from, catalog);
}

Result<Lesson> read_shared_lesson(const JsonNode& node, const std::string& from, const Catalog& catalog) {
    if (!is_lesson(node))
        return failure<Lesson>(
            {{from, node.line, "", "holds no lesson", "an object of the kind \"lesson\""}});
    std::vector<Problem> problems;
    find_unseen(node, "", from, problems);
    Result<Lesson> lesson = read_lesson(node, from);
    for (Problem& problem : lesson.problems) problems.push_back(std::move(problem));
    if (problems.empty()) problems = check_lesson(catalog, *lesson.value, from);
    if (!problems.empty()) return failure<Lesson>(std::move(problems));
    return lesson;
}

std::string compact_json(std::string_view json) {
    std::string compact;
    bool in_text = false, escaped = false;
    for (const char letter : json) {
        const bool blank = letter == ' ' || letter == '\n' || letter == '\r' || letter == '\t';
        if (!in_text && blank) continue;
        compact += letter;
        if (letter == '"' && !escaped) in_text = !in_text;
        escaped = in_text && letter == '\\' && !escaped;
    }
    return compact;
}

}  // namespace slopewise
