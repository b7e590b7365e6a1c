#include "cli/summary_answer.h"

#include "base/units.h"
#include "cli/format.h"
#include "review/words.h"

namespace slopewise::cli {
namespace {

const char* end_name(End end) {
    switch (end) {
    case End::none: return "none";
    case End::reached_floor: return "reached_floor";
    case End::went_around: return "went_around";
    case End::ground_short: return "ground_short";
    case End::overflew: return "overflew";
    }
    return "";
}

void add_deviations(Json& json, const Deviations& off) {
    json["path_deviation_deg"] = deg_from_rad(off.path_rad);
    json["path_deviation_ft"] = ft_from_m(off.path_m);
    json["path_in_tolerance"] = off.path_in;
    json["speed_deviation_kt"] = kt_from_mps(off.speed_mps);
    json["speed_in_tolerance"] = off.speed_in;
    json["sink_deviation_fpm"] = fpm_from_mps(off.sink_mps);
    json["sink_in_tolerance"] = off.sink_in;
}

Json gate_json(const GateValue& gate) {
    Json json{{"wheel_height_ft", gate.height_ft}, {"reached", gate.reached}};
    if (!gate.reached) return json;
    json["time_s"] = gate.time_s;
    json["distance_nm"] = nm_from_m(gate.distance_m);
    json["white_count"] = gate.white_count;
    json["white_fraction"] = gate.white_fraction;
    add_deviations(json, gate.mean);
    json["power_percent"] = 100.0 * gate.power;
    json["flap_setting"] = gate.flap_setting;
    json["flap_position"] = gate.flap_position;
    return json;
}

std::string gate_text(const Summary& summary, const GateValue& gate) {
    if (!gate.reached) return format("  %5.0f ft  not reached\n", gate.height_ft);
    const Deviations& off = gate.mean;
    return format(
        "  %5.0f ft  %+6.2f deg %+6.0f ft  %-15s %+5.1f kt  sink %+5.0f ft/min  power %3.0f %%%s\n",
        gate.height_ft, deg_from_rad(off.path_rad), ft_from_m(off.path_m),
        light_words(gate.white_count, units_showing(gate.white_fraction), summary.light_kind).c_str(),
        kt_from_mps(off.speed_mps), fpm_from_mps(off.sink_mps), 100.0 * gate.power,
        off.all_in() ? "" : "  out of tolerance");
}

}  // namespace

void add_summary(Json& json, const Summary& summary, const Track& track) {
    json["end"] = end_name(summary.end);
    json["end_words"] = end_sentence(summary);
    json["end_wheel_height_ft"] = ft_from_m(summary.last.wheel_height_m);
    json["end_distance_nm"] = nm_from_m(summary.last.distance_m);
    json["scored_s"] = summary.scored_s;
    json["gates"] = Json::array();
    for (const GateValue& gate : summary.gates) json["gates"].push_back(gate_json(gate));
    json["path_bias_deg"] = deg_from_rad(summary.path_rad.bias);
    json["path_scatter_deg"] = deg_from_rad(summary.path_rad.scatter);
    json["path_rms_deg"] = deg_from_rad(summary.path_rad.rms);
    json["path_bias_ft"] = ft_from_m(summary.path_m.bias);
    json["path_scatter_ft"] = ft_from_m(summary.path_m.scatter);
    json["path_rms_ft"] = ft_from_m(summary.path_m.rms);
    json["speed_bias_kt"] = kt_from_mps(summary.speed_mps.bias);
    json["speed_scatter_kt"] = kt_from_mps(summary.speed_mps.scatter);
    json["speed_rms_kt"] = kt_from_mps(summary.speed_mps.rms);
    json["path_in_tolerance_percent"] = 100.0 * summary.path_share;
    json["speed_in_tolerance_percent"] = 100.0 * summary.speed_share;
    json["sink_in_tolerance_percent"] = 100.0 * summary.sink_share;
    json["all_in_tolerance_percent"] = 100.0 * summary.all_share;
    json["lights_percent_by_white_count"] = Json::array();
    for (const double share : summary.light_share)
        json["lights_percent_by_white_count"].push_back(100.0 * share);
    json["lights_unseen_percent"] = 100.0 * summary.light_unseen_share;
    json["light_changes"] = summary.light_changes;
    Json worst{{"words", worst_sentence(summary, track)},
               {"time_s", track.points[summary.worst.point].time_s},
               {"tolerances_off", summary.worst.severity}};
    add_deviations(worst, summary.worst.deviations);
    json["worst"] = worst;
}

std::string summary_text(const Summary& summary, const Track& track) {
    std::string text = end_sentence(summary) + "\n" + worst_sentence(summary, track) + "\n\n";
    for (const GateValue& gate : summary.gates) text += gate_text(summary, gate);
    text += "\n";
    text += row("path", format("%+.2f deg on average, scatter %.2f deg", deg_from_rad(summary.path_rad.bias),
                               deg_from_rad(summary.path_rad.scatter)));
    text +=
        row("airspeed", format("%+.1f kt on average, scatter %.1f kt", kt_from_mps(summary.speed_mps.bias),
                               kt_from_mps(summary.speed_mps.scatter)));
    text += row("in tolerance", format("path %.0f %%, airspeed %.0f %%, sink %.0f %%, all three %.0f %%",
                                       100.0 * summary.path_share, 100.0 * summary.speed_share,
                                       100.0 * summary.sink_share, 100.0 * summary.all_share));
    for (int white = summary.light_units; white >= 0; --white) {
        const double share = summary.light_share[static_cast<std::size_t>(white)];
        if (share > 0.0)
            text += row("lights: " + light_words(white, summary.light_units, summary.light_kind),
                        format("%.0f %% of the time", 100.0 * share));
    }
    return text;
}

}  // namespace slopewise::cli
