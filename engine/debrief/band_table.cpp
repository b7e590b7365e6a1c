#include "base/units.h"
#include "debrief/flight_tables.h"

namespace slopewise {
namespace {

using B = const Band&;

double known(B b, double value) { return known_if(b.points > 0, value); }

constexpr Column<Band> columns[] = {
    {"points", 0, "track points in the band", [](B b) { return double(b.points); }},
    {"path_bias_deg", 4, "mean path deviation", [](B b) { return known(b, deg_from_rad(b.path_rad.bias)); }},
    {"path_scatter_deg", 4, "standard deviation about it",
     [](B b) { return known(b, deg_from_rad(b.path_rad.scatter)); }},
    {"path_bias_ft", 2, "mean height off the path", [](B b) { return known(b, ft_from_m(b.path_m.bias)); }},
    {"path_scatter_ft", 2, "standard deviation about it",
     [](B b) { return known(b, ft_from_m(b.path_m.scatter)); }},
    {"speed_bias_kt", 3, "mean airspeed less target",
     [](B b) { return known(b, kt_from_mps(b.speed_mps.bias)); }},
    {"speed_scatter_kt", 3, "standard deviation about it",
     [](B b) { return known(b, kt_from_mps(b.speed_mps.scatter)); }},
    {"stick_reversals_per_min", 3, "of more than 3 % of the travel",
     [](B b) { return known(b, b.controls.stick_reversals_per_min()); }},
    {"lever_reversals_per_min", 3, "of more than 2 % of the travel",
     [](B b) { return known(b, b.controls.lever_reversals_per_min()); }},
    {"stick_rate_rms_percent_per_s", 3, "root mean square rate of the stick",
     [](B b) { return known(b, 100.0 * b.controls.stick_rate_rms_per_s); }},
    {"largest_lever_step_percent", 2, "within two seconds, inside the band",
     [](B b) { return known(b, 100.0 * b.controls.largest_lever_step); }},
    {"pitch_scatter_deg", 4, "standard deviation of the pitch",
     [](B b) { return known(b, deg_from_rad(b.controls.pitch_scatter_rad)); }},
};

}  // namespace

Table band_table(const ReviewedFlight& flight) {
    Table table{"bands", "band", {}, {}};
    set_heads(table, columns);
    for (std::size_t i = 0; i < flight.review.bands.size(); ++i)
        add_row(table, columns, std::string(band_names[i]), flight.review.bands[i]);
    return table;
}

}  // namespace slopewise
