// The parser beneath most readers.
#include "data/json_tree.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_json(std::string_view text) {
    const Result<JsonNode> read = parse_json(text, "x");
    if (!demand_answer(read)) return;
    const std::string written = json_text(*read.value);
    const Result<JsonNode> again = parse_json(written, "x", std::size_t{16} << 20);
    demand(again.ok() && json_text(*again.value) == written, "what is handed on reads the same");
    const std::string quoted = json_string(text);
    demand(parse_json(quoted, "x", quoted.size()).ok(), "any bytes can be written as a text");
}

std::vector<std::string> seeds_of_json() {
    std::vector<std::string> seeds = shipped_texts("runways");
    seeds.insert(seeds.end(),
                 {"[1,-2.5e-3,true,false,null,{\"a\":[]},\"\\u00e9\\n\\\"\"]", "1e400", "[[[[]]]]"});
    return seeds;
}

}  // namespace slopewise::test
