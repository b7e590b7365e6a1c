#include "tests/golden/hands.h"

#include "base/random.h"
#include "base/units.h"

namespace slopewise::golden {

void by_pilot(std::string_view name, std::uint64_t seed, const Scenario& scenario, Attempt& attempt) {
    ModelPilot pilot = pilot_for(scenario, pilot_skill(name).value(), seed);
    demonstrate(scenario, attempt, pilot, [](const Controls&, const Events&) {});
}

void by_wild_hands(std::uint64_t seed, double seconds, const Scenario& scenario, Attempt& attempt) {
    Random random{seed};
    Controls controls = attempt.controls;
    while (time_s(attempt) < seconds && !attempt.at_rest) {
        if (attempt.tick % 240 == 0) {
            // One after another: in a braced list, too, the order is what the seed means.
            const double stick = 2.0 * next_uniform(random) - 1.0, throttle = next_uniform(random);
            const double trim = 2.0 * next_uniform(random) - 1.0;
            controls = quantize({stick, throttle, trim, static_cast<int>(3.0 * next_uniform(random)), false});
        }
        tick(scenario, attempt, controls);
    }
}

void by_one_who_goes_around(const Scenario& scenario, Attempt& attempt) {
    ModelPilot pilot = pilot_for(scenario, PilotSkill{}, 5);
    while (wheel_height_m(scenario.aircraft, attempt.flight) > m_from_ft(200.0))
        tick(scenario, attempt, fly(pilot, sight_of(scenario, attempt), time_s(attempt)));
    ControlPositions hands = positions_of(attempt.controls);
    hands.throttle = 1.0;
    hands.go_around = true;
    for (int i = 0; i < 3600; ++i) {
        hands.flap = i < 600 ? 2 : (i < 1800 ? 1 : 0);
        hands.stick = i < 360 ? 0.15 : 0.0;
        tick(scenario, attempt, quantize(hands));
    }
}

}  // namespace slopewise::golden
