#include "data/write_question_set.h"
#include "question/answer.h"
#include "question/set_up.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {
namespace {

// As a class meets the first of them where it flies.
void ask_first(const QuestionSet& set, std::string_view bytes) {
    const Scenario base = shipped_scenario("final_calm");
    const Question& question = set.questions.front();
    const Scenario scenario =
        make_scenario(question_lesson(question, base), base.aircraft, base.surroundings.runway);
    if (!scenario.start_trim.flyable) return;
    fly_a_while(scenario, bytes);
    const Attempt attempt = begin_attempt(scenario);
    const Track track = begin_track(scenario, attempt);
    const Answer answer = work_out(question, {scenario, attempt, track, Criteria{}});
    const std::size_t choices = answer_choices(question, scenario, Convention::both).size();
    demand(answer.right >= 0 && static_cast<std::size_t>(answer.right) < choices,
           "the right answer is a choice");
}

}  // namespace

void meet_question_set(std::string_view text) {
    const Result<DataEntry> read = read_entry({"x", text});
    if (!demand_answer(read)) return;
    const auto* set = std::get_if<QuestionSet>(&*read.value);
    if (set == nullptr) return;
    const std::string written = question_set_text(*set);
    const Result<DataEntry> again = read_entry({"x", written});
    demand(again.ok(), "a set that was written is read: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(question_set_text(std::get<QuestionSet>(*again.value)) == written,
           "a set is written the same again");
    ask_first(*set, text);
}

std::vector<std::string> seeds_of_question_set() { return shipped_texts("questions"); }

}  // namespace slopewise::test
