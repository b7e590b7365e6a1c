// Sets of questions as they are handed over and kept: what is theirs is read, what is damaged is told and
// takes no other with it, and the limits are told.
#include <algorithm>
#include <string>
#include <vector>

#include "data/write_question_set.h"
#include "share/shared_question_set.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

bool holds(const std::string& text, std::string_view words) { return text.find(words) != std::string::npos; }

std::string plain_set() { return question_set_text(shipped().question_sets[0]); }

std::string with(std::string text, std::string_view was, std::string_view now) {
    const std::size_t at = text.find(was);
    REQUIRE(at != std::string::npos);
    return text.replace(at, was.size(), now);
}

std::string problems_of(const std::string& text) {
    std::string all;
    const Result<QuestionSet> read = read_shared_question_set(text, "x.json", shipped());
    CHECK(read.ok() == read.problems.empty());
    for (const Problem& problem : read.problems) all += to_text(problem) + "\n";
    return all;
}

}  // namespace

TEST_CASE("handed-over questions: a text is known as one by its kind alone") {
    CHECK(holds_question_set(plain_set()));
    CHECK(holds_question_set("{\"bad\": 1, \"kind\": \"questions\"}"));
    for (const char* text : {"{", "[]", "{}", "{\"kind\": \"lesson\"}", "{\"id\": \"questions\"}"})
        CHECK_FALSE(holds_question_set(text));
}

TEST_CASE("handed-over questions: a good set is read, and each thing wrong with another is told") {
    CHECK(problems_of(plain_set()) == "");
    CHECK(holds(problems_of("{"), "x.json:1"));
    CHECK(holds(problems_of("{\"kind\": \"lesson\"}"), "holds no questions"));
    CHECK(holds(problems_of(with(plain_set(), "\"distance_nm\": ", "\"distance_nm\": 9")),
                "/stands/distance_nm"));
    CHECK(holds(problems_of(with(plain_set(), "\"asks\"", "\"runway\": \"nowhere\", \"asks\"")),
                "which is not known"));
    // U+202E turns round the order in which what follows is read.
    CHECK_FALSE(problems_of(with(plain_set(), "\"title\": \"", "\"title\": \"\xE2\x80\xAE")).empty());
}

TEST_CASE("own questions: what is kept comes back, in its order") {
    CHECK(read_own_question_sets("", shipped()).sets.empty());
    CHECK(read_own_question_sets(own_question_sets_text({}), shipped()).problems.empty());
    const auto& sets = shipped().question_sets;
    const OwnQuestionSets own = read_own_question_sets(own_question_sets_text(sets), shipped());
    CHECK(own.problems.empty());
    REQUIRE(own.sets.size() == sets.size());
    for (std::size_t i = 0; i < sets.size(); ++i)
        CHECK(question_set_text(own.sets[i]) == question_set_text(sets[i]));
}

TEST_CASE("own questions: a damaged set is told by its number, and the others stay") {
    const auto& sets = shipped().question_sets;
    std::string text = own_question_sets_text(std::span(sets).first(3));
    const std::size_t second = text.find("\"distance_nm\":", text.find('\n', text.find('\n') + 1));
    REQUIRE(second != std::string::npos);
    text.insert(second + 14, std::size_t{1}, '9');
    const OwnQuestionSets own = read_own_question_sets(text, shipped());
    REQUIRE(own.sets.size() == 2);
    CHECK(own.sets[0].id == sets[0].id);
    CHECK(own.sets[1].id == sets[2].id);
    REQUIRE(own.problems.size() == 1);
    CHECK(holds(to_text(own.problems[0]), "Your own set 2"));
}

TEST_CASE("own questions: a text that is none, is of a newer version or too long gives none, and says why") {
    for (const char* text : {"{", "[]", "{\"kind\":\"own_questions\",\"version\":2,\"sets\":[]}",
                             "{\"kind\":\"settings\",\"version\":1,\"sets\":[]}",
                             "{\"kind\":\"own_questions\",\"version\":1}"}) {
        CAPTURE(text);
        const OwnQuestionSets own = read_own_question_sets(text, shipped());
        CHECK(own.sets.empty());
        CHECK_FALSE(own.problems.empty());
    }
    std::string many = "{\"kind\":\"own_questions\",\"version\":1,\"sets\":[{}";
    for (std::size_t i = 0; i < most_own_question_sets; ++i) many += ",{}";
    const OwnQuestionSets own = read_own_question_sets(many + "]}", shipped());
    CHECK(own.sets.empty());
    REQUIRE(own.problems.size() == 1);
    CHECK(holds(to_text(own.problems[0]), "/sets are 51; allowed: at most 50"));
}

TEST_CASE("own questions: the limits are 50 sets and 300 kB") {
    QuestionSet set = shipped().question_sets[0];
    set.questions.resize(1);
    std::vector<QuestionSet> sets(most_own_question_sets, set);
    CHECK(own_question_sets_limit(sets) == "");
    sets.push_back(set);
    CHECK(holds(own_question_sets_limit(sets), "At most 50"));
    set.about = std::string(most_own_question_bytes, 'a');
    CHECK(holds(own_question_sets_limit(std::span(&set, 1)), "300 kB"));
}

TEST_CASE("question sets: what is as usual is not written, and the rest comes back") {
    QuestionSet set = shipped().question_sets[0];
    set.about = "";
    set.place = QuestionSet{}.place;
    set.questions[0].side_profile_after = false;
    const std::string text = question_set_text(set);
    CHECK_FALSE(holds(text, "\"about\""));
    CHECK_FALSE(holds(text, "\"place\""));
    const Result<QuestionSet> read = read_shared_question_set(text, "x.json", shipped());
    REQUIRE(read.ok());
    CHECK_FALSE(read.value->questions[0].side_profile_after);
    CHECK(read.value->questions[1].side_profile_after);
    CHECK(read.value->place == set.place);
}

TEST_CASE("question sets: two with the same id are one too many") {
    std::vector<DataFile> files = shipped_files();
    const std::string again = plain_set();
    files.push_back({"again.json", again});
    const Result<Catalog> read = load_catalog(files);
    CHECK_FALSE(read.ok());
    REQUIRE(read.problems.size() == 1);
    CHECK(holds(to_text(read.problems[0]),
                "\"" + shipped().question_sets[0].id + "\", which another file has"));
}
