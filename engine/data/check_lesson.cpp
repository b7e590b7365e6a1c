// A lesson against a catalog.
#include "data/catalog.h"
#include "data/fields.h"
#include "lesson/variation.h"

namespace slopewise {
namespace {

template <class T>
std::string known_ids(const std::vector<T>& entries) {
    std::string ids;
    for (const T& entry : entries) ids += (ids.empty() ? "\"" : ", \"") + entry.id + "\"";
    return ids;
}

struct Check {
    const Catalog& catalog;
    const std::string& file;
    std::vector<Problem> problems;

    void tell(std::string path, std::string what, std::string allowed) {
        problems.push_back({file, 0, std::move(path), std::move(what), std::move(allowed)});
    }

    template <class T>
    void unknown(std::string path, const std::string& id, const std::vector<T>& entries) {
        tell(std::move(path), "is \"" + id + "\", which is not known", known_ids(entries));
    }
};

// Whether the flight can begin, and its path be flown, as this form of the lesson has it.
void check_flight(Check& check, const Lesson& lesson, const std::string& at) {
    const Aircraft& aircraft = *find_aircraft(check.catalog, lesson.aircraft_id);
    const Runway* runway = find_runway(check.catalog, lesson.runway_id);
    if (runway == nullptr) return check.unknown(at + "/runway", lesson.runway_id, check.catalog.runways);
    if (lesson.start.flap >= aircraft.flap_count) {
        return check.tell(at + "/start/flap", "is " + std::to_string(lesson.start.flap),
                          "0 to " + std::to_string(aircraft.flap_count - 1) + " with this aircraft");
    }
    const Scenario scenario = make_scenario(lesson, aircraft, *runway);
    if (!scenario.start_trim.flyable)
        check.tell(at + "/start", "cannot be flown: " + scenario.start_trim.reason, "a steady start");
    if (lesson.glide) return;
    if (const TrimState reference = reference_trim(scenario, scenario.start_state.z_m); !reference.flyable)
        check.tell("/target_speed_kt", "cannot be flown on the path: " + reference.reason, "");
}

void check_practice(Check& check, const Lesson& lesson) {
    const Practice& practice = lesson.practice;
    for (std::size_t i = 0; i < practice.runways.size(); ++i) {
        Lesson flown = lesson;
        flown.runway_id = practice.runways[i];
        const std::string at = "/practice/runways/" + std::to_string(i);
        if (find_runway(check.catalog, flown.runway_id) == nullptr) {
            check.unknown(at, flown.runway_id, check.catalog.runways);
        } else {
            check_flight(check, flown, at);
        }
    }
    for (std::size_t i = 0; i < practice.set_ups.size(); ++i)
        check_flight(check, with_set_up(lesson, i), "/practice/set_ups/" + std::to_string(i));
}

}  // namespace

std::vector<Problem> check_lesson(const Catalog& catalog, const Lesson& lesson, const std::string& file) {
    Check check{catalog, file, {}};
    const Aircraft* aircraft = find_aircraft(catalog, lesson.aircraft_id);
    if (aircraft == nullptr) check.unknown("/aircraft", lesson.aircraft_id, catalog.aircraft);
    if (find_runway(catalog, lesson.runway_id) == nullptr)
        check.unknown("/runway", lesson.runway_id, catalog.runways);
    if (!check.problems.empty()) return check.problems;
    const std::string& next = lesson.syllabus.next;
    if (!next.empty() && find_lesson(catalog, next) == nullptr)
        check.unknown("/syllabus/next", next, catalog.lessons);
    if (lesson.mass_kg != 0.0 &&
        (lesson.mass_kg < aircraft->least_mass_kg || lesson.mass_kg > aircraft->most_mass_kg)) {
        check.tell("/mass_kg", "is " + number_text(lesson.mass_kg),
                   number_text(aircraft->least_mass_kg) + " to " + number_text(aircraft->most_mass_kg) +
                       " with this aircraft");
    }
    check_flight(check, lesson, "");
    check_practice(check, lesson);
    return check.problems;
}

}  // namespace slopewise
