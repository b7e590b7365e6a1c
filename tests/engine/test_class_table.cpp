// A class's files side by side: the figures of each student's own sheet, what is refused, and how fast.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <functional>
#include <limits>

#include "base/hash.h"
#include "base/units.h"
#include "debrief/sheet_facts.h"
#include "evidence/class_table.h"
#include "logbook/text_sum.h"
#include "progress/progress.h"
#include "review/diagnosis/fault.h"
#include "tests/fixtures.h"
#include "tests/students/class_students.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

const std::vector<ClassStudent>& the_class() {
    static const std::vector<ClassStudent> all = [] {
        std::vector<ClassStudent> made;
        for (int i = 0; i < 30; ++i) made.push_back(class_student(i, shipped()));
        return made;
    }();
    return all;
}

void read_lines(ClassFiles& files, const std::string& name, const std::vector<std::string>& lines) {
    ClassFileReader reader = begin_class_file(name);
    for (const std::string& line : lines) take_class_line(reader, line, shipped(), Criteria{}, files);
    end_class_file(reader, "", files);
}

ClassFiles read_class(bool with_rows) {
    ClassFiles files;
    for (const ClassStudent& student : the_class()) read_lines(files, student.file, student.lines(with_rows));
    return files;
}

ClassFiles read_one(const std::vector<std::string>& lines) {
    ClassFiles files;
    read_lines(files, "one.jsonl", lines);
    return files;
}

// Of the processor, so that a busy machine fails no test.
double seconds_of(const std::function<void()>& work) {
    const std::clock_t begun = std::clock();
    work();
    return static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
}

double last_of(const std::vector<double>& values) {
    double last = std::numeric_limits<double>::quiet_NaN();
    for (const double value : values)
        if (!std::isnan(value)) last = value;
    return last;
}

// Both nothing, or the same bits.
bool same(double a, double b) { return std::isnan(a) ? std::isnan(b) : a == b; }

std::vector<ClassRow> rows_to_sort() {
    std::vector<ClassRow> rows(4);
    rows[0] = {"Kestrel", "b", "Beta", 3, 2, -0.02, 0.03, 300, "ducking_under", 1, 3};
    rows[1] = {"Avocet", "a", "Alpha", 7, 0, unknown, unknown, 0, "", 0, 3};
    rows[2] = {"Heron", "c", "Gamma", 5, 5, 0.01, 0.01, 100, "late_power", 2, 3};
    rows[3] = {"Dunlin", "d", "Delta", 1, 1, 0.03, 0.02, 200, "", 0, 1};
    return rows;
}

}  // namespace

TEST_CASE(
    "class table: the figures of thirty students are those of each one's own progress, within a second") {
    CHECK(the_class().size() == 30);  // flown before anything is measured
    ClassFiles files;
    const double reading_s = seconds_of([&] { files = read_class(true); });
    std::vector<ClassRow> rows;
    const double table_s = seconds_of([&] { rows = class_rows(files, shipped()); });
    MESSAGE(files.attempts.size() << " attempts: reading " << reading_s << " s, table " << table_s << " s");
    CHECK(table_s < 1.0);  // a class waits no longer; it takes a hundredth of that
    CHECK(files.problems.empty());
    CHECK(files.flown_again == 0);
    CHECK(students_in(rows) == 30);
    std::size_t compared = 0;
    for (const ClassStudent& student : the_class()) {
        for (const std::string lesson : {"last_half_mile", "own_approach"}) {
            std::vector<AttemptRow> own;
            for (const IndexRow& row : student.rows)
                if (row.row.lesson == lesson && !row.cut_off) own.push_back(row.row);
            const auto found = std::ranges::find_if(rows, [&](const ClassRow& row) {
                return row.student == student.name && row.lesson == lesson;
            });
            REQUIRE((found != rows.end()) == !own.empty());
            if (own.empty()) continue;
            CAPTURE(student.name);
            CHECK(found->attempts == static_cast<int>(own.size()));
            CHECK(found->unaided == std::ranges::count_if(own, &AttemptRow::unaided));
            CHECK(found->last_unix_s == own.back().started_unix_s);
            const Progress progress = progress_of(own, CusumParameters{}, DrillResults{});
            CHECK(same(found->bias_rad, last_of(progress.median_bias_rad)));
            CHECK(same(found->scatter_rad, last_of(progress.median_scatter_rad)));
            ++compared;
        }
    }
    CHECK(compared == rows.size());
    // Of differing skill: a table of equal figures would prove nothing.
    const auto [least, most] = std::ranges::minmax_element(rows, {}, &ClassRow::scatter_rad);
    CHECK(most->scatter_rad > 1.5 * least->scatter_rad);
}

TEST_CASE("class table: attempts without a row in their file are flown again and give the same figures") {
    ClassFiles with, without;
    for (std::size_t i = 0; i < 3; ++i) {
        const ClassStudent& student = the_class()[i];
        read_lines(with, student.file, student.lines(true));
        read_lines(without, student.file, student.lines(false));
    }
    CHECK(without.flown_again == static_cast<int>(without.attempts.size()));
    CHECK(class_csv(class_rows(with, shipped())) == class_csv(class_rows(without, shipped())));
}

TEST_CASE(
    "class table: each column sorts both ways, what is unknown stands last, and equals keep their order") {
    const auto order = [](ClassColumn by, bool falling) {
        std::vector<ClassRow> rows = rows_to_sort();
        sort_class_rows(rows, by, falling);
        std::string initials;
        for (const ClassRow& row : rows) initials += row.student[0];
        return initials;
    };
    CHECK(order(ClassColumn::student, false) == "ADHK");
    CHECK(order(ClassColumn::student, true) == "KHDA");
    CHECK(order(ClassColumn::lesson, false) == "AKDH");
    CHECK(order(ClassColumn::lesson, true) == "HDKA");
    CHECK(order(ClassColumn::attempts, false) == "DKHA");
    CHECK(order(ClassColumn::attempts, true) == "AHKD");
    CHECK(order(ClassColumn::bias, false) == "HKDA");  // by its size
    CHECK(order(ClassColumn::bias, true) == "DKHA");
    CHECK(order(ClassColumn::spread, false) == "HDKA");
    CHECK(order(ClassColumn::spread, true) == "KDHA");
    CHECK(order(ClassColumn::last, false) == "HDKA");
    CHECK(order(ClassColumn::last, true) == "KDHA");
    CHECK(order(ClassColumn::fault, false) == "KHAD");
    CHECK(order(ClassColumn::fault, true) == "HKAD");
}

TEST_CASE("class table: the file has a header, a meaning for each column, and cells that stay cells") {
    std::vector<ClassRow> rows = rows_to_sort();
    rows[0].student = "=SUM(A1), \"quoted\"";
    const std::string csv = class_csv(rows);
    CHECK(csv.starts_with("# Ground study aid."));
    const std::string header =
        "student,lesson,lesson_title,attempts,unaided,median_bias_deg,median_scatter_deg,last_date,"
        "priority_fault,priority_fault_times,priority_fault_of\n";
    REQUIRE(csv.find("\n" + header) != std::string::npos);
    CHECK(csv.find(
              "\n\"'=SUM(A1), \"\"quoted\"\"\",b,Beta,3,2,-1.1459,1.7189,1970-01-01,ducking_under,1,3\n") !=
          std::string::npos);
    CHECK(csv.find("\nAvocet,a,Alpha,7,0,,,,,0,3\n") != std::string::npos);
    for (const char* name : {"student", "median_bias_deg", "median_scatter_deg", "priority_fault_of"})
        CHECK(csv.find("\n# " + std::string(name) + ": ") != std::string::npos);
}

TEST_CASE("class table: the fault is the one that came most often in the last three attempts") {
    ClassFiles files;
    for (int i = 0; i < 5; ++i) {
        AttemptRow row;
        row.lesson = "final_calm";
        row.started_unix_s = 1000 + i;
        row.priority_fault = i < 2 ? "late_flap" : i == 4 ? "ducking_under" : "stretching";
        files.attempts.push_back({std::to_string(i), "Heron", row});
    }
    const ClassRow row = class_rows(files, shipped()).front();
    CHECK(row.fault == "stretching");
    CHECK(row.fault_times == 2);
    CHECK(row.fault_of == 3);
    CHECK(row.title == find_lesson(shipped(), "final_calm")->title);
    CHECK(fault_words(row).starts_with("2 of 3: Stretching"));
    CHECK(fault_words(ClassRow{}) == "none");
}

TEST_CASE("class table: a damaged line is told by file, line and reason, and the others are read") {
    std::vector<std::string> lines = the_class()[0].lines();
    lines[3][lines[3].size() / 2] ^= 1;
    const ClassFiles files = read_one(lines);
    REQUIRE(files.problems.size() == 1);
    CHECK(to_text(files.problems[0]).find("one.jsonl:4: is damaged: its sum does not agree") == 0);
    CHECK(files.attempts.size() == the_class()[0].attempts.size() - 1);
}

TEST_CASE("class table: damaged rows are told, and their attempts flown again") {
    std::vector<std::string> lines = the_class()[0].lines();
    lines[1][lines[1].size() / 2] ^= 1;
    const ClassFiles files = read_one(lines);
    REQUIRE(files.problems.size() == 1);
    CHECK(to_text(files.problems[0]).find("one.jsonl:2: /rows are damaged") == 0);
    CHECK(files.flown_again == static_cast<int>(the_class()[0].attempts.size()));
}

TEST_CASE("class table: a made-up row that no flight can have is not believed") {
    ClassStudent student = the_class()[1];
    student.rows[0].row.path_rad.scatter = std::numeric_limits<double>::quiet_NaN();
    student.rows[1].row.path_rad.bias = std::numeric_limits<double>::infinity();
    student.rows[2].row.started_unix_s = std::numeric_limits<std::int64_t>::max();
    const ClassFiles files = read_one(student.lines());
    CHECK(files.flown_again == 3);
    CHECK(class_csv(class_rows(files, shipped())) ==
          class_csv(class_rows(read_one(the_class()[1].lines()), shipped())));
}

TEST_CASE("class table: what is no file of ours is refused at its first line, and an empty file is told") {
    const ClassFiles strange = read_one({"A letter.", "Another line.", the_class()[0].attempts[0]});
    REQUIRE(strange.problems.size() == 1);
    CHECK(strange.problems[0].line == 1);
    CHECK(strange.attempts.empty());
    const ClassFiles empty = read_one({student_file_head("Heron"), ""});
    REQUIRE(empty.problems.size() == 1);
    CHECK(to_text(empty.problems[0]).find("one.jsonl: holds no attempt") == 0);
    std::vector<std::string> bad{the_class()[0].lines().front()};
    for (int i = 0; i < 100; ++i) bad.emplace_back("no attempt");
    CHECK(read_one(bad).problems.size() == most_refused_lines);
}

TEST_CASE("class table: an attempt met twice counts once, and nameless files stay apart") {
    ClassFiles files;
    read_lines(files, "a.jsonl", the_class()[0].lines());
    read_lines(files, "b.jsonl", the_class()[0].lines());
    CHECK(files.attempts.size() == the_class()[0].attempts.size());
    CHECK(files.twice == static_cast<int>(files.attempts.size()));
    ClassFiles nameless;
    for (std::size_t i = 0; i < 2; ++i) {
        ClassStudent student = the_class()[i];
        student.name.clear();
        for (IndexRow& row : student.rows) row.student.clear();
        read_lines(nameless, student.file, student.lines());
    }
    const std::vector<ClassRow> rows = class_rows(nameless, shipped());
    CHECK(students_in(rows) == 2);
    CHECK(rows.front().student == "no name, heron-00.jsonl");
}

TEST_CASE("class table: an attempt that was cut off is left out, as of the student's own progress") {
    ClassStudent student = the_class()[0];
    student.rows[0].cut_off = true;
    const ClassFiles files = read_one(student.lines());
    CHECK(files.cut_off == 1);
    CHECK(files.attempts.size() == student.attempts.size() - 1);
}

TEST_CASE("class table: a student's file with rows is read into a logbook as one without") {
    const auto attempts_of = [](const std::vector<std::string>& lines) {
        std::string text, ids;
        for (const std::string& line : lines) text += line + "\n";
        const StudentFile file =
            read_student_file(text, "one.jsonl", [&](const KeptAttempt& kept) { ids += kept.id; });
        CHECK(file.problems.empty());
        return file.student + ids;
    };
    const ClassStudent& student = the_class()[0];
    CHECK(attempts_of(student.lines(true)) == attempts_of(student.lines(false)));
}

TEST_CASE("class table: the quick sum is the hash of the bytes") {
    for (const std::string& text : {std::string(), std::string("a"), std::string("\xff\x00\x80 slope", 9)}) {
        Hash hash;
        for (const char c : text) hash.add(std::uint64_t{static_cast<unsigned char>(c)});
        char digits[17];
        std::snprintf(digits, sizeof digits, "%016llx", static_cast<unsigned long long>(hash.value()));
        CHECK(text_sum(text) == digits);
    }
}
