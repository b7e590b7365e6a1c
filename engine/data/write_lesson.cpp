#include "data/write_lesson.h"

#include <nlohmann/json.hpp>

#include "base/units.h"
#include "data/read_happenings.h"

namespace slopewise {
namespace {

using Json = nlohmann::ordered_json;

Json wind_json(const Wind& wind) {
    if (wind.kind == Wind::Kind::table) {
        Json rows = Json::array();
        for (std::size_t i = 0; i < static_cast<std::size_t>(wind.table_size); ++i)
            rows.push_back({{"height_ft", ft_from_m(wind.table[i].height_m)},
                            {"headwind_kt", kt_from_mps(wind.table[i].headwind_mps)}});
        return {{"table", rows}};
    }
    Json json{{"headwind_kt", kt_from_mps(wind.headwind_mps)}};
    if (wind.kind == Wind::Kind::logarithmic) json["roughness_m"] = wind.roughness_m;
    return json;
}

Json event_json(const AirEvent& event) {
    Json json{{"type", air_event_names[static_cast<std::size_t>(event.kind)]}};
    if (event.trigger == AirEvent::Trigger::distance) {
        json["at_distance_nm"] = nm_from_m(event.at_distance_m);
    } else {
        json["at_time_s"] = event.at_s;
    }
    json["along_kt"] = kt_from_mps(event.along_mps);
    json["up_fpm"] = fpm_from_mps(event.up_mps);
    json["length_ft"] = ft_from_m(event.length_m);
    return json;
}

Json failure_json(const Failure& failure) {
    Json json{{"type", failure_names[static_cast<std::size_t>(failure.kind)]}};
    switch (failure.trigger) {
    case Failure::Trigger::time: json["at_time_s"] = failure.at; break;
    case Failure::Trigger::distance: json["at_distance_nm"] = nm_from_m(failure.at); break;
    case Failure::Trigger::height: json["at_height_ft"] = ft_from_m(failure.at); break;
    }
    switch (failure.kind) {
    case Failure::Kind::power_partial: json["power_left_percent"] = 100.0 * failure.amount; break;
    case Failure::Kind::condensation: json["degree_percent"] = 100.0 * failure.amount; break;
    case Failure::Kind::light_misaimed:
        json["too_high_minutes"] = minutes_from_rad(failure.amount);
        json["unit"] = failure.unit + 1;
        break;
    case Failure::Kind::light_out: json["unit"] = failure.unit + 1; break;
    default: break;
    }
    return json;
}

Json outlook_json(const Outlook& outlook) {
    return {{"light", daylight_names[static_cast<std::size_t>(outlook.light)]},
            {"ground_lights", outlook.ground_lights},
            {"visibility_km", outlook.visibility_m / 1000.0},
            {"overcast", outlook.overcast},
            {"rain", outlook.rain}};
}

// Nothing where the air is smooth and the seed is the usual one.
void add_air(Json& json, const Lesson& lesson) {
    Json air = Json::object();
    if (lesson.turbulence_w20_mps > 0.0) air["turbulence_w20_kt"] = kt_from_mps(lesson.turbulence_w20_mps);
    if (lesson.seed != Lesson{}.seed) air["seed"] = lesson.seed;
    for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.air_event_count); ++i)
        air["events"].push_back(event_json(lesson.air_events[i]));
    if (!air.empty()) json["air"] = air;
}

Json lesson_json(const Lesson& lesson) {
    Json json{{"kind", "lesson"},
              {"id", lesson.id},
              {"title", lesson.title},
              {"aim", lesson.aim},
              {"aircraft", lesson.aircraft_id},
              {"runway", lesson.runway_id}};
    if (lesson.mass_kg > 0.0) json["mass_kg"] = lesson.mass_kg;
    const Start& start = lesson.start;
    json["start"] = {{"distance_nm", nm_from_m(start.distance_m)},
                     {"offset_deg", deg_from_rad(start.offset_rad)},
                     {"descent_deg", deg_from_rad(-start.path_rad)},
                     {"speed_kt", kt_from_mps(start.cas_mps)},
                     {"flap", start.flap}};
    json["target_speed_kt"] = kt_from_mps(lesson.target_cas_mps);
    json["weather"] = {{"warmer_than_standard_c", lesson.weather.temperature_deviation_k},
                       {"qnh_hpa", lesson.weather.qnh_pa / 100.0}};
    json["wind"] = wind_json(lesson.wind);
    json["outlook"] = outlook_json(lesson.outlook);
    add_air(json, lesson);
    for (std::size_t i = 0; i < static_cast<std::size_t>(lesson.failure_count); ++i)
        json["failures"].push_back(failure_json(lesson.failures[i]));
    if (lesson.side_profile) json["side_profile"] = true;
    const Tolerances& tolerances = lesson.tolerances;
    json["tolerances"] = {{"path_deg", deg_from_rad(tolerances.path_rad)},
                          {"path_floor_ft", ft_from_m(tolerances.path_floor_m)},
                          {"slow_kt", kt_from_mps(tolerances.slow_mps)},
                          {"fast_kt", kt_from_mps(tolerances.fast_mps)},
                          {"sink_fpm", fpm_from_mps(tolerances.sink_mps)}};
    return json;
}

}  // namespace

std::string lesson_text(const Lesson& lesson) {
    return lesson_json(lesson).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace slopewise
