#include "lesson/conditions.h"

namespace slopewise {
namespace {

bool begins(const Failure& failure, const Moment& moment) {
    switch (failure.trigger) {
    case Failure::Trigger::time: return moment.time_s >= failure.at;
    case Failure::Trigger::distance: return moment.distance_m <= failure.at;
    case Failure::Trigger::height: return moment.wheel_height_m <= failure.at;
    }
    return false;
}

// Calls `each` with every failure that has happened.
template <class Each>
void for_each_failed(const Scenario& scenario, const Conditions& conditions, Each&& each) {
    for (std::size_t i = 0; i < static_cast<std::size_t>(scenario.lesson.failure_count); ++i) {
        if (conditions.failed[i]) each(scenario.lesson.failures[i]);
    }
}

void advance_air(Conditions& conditions, const Lesson& lesson, const Moment& moment) {
    conditions.gust = {};
    if (lesson.turbulence_w20_mps > 0.0) {
        const DrydenScales scales = dryden_scales(moment.wheel_height_m, lesson.turbulence_w20_mps);
        advance_turbulence(conditions.turbulence, scales, moment.tas_mps, tick_s);
        conditions.gust = gust_of(conditions.turbulence, scales);
    }
    for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.air_event_count); ++i) {
        AirEventState& state = conditions.air_events[i];
        const AirEvent& event = lesson.air_events[i];
        state.begun = state.begun || air_event_begins(event, moment.time_s, moment.distance_m);
        if (!state.begun) continue;
        const Gust gust = air_event_gust(event, state.flown_m);
        conditions.gust.along_mps += gust.along_mps;
        conditions.gust.up_mps += gust.up_mps;
        state.flown_m += moment.tas_mps * tick_s;
    }
}

}  // namespace

Conditions begin_conditions(const Scenario& scenario) {
    Conditions conditions;
    conditions.turbulence = begin_turbulence(scenario.lesson.seed);
    return conditions;
}

bool conditions_change(const Lesson& lesson) {
    return lesson.turbulence_w20_mps > 0.0 || lesson.air_event_count > 0 || lesson.failure_count > 0;
}

void advance_conditions(Conditions& conditions, const Scenario& scenario, const Moment& moment) {
    const Lesson& lesson = scenario.lesson;
    advance_air(conditions, lesson, moment);
    for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.failure_count); ++i) {
        if (conditions.failed[i] || !begins(lesson.failures[i], moment)) continue;
        conditions.failed[i] = true;
        if (lesson.failures[i].kind == Failure::Kind::airspeed_stuck)
            conditions.stuck_cas_mps = cas_from_tas_mps(moment.tas_mps, moment.air);
    }
}

Disturbance disturbance_of(const Scenario& scenario, const Conditions& conditions) {
    Disturbance disturbance;
    disturbance.gust = conditions.gust;
    for_each_failed(scenario, conditions, [&](const Failure& failure) {
        if (failure.kind == Failure::Kind::flap_stuck) disturbance.flap_stuck = true;
        if (failure.kind == Failure::Kind::power_partial) disturbance.power_limit *= failure.amount;
        if (failure.kind == Failure::Kind::power_lost) disturbance.power_limit = 0.0;
    });
    return disturbance;
}

LightFaults light_faults(const Scenario& scenario, const Conditions& conditions) {
    LightFaults faults;
    for_each_failed(scenario, conditions, [&](const Failure& failure) {
        const auto unit = static_cast<std::size_t>(failure.unit);
        if (failure.kind == Failure::Kind::light_out) faults.out[unit] = true;
        if (failure.kind == Failure::Kind::light_misaimed) faults.aim_error_rad[unit] += failure.amount;
        if (failure.kind == Failure::Kind::lights_out) faults.all_out = true;
        if (failure.kind == Failure::Kind::condensation) faults.condensation = failure.amount;
    });
    return faults;
}

std::optional<double> shown_airspeed_mps(const Scenario& scenario, const Conditions& conditions,
                                         double cas_mps) {
    std::optional<double> shown = cas_mps;
    for_each_failed(scenario, conditions, [&](const Failure& failure) {
        if (failure.kind == Failure::Kind::airspeed_stuck && shown) shown = conditions.stuck_cas_mps;
        if (failure.kind == Failure::Kind::airspeed_blank) shown.reset();
    });
    return shown;
}

void add_to_hash(Hash& hash, const Conditions& conditions) {
    hash.add(conditions.turbulence.random.state);
    for (const double value : {conditions.turbulence.along, conditions.turbulence.vertical_first,
                               conditions.turbulence.vertical_second, conditions.gust.along_mps,
                               conditions.gust.up_mps, conditions.stuck_cas_mps})
        hash.add(value);
    for (const AirEventState& event : conditions.air_events) {
        hash.add(static_cast<std::uint64_t>(event.begun));
        hash.add(event.flown_m);
    }
    for (const bool failed : conditions.failed) hash.add(static_cast<std::uint64_t>(failed));
}

}  // namespace slopewise
