#include "data/drill_log.h"

#include "data/drill_result_line.h"
#include "data/fields.h"
#include "data/log_lines.h"

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
    std::vector<std::string> lines;
    for (const KeptDrillResult& one : kept) lines.push_back(line_of(one));
    return newest_lines(lines, most_bytes);
}

DrillLog read_drill_log(std::string_view text) {
    DrillLog log;
    int number = 0;
    for (const std::string_view line : log_lines(text, most_drill_log_bytes))
        if (++number; !line.empty()) read_line(line, number, log);
    return log;
}

}  // namespace slopewise
