// Every figure that an entry of the sources tells is the one in the code: neither is changed without the
// other.
#include "tests/engine/source_figures.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "sources/sources.h"
#include "tests/fixtures.h"
#include "world/sight.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Whose figures are held elsewhere, or nowhere, and why.
constexpr std::array<std::string_view, 7> held_elsewhere{
    "view_width",         // these four are of ui/: tests/ui/test_sources.cpp
    "true_size",          //
    "runway_lights_lit",  //
    "visibilities",       //
    "target_speed",       // the standard's rule; target_ratio tells what the aircraft do
    "turbulence_levels",  // names for what a lesson gives as a number
    "caution_clearance",  // a caution of the manual's, nothing here is made from it
};

}  // namespace

void HeldFigures::tells(std::string_view id, const std::vector<double>& expected) {
    CAPTURE(std::string(id));
    const TaughtNumber* entry = find_taught_number(id);
    REQUIRE(entry != nullptr);
    const std::vector<ToldFigure> told = told_figures(entry->says);
    REQUIRE(told.size() == expected.size());
    for (std::size_t i = 0; i < told.size(); ++i) {
        CAPTURE(told[i].value);
        CAPTURE(expected[i]);
        CHECK(std::abs(told[i].value - expected[i]) <= told[i].rounding * (1.0 + 1e-9));
    }
    ids.insert(id);
}

TEST_CASE("source figures: each that is told is the code's, and none is told that nothing holds") {
    HeldFigures held;
    hold_what_is_seen(held);
    hold_what_is_flown(held);
    hold_what_is_judged(held);
    for (const TaughtNumber& entry : taught_numbers()) {
        if (told_figures(entry.says).empty()) continue;
        CAPTURE(std::string(entry.id));
        const bool elsewhere = std::ranges::find(held_elsewhere, entry.id) != held_elsewhere.end();
        CHECK(held.ids.contains(entry.id) != elsewhere);
    }
    for (const std::string_view id : held_elsewhere) CHECK(find_taught_number(id) != nullptr);
}

TEST_CASE("source figures: on the path the inner two are red, the outer two white") {
    const Runway runway = plain_runway();
    const LightSystem lights = make_lights(runway);
    const Point3 aim = aim_point(runway);
    const Point3 eye{aim.x_m - 1852.0, 0.0, aim.z_m + path_height_m(runway, 1852.0)};
    for (int unit = 0; unit < 4; ++unit)
        CHECK(unit_white_fraction(lights, unit, eye) == (unit < 2 ? 0.0 : 1.0));  // from the inner one out
}
