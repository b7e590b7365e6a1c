#include "share/shared_question_set.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"

namespace slopewise::test {

void meet_own_questions(std::string_view text) {
    holds_question_set(text);
    const OwnQuestionSets read = read_own_question_sets(text, shipped());
    demand_told(read.problems);
    demand(read.sets.size() <= most_own_question_sets, "no more are kept than may be");
    if (!own_question_sets_limit(read.sets).empty()) return;
    const std::string written = own_question_sets_text(read.sets);
    const OwnQuestionSets again = read_own_question_sets(written, shipped());
    demand(again.problems.empty(), "questions that were kept are read: " +
                                       (again.problems.empty() ? "" : to_text(again.problems.front())));
    demand(own_question_sets_text(again.sets) == written, "questions are kept the same again");
}

std::vector<std::string> seeds_of_own_questions() {
    std::vector<std::string> seeds{own_question_sets_text({})};
    for (QuestionSet set : shipped().question_sets) {  // one of each: looking for who can fly it takes long
        set.questions.resize(1);
        set.questions.front().runway_id = "larkmoor";
        seeds.push_back(own_question_sets_text({&set, 1}));
    }
    return seeds;
}

}  // namespace slopewise::test
