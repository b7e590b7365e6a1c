#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/fly.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_runway(std::string_view text) {
    const Result<DataEntry> read = read_entry({"x", text});
    if (!demand_answer(read)) return;
    if (const auto* runway = std::get_if<Runway>(&*read.value)) {
        demand(runway->aim_distance_m < runway->length_m, "the aim point is on the runway");
        fly_final(tourer(), *runway, text);
    }
}

std::vector<std::string> seeds_of_runway() { return shipped_texts("runways"); }

}  // namespace slopewise::test
