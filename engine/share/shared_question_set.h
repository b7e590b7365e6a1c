// Sets of questions that come from somebody else, in a file or in what was kept, and one's own as one
// document.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "data/catalog.h"
#include "data/json_tree.h"

namespace slopewise {

// Whether a text is one of these at all, however bad: JSON of the kind "questions".
bool holds_question_set(std::string_view json);

// Reads JSON of at most 1 MiB. Every problem is returned: of the reader, of the catalog, and of words with
// characters that are not seen.
Result<QuestionSet> read_shared_question_set(std::string_view json, const std::string& from,
                                             const Catalog& catalog);

inline constexpr std::size_t most_own_question_sets = 50;
inline constexpr std::size_t most_own_question_bytes = 300000;

std::string own_question_sets_text(std::span<const QuestionSet> sets);

// An empty text holds none; one bad set does not take the others with it.
struct OwnQuestionSets {
    std::vector<QuestionSet> sets;
    std::vector<Problem> problems;
};
OwnQuestionSets read_own_question_sets(std::string_view text, const Catalog& catalog);

// Why these cannot be kept: too many, or too long together; empty when they can.
std::string own_question_sets_limit(std::span<const QuestionSet> sets);

}  // namespace slopewise
