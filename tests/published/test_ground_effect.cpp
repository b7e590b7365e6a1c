// Ground effect on induced drag against the law's and the handbook's figures.
#include "flight/aerodynamics.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("ground effect: the share of induced drag left is Wieselsberger's") {
    // 1 - (1 - 1.32 h/b) / (1.05 + 7.4 h/b), formula from memory; values worked out apart to a thousandth.
    const struct {
        double height_over_span, share;
    } rows[] = {{0.05, 0.342}, {0.10, 0.515}, {0.15, 0.629}, {0.20, 0.709}, {0.25, 0.769}, {0.50, 0.928}};
    for (const auto& row : rows) CHECK_NEAR(induced_drag_share(row.height_over_span), row.share, 0.0005);
}

TEST_CASE(
    "ground effect: it takes off what the training handbook says at a quarter and at a tenth of the span") {
    // FAA handbook: 23.5 percent less induced drag at a quarter of the span, 47.6 at a tenth (from memory).
    // One percentage point: another law of the same kind. McCormick's would give 6 and 28.
    CHECK_NEAR(100.0 * (1.0 - induced_drag_share(0.25)), 23.5, 1.0);
    CHECK_NEAR(100.0 * (1.0 - induced_drag_share(0.10)), 47.6, 1.0);
    CHECK(1.0 - induced_drag_share(1.0) <= 0.014);  // and at one span, 1.4 percent or less
}

TEST_CASE("ground effect: it fades out with height, never adds drag, and holds its value below the ground") {
    double before = induced_drag_share(0.0);
    CHECK(before > 0.0);
    CHECK(induced_drag_share(-1.0) == before);
    double largest_step = 0.0;
    for (int i = 1; i <= 2000; ++i) {
        const double share = induced_drag_share(i * 0.001);
        if (share < before || share > 1.0) FAIL_CHECK("share " << share << " at " << i * 0.001);
        largest_step = std::fmax(largest_step, share - before);
        before = share;
    }
    CHECK(before == 1.0);
    CHECK(largest_step < 0.01);  // its slope is below 8.3 a span: no jump where the formula ends
}

TEST_CASE("ground effect: near the ground the same lift costs less drag, and the lift stays") {
    const Aircraft aircraft = textbook_aircraft(0.8);
    const FlapEffect flap = flap_effect(aircraft, 0.0);
    const Coefficients high = coefficients(aircraft, 0.0, flap, 100.0);
    const Coefficients low = coefficients(aircraft, 0.0, flap, 0.1 * aircraft.wing.span_m);
    CHECK(low.lift == high.lift);
    const double induced = high.drag - aircraft.wing.zero_lift_drag;
    CHECK_NEAR((low.drag - aircraft.wing.zero_lift_drag) / induced, 0.515, 0.0005);
}
