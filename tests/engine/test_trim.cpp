#include <cmath>

#include "base/units.h"
#include "flight/trim.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

TrimState trim_of(const TrimWanted& wanted, const Surroundings& surroundings = still_air()) {
    return solve_trim(tourer(), surroundings, wanted);
}

}  // namespace

TEST_CASE("trim: every state it calls flyable is steady by the equations of motion") {
    const Aircraft& aircraft = tourer();
    int flyable = 0;
    for (int flap = 0; flap < aircraft.flap_count; ++flap) {
        for (const double speed_kt : {55.0, 65.0, 80.0}) {
            for (const double path_deg : {-5.0, -3.0, 0.0, 2.0}) {
                for (const double headwind_kt : {-10.0, 0.0, 20.0}) {
                    for (const double height_m : {6.0, 150.0, 900.0}) {
                        Surroundings surroundings = still_air();
                        surroundings.wind.headwind_mps = mps_from_kt(headwind_kt);
                        surroundings.air.temperature_deviation_k = 12.0;
                        const TrimWanted wanted{mps_from_kt(speed_kt), flap, rad_from_deg(path_deg),
                                                height_m};
                        const TrimState trim = trim_of(wanted, surroundings);
                        if (!trim.flyable) continue;
                        ++flyable;
                        const FlightState rate = rates_of(aircraft, surroundings, trim.controls,
                                                          trimmed_start(wanted, trim, -3000.0));
                        // m/s2 and rad/s2: what halving intervals to the last bit leaves
                        const double worst =
                            std::fmax(std::fmax(std::abs(rate.vx_mps), std::abs(rate.vz_mps)),
                                      std::fmax(std::abs(rate.pitch_rate_radps), std::abs(rate.power)));
                        if (!(worst < 1e-9))
                            FAIL_CHECK("not steady by " << worst << " at " << speed_kt << " kt");
                    }
                }
            }
        }
    }
    CHECK(flyable > 150);
}

TEST_CASE("trim: it says plainly why a state cannot be flown") {
    const struct {
        TrimWanted wanted;
        double headwind_kt;
        const char* reason;
    } rows[] = {
        {{mps_from_kt(45.0), 2, rad_from_deg(-3.0), 150.0}, 0.0, "the speed is below the stall"},
        {{mps_from_kt(65.0), 2, rad_from_deg(-9.0), 150.0}, 0.0, "idle is still too much power"},
        {{mps_from_kt(65.0), 2, rad_from_deg(12.0), 150.0}, 0.0, "full power is too little"},
        {{mps_from_kt(30.0), 2, rad_from_deg(-3.0), 150.0}, 40.0, "the headwind is as fast as the aircraft"},
    };
    for (const auto& row : rows) {
        Surroundings surroundings = still_air();
        surroundings.wind.headwind_mps = mps_from_kt(row.headwind_kt);
        const TrimState trim = trim_of(row.wanted, surroundings);
        CHECK(!trim.flyable);
        CHECK(trim.reason == row.reason);
    }
    Aircraft stiff = tourer();
    stiff.pitch.trim_range_rad = rad_from_deg(0.5);
    const TrimState trim = solve_trim(stiff, still_air(), {mps_from_kt(80.0), 2, rad_from_deg(-3.0), 150.0});
    CHECK(trim.reason == "the trim wheel does not reach that speed");
}

TEST_CASE("trim: a tailwind means more sink and less power for the same path and airspeed") {
    Surroundings tail = still_air();
    tail.wind.headwind_mps = mps_from_kt(-10.0);
    const TrimWanted wanted{mps_from_kt(65.0), 2, rad_from_deg(-3.0), 150.0};
    const TrimState calm = trim_of(wanted), downwind = trim_of(wanted, tail);
    CHECK(downwind.sink_mps > calm.sink_mps);
    CHECK(downwind.power < calm.power);
    CHECK(downwind.ground_speed_mps > calm.ground_speed_mps);
}

TEST_CASE("trim: it takes the wind at the height of the wheels") {
    Surroundings surroundings = still_air();
    surroundings.wind.kind = Wind::Kind::table;
    surroundings.wind.table = {{{0.0, 2.0}, {300.0, 12.0}}};
    surroundings.wind.table_size = 2;
    const double wheels_m = 150.0;
    const TrimWanted wanted{mps_from_kt(65.0), 2, rad_from_deg(-3.0),
                            wheels_m + tourer().geometry.wheels_down_m};
    const TrimState trim = trim_of(wanted, surroundings);
    const double along_mps = trim.tas_mps * std::cos(trim.air_path_rad);
    CHECK_NEAR(along_mps - trim.ground_speed_mps, 7.0, 1e-9);  // half way up the table; rounding
}

TEST_CASE("trim: on the back side of the power curve slower flight needs more power") {
    // FAA Airplane Flying Handbook 8083-3C, page 193: at low speed and high angle of attack, raising the nose
    // increases the rate of descent (the region of reversed command). So there is a speed of least power well
    // above the stall, below which power rises again.
    const Aircraft& aircraft = tourer();
    for (int flap = 0; flap < aircraft.flap_count; ++flap) {
        CAPTURE(flap);
        double least = 2.0, least_at_kt = 0.0;
        const double stall_kt = kt_from_mps(stall_speed_mps(aircraft, flap));
        for (double speed_kt = stall_kt + 1.0; speed_kt < 100.0; speed_kt += 0.25) {
            const double power = trim_of({mps_from_kt(speed_kt), flap, rad_from_deg(-3.0), 150.0}).power;
            if (power >= least) continue;
            least = power;
            least_at_kt = speed_kt;
        }
        const double near_stall =
            trim_of({mps_from_kt(stall_kt + 1.0), flap, rad_from_deg(-3.0), 150.0}).power;
        const double fast = trim_of({mps_from_kt(90.0), flap, rad_from_deg(-3.0), 150.0}).power;
        MESSAGE("flap " << flap << ": least power " << 100.0 * least << " percent at " << least_at_kt
                        << " kt, " << 100.0 * near_stall << " a knot above the stall at " << stall_kt
                        << " kt");
        CHECK(least_at_kt > stall_kt + 2.0);
        CHECK(near_stall > least + 0.01);
        CHECK(fast > least + 0.01);
    }
}
