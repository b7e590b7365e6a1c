#include "data/read_aircraft.h"

#include "base/units.h"
#include "data/fields.h"
#include "flight/performance.h"

namespace slopewise {
namespace {

Wing read_wing(Fields fields) {
    Wing wing;
    wing.area_m2 = fields.number("area_m2", {5.0, 60.0});
    wing.span_m = fields.number("span_m", {5.0, 30.0});
    wing.height_m = fields.number("height_above_wheels_m", {0.2, 5.0});
    wing.lift_at_zero = fields.number("lift_at_zero_alpha", {-0.5, 1.0});
    wing.lift_slope_per_rad = fields.number("lift_slope_per_rad", {2.0, 7.0});
    wing.zero_lift_drag = fields.number("zero_lift_drag", {0.005, 0.2});
    wing.oswald = fields.number("oswald_efficiency", {0.4, 1.0});
    wing.separation_drag = fields.number("separation_drag", {0.0, 3.0});
    wing.stall_rounding = fields.number("stall_rounding", {0.01, 0.5});
    wing.warning_margin_rad = rad_from_deg(fields.number("stall_warning_margin_deg", {0.5, 10.0}));
    fields.finish();
    return wing;
}

Engine read_engine(Fields fields) {
    Engine engine;
    engine.rated_power_w = 1000.0 * fields.number("rated_power_kw", {20.0, 1000.0});
    engine.idle_fraction = fields.number("idle_percent", {0.0, 20.0}) / 100.0;
    engine.lag_s = fields.number("lag_s", {0.1, 5.0});
    engine.disc_diameter_m = fields.number("propeller_diameter_m", {1.0, 4.0});
    engine.efficiency = fields.number("propeller_efficiency_percent", {40.0, 100.0}) / 100.0;
    engine.windmill_drag = fields.number("windmill_drag", {0.0, 1.0});
    fields.finish();
    return engine;
}

PitchResponse read_pitch(Fields fields) {
    PitchResponse pitch;
    pitch.neutral_alpha_rad = rad_from_deg(fields.number("neutral_alpha_deg", {-5.0, 15.0}));
    pitch.trim_range_rad = rad_from_deg(fields.number("trim_range_deg", {2.0, 20.0}));
    pitch.stick_range_rad = rad_from_deg(fields.number("stick_range_deg", {4.0, 25.0}));
    pitch.power_shift_rad = rad_from_deg(fields.number("full_power_shift_deg", {-5.0, 5.0}));
    pitch.frequency_radps = fields.number("short_period_radps", {1.0, 10.0});
    pitch.damping = fields.number("short_period_damping", {0.2, 1.5});
    pitch.reference_speed_mps = mps_from_kt(fields.number("reference_speed_kt", {30.0, 200.0}));
    fields.finish();
    return pitch;
}

Geometry read_geometry(Fields fields) {
    Geometry geometry;
    geometry.eye_forward_m = fields.number("eye_forward_m", {-5.0, 5.0});
    geometry.eye_up_m = fields.number("eye_up_m", {-1.0, 5.0});
    geometry.wheels_down_m = fields.number("wheels_down_m", {0.2, 5.0});
    geometry.look_over_rad = rad_from_deg(fields.number("look_over_nose_deg", {2.0, 20.0}));
    fields.finish();
    return geometry;
}

FlapSetting read_flap(Fields& fields) {
    FlapSetting flap;
    flap.name = fields.text("name", 20);
    flap.lift_increment = fields.number("lift_increment", {0.0, 2.0});
    flap.drag_increment = fields.number("drag_increment", {0.0, 0.3});
    flap.max_lift = fields.number("max_lift", {0.5, 4.0});
    flap.alpha_shift_rad = rad_from_deg(fields.number("alpha_shift_deg", {-15.0, 15.0}));
    flap.stated_stall_mps = mps_from_kt(fields.number_or("stall_speed_kt", 0.0, {20.0, 120.0}));
    flap.max_speed_mps = mps_from_kt(fields.number("max_speed_kt", {40.0, 400.0}));
    fields.finish();
    return flap;
}

}  // namespace

Result<Aircraft> read_aircraft(const JsonNode& root, const std::string& file) {
    std::vector<Problem> problems;
    Fields fields(root, file, "", problems);
    Aircraft aircraft;
    fields.text("kind");
    aircraft.id = fields.text("id", 40);
    aircraft.name = fields.text("name", 60);
    aircraft.least_mass_kg = fields.number("least_mass_kg", {200.0, 6000.0});
    aircraft.most_mass_kg = fields.number("most_mass_kg", {aircraft.least_mass_kg, 6000.0});
    aircraft.mass_kg = fields.number("mass_kg", {aircraft.least_mass_kg, aircraft.most_mass_kg});
    aircraft.wing = read_wing(fields.object("wing"));
    aircraft.engine = read_engine(fields.object("engine"));
    aircraft.pitch = read_pitch(fields.object("pitch"));
    aircraft.geometry = read_geometry(fields.object("geometry"));
    for (Fields& flap : fields.list("flaps", 1, aircraft.flaps.size())) {
        aircraft.flaps[static_cast<std::size_t>(aircraft.flap_count++)] = read_flap(flap);
    }
    aircraft.flap_travel_s = fields.number("flap_travel_s", {0.5, 20.0});
    aircraft.approach_speed_mps = mps_from_kt(fields.number("approach_speed_kt", {35.0, 150.0}));
    aircraft.normal_max_mps = mps_from_kt(fields.number("normal_max_speed_kt", {60.0, 300.0}));
    aircraft.never_exceed_mps = mps_from_kt(fields.number("never_exceed_speed_kt", {70.0, 400.0}));
    fields.finish();
    if (problems.empty()) {
        for (AircraftFlaw& flaw : aircraft_flaws(aircraft))
            problems.push_back({file, root.line, flaw.path, std::move(flaw.what), std::move(flaw.allowed)});
    }
    if (!problems.empty()) return failure<Aircraft>(std::move(problems));
    return success(std::move(aircraft));
}

}  // namespace slopewise
