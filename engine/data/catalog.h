// All aircraft, runways, lessons, drills and sets of questions that go together, checked together.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/result.h"
#include "drill/drill.h"
#include "lesson/scenario.h"
#include "question/question.h"

namespace slopewise {

struct DataFile {
    std::string name;
    std::string_view text;
};

struct Catalog {
    std::vector<Aircraft> aircraft;
    std::vector<Runway> runways;
    std::vector<Lesson> lessons;             // free approaches first, then by their place in the syllabus
    std::vector<Drill> drills;               // in the order they are learned in
    std::vector<QuestionSet> question_sets;  // by their place
};

// What one data file holds, by its "kind".
using DataEntry = std::variant<Aircraft, Runway, Lesson, Drill, QuestionSet>;
Result<DataEntry> read_entry(const DataFile& file);

// Reads every file; problems of all of them are returned together: unreadable files, two entries of one
// kind with the same id, a lesson that names an aircraft or runway
// that is not there or whose start cannot be flown.
Result<Catalog> load_catalog(std::span<const DataFile> files);

// Null when there is none of that id.
const Aircraft* find_aircraft(const Catalog& catalog, std::string_view id);
const Runway* find_runway(const Catalog& catalog, std::string_view id);
const Lesson* find_lesson(const Catalog& catalog, std::string_view id);
const Drill* find_drill(const Catalog& catalog, std::string_view id);
const QuestionSet* find_question_set(const Catalog& catalog, std::string_view id);

// The problems of a lesson against a catalog: names that are not in it, a start that cannot be flown, of each
// of its set-ups and practice runways too.
std::vector<Problem> check_lesson(const Catalog& catalog, const Lesson& lesson, const std::string& file);

// The problems of a set of questions against a catalog: a runway that is not in it, an approach that none of
// its aircraft can fly steadily.
std::vector<Problem> check_question_set(const Catalog& catalog, const QuestionSet& set,
                                        const std::string& file);

// The lesson with its aircraft and runway; the lesson must have passed check_lesson.
Scenario scenario_of(const Catalog& catalog, const Lesson& lesson);

}  // namespace slopewise
