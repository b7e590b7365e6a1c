#include "logbook/student_file.h"

#include "data/fields.h"

namespace slopewise {
namespace {

constexpr std::string_view opening = "{\"slopewise_student\":";
constexpr int student_file_format = 1;

// The next line of `rest`, without its end, of whichever system.
std::string_view take_line(std::string_view& rest) {
    const std::size_t end = rest.find('\n');
    std::string_view line = rest.substr(0, end);
    rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
    if (line.ends_with('\r')) line.remove_suffix(1);
    return line;
}

}  // namespace

std::string student_file_head(std::string_view student) {
    const std::string name = student.empty() ? "" : ",\"student\":" + json_string(student);
    return std::string(opening) + std::to_string(student_file_format) + name + "}\n";
}

bool looks_like_student_file(std::string_view text) { return text.starts_with(opening); }

Result<std::string> read_student_file_head(std::string_view line, const std::string& file) {
    Result<JsonNode> parsed =
        looks_like_student_file(line)
            ? parse_json(line, file, 4096)
            : failure<JsonNode>({{file, 1, "", "is no student's file of Slopewise", ""}});
    if (!parsed.ok()) return failure<std::string>(std::move(parsed.problems));
    std::vector<Problem> problems;
    Fields fields(*parsed.value, file, "", problems);
    if (const JsonNode* format = fields.raw("slopewise_student", JsonNode::Kind::number)) {
        if (format->number > student_file_format)
            return failure<std::string>(
                {{file, 1, "", "was written by a newer version of Slopewise", "format 1"}});
        fields.integer("slopewise_student", student_file_format, student_file_format);
    }
    std::string student = fields.text_or("student", "");
    fields.finish();
    if (!problems.empty()) return failure<std::string>(std::move(problems));
    return success(std::move(student));
}

StudentFile read_student_file(std::string_view text, const std::string& file,
                              const std::function<void(KeptAttempt)>& each) {
    StudentFile result;
    Result<std::string> head = read_student_file_head(take_line(text), file);
    result.problems = std::move(head.problems);
    if (!head.ok()) return result;
    result.student = std::move(*head.value);
    for (int line = 2; !text.empty(); ++line) {
        const std::string_view one = take_line(text);
        if (one.empty()) continue;
        Result<KeptAttempt> attempt = read_kept_attempt(one, file);
        for (Problem& problem : attempt.problems) {
            problem.line = line;
            result.problems.push_back(std::move(problem));
        }
        if (attempt.ok()) each(std::move(*attempt.value));
    }
    return result;
}

}  // namespace slopewise
