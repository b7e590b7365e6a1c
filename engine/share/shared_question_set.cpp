#include "share/shared_question_set.h"

#include "data/fields.h"
#include "data/read_question_set.h"
#include "data/write_question_set.h"
#include "share/shared_lesson.h"
#include "share/unseen.h"

namespace slopewise {
namespace {

const std::string own_name = "Your own questions";
constexpr int version = 1;

bool is_question_set(const JsonNode& node) {
    for (const auto& [name, value] : node.members)
        if (name == "kind") return value.text == "questions";
    return false;
}

Result<QuestionSet> read_node(const JsonNode& node, const std::string& from, const Catalog& catalog) {
    if (!is_question_set(node))
        return failure<QuestionSet>(
            {{from, node.line, "", "holds no questions", "an object of the kind \"questions\""}});
    std::vector<Problem> problems;
    find_unseen(node, "", from, problems);
    Result<QuestionSet> set = read_question_set(node, from);
    for (Problem& problem : set.problems) problems.push_back(std::move(problem));
    if (problems.empty()) problems = check_question_set(catalog, *set.value, from);
    if (!problems.empty()) return failure<QuestionSet>(std::move(problems));
    return set;
}

}  // namespace

bool holds_question_set(std::string_view json) {
    const Result<JsonNode> parsed = parse_json(json, "");
    return parsed.ok() && is_question_set(*parsed.value);
}

Result<QuestionSet> read_shared_question_set(std::string_view json, const std::string& from,
                                             const Catalog& catalog) {
    Result<JsonNode> parsed = parse_json(json, from);
    if (!parsed.ok()) return failure<QuestionSet>(std::move(parsed.problems));
    return read_node(*parsed.value, from, catalog);
}

std::string own_question_sets_text(std::span<const QuestionSet> sets) {
    std::string text = "{\"kind\":\"own_questions\",\"version\":" + std::to_string(version) + ",\"sets\":[";
    const char* between = "\n";
    for (const QuestionSet& set : sets) {
        text += between + compact_json(question_set_text(set));
        between = ",\n";
    }
    return text + "]}\n";
}

OwnQuestionSets read_own_question_sets(std::string_view text, const Catalog& catalog) {
    OwnQuestionSets own;
    if (text.empty()) return own;
    Result<JsonNode> parsed = parse_json(text, own_name, most_own_question_bytes);
    if (!parsed.ok()) {
        own.problems = std::move(parsed.problems);
        return own;
    }
    Fields fields(*parsed.value, own_name, "", own.problems);
    constexpr std::string_view kinds[] = {"own_questions"};
    fields.one_of("kind", kinds);
    fields.integer("version", version, version);
    const JsonNode* list = fields.raw("sets", JsonNode::Kind::list);
    fields.finish();
    if (list == nullptr || !own.problems.empty()) return own;
    if (list->items.size() > most_own_question_sets) {
        fields.report("sets", "are " + std::to_string(list->items.size()),
                      "at most " + std::to_string(most_own_question_sets));
        return own;
    }
    for (std::size_t i = 0; i < list->items.size(); ++i) {
        const std::string name = "Your own set " + std::to_string(i + 1);
        Result<QuestionSet> set = read_node(list->items[i], name, catalog);
        if (set.ok()) own.sets.push_back(std::move(*set.value));
        for (Problem& problem : set.problems) own.problems.push_back(std::move(problem));
    }
    return own;
}

std::string own_question_sets_limit(std::span<const QuestionSet> sets) {
    if (sets.size() > most_own_question_sets)
        return "At most " + std::to_string(most_own_question_sets) +
               " sets are kept. Delete one, or hand it over first.";
    if (own_question_sets_text(sets).size() > most_own_question_bytes)
        return "All sets together may be " + std::to_string(most_own_question_bytes / 1000) +
               " kB. Delete one, or hand it over first.";
    return "";
}

}  // namespace slopewise
