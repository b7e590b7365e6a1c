#include <bit>
#include <cmath>
#include <cstdint>

#include "base/exact_math.h"
#include "base/hash.h"
#include "base/random.h"
#include "base/units.h"
#include "tests/check.h"

using namespace slopewise;

namespace {

// Distance between two doubles of the same sign in steps of the last bit.
double ulps_between(double a, double b) {
    const auto steps = [](double x) {
        const auto bits = std::bit_cast<std::int64_t>(x);
        return bits < 0 ? INT64_MIN - bits : bits;
    };
    return std::abs(static_cast<double>(steps(a) - steps(b)));
}

// The largest distance between a function of ours and the C library's over many arguments.
template <class Ours, class Theirs>
double worst_ulps(Ours ours, Theirs theirs, double low, double high) {
    Random random{1};
    double worst = 0.0;
    for (int i = 0; i < 20000; ++i) {
        const double x = low + (high - low) * next_uniform(random);
        worst = std::fmax(worst, ulps_between(ours(x), theirs(x)));
    }
    return worst;
}

double value_at(double (*function)(double), double x) { return function(x); }

}  // namespace

TEST_CASE("exact math: every function agrees with the C library's to the last bit or two") {
    // Both libraries promise less than 1 ulp from the true value, so two of them are within 2 of each other.
    CHECK(worst_ulps(
              exact::sin, [](double x) { return std::sin(x); }, -10.0, 10.0) <= 2.0);
    CHECK(worst_ulps(
              exact::cos, [](double x) { return std::cos(x); }, -10.0, 10.0) <= 2.0);
    CHECK(worst_ulps(
              exact::tan, [](double x) { return std::tan(x); }, -1.5, 1.5) <= 2.0);
    CHECK(worst_ulps(
              exact::atan, [](double x) { return std::atan(x); }, -50.0, 50.0) <= 2.0);
    CHECK(worst_ulps(
              exact::exp, [](double x) { return std::exp(x); }, -20.0, 20.0) <= 2.0);
    CHECK(worst_ulps(
              exact::log, [](double x) { return std::log(x); }, 1e-3, 1e4) <= 2.0);
    CHECK(worst_ulps([](double x) { return exact::pow(x, 5.2558797); },
                     [](double x) { return std::pow(x, 5.2558797); }, 0.5, 1.5) <= 2.0);
    CHECK(worst_ulps([](double x) { return exact::atan2(x, 3.0); },
                     [](double x) { return std::atan2(x, 3.0); }, -9.0, 9.0) <= 2.0);
}

TEST_CASE("exact math: the angle of a vector is right in all four quadrants and on the axes") {
    const double rounding = 1e-15;  // the last bits of an angle up to pi
    CHECK_NEAR(exact::atan2(1.0, 1.0), pi / 4.0, rounding);
    CHECK_NEAR(exact::atan2(1.0, -1.0), 3.0 * pi / 4.0, rounding);
    CHECK_NEAR(exact::atan2(-1.0, -1.0), -3.0 * pi / 4.0, rounding);
    CHECK_NEAR(exact::atan2(-1.0, 1.0), -pi / 4.0, rounding);
    CHECK_NEAR(exact::atan2(2.0, 0.0), pi / 2.0, rounding);
    CHECK_NEAR(exact::atan2(0.0, -2.0), pi, rounding);
    CHECK(exact::atan2(0.0, 2.0) == 0.0);
}

TEST_CASE("exact math: the bits are those of musl in every build") {
    // The hash is what musl 1.2's functions give as WebAssembly and natively; glibc's give another one.
    // Arguments run through a function pointer, so that no compiler works them out beforehand.
    Random random{2024};
    Hash hash;
    for (int i = 0; i < 20000; ++i) {
        const double x = 40.0 * next_uniform(random) - 20.0, y = 5.0 * next_uniform(random) + 1e-3;
        for (double (*function)(double) : {&exact::sin, &exact::cos, &exact::tan, &exact::atan, &exact::exp})
            hash.add(value_at(function, x));
        hash.add(value_at(&exact::log, y));
        hash.add(exact::pow(y, x));
        hash.add(exact::atan2(x, y - 2.5));
    }
    CHECK(hash.value() == 2245704192671909181ull);
}
