#include "base/result.h"
#include "tests/check.h"

using namespace slopewise;

TEST_CASE("result: a problem reads as one line with file, line, path, what is there and what may be") {
    CHECK(to_text({"gusts.json", 7, "/wind/speed_kt", "is 600", "0 to 60"}) ==
          "gusts.json:7: /wind/speed_kt is 600; allowed: 0 to 60");
    CHECK(to_text({"gusts.json", 0, "/id", "is missing", ""}) == "gusts.json: /id is missing");
    CHECK(to_text({"gusts.json", 3, "", "is not JSON at \"}\"", ""}) == "gusts.json:3: is not JSON at \"}\"");
}

TEST_CASE("result: it holds a value or problems") {
    const Result<int> good = success(5);
    CHECK(good.ok());
    CHECK(*good.value == 5);
    const Result<int> bad = failure<int>({{"a", 1, "", "b", ""}, {"c", 2, "", "d", ""}});
    CHECK(!bad.ok());
    CHECK(bad.problems.size() == 2);
}
