#include "tests/screens/sample_replay.h"

#include <cmath>

namespace slopewise {
namespace {

constexpr double last_tick = 19200;  // 160 s
constexpr double start_nm = 3, end_nm = 0.18;

// `high_ft`: how far above the path in the first half, and how far below in the second.
ReplayPoint point_at(double tick, double high_ft) {
    const double gone = tick / last_tick, wave = std::sin(6.283185307179586 * gone);
    const double nm = start_nm + (end_nm - start_nm) * gone;
    return {tick,
            nm,
            318.4 * nm + high_ft * wave,
            65 - high_ft / 8 * wave,
            38 - 12 * wave,
            0.2 * std::sin(60 * gone),
            gone < 0.3 ? 1.0 : 2.0};
}

std::vector<ReplayPoint> points(double high_ft) {
    std::vector<ReplayPoint> all;
    for (double tick = 0; tick <= last_tick; tick += 12) all.push_back(point_at(tick, high_ft));
    return all;
}

}  // namespace

ReplayView sample_replay() {
    using Kind = ReplayMark::Kind;
    ReplayView view;
    view.setup = "Four-seat tourer, Larkmoor 27, by day: 3 NM, above the path, 10 kt headwind";
    view.angle = "View 40\u00b0 across";
    view.flown = points(90);
    view.now = point_at(9000, 90);
    view.pitch_rad = -0.03;
    view.target_kt = 65;
    view.slow_kt = 5;
    view.fast_kt = 10;
    view.most_flap = 2;
    view.name = "this attempt";
    view.marks = {{Kind::start, 0, "start"},
                  {Kind::lights, 1500, "3 white 1 red"},
                  {Kind::input, 2600, "power lever 38 to 26 %"},
                  {Kind::input, 5760, "flap landing"},
                  {Kind::gate, 9000, "500 ft gate"},
                  {Kind::lights, 11000, "1 white 3 red"},
                  {Kind::gate, 13400, "300 ft gate"},
                  {Kind::evidence, 14000, "Low and slow"},
                  {Kind::worst, 14600, "worst moment"},
                  {Kind::gate, 16000, "200 ft gate"},
                  {Kind::end, 19200, "50 ft gate, scoring ends"}};
    view.tick = 9000;
    view.last_tick = last_tick;
    view.clock = "1:15.00";
    view.length = "of 2:40.00";
    view.place = "500 ft gate";
    view.at_mark = true;
    view.speed = "\u00d7 0.25";
    view.slowest = true;
    return view;
}

ReplayView sample_comparison() {
    ReplayView view = sample_replay();
    view.trouble =
        "This recording no longer flies the same from 1 min 12 s on (this version's model differs). Shown is "
        "the "
        "track as it was flown.";
    view.other = points(-60);
    view.other_name = "attempt of 12 March";
    view.other_is_there = true;
    view.other_now = point_at(9100, -60);
    view.other_now.distance_nm = view.now.distance_nm;
    view.other_pitch_rad = -0.05;
    view.compared =
        "Dashed: attempt of 12 March, at the same distance to the aim point: 30 ft lower, 2 kt faster.";
    return view;
}

}  // namespace slopewise
