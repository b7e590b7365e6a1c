#include "data/catalog.h"

#include <array>

#include "data/fields.h"
#include "data/read_aircraft.h"
#include "data/read_lesson.h"
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
std::string known_ids(const std::vector<T>& entries) {
    std::string ids;
    for (const T& entry : entries) ids += (ids.empty() ? "\"" : ", \"") + entry.id + "\"";
    return ids;
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

}  // namespace

Result<DataEntry> read_entry(const DataFile& file) {
    Result<JsonNode> parsed = parse_json(file.text, file.name);
    if (!parsed.ok()) return failure<DataEntry>(std::move(parsed.problems));

    constexpr std::array<std::string_view, 3> kinds{"aircraft", "runway", "lesson"};
    std::vector<Problem> problems;
    const std::size_t kind = Fields(*parsed.value, file.name, "", problems).one_of("kind", kinds);
    if (!problems.empty()) return failure<DataEntry>(std::move(problems));
    if (kind == 0) return as_entry(read_aircraft(*parsed.value, file.name));
    if (kind == 1) return as_entry(read_runway(*parsed.value, file.name));
    return as_entry(read_lesson(*parsed.value, file.name));
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

std::vector<Problem> check_lesson(const Catalog& catalog, const Lesson& lesson, const std::string& file) {
    std::vector<Problem> problems;
    const Aircraft* aircraft = find_aircraft(catalog, lesson.aircraft_id);
    const Runway* runway = find_runway(catalog, lesson.runway_id);
    if (aircraft == nullptr) {
        problems.push_back({file, 0, "/aircraft", "is \"" + lesson.aircraft_id + "\", which is not known",
                            known_ids(catalog.aircraft)});
    }
    if (runway == nullptr) {
        problems.push_back({file, 0, "/runway", "is \"" + lesson.runway_id + "\", which is not known",
                            known_ids(catalog.runways)});
    }
    if (!problems.empty()) return problems;
    if (lesson.start.flap >= aircraft->flap_count) {
        problems.push_back({file, 0, "/start/flap", "is " + std::to_string(lesson.start.flap),
                            "0 to " + std::to_string(aircraft->flap_count - 1) + " with this aircraft"});
        return problems;
    }
    if (lesson.mass_kg != 0.0 &&
        (lesson.mass_kg < aircraft->least_mass_kg || lesson.mass_kg > aircraft->most_mass_kg)) {
        problems.push_back({file, 0, "/mass_kg", "is " + number_text(lesson.mass_kg),
                            number_text(aircraft->least_mass_kg) + " to " +
                                number_text(aircraft->most_mass_kg) + " with this aircraft"});
    }
    const Scenario scenario = make_scenario(lesson, *aircraft, *runway);
    if (!scenario.start_trim.flyable) {
        problems.push_back(
            {file, 0, "/start", "cannot be flown: " + scenario.start_trim.reason, "a steady start"});
    }
    if (const TrimState reference = reference_trim(scenario, scenario.start_state.z_m); !reference.flyable) {
        problems.push_back(
            {file, 0, "/target_speed_kt", "cannot be flown on the path: " + reference.reason, ""});
    }
    return problems;
}

Result<Catalog> load_catalog(std::span<const DataFile> files) {
    Catalog catalog;
    std::vector<Problem> problems;
    std::vector<std::string> lesson_files;
    for (const DataFile& file : files) {
        Result<DataEntry> entry = read_entry(file);
        if (!entry.ok()) {
            append(problems, std::move(entry.problems));
        } else if (auto* aircraft = std::get_if<Aircraft>(&*entry.value)) {
            add_unique(catalog.aircraft, std::move(*aircraft), file.name, problems);
        } else if (auto* runway = std::get_if<Runway>(&*entry.value)) {
            add_unique(catalog.runways, std::move(*runway), file.name, problems);
        } else {
            const std::size_t before = catalog.lessons.size();
            add_unique(catalog.lessons, std::get<Lesson>(std::move(*entry.value)), file.name, problems);
            if (catalog.lessons.size() > before) lesson_files.push_back(file.name);
        }
    }
    for (std::size_t i = 0; i < catalog.lessons.size(); ++i) {
        append(problems, check_lesson(catalog, catalog.lessons[i], lesson_files[i]));
    }
    if (!problems.empty()) return failure<Catalog>(std::move(problems));
    return success(std::move(catalog));
}

Scenario scenario_of(const Catalog& catalog, const Lesson& lesson) {
    return make_scenario(lesson, *find_aircraft(catalog, lesson.aircraft_id),
                         *find_runway(catalog, lesson.runway_id));
}

}  // namespace slopewise
