#include "data/write_lesson.h"

#include "base/units.h"
#include "data/write_parts.h"

namespace slopewise {
namespace {

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
    json["start"] = start_json(lesson.start);
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
    add_teaching(json, lesson);
    return json;
}

}  // namespace

Json outlook_json(const Outlook& outlook) {
    return {{"light", daylight_names[static_cast<std::size_t>(outlook.light)]},
            {"ground_lights", outlook.ground_lights},
            {"visibility_km", outlook.visibility_m / 1000.0},
            {"overcast", outlook.overcast},
            {"rain", outlook.rain}};
}

std::string lesson_text(const Lesson& lesson) {
    return lesson_json(lesson).dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace slopewise
