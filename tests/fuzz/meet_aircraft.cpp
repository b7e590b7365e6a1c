#include "data/fields.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_aircraft(std::string_view text) {
    const Result<DataEntry> read = read_entry({"x", text});
    if (!demand_answer(read)) return;
    const auto* aircraft = std::get_if<Aircraft>(&*read.value);
    if (aircraft == nullptr) return;
    // As a school hands it on: the file's own numbers, on one line.
    const std::string handed_on = json_text(*parse_json(text, "x").value);
    const Result<DataEntry> again = read_entry({"x", handed_on});
    demand(again.ok() && std::get<Aircraft>(*again.value).name == aircraft->name,
           "an aircraft that is handed on is read");
    fly_final(*aircraft, plain_runway(), text);
}

std::vector<std::string> seeds_of_aircraft() { return shipped_texts("aircraft"); }

}  // namespace slopewise::test
