#include "data/read_start.h"

#include <array>
#include <string_view>

#include "base/units.h"

namespace slopewise {
namespace {

constexpr Range wind_range_kt{-15.0, 40.0};  // negative: tailwind

Wind read_wind_table(Fields& fields) {
    Wind wind;
    wind.kind = Wind::Kind::table;
    double below_ft = -1.0;
    for (Fields& row : fields.list("table", 2, wind.table.size())) {
        const double height_ft = row.number("height_ft", {0.0, 10000.0});
        const double headwind_kt = row.number("headwind_kt", wind_range_kt);
        if (height_ft <= below_ft) {
            row.report("height_ft", "is " + number_text(height_ft), "above the row before");
        }
        below_ft = height_ft;
        wind.table[static_cast<std::size_t>(wind.table_size++)] = {m_from_ft(height_ft),
                                                                   mps_from_kt(headwind_kt)};
        row.finish();
    }
    return wind;
}

}  // namespace

Start read_start(Fields fields) {
    Start start;
    start.distance_m = m_from_nm(fields.number("distance_nm", {0.25, 10.0}));
    start.offset_rad = rad_from_deg(fields.number_or("offset_deg", 0.0, {-2.0, 9.0}));
    start.path_rad = -rad_from_deg(fields.number("descent_deg", {0.0, 8.0}));
    start.cas_mps = mps_from_kt(fields.number("speed_kt", {35.0, 200.0}));
    start.flap = fields.integer("flap", 0, 3);
    fields.finish();
    return start;
}

Wind read_wind(Fields fields) {
    Wind wind;
    if (fields.has("table")) {
        wind = read_wind_table(fields);
    } else {
        wind.headwind_mps = mps_from_kt(fields.number("headwind_kt", wind_range_kt));
        if (fields.has("terrain")) {
            std::array<std::string_view, terrains.size()> names;
            for (std::size_t i = 0; i < names.size(); ++i) names[i] = terrains[i].name;
            wind.kind = Wind::Kind::logarithmic;
            wind.roughness_m = terrains[fields.one_of("terrain", names)].roughness_m;
        } else if (fields.has("roughness_m")) {
            wind.kind = Wind::Kind::logarithmic;
            wind.roughness_m = fields.number("roughness_m", {0.0002, 1.0});
        }
    }
    fields.finish();
    return wind;
}

}  // namespace slopewise
