#include "flight/instruments.h"
#include "tests/check.h"

using namespace slopewise;

TEST_CASE("instruments: the vertical speed shows 95 percent of a change after seven to eight seconds") {
    // The training handbook's six to nine seconds (from memory).
    FlightState climbing;
    climbing.vz_mps = 5.0;
    Instruments shown = settled_instruments(FlightState{});
    CHECK(shown.vertical_speed_mps == 0.0);
    double shown_95_s = 0.0;
    for (int i = 1; i <= 20 * 120; ++i) {
        const double before = shown.vertical_speed_mps;
        shown = advance_instruments(shown, climbing);
        if (!(shown.vertical_speed_mps >= before && shown.vertical_speed_mps <= 5.0))
            FAIL_CHECK("overshoot at tick " << i);
        if (shown_95_s == 0.0 && shown.vertical_speed_mps >= 0.95 * 5.0) shown_95_s = i * tick_s;
    }
    CHECK_NEAR(shown_95_s, 7.5, 0.05);
    CHECK_NEAR(shown.vertical_speed_mps, 5.0, 0.01);
}

TEST_CASE("instruments: in steady flight the vertical speed shows the truth") {
    FlightState state;
    state.vz_mps = -1.75;
    const Instruments settled = settled_instruments(state);
    CHECK(settled.vertical_speed_mps == -1.75);
    CHECK(advance_instruments(settled, state).vertical_speed_mps == -1.75);
}
