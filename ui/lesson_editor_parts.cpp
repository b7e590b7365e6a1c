#include "ui/lesson_editor_parts.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "base/units.h"
#include "lesson/where_and_when.h"

namespace slopewise {
namespace {

template <class Thing>
int index_of(const std::vector<Thing>& things, const std::string& id) {
    const auto found = std::ranges::find(things, id, &Thing::id);
    return found != things.end() ? static_cast<int>(found - things.begin()) : 0;
}

std::span<AirEvent> events(Lesson& lesson) {
    return std::span(lesson.air_events).first(static_cast<std::size_t>(lesson.air_event_count));
}
std::span<const AirEvent> events(const Lesson& lesson) {
    return std::span(lesson.air_events).first(static_cast<std::size_t>(lesson.air_event_count));
}

bool is_placed_gust(const AirEvent& event) {
    return event.kind == AirEvent::Kind::gust && event.trigger == AirEvent::Trigger::distance;
}

AirEvent* first_gust(Lesson& lesson) {
    const auto found = std::ranges::find_if(events(lesson), is_placed_gust);
    return found != events(lesson).end() ? &*found : nullptr;
}

// A gust that builds up over 350 ft is the longest that certification searches (14 CFR 25.341; recalled); one
// nautical mile out there is room to see it and to act.
AirEvent usual_gust() {
    AirEvent gust;
    gust.trigger = AirEvent::Trigger::distance;
    gust.at_distance_m = m_from_nm(1.0);
    gust.length_m = m_from_ft(350.0);
    return gust;
}

std::string counted(int count, const char* one, const char* more) {
    return std::to_string(count) + " " + (count == 1 ? one : more);
}

}  // namespace

int aircraft_index(const Lesson& lesson, const Catalog& catalog) {
    return index_of(catalog.aircraft, lesson.aircraft_id);
}
int runway_index(const Lesson& lesson, const Catalog& catalog) {
    return index_of(catalog.runways, lesson.runway_id);
}

void set_aircraft(Lesson& lesson, int index, const Catalog& catalog) {
    const Aircraft& aircraft = catalog.aircraft[static_cast<std::size_t>(index)];
    if (aircraft.id == lesson.aircraft_id) return;
    lesson = lesson_at(lesson, {aircraft.id, lesson.runway_id, lesson.outlook}, aircraft);
}

void set_runway(Lesson& lesson, int index, const Catalog& catalog) {
    lesson.runway_id = catalog.runways[static_cast<std::size_t>(index)].id;
}

std::vector<std::string> flap_choices(const Lesson& lesson, const Catalog& catalog) {
    const Aircraft& aircraft = catalog.aircraft[static_cast<std::size_t>(aircraft_index(lesson, catalog))];
    std::vector<std::string> names;
    for (int i = 0; i < aircraft.flap_count; ++i)
        names.push_back(aircraft.flaps[static_cast<std::size_t>(i)].name);
    return names;
}

void set_wind_kind(Lesson& lesson, Wind::Kind kind) {
    Wind& wind = lesson.wind;
    if (kind == wind.kind) return;
    if (kind == Wind::Kind::table) {
        wind.table = {};
        wind.table[0] = {m_from_ft(50.0), wind.headwind_mps};
        wind.table[1] = {m_from_ft(1000.0), wind.headwind_mps};
        wind.table_size = 2;
    } else if (wind.kind == Wind::Kind::table) {
        wind.headwind_mps = wind.table[0].headwind_mps;
    }
    wind.kind = kind;
}

bool has_wind_table(const Lesson& lesson) { return lesson.wind.kind == Wind::Kind::table; }
bool has_one_headwind(const Lesson& lesson) { return !has_wind_table(lesson); }

const AirEvent* first_gust(const Lesson& lesson) {
    const auto found = std::ranges::find_if(events(lesson), is_placed_gust);
    return found != events(lesson).end() ? &*found : nullptr;
}

void set_gust(Lesson& lesson, double along_mps) {
    AirEvent* gust = first_gust(lesson);
    if (along_mps == 0.0) {
        if (gust == nullptr) return;
        std::move(gust + 1, events(lesson).data() + events(lesson).size(), gust);
        lesson.air_events[static_cast<std::size_t>(--lesson.air_event_count)] = {};
        return;
    }
    if (gust == nullptr) {
        if (events(lesson).size() == most_air_events) return;
        gust = &lesson.air_events[static_cast<std::size_t>(lesson.air_event_count++)];
        *gust = usual_gust();
    }
    gust->along_mps = along_mps;
}

void set_gust_place(Lesson& lesson, double distance_m) {
    if (AirEvent* gust = first_gust(lesson)) gust->at_distance_m = distance_m;
}

std::string other_parts(const Lesson& lesson) {
    std::string words;
    const auto add = [&](int count, const char* one, const char* more) {
        if (count > 0) words += (words.empty() ? "" : ", ") + counted(count, one, more);
    };
    add(lesson.failure_count, "failure", "failures");
    add(lesson.air_event_count - (first_gust(lesson) != nullptr ? 1 : 0), "more event in the air",
        "more events in the air");
    if (has_wind_table(lesson))
        add(lesson.wind.table_size - 2, "more height of wind", "more heights of wind");
    return words;
}

}  // namespace slopewise
