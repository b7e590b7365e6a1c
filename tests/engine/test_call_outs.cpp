// The short calls while flying. Rule R11, as the design numbers it: bandwidth feedback (Cruz et al. 2018,
// read in abstract; Sherwood 1988, recalled) from a list that is common practice, no source.
#include "help/call_outs.h"

#include <cmath>
#include <string>
#include <vector>

#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr int second = 120;  // ticks

// On the path, at the target speed and sink, with landing flap, at a height.
CallTruth steady(double height_ft = 700.0) {
    CallTruth truth;
    truth.height_m = m_from_ft(height_ft);
    truth.sink_mps = mps_from_fpm(345.0);
    return truth;
}

CallTruth off_path(double deg, double height_ft = 700.0) {
    CallTruth truth = steady(height_ft);
    truth.off.path_rad = rad_from_deg(deg);
    truth.off.path_m = truth.motion.offset_m =
        truth.height_m / std::tan(rad_from_deg(3.0)) * std::tan(truth.off.path_rad);
    return truth;
}

CallOuts listening() {
    CallOuts calls;
    calls.on = true;
    return calls;
}

struct Said {
    CallOut call;
    int tick;
};

// All that is said of an unchanging state in so long a time.
std::vector<Said> said_of(CallOuts calls, const CallTruth& truth, int ticks) {
    std::vector<Said> said;
    for (int i = 0; i < ticks; ++i) {
        const CallOut call = advance_calls(calls, Criteria{}, truth);
        if (call != CallOut::none) said.push_back({call, i});
    }
    return said;
}

CallOut first_of(const CallTruth& truth) {
    const std::vector<Said> said = said_of(listening(), truth, 3 * second);
    return said.empty() ? CallOut::none : said.front().call;
}

}  // namespace

// Rule R11: bandwidth feedback, silent in tolerance (Cruz and others 2018, read in abstract; Sherwood 1988,
// recalled).
TEST_CASE("R11: nothing is called within tolerance, nor when it is switched off") {
    CHECK(said_of(listening(), steady(), 60 * second).empty());
    CHECK(said_of(listening(), steady(250.0), 60 * second).empty());
    CHECK(said_of(listening(), off_path(0.49), 60 * second).empty());
    CHECK(said_of(CallOuts{}, off_path(-2.0), 60 * second).empty());
}

TEST_CASE("R11: only from the short list, each outside its tolerance and after a second of it") {
    CHECK(first_of(off_path(-0.51)) == CallOut::low);
    CHECK(first_of(off_path(0.51)) == CallOut::high);
    CallTruth slow = steady();
    slow.off.speed_mps = mps_from_kt(-4.9);
    CHECK(first_of(slow) == CallOut::none);
    slow.off.speed_mps = mps_from_kt(-5.1);
    CHECK(first_of(slow) == CallOut::slow);
    CallTruth fast = steady();
    fast.off.speed_mps = mps_from_kt(20.0);
    CHECK(first_of(fast) == CallOut::none);  // not in the list; the gate says it
    CallTruth sinking = steady();
    sinking.off.sink_mps = mps_from_fpm(249.0);
    CHECK(first_of(sinking) == CallOut::none);
    sinking.off.sink_mps = mps_from_fpm(251.0);
    CHECK(first_of(sinking) == CallOut::sink);
    CallTruth much = steady();
    much.sink_mps = mps_from_fpm(801.0);
    CHECK(first_of(much) == CallOut::sink);

    CallOuts calls = listening();
    for (int i = 0; i < second; ++i) CHECK(advance_calls(calls, Criteria{}, off_path(-1.0)) == CallOut::none);
    CHECK(advance_calls(calls, Criteria{}, off_path(-1.0)) == CallOut::low);
    CHECK(calls.said == 1);
}

// Rule R11: one thing to do at a time is common practice, no source; the band: Cruz and others 2018, as
// above.
TEST_CASE("R11: one at a time and at most one in four seconds, what can hurt first") {
    CallTruth all = off_path(-1.0);
    all.off.speed_mps = mps_from_kt(-8.0);
    all.off.sink_mps = mps_from_fpm(400.0);
    const std::vector<Said> said = said_of(listening(), all, 30 * second);
    REQUIRE(said.size() >= 6);
    for (std::size_t i = 1; i < said.size(); ++i) CHECK(said[i].tick - said[i - 1].tick == 4 * second);
    for (const Said& one : said) CHECK(one.call == CallOut::slow);
    all.off.speed_mps = 0.0;
    CHECK(first_of(all) == CallOut::sink);
}

// Kaul, Collyer & Lintern 1980 (read in abstract): no error is told while returning at an appropriate
// closure.
TEST_CASE("R11: low and high are not called while the path is returned to properly") {
    CallTruth returning = off_path(-1.0);
    returning.motion.offset_rate_mps = -returning.motion.offset_m / 15.0;
    CHECK(first_of(returning) == CallOut::none);
    returning.motion.offset_rate_mps = -returning.motion.offset_m / 40.0;
    CHECK(first_of(returning) == CallOut::low);
}

TEST_CASE("R11: \"not stable\" is called once, where the gate at 300 ft is passed outside its limits") {
    CallTruth fast = steady(301.0);
    fast.off.speed_mps = mps_from_kt(15.0);
    CHECK(first_of(fast) == CallOut::none);
    fast.height_m = m_from_ft(299.0);
    const std::vector<Said> said = said_of(listening(), fast, 60 * second);
    REQUIRE(said.size() == 1);
    CHECK(said[0].call == CallOut::not_stable);
    CHECK(said[0].tick == 0);

    // Each limit by itself, the path's within and beyond the feet that are always left.
    CHECK(first_of(off_path(-0.6, 299.0)) == CallOut::not_stable);
    CHECK(first_of(off_path(0.8, 100.0)) == CallOut::none);
    CallTruth slow = steady(299.0), sinking = steady(299.0), floating = steady(299.0), much = steady(299.0);
    slow.off.speed_mps = mps_from_kt(-15.0);
    sinking.off.sink_mps = mps_from_fpm(300.0);
    floating.off.sink_mps = mps_from_fpm(-300.0);
    much.sink_mps = mps_from_fpm(801.0);
    for (const CallTruth& truth : {slow, sinking, floating, much})
        CHECK(first_of(truth) == CallOut::not_stable);

    CallTruth flapless = steady(299.0);
    flapless.landing_flap = false;
    CHECK(first_of(flapless) == CallOut::not_stable);
    CallOuts calls = listening();
    Criteria any_flap;
    any_flap.landing_flap = false;
    CHECK(advance_calls(calls, any_flap, flapless) == CallOut::none);

    // Passed stable, it is not called for what comes later.
    calls = listening();
    advance_calls(calls, Criteria{}, steady(299.0));
    for (int i = 0; i < 10 * second; ++i) {
        fast.height_m = m_from_ft(250.0);
        CHECK(advance_calls(calls, Criteria{}, fast) == CallOut::none);
    }
}

TEST_CASE("R11: a covered airspeed is not given away") {
    CallTruth slow = steady();
    slow.off.speed_mps = mps_from_kt(-20.0);
    slow.speed_shown = false;
    CHECK(first_of(slow) == CallOut::none);
}

TEST_CASE("R11: the words are those of the list, and what mends a low path is named as the school has it") {
    CHECK(call_out_words(CallOut::low, Convention::power_for_path) == "low - power");
    CHECK(call_out_words(CallOut::low, Convention::pitch_for_path) == "low - pitch");
    CHECK(call_out_words(CallOut::low, Convention::both) == "low - power and pitch");
    for (const Convention convention :
         {Convention::power_for_path, Convention::pitch_for_path, Convention::both}) {
        CHECK(call_out_words(CallOut::slow, convention) == "slow");
        CHECK(call_out_words(CallOut::high, convention) == "high");
        CHECK(call_out_words(CallOut::sink, convention) == "sink");
        CHECK(call_out_words(CallOut::not_stable, convention) == "not stable");
        CHECK(call_out_words(CallOut::none, convention).empty());
    }
}

TEST_CASE("R11: over a whole approach of a good pilot hardly a call is made, of one that is low many") {
    const Scenario scenario = shipped_scenario("final_calm");
    const Flight good = fly_good(scenario, 1);
    CallOuts calls = listening();
    for (std::size_t i = 0; i < good.track.scored; ++i) {
        const CallTruth truth = call_truth(scenario, good.track.points[i], true);
        for (int tick = 0; tick < track_interval_ticks; ++tick) advance_calls(calls, Criteria{}, truth);
    }
    CHECK(calls.said <= 2);

    const Flight idle = fly_with(scenario, 90 * second, [](const Attempt& attempt) {
        Controls controls = attempt.controls;
        controls.throttle = 0;
        return controls;
    });
    calls = listening();
    for (std::size_t i = 0; i < idle.track.scored; ++i) {
        const CallTruth truth = call_truth(scenario, idle.track.points[i], true);
        for (int tick = 0; tick < track_interval_ticks; ++tick) advance_calls(calls, Criteria{}, truth);
    }
    CHECK(calls.said > 5);
}
