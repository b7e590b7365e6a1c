// A class's files with something wrong in them: what is told, what is left out, and what is read all the
// same.
#include <doctest/doctest.h>

#include <cmath>

#include "evidence/class_table.h"
#include "logbook/text_sum.h"
#include "tests/fixtures.h"
#include "tests/students/class_students.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

const ClassStudent& heron() {
    static const ClassStudent student = class_student(0, shipped());
    return student;
}

void read_lines(ClassFiles& files, const std::vector<std::string>& lines, const std::string& trouble = "") {
    ClassFileReader reader = begin_class_file("one.jsonl");
    for (const std::string& line : lines) take_class_line(reader, line, shipped(), Criteria{}, files);
    end_class_file(reader, trouble, files);
}

ClassFiles read_one(const std::vector<std::string>& lines, const std::string& trouble = "") {
    ClassFiles files;
    read_lines(files, lines, trouble);
    return files;
}

// An attempt whose sum agrees and whose identity can be read, and nothing more of it.
std::string hollow_attempt(const std::string& id) {
    const std::string summed = "\"id\":\"" + id + "\"}";
    return "{\"slopewise_attempt\":1,\"sum\":\"" + text_sum(summed) + "\"," + summed;
}

ClassAttempt attempt_at(const std::string& lesson, bool unaided) {
    ClassAttempt attempt{"1", "Heron", {}};
    attempt.row.lesson = lesson;
    attempt.row.unaided = unaided;
    return attempt;
}

}  // namespace

TEST_CASE("class files: a first line of a newer version ends the file, and says so") {
    std::vector<std::string> lines = heron().lines(false);
    lines[0] = R"({"slopewise_student":2})";
    const ClassFiles files = read_one(lines);
    CHECK(files.attempts.empty());
    REQUIRE(files.problems.size() == 1);
    CHECK(to_text(files.problems[0]).find("one.jsonl:1: was written by a newer version") == 0);
}

TEST_CASE("class files: an attempt that holds nothing is told, unless the row that came with it is enough") {
    const std::string id = heron().rows[0].id;
    const ClassFiles bare = read_one({R"({"slopewise_student":1})", hollow_attempt(id)});
    CHECK(bare.attempts.empty());
    REQUIRE(!bare.problems.empty());
    CHECK(bare.problems[0].line == 2);
    // With a row of a lesson that is not shipped: its title would stand in the attempt, and cannot be read.
    ClassStudent student = heron();
    student.rows.resize(1);
    student.rows[0].row.lesson = "of_the_school";
    student.attempts = {hollow_attempt(id)};
    const ClassFiles with_row = read_one(student.lines());
    CHECK(with_row.problems.empty());
    CHECK(with_row.titles.empty());
    REQUIRE(with_row.attempts.size() == 1);
    CHECK(class_rows(with_row, shipped()).front().title == "of_the_school");
}

TEST_CASE("class files: an attempt in an aircraft that there is not is told, and the others are read") {
    Result<KeptAttempt> kept = read_kept_attempt(heron().attempts[0], "one.jsonl");
    REQUIRE(kept.ok());
    kept.value->recording.lesson.aircraft_id = "nothing";
    std::vector<std::string> lines = heron().lines(false);
    lines[1] = kept_attempt_text(*kept.value);
    const ClassFiles files = read_one(lines);
    REQUIRE(files.problems.size() == 1);
    CHECK(files.problems[0].line == 2);
    CHECK(to_text(files.problems[0]).find("nothing") != std::string::npos);
    CHECK(files.attempts.size() == heron().attempts.size() - 1);
}

TEST_CASE("class files: a row of a wider scatter than a path has, or of no date, is not believed") {
    ClassStudent student = heron();
    student.rows[0].row.path_rad.scatter = 5.0;
    student.rows[1].row.path_rad.scatter = -0.1;
    student.rows[2].row.started_unix_s = -1;
    CHECK(read_one(student.lines()).flown_again == 3);
}

TEST_CASE("class files: one attempt more than a class may have is told and left out") {
    ClassFiles files;
    files.attempts.resize(most_class_attempts - 1);
    read_lines(files, heron().lines());
    CHECK(files.attempts.size() == most_class_attempts);
    REQUIRE(!files.problems.empty());
    CHECK(to_text(files.problems[0]).find("is one attempt too many; allowed: at most 20000") !=
          std::string::npos);
}

TEST_CASE("class files: of many problems the first are kept, and the files are still counted") {
    ClassFiles files;
    files.problems.resize(most_class_problems);
    read_lines(files, {"A letter."}, "it broke off");
    CHECK(files.problems.size() == most_class_problems);
    CHECK(files.files == 1);
}

TEST_CASE("class files: a file that breaks off is told with its reason, and keeps what was read") {
    const ClassFiles files = read_one(heron().lines(), "the disk was taken out");
    REQUIRE(files.problems.size() == 1);
    CHECK(to_text(files.problems[0]).find("the disk was taken out") != std::string::npos);
    CHECK(files.attempts.size() == heron().attempts.size());
}

TEST_CASE("class files: the line ends of another system change nothing") {
    std::vector<std::string> lines = heron().lines();
    for (std::string& line : lines) line += '\r';
    const ClassFiles files = read_one(lines);
    CHECK(files.problems.empty());
    CHECK(files.flown_again == 0);
    CHECK(files.attempts.size() == heron().attempts.size());
}

TEST_CASE("class files: a lesson is called by its title where one is told, else by its identity") {
    ClassFiles files;
    for (const char* lesson : {"of_the_school", "of_another"})
        files.attempts.push_back(attempt_at(lesson, true));
    files.titles.emplace("of_the_school", "Final at our field");
    const std::vector<ClassRow> rows = class_rows(files, shipped());
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].title == "Final at our field");
    CHECK(rows[1].title == "of_another");
}

TEST_CASE(
    "class files: without an unaided attempt there is no figure, and a fault of a later version is named") {
    ClassFiles files;
    files.attempts.push_back(attempt_at("final_calm", false));
    files.attempts[0].row.priority_fault = "of_a_later_version";
    const ClassRow row = class_rows(files, shipped()).front();
    CHECK(std::isnan(row.bias_rad));
    CHECK(std::isnan(row.scatter_rad));
    CHECK(row.unaided == 0);
    CHECK(fault_words(row) == "1 of 1: of_a_later_version");
}
