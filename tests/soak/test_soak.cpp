#include <doctest/doctest.h>

#include "tests/soak/soak_flight.h"

using namespace slopewise::test;

TEST_CASE("soak: twenty minutes of flying through every kind of sheet leave no more held than ten") {
    const SoakResult result = soak(1.0 / 3.0, 1.0 / 6.0);
    REQUIRE(result.samples.size() >= 3);
    CHECK(result.samples.back().flown_h >= 1.0 / 3.0);
    CHECK(result.scored >= 3);
    CHECK(result.kept >= result.scored);
    CHECK(growth_bytes(result, 1.0 / 6.0) <= most_growth_bytes);
}
