#include "base/units.h"
#include "data/write_parts.h"

namespace slopewise {

Json start_json(const Start& start) {
    return {{"distance_nm", nm_from_m(start.distance_m)},
            {"offset_deg", deg_from_rad(start.offset_rad)},
            {"descent_deg", deg_from_rad(-start.path_rad)},
            {"speed_kt", kt_from_mps(start.cas_mps)},
            {"flap", start.flap}};
}

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

}  // namespace slopewise
