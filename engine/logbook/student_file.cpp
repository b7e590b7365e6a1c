#include "logbook/student_file.h"

#include "data/fields.h"
#include "logbook/text_sum.h"

namespace slopewise {
namespace {

constexpr std::string_view opening = "{\"slopewise_student\":";
constexpr int student_file_format = 1;
constexpr std::string_view rows_opening = "{\"slopewise_rows\":1,\"sum\":\"", rows_key = "\",\"rows\":[";
constexpr std::size_t most_rows = 20000;

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

std::string student_rows_line(std::span<const IndexRow* const> rows) {
    if (rows.empty()) return "";
    std::string list;
    for (const IndexRow* row : rows) list += (list.empty() ? "" : ",") + json_string(index_row_text(*row));
    list += "]}";
    return std::string(rows_opening) + text_sum(list) + std::string(rows_key) + list + "\n";
}

bool looks_like_student_rows(std::string_view line) { return line.starts_with("{\"slopewise_rows\":"); }

Result<std::vector<IndexRow>> read_student_rows(std::string_view line, const std::string& file) {
    using Rows = std::vector<IndexRow>;
    const auto refuse = [&](const char* what) { return failure<Rows>({{file, 2, "/rows", what, ""}}); };
    while (line.ends_with('\n') || line.ends_with('\r')) line.remove_suffix(1);
    const std::size_t list = rows_opening.size() + text_sum_digits + rows_key.size();
    if (!line.starts_with(rows_opening)) return success(Rows{});  // of another version
    if (line.size() > most_kept_attempt_bytes || line.size() < list ||
        line.substr(list - rows_key.size(), rows_key.size()) != rows_key ||
        line.substr(rows_opening.size(), text_sum_digits) != text_sum(line.substr(list)))
        return refuse("are damaged: their sum does not agree");
    Result<JsonNode> parsed = parse_json(line, file, most_kept_attempt_bytes);
    if (!parsed.ok()) return failure<Rows>(std::move(parsed.problems));
    std::vector<Problem> problems;
    Fields fields(*parsed.value, file, "", problems);
    constexpr std::size_t longest = 2000;
    Rows rows;
    for (const std::string& text : fields.texts("rows", 0, most_rows, longest))
        if (std::optional<IndexRow> row = read_index_row(text)) rows.push_back(std::move(*row));
    if (!problems.empty()) return failure<Rows>(std::move(problems));
    return success(std::move(rows));
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
        if (one.empty() || (line == 2 && looks_like_student_rows(one))) continue;
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
