#include "data/read_happenings.h"

#include "base/units.h"

namespace slopewise {
namespace {

constexpr Range time_s{0.0, 1200.0};
constexpr Range distance_nm{0.0, 10.0};
constexpr Range height_ft{0.0, 5000.0};

AirEvent read_air_event(Fields& fields) {
    AirEvent event;
    event.kind = static_cast<AirEvent::Kind>(fields.one_of("type", air_event_names));
    if (fields.has("at_distance_nm")) {
        event.trigger = AirEvent::Trigger::distance;
        event.at_distance_m = m_from_nm(fields.number("at_distance_nm", distance_nm));
    } else {
        event.at_s = fields.number("at_time_s", time_s);
    }
    event.along_mps = mps_from_kt(fields.number_or("along_kt", 0.0, {-40.0, 40.0}));
    event.up_mps = mps_from_fpm(fields.number_or("up_fpm", 0.0, {-2000.0, 2000.0}));
    // Gust half-lengths of 30 to 350 ft are what certification searches (14 CFR 25.341); patches are longer.
    event.length_m = m_from_ft(fields.number("length_ft", {30.0, 10000.0}));
    fields.finish();
    return event;
}

}  // namespace

Failure read_failure(Fields fields) {
    Failure failure;
    failure.kind = static_cast<Failure::Kind>(fields.one_of("type", failure_names));
    if (fields.has("at_distance_nm")) {
        failure.trigger = Failure::Trigger::distance;
        failure.at = m_from_nm(fields.number("at_distance_nm", distance_nm));
    } else if (fields.has("at_height_ft")) {
        failure.trigger = Failure::Trigger::height;
        failure.at = m_from_ft(fields.number("at_height_ft", height_ft));
    } else {
        failure.at = fields.number("at_time_s", time_s);
    }
    switch (failure.kind) {
    case Failure::Kind::power_partial:
        failure.amount = fields.number("power_left_percent", {0.0, 100.0}) / 100.0;
        break;
    case Failure::Kind::condensation:
        failure.amount = fields.number("degree_percent", {0.0, 100.0}) / 100.0;
        break;
    case Failure::Kind::light_misaimed:
        failure.amount = rad_from_minutes(fields.number("too_high_minutes", {-60.0, 60.0}));
        failure.unit = fields.integer("unit", 1, LightSystem::most_units) - 1;
        break;
    case Failure::Kind::light_out:
        failure.unit = fields.integer("unit", 1, LightSystem::most_units) - 1;
        break;
    default: break;
    }
    fields.finish();
    return failure;
}

void read_air(Fields fields, Lesson& lesson) {
    lesson.turbulence_w20_mps = mps_from_kt(fields.number_or("turbulence_w20_kt", 0.0, {0.0, 45.0}));
    if (fields.has("seed")) lesson.seed = static_cast<std::uint64_t>(fields.integer("seed", 0, 1000000));
    if (fields.has("events")) {
        for (Fields& event : fields.list("events", 1, most_air_events))
            lesson.air_events[static_cast<std::size_t>(lesson.air_event_count++)] = read_air_event(event);
    }
    fields.finish();
}

void read_failures(Fields& fields, Lesson& lesson) {
    for (Fields& failure : fields.list("failures", 1, most_failures))
        lesson.failures[static_cast<std::size_t>(lesson.failure_count++)] = read_failure(failure);
}

}  // namespace slopewise
