#include "base/units.h"
#include "debrief/flight_tables.h"

namespace slopewise {
namespace {

struct GateSource {
    const GateValue& gate;
    const Stability* stability;  // null where the approach began, which no criteria are held to
};
using G = const GateSource&;

double known(G g, double value) { return known_if(g.gate.reached, value); }
double known_at_gate(G g, double value) { return known_if(g.gate.reached && g.stability != nullptr, value); }

constexpr Column<GateSource> columns[] = {
    {"wheel_height_ft", 1, "of the gate, or where the approach began, above the threshold",
     [](G g) { return g.gate.height_ft; }},
    {"time_s", 4,
     "when the wheels passed it downwards; all else is empty where they did not, and trends at the start",
     [](G g) { return known(g, g.gate.time_s); }},
    {"distance_to_aim_nm", 5, "along the ground, then",
     [](G g) { return known(g, nm_from_m(g.gate.distance_m)); }},
    {"path_deviation_deg", 4, "mean over two seconds either side, high positive",
     [](G g) { return known(g, deg_from_rad(g.gate.mean.path_rad)); }},
    {"path_deviation_ft", 2, "the same in feet", [](G g) { return known(g, ft_from_m(g.gate.mean.path_m)); }},
    {"white_count", 0, "units seen white, then; -1 none in view",
     [](G g) { return known(g, g.gate.white_count); }},
    {"airspeed_kt", 3, "mean likewise", [](G g) { return known(g, kt_from_mps(g.gate.cas_mps)); }},
    {"speed_deviation_kt", 3, "less target",
     [](G g) { return known(g, kt_from_mps(g.gate.mean.speed_mps)); }},
    {"sink_fpm", 2, "mean likewise", [](G g) { return known(g, fpm_from_mps(g.gate.sink_mps)); }},
    {"sink_deviation_fpm", 2, "less ground speed x tangent of the path",
     [](G g) { return known(g, fpm_from_mps(g.gate.mean.sink_mps)); }},
    {"power_percent", 2, "mean likewise", [](G g) { return known(g, 100.0 * g.gate.power); }},
    {"pitch_deg", 3, "mean likewise", [](G g) { return known(g, deg_from_rad(g.gate.pitch_rad)); }},
    {"stick_percent", 3, "mean likewise: what the trim does not carry",
     [](G g) { return known(g, 100.0 * g.gate.stick); }},
    {"trim_percent", 3, "mean likewise", [](G g) { return known(g, 100.0 * g.gate.trim); }},
    {"flap_setting", 0, "then", [](G g) { return known(g, g.gate.flap_setting); }},
    {"path_trend_deg_per_s", 5, "slope of the ten seconds before",
     [](G g) { return known_at_gate(g, deg_from_rad(g.gate.path_trend_radps)); }},
    {"speed_trend_kt_per_s", 4, "likewise",
     [](G g) { return known_at_gate(g, kt_from_mps(g.gate.speed_trend_mps2)); }},
    {"sink_trend_fpm_per_s", 3, "likewise",
     [](G g) { return known_at_gate(g, fpm_from_mps(g.gate.sink_trend_mps2)); }},
    {"pitch_range_deg", 3, "greatest less least in the ten seconds before",
     [](G g) { return known_at_gate(g, deg_from_rad(g.gate.pitch_range_rad)); }},
    {"lever_step_percent", 2, "largest change within two seconds, in the ten seconds before",
     [](G g) { return known_at_gate(g, 100.0 * g.gate.lever_step); }},
    {"in_tolerance", 0, "1: path, speed and sink all in the lesson's tolerance",
     [](G g) { return known(g, g.gate.mean.all_in()); }},
    {"stable", 0, "1: by all criteria of this gate",
     [](G g) { return known_at_gate(g, g.stability != nullptr && g.stability->stable()); }},
};

}  // namespace

Table gate_table(const ReviewedFlight& flight) {
    Table table{"gates", "gate", {}, {}};
    set_heads(table, columns);
    add_row(table, columns, "start", GateSource{flight.review.start, nullptr});
    for (std::size_t i = 0; i < flight.review.summary.gates.size(); ++i)
        add_row(table, columns, cell_text(flight.review.summary.gates[i].height_ft, 0) + "_ft",
                GateSource{flight.review.summary.gates[i], &flight.review.stability[i]});
    return table;
}

}  // namespace slopewise
