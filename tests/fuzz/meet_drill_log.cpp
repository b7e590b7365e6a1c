#include "data/drill_log.h"

#include "drill/drill_words.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"

namespace slopewise::test {

void meet_drill_log(std::string_view text) {
    const DrillLog log = read_drill_log(text);
    demand_told(log.problems);
    const std::string written = drill_log_text(log.kept, text.size() * 10 + 100000);
    demand(written.size() <= text.size() * 10 + 100000, "a log is as long as it may be");
    if (written.size() > most_drill_log_bytes) return;
    const DrillLog again = read_drill_log(written);
    demand(again.problems.empty(), "results that were kept are read: " +
                                       (again.problems.empty() ? "" : to_text(again.problems.front())));
    demand(again.kept.size() == log.kept.size() && drill_log_text(again.kept) == written,
           "results are kept the same again");
    for (const KeptDrillResult& one : log.kept) {
        demand(one.result.right <= one.result.items, "no more is right than was asked");
        demand(!result_lines(one.result).empty(), "a result has words");
    }
}

std::vector<std::string> seeds_of_drill_log() {
    KeptDrillResult one;
    one.student = "Kestrel \"7\"";
    one.result.drill_id = "read_the_lights";
    one.result.seed = 7;
    one.result.finished = true;
    one.result.items = 20;
    one.result.right = 17;
    one.result.reactions_s = {1.25, 0.5};
    one.result.figures = {{Measure::right_percent, 85.0}};
    JudgedCriterion judged;
    judged.met = true;
    one.result.criteria = {judged};
    KeptDrillResult other = one;
    other.student.clear();
    other.result.figures.clear();
    const KeptDrillResult kept[] = {one, other};
    return {drill_log_text(kept)};
}

}  // namespace slopewise::test
