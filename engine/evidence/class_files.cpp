#include "evidence/class_files.h"

#include <cmath>

#include "logbook/student_file.h"

namespace slopewise {
namespace {

// Rows are numbers by their bits, so that a made-up one could hold anything.
bool is_sound(const IndexRow& row) {
    constexpr std::int64_t year_3000_unix_s = 32503680000;
    constexpr double most_rad = 4.0;  // more than half round: no error of a path
    const AttemptRow& r = row.row;
    return r.started_unix_s >= 0 && r.started_unix_s < year_3000_unix_s &&
           std::abs(r.path_rad.bias) < most_rad && r.path_rad.scatter >= 0.0 && r.path_rad.scatter < most_rad;
}

struct Taking {
    ClassFileReader& reader;
    const Catalog& catalog;
    const Criteria& criteria;
    ClassFiles& into;

    void line(std::string_view text) {
        if (text.empty()) return;
        if (reader.line == 1 && looks_like_student_file(text)) return head(text);
        if (reader.line == 2 && looks_like_student_rows(text)) return rows(text);
        if (looks_like_kept_attempt(text)) return attempt(text);
        refuse({{reader.file, 0, "", "is no attempt of Slopewise", "a student's file or a single attempt"}});
    }

    void head(std::string_view text) {
        Result<std::string> student = read_student_file_head(text, reader.file);
        if (student.ok()) reader.student = std::move(*student.value);
        else refuse(std::move(student.problems));
    }

    // Damaged ones are told; their attempts are flown again.
    void rows(std::string_view text) {
        Result<std::vector<IndexRow>> read = read_student_rows(text, reader.file);
        if (!read.ok()) return refuse(std::move(read.problems));
        for (IndexRow& row : *read.value)
            if (is_sound(row)) reader.rows.insert_or_assign(row.id, std::move(row));
    }

    void attempt(std::string_view text) {
        const Result<std::string> id = kept_attempt_id(text, reader.file);
        if (!id.ok()) return refuse(id.problems);
        if (into.ids.contains(*id.value)) {
            ++reader.attempts;
            ++into.twice;
            return;
        }
        const auto with_row = reader.rows.find(*id.value);
        if (with_row == reader.rows.end()) return fly_again(text);
        if (!is_known(with_row->second.row.lesson)) read_title(text);
        take(with_row->second);
    }

    bool is_known(const std::string& lesson) const {
        return find_lesson(catalog, lesson) != nullptr || into.titles.contains(lesson);
    }

    void read_title(std::string_view text) {
        if (const Result<KeptAttempt> kept = read_kept_attempt(text, reader.file); kept.ok())
            keep_title(kept.value->recording.lesson);
    }
    void keep_title(const Lesson& lesson) {
        if (find_lesson(catalog, lesson.id) == nullptr) into.titles.emplace(lesson.id, lesson.title);
    }

    void fly_again(std::string_view text) {
        Result<KeptAttempt> kept = read_kept_attempt(text, reader.file);
        if (!kept.ok()) return refuse(std::move(kept.problems));
        const Lesson& lesson = kept.value->recording.lesson;
        std::vector<Problem> problems = check_lesson(catalog, lesson, reader.file);
        if (!problems.empty()) return refuse(std::move(problems));
        keep_title(lesson);
        ++into.flown_again;
        take(index_row(*kept.value, review_kept(*kept.value, scenario_of(catalog, lesson), criteria)));
    }

    void take(const IndexRow& row) {
        if (into.attempts.size() >= most_class_attempts)
            return refuse({{reader.file, 0, "", "is one attempt too many",
                            "at most " + std::to_string(most_class_attempts) + " of a class"}});
        ++reader.attempts;
        into.ids.insert(row.id);
        if (row.cut_off) {
            ++into.cut_off;
            return;
        }
        std::string student = row.student.empty() ? reader.student : row.student;
        if (student.empty()) student = "no name, " + reader.file;
        into.attempts.push_back({row.id, std::move(student), row.row});
    }

    void refuse(std::vector<Problem> problems) {
        for (Problem& problem : problems) {
            problem.line = reader.line;
            if (into.problems.size() < most_class_problems) into.problems.push_back(std::move(problem));
        }
        ++reader.refused;
        if (reader.line == 1 || reader.refused >= most_refused_lines) reader.given_up = true;
    }
};

}  // namespace

ClassFileReader begin_class_file(std::string file) {
    ClassFileReader reader;
    reader.file = std::move(file);
    return reader;
}

void take_class_line(ClassFileReader& reader, std::string_view line, const Catalog& catalog,
                     const Criteria& criteria, ClassFiles& into) {
    ++reader.line;
    if (line.ends_with('\r')) line.remove_suffix(1);
    if (!reader.given_up) Taking{reader, catalog, criteria, into}.line(line);
}

void end_class_file(const ClassFileReader& reader, const std::string& trouble, ClassFiles& into) {
    ++into.files;
    if (into.problems.size() >= most_class_problems) return;
    if (!trouble.empty()) into.problems.push_back({reader.file, reader.line, "", trouble, ""});
    else if (reader.attempts == 0 && reader.refused == 0)
        into.problems.push_back({reader.file, 0, "", "holds no attempt", "a student's file"});
}

}  // namespace slopewise
