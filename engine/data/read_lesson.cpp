#include "data/read_lesson.h"

#include <array>
#include <string_view>

#include "base/units.h"
#include "data/fields.h"
#include "data/read_happenings.h"
#include "data/read_outlook.h"

namespace slopewise {
namespace {

constexpr Range wind_range_kt{-15.0, 40.0};  // negative: tailwind

Start read_start(Fields fields) {
    Start start;
    start.distance_m = m_from_nm(fields.number("distance_nm", {0.25, 10.0}));
    start.offset_rad = rad_from_deg(fields.number_or("offset_deg", 0.0, {-2.0, 3.0}));
    start.path_rad = -rad_from_deg(fields.number("descent_deg", {0.0, 8.0}));
    start.cas_mps = mps_from_kt(fields.number("speed_kt", {35.0, 200.0}));
    start.flap = fields.integer("flap", 0, 3);
    fields.finish();
    return start;
}

Weather read_weather(Fields fields) {
    Weather weather;
    weather.temperature_deviation_k = fields.number("warmer_than_standard_c", {-50.0, 50.0});
    weather.qnh_pa = 100.0 * fields.number("qnh_hpa", {900.0, 1100.0});
    fields.finish();
    return weather;
}

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

Tolerances read_tolerances(Fields fields) {
    Tolerances tolerances;
    tolerances.path_rad = rad_from_deg(fields.number("path_deg", {0.1, 2.0}));
    tolerances.path_floor_m = m_from_ft(fields.number("path_floor_ft", {0.0, 100.0}));
    tolerances.slow_mps = mps_from_kt(fields.number("slow_kt", {1.0, 30.0}));
    tolerances.fast_mps = mps_from_kt(fields.number("fast_kt", {1.0, 30.0}));
    tolerances.sink_mps = mps_from_fpm(fields.number("sink_fpm", {50.0, 1000.0}));
    fields.finish();
    return tolerances;
}

}  // namespace

Result<Lesson> read_lesson(const JsonNode& root, const std::string& file) {
    std::vector<Problem> problems;
    Fields fields(root, file, "", problems);
    Lesson lesson;
    fields.text("kind");
    lesson.id = fields.text("id", 40);
    lesson.title = fields.text("title", 80);
    lesson.aim = fields.text("aim", 200);
    lesson.aircraft_id = fields.text("aircraft", 40);
    lesson.runway_id = fields.text("runway", 40);
    lesson.mass_kg = fields.number_or("mass_kg", 0.0, {200.0, 6000.0});
    lesson.start = read_start(fields.object("start"));
    lesson.target_cas_mps = mps_from_kt(fields.number("target_speed_kt", {35.0, 150.0}));
    lesson.weather = read_weather(fields.object("weather"));
    lesson.wind = read_wind(fields.object("wind"));
    if (fields.has("outlook")) lesson.outlook = read_outlook(fields.object("outlook"));
    if (fields.has("air")) read_air(fields.object("air"), lesson);
    if (fields.has("failures")) read_failures(fields, lesson);
    lesson.side_profile = fields.flag_or("side_profile", false);
    lesson.tolerances = read_tolerances(fields.object("tolerances"));
    fields.finish();
    if (!problems.empty()) return failure<Lesson>(std::move(problems));
    return success(std::move(lesson));
}

}  // namespace slopewise
