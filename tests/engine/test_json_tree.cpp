// The parser keeps the line of every value, and says where a text stops being JSON.
#include "data/json_tree.h"

#include "tests/check.h"

using namespace slopewise;

namespace {

JsonNode parsed(std::string_view text) {
    Result<JsonNode> result = parse_json(text, "x.json");
    for (const Problem& problem : result.problems) FAIL_CHECK(to_text(problem));
    return result.ok() ? *result.value : JsonNode{};
}

std::string problem_of(std::string_view text) {
    const Result<JsonNode> result = parse_json(text, "x.json");
    return result.ok() ? "parsed" : to_text(result.problems.front());
}

const JsonNode& member(const JsonNode& object, std::string_view key) {
    static const JsonNode none;
    for (const auto& [name, value] : object.members)
        if (name == key) return value;
    FAIL_CHECK("no member " << key);
    return none;
}

}  // namespace

TEST_CASE("json: every kind of value is read, members in the file's order") {
    const JsonNode root =
        parsed(R"({"b": true, "a": null, "n": -1.5e2, "i": 7, "t": "x\"\u00e9", "l": [1, [2], {}]})");
    CHECK(root.kind == JsonNode::Kind::object);
    CHECK(root.members[0].name == "b");
    CHECK(root.members[1].name == "a");
    CHECK(member(root, "b").boolean);
    CHECK(member(root, "a").kind == JsonNode::Kind::null);
    CHECK(member(root, "n").number == -150.0);
    CHECK(member(root, "i").number == 7.0);
    CHECK(member(root, "t").text == "x\"\u00e9");
    const JsonNode& list = member(root, "l");
    CHECK(list.items.size() == 3);
    CHECK(list.items[1].items[0].number == 2.0);
    CHECK(list.items[2].kind == JsonNode::Kind::object);
}

TEST_CASE("json: a value of every kind is written as it was read") {
    const std::string text = R"({"b": [true, false], "a": null, "n": -150.5, "t": "x\"", "o": {}, "l": []})";
    CHECK(json_text(parsed(text)) == text);
}

TEST_CASE("json: each value knows its line, whatever stands before and behind it") {
    const JsonNode root = parsed(
        "{\n"
        "  \"a\": 1,\n"
        "  \"b\": 2\n"
        "  ,\"c\": [\n"
        "    3,\n"
        "    4\n"
        "  ],\n"
        "\n"
        "  \"d\": {\n"
        "    \"e\": \"text\",\n"
        "    \"f\": true }\n"
        "}\n");
    CHECK(root.line == 1);
    CHECK(member(root, "a").line == 2);
    CHECK(member(root, "b").line == 3);  // though its number ends only with the line
    CHECK(member(root, "c").line == 4);
    CHECK(member(root, "c").items[0].line == 5);
    CHECK(member(root, "c").items[1].line == 6);
    CHECK(member(root, "d").line == 9);
    CHECK(member(member(root, "d"), "e").line == 10);
    CHECK(member(member(root, "d"), "f").line == 11);
}

TEST_CASE("json: lines ended by carriage return and line feed count once") {
    const JsonNode root = parsed("{\r\n \"a\": 1,\r\n \"b\": 2\r\n}\r\n");
    CHECK(member(root, "a").line == 2);
    CHECK(member(root, "b").line == 3);
}

TEST_CASE("json: a text that is not JSON is told with the line and the last words read") {
    const struct {
        const char* text;
        const char* says;
    } rows[] = {
        {"", "x.json:1: is not JSON at \"\""},
        {"   \n  ", "x.json:2: is not JSON at \"   <U+000A>  \""},
        {"{", "x.json:1: is not JSON at \"{\""},
        {"{\"a\": }", "x.json:1: is not JSON at \"\"a\": }\""},
        {"{\n\"a\": 1,\n}", "x.json:3: is not JSON at \"1,<U+000A>}\""},
        {"{\"a\": 01}", "x.json:1: is not JSON at \"1\""},
        {"{\"a\": nan}", "x.json:1: is not JSON at \"\"a\": na\""},
        {"{\"a\": 'b'}", "x.json:1: is not JSON at \"\"a\": '\""},
        {"{} {}", "x.json:1: is not JSON at \"{} {\""},
        {"// no\n{}", "x.json:1: is not JSON at \"/\""},
        {"[1, 2", "x.json:1: is not JSON at \"2\""},
        {"\"open", "x.json:1: is not JSON at \"\"open\""},
        {"{\"a\": 1e999}", "x.json:1: is not JSON at \"1e999\""},
        {"{\"a\": \"\x80\"}", "x.json:1: is not JSON at \"\"\x80\""},
    };
    for (const auto& row : rows) CHECK(problem_of(row.text) == std::string(row.says));
}

TEST_CASE("json: a repeated key is told with its line, in any object") {
    CHECK(problem_of("{\"a\": 1,\n\"a\": 2}") == "x.json:2: key \"a\" stands twice; allowed: each key once");
    CHECK(problem_of("{\"a\": {\"b\": 1,\n\n\"b\": 2}}") ==
          "x.json:3: key \"b\" stands twice; allowed: each key once");
    CHECK(problem_of("{\"a\": {\"b\": 1}, \"c\": {\"b\": 2}}") == "parsed");
}

TEST_CASE("json: 32 levels and a mebibyte are read, one more of either is not") {
    CHECK(problem_of(std::string(32, '[') + std::string(32, ']')) == "parsed");
    CHECK(problem_of(std::string(33, '[') + std::string(33, ']')) ==
          "x.json:1: is nested too deep; allowed: 32 levels");
    const std::size_t most = std::size_t{1} << 20;
    CHECK(problem_of("1" + std::string(most - 1, ' ')) == "parsed");
    CHECK(problem_of("1" + std::string(most, ' ')) == "x.json: is 1048577 bytes long; allowed: 1 MiB");
}

TEST_CASE("json: what would take long or much memory is refused: many keys, long ones, millions of values") {
    const auto object_of = [](int keys) {
        std::string text = "{\"k0\":0";
        for (int i = 1; i < keys; ++i) text += ",\"k" + std::to_string(i) + "\":0";
        return text + "}";
    };
    CHECK(problem_of(object_of(300)) == "parsed");
    CHECK(problem_of(object_of(301)) == "x.json:1: has an object of more than 300 keys");
    CHECK(problem_of("{\"" + std::string(100, 'k') + "\":0}") == "parsed");
    CHECK(problem_of("{\"" + std::string(101, 'k') + "\":0}") ==
          "x.json:1: has a key of 101 bytes; allowed: 100");
    const auto list_of = [](std::size_t values) {
        std::string text(2 * values + 1, '0');  // with the list itself one more
        for (std::size_t i = 0; i < text.size(); i += 2) text[i] = ',';
        text.front() = '[';
        text.back() = ']';
        return text;
    };
    constexpr std::size_t roomy = std::size_t{8} << 20;
    CHECK(parse_json(list_of(1'999'999), "x.json", roomy).ok());
    const Result<JsonNode> too_many = parse_json(list_of(2'000'000), "x.json", roomy);
    REQUIRE(!too_many.ok());
    CHECK(to_text(too_many.problems.front()) == "x.json:1: holds more than 2000000 values");
}

TEST_CASE("json: of a long text only the beginning is told, never half a letter of it") {
    const std::string told = problem_of("\"" + std::string(400, 'x'));
    CHECK(told == "x.json:1: is not JSON at \"\"" + std::string(283, 'x') + "...");
    CHECK(problem_of("{" + std::string(200, ' ') + "\"") == "x.json:1: is not JSON at \"\"\"");
    const std::string letters = to_text({"x", 0, "", std::string(299, 'x') + "\u00e9", ""});
    CHECK(letters == "x: " + std::string(299, 'x') + "...");
}
