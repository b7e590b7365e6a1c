#include "tests/fixtures.h"

#include <cstdio>
#include <cstdlib>

#include "assets/embedded.h"
#include "base/units.h"

namespace slopewise::test {

std::vector<DataFile> shipped_files() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files()) {
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    }
    return files;
}

const Catalog& shipped() {
    static const Result<Catalog> catalog = load_catalog(shipped_files());
    if (!catalog.ok()) {  // nothing else can be tested then
        for (const Problem& problem : catalog.problems)
            std::fprintf(stderr, "%s\n", to_text(problem).c_str());
        std::abort();
    }
    return *catalog.value;
}

const Aircraft& tourer() { return *find_aircraft(shipped(), "tourer"); }

Scenario shipped_scenario(std::string_view lesson_id) {
    return scenario_of(shipped(), *find_lesson(shipped(), lesson_id));
}

Runway plain_runway() {
    Runway runway;
    runway.id = "plain";
    runway.name = "Plain 09";
    runway.designator = "09";
    runway.length_m = 1500.0;
    runway.width_m = 30.0;
    runway.aim_distance_m = 300.0;
    runway.lights.nominal_path_rad = rad_from_deg(3.0);
    return runway;
}

Surroundings still_air() { return {air_column(Weather{}), Wind{}, plain_runway()}; }

Aircraft textbook_aircraft(double lift_at_zero) {
    Aircraft aircraft;
    aircraft.mass_kg = 13127.5 / gravity_mps2;
    aircraft.wing.area_m2 = 16.165;
    aircraft.wing.span_m = 10.912;
    aircraft.wing.height_m = 2.0;
    aircraft.wing.lift_at_zero = lift_at_zero;
    aircraft.wing.lift_slope_per_rad = 5.0;
    aircraft.wing.zero_lift_drag = 0.025;
    aircraft.wing.oswald = 0.8;
    aircraft.wing.stall_rounding = 0.05;
    aircraft.wing.warning_margin_rad = rad_from_deg(2.0);
    aircraft.engine = {230.0 * 746.0, 0.0, 0.5, 1.9, 0.8, 0.0};
    aircraft.pitch = {0.0, 1.0, 0.2, 0.0, 4.0, 0.7, 33.0};
    aircraft.geometry = {0.0, 0.0, 1.0, rad_from_deg(5.0)};
    aircraft.flaps[0] = {"up", 0.0, 0.0, 1.6, 0.0, 100.0};
    aircraft.flap_count = 1;
    aircraft.flap_travel_s = 3.0;
    return aircraft;
}

Flight fly_good(const Scenario& scenario, std::uint64_t seed) {
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, seed);
    constexpr std::int64_t twenty_minutes = 20 * 60 * 120;
    return fly_with(scenario, twenty_minutes, [&](const Attempt& attempt) {
        return fly(pilot, sight_of(scenario, attempt), time_s(attempt));
    });
}

}  // namespace slopewise::test
