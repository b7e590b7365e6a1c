// How a set of questions is put to a class, and what is kept of its answers.
#include <string>
#include <vector>

#include "data/tally_log.h"
#include "question/ask_run.h"
#include "tests/check.h"

using namespace slopewise;

namespace {

AskRun of_two() { return {2, 0, AskStage::ready, {}, {}}; }

AskedQuestion sample() {
    return {1764000000,
            3600,
            "energy_states",
            "Energy states",
            2,
            "energy_state",
            "High, or low?",
            {"high and fast", "low, and slow", "=SUM(A1)"},
            {3, 10, 1},
            {0, 14, 0},
            1};
}

// The steps that one key takes from the beginning to the end of a set.
std::vector<AskStep> steps(AskRun run, int right, bool runs_on, int hands_for_right, int hands_for_wrong) {
    std::vector<AskStep> taken;
    while (taken.empty() || taken.back() != AskStep::end) {
        const AskStep step = next_step(run, right, runs_on);
        take_step(run, step, 4);
        taken.push_back(step);
        if (step != AskStep::ask) continue;
        for (int i = 0; i < hands_for_right; ++i) count_hand(run, right, 1);
        for (int i = 0; i < hands_for_wrong; ++i) count_hand(run, 1 - right, 1);
    }
    return taken;
}

}  // namespace

TEST_CASE("asking: one key leads through a set, and talks it over where the class is divided") {
    using enum AskStep;
    CHECK(steps(of_two(), 0, true, 0, 0) == std::vector{ask, reveal, run_on, ask, reveal, run_on, end});
    CHECK(steps(of_two(), 0, false, 0, 0) == std::vector{ask, reveal, ask, reveal, end});
    CHECK(steps(of_two(), 0, false, 5, 5) == std::vector{ask, discuss, reveal, ask, discuss, reveal, end});
    CHECK(steps(of_two(), 0, false, 9, 1) == std::vector{ask, reveal, ask, reveal, end});  // they know it
    CHECK(steps(of_two(), 0, false, 1, 9) ==
          std::vector{ask, reveal, ask, reveal, end});  // nobody could tell them
}

TEST_CASE("asking: hands are counted twice, each in its own count, never below none nor for another choice") {
    AskRun run = of_two();
    CHECK(!count_hand(run, 0, 1));  // nothing is asked yet
    take_step(run, AskStep::ask, 3);
    CHECK(count_hand(run, 2, 1));
    CHECK(count_hand(run, 2, 1));
    CHECK(count_hand(run, 0, -1));
    CHECK(!count_hand(run, 3, 1));
    CHECK(!count_hand(run, -1, 1));
    CHECK(run.first == std::vector{0, 0, 2});
    take_step(run, AskStep::discuss, 0);
    CHECK(count_hand(run, 1, 1));
    CHECK(run.first == std::vector{0, 0, 2});
    CHECK(run.second == std::vector{0, 1, 0});
    take_step(run, AskStep::reveal, 0);
    CHECK(!count_hand(run, 1, 1));
    CHECK(hands_words(run.first, run.second, 1) == "0 of 2 right at first, 1 of 1 after talking");
}

TEST_CASE("asking: a second count that nobody made is none") {
    AskRun run = of_two();
    take_step(run, AskStep::ask, 2);
    count_hand(run, 0, 1);
    take_step(run, AskStep::discuss, 0);
    take_step(run, AskStep::reveal, 0);
    CHECK(run.second.empty());
    CHECK(hands_words(run.first, run.second, 0) == "1 of 1 right at first");
}

TEST_CASE(
    "asking: without a question, a hand or a right choice there is nothing to ask, to say or to count") {
    CHECK(next_step(AskRun{}, 0, true) == AskStep::end);
    CHECK(hands_words({0, 0}, {}, 0) == "");
    CHECK(hands_words({1, 2}, {}, -1) == "0 of 3 right at first");
    CHECK(hands_words({1, 2}, {}, 2) == "0 of 3 right at first");
}

TEST_CASE("asking: another question is asked from its beginning, and one that there is not changes nothing") {
    AskRun run = of_two();
    take_step(run, AskStep::ask, 2);
    count_hand(run, 0, 1);
    CHECK(is_over(AskStage::revealed));
    CHECK(is_over(AskStage::ran_on));
    CHECK_FALSE(is_over(AskStage::discussed));
    go_to_question(run, 5);
    CHECK(run.stage == AskStage::asked);
    go_to_question(run, -1);
    CHECK(run.stage == AskStage::asked);
    go_to_question(run, 1);
    CHECK(run.question == 1);
    CHECK(run.stage == AskStage::ready);
    CHECK(run.first.empty());
}

TEST_CASE("tally: the table has a row for each choice, and words cannot become formulas or columns") {
    const std::vector<AskedQuestion> asked{sample()};
    const std::string csv = tally_csv(asked);
    CHECK(csv.starts_with("# Ground study aid."));
    const std::string rows = csv.substr(csv.find('\n') + 1);
    CHECK(rows ==
          "asked_local,set,set_id,question_number,kind,question,choice_number,choice,right,hands_first,hands_"
          "second\n"
          "2025-11-24T17:00:00,Energy states,energy_states,2,energy_state,\"High, or low?\",1,high and "
          "fast,0,3,0\n"
          "2025-11-24T17:00:00,Energy states,energy_states,2,energy_state,\"High, or low?\",2,\"low, and "
          "slow\",1,10,14\n"
          "2025-11-24T17:00:00,Energy states,energy_states,2,energy_state,\"High, or "
          "low?\",3,'=SUM(A1),0,1,0\n");
    for (const char* column : {"asked_local", "hands_first", "hands_second", "right"})
        CHECK(tally_dictionary().find(std::string("class-answers.csv,") + column + ",") != std::string::npos);
}

TEST_CASE("tally: the date in the table is that of the calendar, over leap days and the turn of a year") {
    // Seconds since 1970 of these dates as GNU date gives them (date -u -d ... +%s).
    const auto date = [](std::int64_t unix_s) {
        AskedQuestion one = sample();
        one.asked_unix_s = unix_s;
        one.ahead_of_utc_s = 0;
        const std::string csv = tally_csv(std::vector{one});
        const std::size_t row = csv.find("hands_second\n") + 13;
        return csv.substr(row, csv.find(',', row) - row);
    };
    CHECK(date(1709164800) == "2024-02-29T00:00:00");
    CHECK(date(1767225599) == "2025-12-31T23:59:59");
    CHECK(date(1767225600) == "2026-01-01T00:00:00");
    CHECK(date(4107542400) == "2100-03-01T00:00:00");
    CHECK(date(0) == "");
}

TEST_CASE("tally: what is kept is read back, and a damaged line costs itself alone") {
    AskedQuestion once = sample();
    once.second.clear();
    const std::vector<AskedQuestion> asked{sample(), once, sample()};
    std::string text = tally_log_text(asked);
    TallyLog log = read_tally_log(text);
    CHECK(log.problems.empty());
    REQUIRE(log.asked.size() == 3);
    CHECK(tally_csv(log.asked) == tally_csv(asked));
    text.insert(text.find('\n') + 1, "{\"asked_unix_s\":1,\n");
    log = read_tally_log(text);
    CHECK(log.asked.size() == 3);
    CHECK(log.problems.size() == 1);
    // As many hands as choices, and a right one among them.
    std::string wrong = tally_log_text(std::vector{sample()});
    wrong.replace(wrong.find("\"right\":1"), 9, "\"right\":3");
    CHECK(read_tally_log(wrong).asked.empty());
}

TEST_CASE("tally: where all together are too long, the oldest are left out") {
    std::vector<AskedQuestion> asked(40, sample());
    for (std::size_t i = 0; i < asked.size(); ++i) asked[i].number = static_cast<int>(i) + 1;
    const std::string text = tally_log_text(asked, 2000);
    CHECK(text.size() <= 2000);
    const TallyLog log = read_tally_log(text);
    CHECK(log.problems.empty());
    REQUIRE(!log.asked.empty());
    CHECK(log.asked.back().number == 40);
    CHECK(log.asked.size() < 40);
}

TEST_CASE(
    "tally: of a log that is too long the newest lines are read, and the one that was cut is no problem") {
    std::string text;
    for (int number = 1; text.size() <= most_tally_bytes; number = number % 40 + 1) {
        AskedQuestion one = sample();
        one.number = number;
        text += tally_log_text(std::vector{one});
    }
    AskedQuestion last = sample();
    last.set_id = "last";
    text += "\n" + tally_log_text(std::vector{last});  // an empty line is nothing
    const TallyLog log = read_tally_log(text);
    CHECK(log.problems.empty());
    REQUIRE(!log.asked.empty());
    CHECK(log.asked.back().set_id == "last");
    CHECK(tally_log_text(log.asked, text.size()).size() <= most_tally_bytes);
}
