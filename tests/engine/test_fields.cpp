// Reading the fields of an object: ranges, defaults, kinds, and every problem at once.
#include "data/fields.h"

#include <array>

#include "tests/check.h"

using namespace slopewise;

namespace {

// An object read by a reader; what it reports, a line each.
template <class Read>
std::string problems_of(const std::string& text, Read read) {
    const Result<JsonNode> root = parse_json(text, "x.json");
    if (!root.ok()) return "not JSON";
    std::vector<Problem> problems;
    Fields fields(*root.value, "x.json", "", problems);
    read(fields);
    fields.finish();
    std::string all;
    for (const Problem& problem : problems) all += to_text(problem) + "\n";
    return all;
}

}  // namespace

TEST_CASE("fields: a number within its range is read, ends included, and one outside is told") {
    const auto read = [](Fields& fields) { fields.number("a", {-1.0, 2.5}); };
    CHECK(problems_of(R"({"a": -1})", read) == "");
    CHECK(problems_of(R"({"a": 2.5})", read) == "");
    CHECK(problems_of(R"({"a": 2.50001})", read) == "x.json:1: /a is 2.50001; allowed: -1 to 2.5\n");
    CHECK(problems_of(R"({"a": -1e9})", read) == "x.json:1: /a is -1000000000; allowed: -1 to 2.5\n");
    CHECK(problems_of("{}", read) == "x.json:1: /a is missing\n");
    CHECK(problems_of(R"({"a": null})", read) == "x.json:1: /a is null; allowed: a number\n");
    CHECK(problems_of(R"({"a": true})", read) == "x.json:1: /a is true or false; allowed: a number\n");
    CHECK(problems_of(R"({"a": []})", read) == "x.json:1: /a is a list; allowed: a number\n");
    CHECK(problems_of(R"({"a": {}})", read) == "x.json:1: /a is an object; allowed: a number\n");
    CHECK(problems_of(R"({"a": "2"})", read) == "x.json:1: /a is a text; allowed: a number\n");
}

TEST_CASE("fields: an optional field has its default when it is not there, and its range when it is") {
    double value = 0.0;
    const auto read = [&](Fields& fields) { value = fields.number_or("a", 7.0, {0.0, 1.0}); };
    CHECK(problems_of("{}", read) == "");
    CHECK(value == 7.0);
    CHECK(problems_of(R"({"a": 0.5})", read) == "");
    CHECK(value == 0.5);
    CHECK(problems_of(R"({"a": 3})", read) == "x.json:1: /a is 3; allowed: 0 to 1\n");
    std::string text;
    const auto read_text = [&](Fields& fields) { text = fields.text_or("t", "none", 5); };
    CHECK(problems_of("{}", read_text) == "");
    CHECK(text == "none");
    CHECK(problems_of(R"({"t": "abcdef"})", read_text) == "x.json:1: /t is 6 bytes long; allowed: 1 to 5\n");
}

TEST_CASE("fields: a whole number must be whole, and is told once when it is not") {
    int value = 0;
    const auto read = [&](Fields& fields) { value = fields.integer("a", 0, 3); };
    CHECK(problems_of(R"({"a": 2})", read) == "");
    CHECK(value == 2);
    CHECK(problems_of(R"({"a": 2.0})", read) == "");
    CHECK(problems_of(R"({"a": 1.5})", read) == "x.json:1: /a is 1.5; allowed: a whole number, 0 to 3\n");
    CHECK(problems_of(R"({"a": 4.5})", read) == "x.json:1: /a is 4.5; allowed: 0 to 3\n");
}

TEST_CASE("fields: a choice is one of its names") {
    constexpr std::array<std::string_view, 2> names{"left", "right"};
    std::size_t index = 9;
    const auto read = [&](Fields& fields) { index = fields.one_of("side", names); };
    CHECK(problems_of(R"({"side": "right"})", read) == "");
    CHECK(index == 1);
    CHECK(problems_of(R"({"side": "Right"})", read) ==
          "x.json:1: /side is \"Right\"; allowed: \"left\", \"right\"\n");
    CHECK(problems_of(R"({"side": 1})", read) == "x.json:1: /side is a number; allowed: a text\n");
}

TEST_CASE("fields: objects and lists carry their path, and a missing object is told once") {
    const auto read = [](Fields& fields) {
        Fields inner = fields.object("wing");
        inner.number("area_m2", {1.0, 2.0});
        inner.number("span_m", {1.0, 2.0});
        inner.finish();
        for (Fields& item : fields.list("flaps", 1, 2)) {
            item.number("lift", {0.0, 1.0});
            item.finish();
        }
    };
    CHECK(
        problems_of(
            "{\n\"wing\": {\"area_m2\": 1.5,\n\"span_m\": 9},\n\"flaps\": [{\"lift\": 0.5},\n{\"lift\": 5}]}",
            read) ==
        "x.json:3: /wing/span_m is 9; allowed: 1 to 2\n"
        "x.json:5: /flaps/1/lift is 5; allowed: 0 to 1\n");
    CHECK(problems_of("{}", read) == "x.json:1: /wing is missing\nx.json:1: /flaps is missing\n");
    CHECK(problems_of(R"({"wing": 3, "flaps": [4]})", read) ==
          "x.json:1: /wing is a number; allowed: an object\n"
          "x.json:1: /flaps/0 is a number; allowed: an object\n");
    CHECK(problems_of(R"({"wing": {"area_m2": 1, "span_m": 1}, "flaps": []})", read) ==
          "x.json:1: /flaps has 0 entries; allowed: 1 to 2\n");
    CHECK(problems_of(R"({"wing": {"area_m2": 1, "span_m": 1}, "flaps": [{}, {}, {}]})", read) ==
          "x.json:1: /flaps has 3 entries; allowed: 1 to 2\n");
}

TEST_CASE("fields: of a list of texts or of numbers each bad entry is told by its place, and the good stay") {
    std::vector<std::string> texts;
    const auto read_texts = [&](Fields& fields) { texts = fields.texts("t", 0, 5, 3); };
    CHECK(problems_of(R"({"t": ["a", 7, "", "abcd", "abc"]})", read_texts) ==
          "x.json:1: /t/1 is a number; allowed: a text\n"
          "x.json:1: /t/2 is 0 bytes long; allowed: 1 to 3\n"
          "x.json:1: /t/3 is 4 bytes long; allowed: 1 to 3\n");
    CHECK(texts == std::vector<std::string>{"a", "abc"});
    std::vector<double> numbers;
    const auto read_numbers = [&](Fields& fields) { numbers = fields.numbers("n", 0, 5, {0.0, 1.0}); };
    CHECK(problems_of(R"({"n": [0, "1", -0.5, 1.5, 1]})", read_numbers) ==
          "x.json:1: /n/1 is a text; allowed: a number\n"
          "x.json:1: /n/2 is -0.5; allowed: 0 to 1\n"
          "x.json:1: /n/3 is 1.5; allowed: 0 to 1\n");
    CHECK(numbers == std::vector<double>{0.0, 1.0});
}

TEST_CASE("fields: an unknown key is told with the nearest known one, if there is a near one") {
    const auto read = [](Fields& fields) {
        fields.number_or("speed_kt", 0.0, {0.0, 1.0});
        fields.number_or("heading_deg", 0.0, {0.0, 1.0});
    };
    CHECK(problems_of(R"({"sped_kt": 1})", read) ==
          "x.json:1: /sped_kt is not a known key; nearest: \"speed_kt\"\n");
    CHECK(problems_of(R"({"speedkt": 1})", read) ==
          "x.json:1: /speedkt is not a known key; nearest: \"speed_kt\"\n");
    CHECK(problems_of(R"({"heading": 1})", read) == "x.json:1: /heading is not a known key\n");
    CHECK(problems_of(R"({"zzz": 1})", read) == "x.json:1: /zzz is not a known key\n");
    CHECK(problems_of(R"({"": 1})", read) == "x.json:1: / is not a known key\n");
}

TEST_CASE("fields: numbers are told in their shortest form") {
    CHECK(number_text(600.0) == "600");
    CHECK(number_text(0.5) == "0.5");
    CHECK(number_text(-0.0002) == "-0.0002");
    CHECK(number_text(-0.0) == "0");
    CHECK(number_text(1013.25) == "1013.25");
}
