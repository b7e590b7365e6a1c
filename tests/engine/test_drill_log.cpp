// The results of drills as they are kept: they come back, the oldest leave first, a damaged line costs
// itself.
#include <string>

#include "data/drill_log.h"
#include "tests/check.h"

using namespace slopewise;

namespace {

KeptDrillResult kept(const std::string& student, std::uint64_t seed) {
    KeptDrillResult one{student, {}};
    one.result.drill_id = "read_the_lights";
    one.result.seed = seed;
    one.result.finished = true;
    one.result.items = 20;
    one.result.right = 19;
    one.result.reactions_s = {0.5, 1.25};
    one.result.figures = {{Measure::right_percent, 95.0}};
    one.result.criteria = {{"answered right: at least 95 %", "95 %", true}};
    return one;
}

}  // namespace

TEST_CASE("drill log: results come back with their students, whatever these are called") {
    const std::vector<KeptDrillResult> all{kept("", 1), kept("Kestrel \"7\"\n\u00e9", 2)};
    const DrillLog log = read_drill_log(drill_log_text(all));
    CHECK(log.problems.empty());
    REQUIRE(log.kept.size() == 2);
    for (std::size_t i = 0; i < 2; ++i) {
        CHECK(log.kept[i].student == all[i].student);
        CHECK(log.kept[i].result == all[i].result);
    }
}

TEST_CASE("drill log: where there is no room the oldest are left out") {
    std::vector<KeptDrillResult> all;
    for (std::uint64_t seed = 1; seed <= 50; ++seed) all.push_back(kept("x", seed));
    const std::string text = drill_log_text(all, 2000);
    CHECK(text.size() <= 2000);
    const DrillLog log = read_drill_log(text);
    REQUIRE(log.kept.size() > 3);
    CHECK(log.kept.size() < 50);
    CHECK(log.kept.back().result.seed == 50);
    CHECK(log.kept.front().result.seed == 51 - log.kept.size());
}

TEST_CASE("drill log: of a text that is far too long the end is read, from a whole line on") {
    std::string text;
    while (text.size() <= most_drill_log_bytes) text += drill_log_text(std::vector{kept("x", 1)});
    text += drill_log_text(std::vector{kept("y", 2)});
    const DrillLog log = read_drill_log(text);
    CHECK(log.problems.empty());
    CHECK(log.kept.back().student == "y");
}

TEST_CASE("drill log: a damaged line is a problem with its number, and the others are read") {
    const std::string good = drill_log_text(std::vector{kept("x", 1)});
    for (const char* bad : {"{", "7", "{\"student\":3}", "{\"student\":\"x\",\"result\":{}}"}) {
        CAPTURE(bad);
        const DrillLog log = read_drill_log(good + bad + "\n" + good);
        CHECK(log.kept.size() == 2);
        REQUIRE_FALSE(log.problems.empty());
        CHECK(to_text(log.problems.front()).find("drill result 2") != std::string::npos);
    }
}
