#include "data/drill_log.h"

#include <algorithm>

#include "data/drill_result_line.h"
#include "data/fields.h"

namespace slopewise {
namespace {

constexpr std::size_t most_line_bytes = std::size_t{1} << 16;

std::string line_of(const KeptDrillResult& kept) {
    std::string result = drill_result_line(kept.result);
    result.pop_back();  // its newline
    const std::string student = kept.student.empty() ? "" : "\"student\":" + json_string(kept.student) + ",";
    return "{" + student + "\"result\":" + result + "}\n";
}

// Appends what the line holds, or its problems.
void read_line(std::string_view line, int number, DrillLog& log) {
    const std::string name = "drill result " + std::to_string(number);
    Result<JsonNode> parsed = parse_json(line, name, most_line_bytes);
    std::vector<Problem> problems = std::move(parsed.problems);
    if (parsed.value) {
        Fields fields(*parsed.value, name, "", problems);
        KeptDrillResult kept;
        kept.student = fields.text_or("student", "");
        const JsonNode* node = fields.raw("result", JsonNode::Kind::object);
        fields.finish();
        if (node != nullptr) {
            Result<DrillResult> result = read_drill_result(json_text(*node), name);
            problems.insert(problems.end(), result.problems.begin(), result.problems.end());
            if (result.value) kept.result = std::move(*result.value);
        }
        if (problems.empty()) log.kept.push_back(std::move(kept));
    }
    log.problems.insert(log.problems.end(), problems.begin(), problems.end());
}

}  // namespace

std::string drill_log_text(std::span<const KeptDrillResult> kept, std::size_t most_bytes) {
    std::vector<std::string> lines;  // newest first
    std::size_t bytes = 0;
    for (auto one = kept.rbegin(); one != kept.rend(); ++one) {
        std::string line = line_of(*one);
        bytes += line.size();
        if (bytes > most_bytes) break;
        lines.push_back(std::move(line));
    }
    std::string text;
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) text += *line;
    return text;
}

DrillLog read_drill_log(std::string_view text) {
    DrillLog log;
    if (text.size() > most_drill_log_bytes) {
        text.remove_prefix(text.size() - most_drill_log_bytes);
        text.remove_prefix(std::min(text.find('\n'), text.size()));  // the rest of a line that was cut
    }
    for (int number = 1; !text.empty(); ++number) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (!line.empty()) read_line(line, number, log);
    }
    return log;
}

}  // namespace slopewise
