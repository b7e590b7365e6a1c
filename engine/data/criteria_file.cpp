#include "data/criteria_file.h"

#include <cmath>
#include <nlohmann/json.hpp>

namespace slopewise {
namespace {

using Json = nlohmann::ordered_json;

GateCriteria read_gate(Fields fields, GateCriteria gate) {
    gate.path_rad = rad_from_deg(fields.number_or("path_deg", deg_from_rad(gate.path_rad), {0.1, 2.0}));
    gate.path_floor_m =
        m_from_ft(fields.number_or("path_floor_ft", ft_from_m(gate.path_floor_m), {0.0, 100.0}));
    gate.slow_mps = mps_from_kt(fields.number_or("slow_kt", kt_from_mps(gate.slow_mps), {1.0, 30.0}));
    gate.fast_mps = mps_from_kt(fields.number_or("fast_kt", kt_from_mps(gate.fast_mps), {1.0, 30.0}));
    gate.sink_mps = mps_from_fpm(fields.number_or("sink_fpm", fpm_from_mps(gate.sink_mps), {50.0, 1000.0}));
    gate.most_sink_mps =
        mps_from_fpm(fields.number_or("most_sink_fpm", fpm_from_mps(gate.most_sink_mps), {300.0, 2000.0}));
    fields.finish();
    return gate;
}

// So that a limit at the end of its range is read again as within it.
double rounded(double value) { return std::round(value * 1e6) / 1e6; }

Json gate_json(const GateCriteria& gate) {
    return {{"path_deg", rounded(deg_from_rad(gate.path_rad))},
            {"path_floor_ft", rounded(ft_from_m(gate.path_floor_m))},
            {"slow_kt", rounded(kt_from_mps(gate.slow_mps))},
            {"fast_kt", rounded(kt_from_mps(gate.fast_mps))},
            {"sink_fpm", rounded(fpm_from_mps(gate.sink_mps))},
            {"most_sink_fpm", rounded(fpm_from_mps(gate.most_sink_mps))}};
}

}  // namespace

Criteria read_criteria(Fields fields) {
    constexpr std::string_view kinds[] = {"criteria"};
    fields.one_of("kind", kinds);
    Criteria c;
    if (fields.has("at_500_ft_and_above")) c.far = read_gate(fields.object("at_500_ft_and_above"), c.far);
    if (fields.has("at_300_ft")) c.decision = read_gate(fields.object("at_300_ft"), c.decision);
    if (fields.has("at_200_ft_and_below")) c.near = read_gate(fields.object("at_200_ft_and_below"), c.near);
    c.decision_s = fields.number_or("decision_s", c.decision_s, {1.0, 30.0});
    c.most_pitch_range_rad =
        rad_from_deg(fields.number_or("pitch_range_deg", deg_from_rad(c.most_pitch_range_rad), {1.0, 20.0}));
    c.most_lever_step =
        fields.number_or("lever_step_percent", 100.0 * c.most_lever_step, {1.0, 100.0}) / 100.0;
    c.least_power_over_idle =
        fields.number_or("power_over_idle_percent", 100.0 * c.least_power_over_idle, {0.0, 50.0}) / 100.0;
    c.landing_flap = fields.flag_or("landing_flap", c.landing_flap);
    if (fields.has("convention"))
        c.convention = static_cast<Convention>(fields.one_of("convention", convention_names));
    c.answer_rad = rad_from_deg(fields.number_or("answer_path_deg", deg_from_rad(c.answer_rad), {0.1, 2.0}));
    c.answer_floor_m =
        m_from_ft(fields.number_or("answer_path_floor_ft", ft_from_m(c.answer_floor_m), {0.0, 100.0}));
    fields.finish();
    return c;
}

Result<Criteria> read_criteria(std::string_view text, const std::string& file) {
    Result<JsonNode> parsed = parse_json(text, file);
    if (!parsed.ok()) return failure<Criteria>(std::move(parsed.problems));
    std::vector<Problem> problems;
    const Criteria criteria = read_criteria(Fields(*parsed.value, file, "", problems));
    if (!problems.empty()) return failure<Criteria>(std::move(problems));
    return success(criteria);
}

std::string criteria_text(const Criteria& c) {
    Json json{{"kind", "criteria"}};
    json["at_500_ft_and_above"] = gate_json(c.far);
    json["at_300_ft"] = gate_json(c.decision);
    json["at_200_ft_and_below"] = gate_json(c.near);
    json["decision_s"] = c.decision_s;
    json["pitch_range_deg"] = rounded(deg_from_rad(c.most_pitch_range_rad));
    json["lever_step_percent"] = rounded(100.0 * c.most_lever_step);
    json["power_over_idle_percent"] = rounded(100.0 * c.least_power_over_idle);
    json["landing_flap"] = c.landing_flap;
    json["convention"] = convention_names[static_cast<std::size_t>(c.convention)];
    json["answer_path_deg"] = rounded(deg_from_rad(c.answer_rad));
    json["answer_path_floor_ft"] = rounded(ft_from_m(c.answer_floor_m));
    return json.dump(2) + "\n";
}

}  // namespace slopewise
