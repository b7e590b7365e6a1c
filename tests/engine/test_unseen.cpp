// Signs that are not seen, in texts of others.
#include "share/unseen.h"

#include <doctest/doctest.h>

#include <string>

#include "data/json_tree.h"

using namespace slopewise;

TEST_CASE("unseen: each place is told, twenty of them at most") {
    std::string text = "{\"a\": \"\\u202e\", \"b\": [";
    for (int i = 0; i < 30; ++i) text += i > 0 ? ",\"\\u200b\"" : "\"seen\"";
    const Result<JsonNode> parsed = parse_json(text + "]}", "x.json");
    REQUIRE(parsed.ok());
    std::vector<Problem> problems;
    find_unseen(*parsed.value, "", "x.json", problems);
    REQUIRE(problems.size() == 20);
    CHECK(to_text(problems[0]) ==
          "x.json:1: /a has characters that cannot be seen; allowed: letters and signs");
    CHECK(problems[1].path == "/b/1");
}
