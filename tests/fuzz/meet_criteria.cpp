#include "data/criteria_file.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"

namespace slopewise::test {

void meet_criteria(std::string_view text) {
    const Result<Criteria> read = read_criteria(text, "x");
    if (!demand_answer(read)) return;
    const std::string written = criteria_text(*read.value);
    const Result<Criteria> again = read_criteria(written, "x");
    demand(again.ok(), "criteria that were written are read: " +
                           (again.ok() ? std::string() : to_text(again.problems.front())));
    demand(criteria_text(*again.value) == written, "criteria are written the same again");
}

std::vector<std::string> seeds_of_criteria() { return {criteria_text({}), "{\"kind\": \"criteria\"}"}; }

}  // namespace slopewise::test
