// Sets of questions on the command line.
#include "tests/cli/ask.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("command line: check takes sets of questions, and tells what is wrong with one") {
    const cli::Outcome good = slopewise_with({"check", "assets/questions/energy_states.json"});
    CHECK(good.exit_code == cli::good);
    CHECK(good.out == "assets/questions/energy_states.json: good, questions \"energy_states\"\n");

    std::string text = read("assets/questions/energy_states.json");
    const std::string was = "\"distance_nm\": 1.2";
    REQUIRE(has(text, was));
    text.replace(text.find(was), was.size(), "\"distance_nm\": 12");
    const std::string name = scratch("bad_questions.json");
    std::ofstream(name) << text;
    const cli::Outcome bad = slopewise_with({"check", name});
    CHECK(bad.exit_code == cli::bad_input);
    CHECK(has(bad.error, name + ":10: /questions/0/stands/distance_nm is 12; allowed: 0.25 to 9"));
}
