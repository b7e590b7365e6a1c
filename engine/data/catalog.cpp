#include "data/catalog.h"

#include <algorithm>
#include <array>
#include <functional>
#include <iterator>

#include "data/fields.h"
#include "data/read_aircraft.h"
#include "data/read_drill.h"
#include "data/read_lesson.h"
#include "data/read_question_set.h"
#include "data/read_runway.h"

namespace slopewise {
namespace {

template <class T>
const T* find_by_id(const std::vector<T>& entries, std::string_view id) {
    for (const T& entry : entries) {
        if (entry.id == id) return &entry;
    }
    return nullptr;
}

template <class T>
void add_unique(std::vector<T>& entries, T entry, const std::string& file, std::vector<Problem>& problems) {
    if (find_by_id(entries, entry.id) != nullptr) {
        problems.push_back(
            {file, 0, "/id", "is \"" + entry.id + "\", which another file has", "an id of its own"});
        return;
    }
    entries.push_back(std::move(entry));
}

template <class T>
Result<DataEntry> as_entry(Result<T> read) {
    if (!read.ok()) return failure<DataEntry>(std::move(read.problems));
    return success<DataEntry>(std::move(*read.value));
}

void append(std::vector<Problem>& all, std::vector<Problem> more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

// Moves the last to its place by order; those of the same place stay as they came.
template <class Entry, class Place>
void put_last_in_order(std::vector<Entry>& all, Place place) {
    const auto last = std::prev(all.end());
    std::rotate(std::ranges::upper_bound(all.begin(), last, std::invoke(place, *last), {}, place), last,
                all.end());
}

struct LessonFile {
    Lesson lesson;
    std::string file;
};

struct QuestionFile {
    QuestionSet set;
    std::string file;
};

void add_question_sets(Catalog& catalog, const std::vector<QuestionFile>& sets,
                       std::vector<Problem>& problems) {
    for (const QuestionFile& one : sets) {
        const std::size_t before = catalog.question_sets.size();
        add_unique(catalog.question_sets, one.set, one.file, problems);
        if (catalog.question_sets.size() == before) continue;
        append(problems, check_question_set(catalog, one.set, one.file));
        put_last_in_order(catalog.question_sets, &QuestionSet::place);
    }
}

// Each checked against all.
void add_lessons(Catalog& catalog, const std::vector<LessonFile>& lessons, std::vector<Problem>& problems) {
    std::vector<LessonFile> added;
    for (const LessonFile& one : lessons) {
        const std::size_t before = catalog.lessons.size();
        add_unique(catalog.lessons, one.lesson, one.file, problems);
        if (catalog.lessons.size() > before) added.push_back(one);
    }
    for (const LessonFile& one : added) append(problems, check_lesson(catalog, one.lesson, one.file));
}

}  // namespace

Result<DataEntry> read_entry(const DataFile& file) {
    Result<JsonNode> parsed = parse_json(file.text, file.name);
    if (!parsed.ok()) return failure<DataEntry>(std::move(parsed.problems));

    constexpr std::array<std::string_view, 5> kinds{"aircraft", "runway", "lesson", "drill", "questions"};
    std::vector<Problem> problems;
    const std::size_t kind = Fields(*parsed.value, file.name, "", problems).one_of("kind", kinds);
    if (!problems.empty()) return failure<DataEntry>(std::move(problems));
    if (kind == 0) return as_entry(read_aircraft(*parsed.value, file.name));
    if (kind == 1) return as_entry(read_runway(*parsed.value, file.name));
    if (kind == 2) return as_entry(read_lesson(*parsed.value, file.name));
    if (kind == 3) return as_entry(read_drill(*parsed.value, file.name));
    return as_entry(read_question_set(*parsed.value, file.name));
}

const Aircraft* find_aircraft(const Catalog& catalog, std::string_view id) {
    return find_by_id(catalog.aircraft, id);
}
const Runway* find_runway(const Catalog& catalog, std::string_view id) {
    return find_by_id(catalog.runways, id);
}
const Lesson* find_lesson(const Catalog& catalog, std::string_view id) {
    return find_by_id(catalog.lessons, id);
}
const Drill* find_drill(const Catalog& catalog, std::string_view id) {
    return find_by_id(catalog.drills, id);
}

const QuestionSet* find_question_set(const Catalog& catalog, std::string_view id) {
    return find_by_id(catalog.question_sets, id);
}

Result<Catalog> load_catalog(std::span<const DataFile> files) {
    Catalog catalog;
    std::vector<Problem> problems;
    std::vector<LessonFile> lessons;
    std::vector<QuestionFile> question_sets;
    for (const DataFile& file : files) {
        Result<DataEntry> entry = read_entry(file);
        if (!entry.ok()) {
            append(problems, std::move(entry.problems));
        } else if (auto* aircraft = std::get_if<Aircraft>(&*entry.value)) {
            add_unique(catalog.aircraft, std::move(*aircraft), file.name, problems);
        } else if (auto* runway = std::get_if<Runway>(&*entry.value)) {
            add_unique(catalog.runways, std::move(*runway), file.name, problems);
        } else if (auto* drill = std::get_if<Drill>(&*entry.value)) {
            add_unique(catalog.drills, std::move(*drill), file.name, problems);
            put_last_in_order(catalog.drills, &Drill::place);
        } else if (auto* questions = std::get_if<QuestionSet>(&*entry.value)) {
            question_sets.push_back({std::move(*questions), file.name});
        } else {
            lessons.push_back({std::get<Lesson>(std::move(*entry.value)), file.name});
            put_last_in_order(lessons, [](const LessonFile& one) { return one.lesson.syllabus.place; });
        }
    }
    add_lessons(catalog, lessons, problems);
    add_question_sets(catalog, question_sets, problems);
    if (!problems.empty()) return failure<Catalog>(std::move(problems));
    return success(std::move(catalog));
}

Scenario scenario_of(const Catalog& catalog, const Lesson& lesson) {
    return make_scenario(lesson, *find_aircraft(catalog, lesson.aircraft_id),
                         *find_runway(catalog, lesson.runway_id));
}

}  // namespace slopewise
