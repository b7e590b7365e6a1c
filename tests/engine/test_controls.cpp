#include <cmath>
#include <limits>

#include "base/random.h"
#include "flight/controls.h"
#include "tests/check.h"

using namespace slopewise;

TEST_CASE("controls: quantised positions are within half a step of the hands'") {
    Random random{3};
    for (int i = 0; i < 2000; ++i) {
        const double a = 2.0 * next_uniform(random) - 1.0, b = next_uniform(random);
        const ControlPositions back = positions_of(quantize({a, b, -a, i % 4, i % 2 == 0}));
        if (std::abs(back.stick - a) > 0.5001 / 32767.0 || std::abs(back.trim + a) > 0.5001 / 32767.0 ||
            std::abs(back.throttle - b) > 0.5001 / 65535.0)
            FAIL_CHECK("stick " << a << ", throttle " << b);
        CHECK(back.flap == i % 4);
        CHECK(back.go_around == (i % 2 == 0));
    }
}

TEST_CASE("controls: the ends and the middle are exact") {
    const ControlPositions full = positions_of(quantize({1.0, 1.0, 1.0, 2, true}));
    CHECK(full.stick == 1.0);
    CHECK(full.throttle == 1.0);
    CHECK(full.trim == 1.0);
    const ControlPositions least = positions_of(quantize({-1.0, 0.0, -1.0, 0, false}));
    CHECK(least.stick == -1.0);
    CHECK(least.throttle == 0.0);
    CHECK(least.trim == -1.0);
    CHECK(positions_of(quantize({})).stick == 0.0);
}

TEST_CASE("controls: what is out of range is limited, and what is not a number counts as zero") {
    const double nan = std::numeric_limits<double>::quiet_NaN(),
                 inf = std::numeric_limits<double>::infinity();
    const ControlPositions beyond = positions_of(quantize({5.0, -3.0, -7.0, 900, false}));
    CHECK(beyond.stick == 1.0);
    CHECK(beyond.throttle == 0.0);
    CHECK(beyond.trim == -1.0);
    CHECK(beyond.flap == 255);  // no aircraft has that many: the flap motor stops at its last
    CHECK(quantize({0.0, 0.0, 0.0, -4, false}).flap == 0);
    const Controls nonsense = quantize({nan, inf, -inf, 1, false});
    CHECK(nonsense.stick == 0);
    CHECK(nonsense.throttle == 0);
    CHECK(nonsense.trim == 0);
}

TEST_CASE("controls: quantising again changes nothing") {
    Random random{4};
    for (int i = 0; i < 2000; ++i) {
        Controls controls;
        controls.stick = static_cast<std::int16_t>(next_bits(random) & 0xFFFF);
        if (controls.stick == -32768) continue;  // no position is quantised to it
        controls.throttle = static_cast<std::uint16_t>(next_bits(random) & 0xFFFF);
        controls.trim = static_cast<std::int16_t>(static_cast<int>(next_bits(random) % 65535u) - 32767);
        controls.flap = static_cast<std::uint8_t>(next_bits(random) & 3);
        if (!(quantize(positions_of(controls)) == controls)) FAIL_CHECK("stick " << controls.stick);
    }
}
