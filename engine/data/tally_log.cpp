#include "data/tally_log.h"

#include "data/fields.h"
#include "data/log_lines.h"
#include "question/question.h"

namespace slopewise {
namespace {

constexpr std::size_t most_line_bytes = std::size_t{1} << 14;
constexpr std::size_t most_choices = 12;
constexpr double most_hands = 10000;

std::string numbers_text(const std::vector<int>& numbers) {
    std::string text;
    for (const int one : numbers) text += (text.empty() ? "" : ",") + std::to_string(one);
    return "[" + text + "]";
}

std::string line_of(const AskedQuestion& asked) {
    std::string choices;
    for (const std::string& choice : asked.choices)
        choices += (choices.empty() ? "" : ",") + json_string(choice);
    std::string line =
        "{\"asked_unix_s\":" + std::to_string(asked.asked_unix_s) +
        ",\"ahead_of_utc_s\":" + std::to_string(asked.ahead_of_utc_s) +
        ",\"set\":" + json_string(asked.set_id) + ",\"title\":" + json_string(asked.set_title) +
        ",\"number\":" + std::to_string(asked.number) + ",\"asks\":" + json_string(asked.kind) +
        ",\"words\":" + json_string(asked.words) + ",\"choices\":[" + choices +
        "],\"right\":" + std::to_string(asked.right) + ",\"first\":" + numbers_text(asked.first);
    if (!asked.second.empty()) line += ",\"second\":" + numbers_text(asked.second);
    return line + "}\n";
}

std::vector<int> read_hands(Fields& fields, std::string_view key, std::size_t choices) {
    std::vector<int> hands;
    for (const double one : fields.numbers(key, choices, choices, {0.0, most_hands}))
        hands.push_back(static_cast<int>(one));
    return hands;
}

AskedQuestion read_asked(Fields& fields) {
    AskedQuestion asked;
    // Seconds to the year 5138, and a clock at most a day off.
    asked.asked_unix_s = static_cast<std::int64_t>(fields.number("asked_unix_s", {0.0, 1e11}));
    asked.ahead_of_utc_s = static_cast<std::int64_t>(fields.number("ahead_of_utc_s", {-86400.0, 86400.0}));
    asked.set_id = fields.text("set", 40);
    asked.set_title = fields.text("title", 80);
    asked.number = fields.integer("number", 1, static_cast<int>(most_questions));
    asked.kind = fields.text("asks", 40);
    asked.words = fields.text("words", 200);
    asked.choices = fields.texts("choices", 2, most_choices);
    asked.right = fields.integer("right", 0, static_cast<int>(most_choices) - 1);
    asked.first = read_hands(fields, "first", asked.choices.size());
    if (fields.has("second")) asked.second = read_hands(fields, "second", asked.choices.size());
    if (asked.right >= static_cast<int>(asked.choices.size()))
        fields.report("right", "is " + std::to_string(asked.right),
                      "less than the " + std::to_string(asked.choices.size()) + " choices");
    fields.finish();
    return asked;
}

void read_line(std::string_view line, int number, TallyLog& log) {
    const std::string name = "class answer " + std::to_string(number);
    Result<JsonNode> parsed = parse_json(line, name, most_line_bytes);
    std::vector<Problem> problems = std::move(parsed.problems);
    if (parsed.value) {
        Fields fields(*parsed.value, name, "", problems);
        AskedQuestion asked = read_asked(fields);
        if (problems.empty()) log.asked.push_back(std::move(asked));
    }
    log.problems.insert(log.problems.end(), problems.begin(), problems.end());
}

}  // namespace

std::string tally_log_text(std::span<const AskedQuestion> asked, std::size_t most_bytes) {
    std::vector<std::string> lines;
    for (const AskedQuestion& one : asked) lines.push_back(line_of(one));
    return newest_lines(lines, most_bytes);
}

TallyLog read_tally_log(std::string_view text) {
    TallyLog log;
    int number = 0;
    for (const std::string_view line : log_lines(text, most_tally_bytes))
        if (++number; !line.empty()) read_line(line, number, log);
    return log;
}

}  // namespace slopewise
