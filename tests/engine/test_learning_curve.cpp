// LC-CUSUM against its published scores, and its operating characteristics by simulation.
#include <algorithm>
#include <cmath>
#include <map>

#include "base/random.h"
#include "progress/cusum.h"
#include "progress/trend.h"
#include "tests/check.h"

using namespace slopewise;

namespace {

constexpr int tries = 30, simulations = 6000;

std::vector<bool> passes_of(Random& random, double failure_rate, int count) {
    std::vector<bool> passes;
    for (int i = 0; i < count; ++i) passes.push_back(next_uniform(random) >= failure_rate);
    return passes;
}

// The share of simulated students that the curve passes within 30 tries.
double pass_share(double failure_rate, double limit) {
    Random random{20080925};
    CusumParameters parameters;
    parameters.limit = limit;
    int signals = 0;
    for (int i = 0; i < simulations; ++i)
        signals += learning_cusum(parameters, passes_of(random, failure_rate, tries)).signal_at >= 0;
    return static_cast<double>(signals) / simulations;
}

// The same share without chance: all sums that can be, each with its probability, attempt after attempt.
double exact_pass_share(double failure_rate, double limit) {
    std::map<double, double> sums{{0.0, 1.0}};
    double signalled = 0.0;
    for (int i = 0; i < tries; ++i) {
        std::map<double, double> next;
        for (const auto& [sum, probability] : sums) {
            const double after_pass = sum + std::log(0.85 / 0.60);
            (after_pass >= limit ? signalled : next[after_pass]) += probability * (1.0 - failure_rate);
            next[std::max(0.0, sum + std::log(0.15 / 0.40))] += probability * failure_rate;
        }
        sums = std::move(next);
    }
    return signalled;
}

// The attempt at which half and nine tenths of good students (15 % failures) have signalled.
std::pair<int, int> attempts_of_the_good(double limit) {
    Random random{7};
    CusumParameters parameters;
    parameters.limit = limit;
    std::vector<int> at;
    for (int i = 0; i < simulations; ++i)
        at.push_back(learning_cusum(parameters, passes_of(random, 0.15, 400)).signal_at + 1);
    std::ranges::stable_sort(at);
    return {at[simulations / 2], at[simulations * 9 / 10]};
}

}  // namespace

TEST_CASE("learning curve: a pass and a failure add what the published formula says") {
    // Biau et al. 2008: ln((1 - p1) / (1 - p0)) and ln(p1 / p0), worked out by hand for 0.40 and 0.15:
    // ln(0.85 / 0.60) = ln 1.41667 and ln(0.15 / 0.40) = ln 0.375.
    CHECK_NEAR(pass_score({}), 0.348307, 1e-6);
    CHECK_NEAR(failure_score({}), -0.980829, 1e-6);
}

TEST_CASE("learning curve: the sum never falls below zero, and signals once at the limit") {
    std::vector<bool> passes(8, true);
    passes.insert(passes.begin(), {false, false});
    const Cusum cusum = learning_cusum({}, passes);
    CHECK(cusum.sums[1] == 0.0);
    CHECK(cusum.signal_at == 9);  // eight passes of 0.348 make 2.79; seven make 2.44
    CHECK(learning_cusum({}, std::vector<bool>(7, true)).signal_at == -1);
}

TEST_CASE("learning curve: its operating characteristics are those worked out before by another simulation") {
    // Of students who truly fail 40 %, within 30 tries (6,000 simulated; the standard error is under 0.7
    // points for either simulation, so 2 points are three of their difference).
    CHECK_NEAR(pass_share(0.40, 1.5), 0.67, 0.02);
    CHECK_NEAR(pass_share(0.40, 2.5), 0.24, 0.02);
    CHECK_NEAR(pass_share(0.40, 3.0), 0.13, 0.02);
    // Of good students: medians and ninth deciles, within one attempt.
    CHECK(attempts_of_the_good(1.5).first == 6);
    CHECK_NEAR(attempts_of_the_good(2.5).first, 11, 1);
    CHECK_NEAR(attempts_of_the_good(2.5).second, 23, 1);
    CHECK_NEAR(attempts_of_the_good(3.0).first, 14, 1);
    CHECK_NEAR(attempts_of_the_good(3.0).second, 28, 1);
}

TEST_CASE("learning curve: simulated students pass as often as the probabilities say") {
    for (const double limit : {1.5, 2.5, 3.0}) {
        for (const double failure_rate : {0.40, 0.15}) {
            const double exact = exact_pass_share(failure_rate, limit);
            const double simulated = pass_share(failure_rate, limit);
            const auto [median, ninth_decile] = attempts_of_the_good(limit);
            MESSAGE("limit ", limit, ", failing ", 100.0 * failure_rate, " %: ", 100.0 * simulated,
                    " % pass within 30 tries (exactly ", 100.0 * exact, " %); the good at attempt ", median,
                    ", nine tenths by ", ninth_decile);
            // Four standard errors of a share of 6,000: one in sixteen thousand is further off by chance.
            CHECK_NEAR(simulated, exact, 4.0 * std::sqrt(exact * (1.0 - exact) / simulations));
        }
    }
}

TEST_CASE("learning curve: were right go-arounds left out, it would pass those who truly fail two in five") {
    Random random{40};
    int signals = 0;
    for (int i = 0; i < simulations; ++i) {
        std::vector<bool> counted;
        for (const bool passed : passes_of(random, 0.40, tries))
            if (passed || next_uniform(random) < 0.5) counted.push_back(passed);  // half are gone around from
        signals += learning_cusum({}, counted).signal_at >= 0;
    }
    const double share = static_cast<double>(signals) / simulations;
    MESSAGE("left out: ", 100.0 * share, " % pass within 30 tries; counted: ", 100.0 * pass_share(0.40, 2.5),
            " %");
    CHECK_NEAR(share, 0.63, 0.025);  // four standard errors
}

TEST_CASE("learning curve: a relapse shows after the signal") {
    const Cusum relapse = relapse_cusum({}, {true, false, false, false});
    CHECK(relapse.sums[0] == 0.0);
    CHECK(relapse.signal_at == 3);  // three failures of 0.98 make 2.94
}

TEST_CASE("trend: the rolling median is of five, and begins afresh after a break") {
    const std::vector<double> values{5, 1, 9, 2, 3, 100};
    const std::vector<double> expected{5, 3, 5, 3.5, 3, 3};
    CHECK(rolling_median(values, {}) == expected);
    const std::vector<bool> breaks{true, false, false, true, false, false};
    CHECK(rolling_median(values, breaks) == std::vector<double>{5, 3, 5, 2, 2.5, 3});
}
