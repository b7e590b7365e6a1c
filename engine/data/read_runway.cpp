#include "data/read_runway.h"

#include "base/units.h"
#include "data/fields.h"
#include "world/lights.h"

namespace slopewise {
namespace {

LightSite read_lights(Fields fields) {
    LightSite lights;
    lights.kind = static_cast<LightSite::Kind>(fields.one_of("type", light_kind_names));
    // Usual range of nominal slopes 2.5 to 4 degrees (UFC 3-260-01); steeper ones exist up to 4.5 (AIM
    // 2-1-2).
    lights.nominal_path_rad = rad_from_deg(fields.number("nominal_path_deg", {2.5, 4.5}));
    lights.side = static_cast<LightSite::Side>(fields.one_of("side", light_side_names));
    lights.edge_gap_m = fields.number_or("edge_gap_m", lights.edge_gap_m, {9.0, 30.0});
    lights.spacing_m = fields.number_or("spacing_m", lights.spacing_m, {6.0, 9.3});
    fields.finish();
    return lights;
}

Countryside read_countryside(Fields fields) {
    Countryside country;
    country.kind = static_cast<Countryside::Kind>(fields.one_of("kind", countryside_names));
    country.seed = static_cast<std::uint64_t>(fields.integer("seed", 1, 1000000));
    fields.finish();
    return country;
}

}  // namespace

Result<Runway> read_runway(const JsonNode& root, const std::string& file) {
    std::vector<Problem> problems;
    Fields fields(root, file, "", problems);
    Runway runway;
    fields.text("kind");
    runway.id = fields.text("id", 40);
    runway.name = fields.text("name", 60);
    runway.designator = fields.text("designator", 3);
    const std::size_t problems_before_length = problems.size();
    runway.length_m = fields.number("length_m", {300.0, 5000.0});
    const bool length_known = problems.size() == problems_before_length;
    runway.width_m = fields.number("width_m", {9.0, 80.0});
    runway.elevation_m = m_from_ft(fields.number("elevation_ft", {-1000.0, 10000.0}));
    runway.slope = fields.number("slope_percent", {-4.0, 4.0}) / 100.0;
    runway.aim_distance_m =
        fields.number_or("aim_distance_m", aiming_point_marking(runway.length_m).distance_m, {50.0, 600.0});
    runway.lights = read_lights(fields.object("lights"));
    runway.edge_lights = fields.flag_or("edge_lights", false);
    runway.approach_lights = fields.flag_or("approach_lights", false);
    if (fields.has("surroundings")) runway.countryside = read_countryside(fields.object("surroundings"));
    if (length_known && runway.aim_distance_m > runway.length_m / 2.0) {
        fields.report("aim_distance_m", "is " + number_text(runway.aim_distance_m),
                      "at most half of /length_m");
    }
    fields.finish();
    if (!problems.empty()) return failure<Runway>(std::move(problems));
    return success(std::move(runway));
}

}  // namespace slopewise
