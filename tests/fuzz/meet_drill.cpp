#include "drill/flown_drill.h"
#include "drill/quiz.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_drill(std::string_view text) {
    const Result<DataEntry> read = read_entry({"x", text});
    if (!demand_answer(read)) return;
    const auto* drill = std::get_if<Drill>(&*read.value);
    if (drill == nullptr || !is_flown(*drill)) return;  // cards are drawn in a quiz, which its own tests do
    const FlownDrill flown = begin_flown(*drill, shipped_scenario("final_calm"), text.size());
    fly_a_while(flown.scenario, text);
}

std::vector<std::string> seeds_of_drill() { return shipped_texts("drills"); }

}  // namespace slopewise::test
