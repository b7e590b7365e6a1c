#include "data/read_lesson.h"

#include "base/units.h"
#include "data/fields.h"
#include "data/read_happenings.h"
#include "data/read_outlook.h"
#include "data/read_practice.h"
#include "data/read_start.h"
#include "data/read_success.h"
#include "data/read_teaching.h"

namespace slopewise {
namespace {

Weather read_weather(Fields fields) {
    Weather weather;
    weather.temperature_deviation_k = fields.number("warmer_than_standard_c", {-50.0, 50.0});
    weather.qnh_pa = 100.0 * fields.number("qnh_hpa", {900.0, 1100.0});
    fields.finish();
    return weather;
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
    if (fields.has("briefed_flap")) lesson.briefed_flap = fields.integer("briefed_flap", 0, 3);
    lesson.glide = fields.flag_or("glide", false);
    if (fields.has("traffic")) lesson.traffic = read_traffic(fields.object("traffic"));
    lesson.hands = static_cast<Hands>(fields.one_of_or("hands", 0, hands_names));
    if (fields.has("aids")) lesson.aids = read_aids(fields.object("aids"));
    if (fields.has("practice")) lesson.practice = read_practice(fields.object("practice"));
    if (fields.has("success")) lesson.success = read_success(fields.object("success"));
    if (fields.has("syllabus")) lesson.syllabus = read_syllabus(fields.object("syllabus"));
    if (fields.has("teaching")) lesson.teaching = read_teaching(fields.object("teaching"));
    fields.finish();
    if (!problems.empty()) return failure<Lesson>(std::move(problems));
    return success(std::move(lesson));
}

}  // namespace slopewise
