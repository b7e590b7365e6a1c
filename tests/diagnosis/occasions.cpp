#include "tests/diagnosis/occasions.h"

#include "base/random.h"
#include "base/units.h"
#include "lesson/approach_choice.h"
#include "tests/fixtures.h"

namespace slopewise::test {
namespace {

double between(Random& random, double low, double high) { return low + (high - low) * next_uniform(random); }

StartSide any_side(Random& random) {
    const double u = next_uniform(random);
    return u < 1.0 / 3.0 ? StartSide::above : u < 2.0 / 3.0 ? StartSide::on : StartSide::below;
}

}  // namespace

Scenario occasion(std::string_view pilot, std::uint64_t seed) {
    Random random{seed * 0x9e3779b97f4a7c15u + 1};
    ApproachChoice choice;
    choice.distance_nm = next_uniform(random) < 0.5 ? 2 : 3;
    choice.side = any_side(random);
    choice.headwind_kt = between(random, 0.0, 15.0);
    if (pilot == "late_power") choice.side = next_uniform(random) < 0.5 ? StartSide::above : StartSide::below;
    if (pilot == "low_stretch") choice.side = StartSide::below;
    if (pilot == "ignores_wind") {
        choice.headwind_kt = between(random, 10.0, 20.0);
        choice.side = next_uniform(random) < 0.5 ? StartSide::on : StartSide::below;
    }
    if (pilot == "presses_on") choice.distance_nm = 1;
    Lesson lesson = lesson_of(choice, shipped_scenario("final_calm").lesson);
    if (pilot == "presses_on") lesson.start.offset_rad = rad_from_deg(between(random, 1.1, 1.5));
    if (pilot == "late_flap") lesson.start.flap = 1;
    if (next_uniform(random) < 0.5) lesson.turbulence_w20_mps = mps_from_kt(between(random, 2.0, 6.0));
    lesson.seed = seed;
    return scenario_of(shipped(), lesson);
}

}  // namespace slopewise::test
