// What every test file includes: doctest, and checks of numbers with an absolute tolerance. (doctest's own
// Approx scales its tolerance with the value and hides what is allowed.)
#pragma once

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <string>

namespace slopewise::test {

inline std::string near_text(double value, double expected, double tolerance) {
    char text[160];
    std::snprintf(text, sizeof text, "is %.12g, expected %.12g within %g: off by %.6g", value, expected,
                  tolerance, value - expected);
    return text;
}

}  // namespace slopewise::test

// Value and expected value differ by no more than the tolerance, all three in one unit. Not-a-number fails.
#define CHECK_NEAR(value, expected, tolerance)                                                     \
    do {                                                                                           \
        const double near_value = (value), near_expected = (expected), near_allowed = (tolerance); \
        CHECK_MESSAGE(std::abs(near_value - near_expected) <= near_allowed, #value " ",            \
                      ::slopewise::test::near_text(near_value, near_expected, near_allowed));      \
    } while (false)
