// What a frame of the flight screen costs: memory taken, vertices, draw calls and time, view and drawing
// together, with everything shown. Run natively and as WebAssembly under node.
#include <doctest/doctest.h>

#include <algorithm>
#include <ctime>
#include <string>

#include "tests/memory_count.h"
#include "tests/ui/approach_frames.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr ImVec2 full_screen{1920, 1080};
constexpr double frame_s = 1.0 / 60.0;

// Where on the approach most is drawn.
struct Busiest {
    FlightSession moment;
    double to_aim_m = 0;
    int vertices = 0, draw_calls = 0;
};

// A frame every quarter of a second (8 m of flight: nothing large comes and goes within them), as far as 50
// ft.
Busiest busiest_moment(ApproachFrames& approach) {
    Busiest busiest;
    for (approach.next_frame(0.25); approach.flying(); approach.next_frame(0.25)) {
        if (approach.vertices() <= busiest.vertices) continue;
        const SceneView& scene = approach.app.view.flight.scene;
        busiest = {*approach.app.flight, scene.runway.aim_distance_m - scene.camera.x_m, approach.vertices(),
                   approach.draw_calls()};
    }
    return busiest;
}

// Time of the processor, the least of many rounds of a quarter of a second each: what else the machine does
// only adds.
double least_frame_ms(ApproachFrames& approach, const FlightSession& moment) {
    double least_ms = 1e9;
    for (int round = 0; round < 24; ++round) {
        approach.app.flight = moment;
        approach.app.screen = Screen::flight;
        for (int i = 0; i < 3; ++i) approach.next_frame(frame_s);
        const std::clock_t start = std::clock();
        for (int i = 0; i < 15; ++i) approach.next_frame(frame_s);
        const double spent_ms = 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        least_ms = std::min(least_ms, spent_ms / 15);
    }
    return least_ms;
}

}  // namespace

TEST_CASE("frame: after warm-up a flight takes no memory, whatever is shown and whatever changes") {
    ApproachFrames approach(full_screen, "larkmoor");
    constexpr int warm_up = 240, watched = 600;
    for (int i = 0; i < warm_up; ++i) approach.next_frame(frame_s);
    REQUIRE(approach.flying());
    const long before = memory_taken();
    int frames_that_took = 0;
    for (int i = 0; i < watched; ++i) {
        const long so_far = memory_taken();
        approach.raw.held[static_cast<std::size_t>(Key::down)] = i / 60 % 3 == 0;  // the stick moves, too
        approach.next_frame(frame_s);
        frames_that_took += memory_taken() > so_far ? 1 : 0;
    }
    const long pieces = memory_taken() - before;  // before the next line takes its own
    MESSAGE("allocations in ", watched, " frames at 1920 x 1080, day, everything shown: ", pieces);
    CHECK(frames_that_took == 0);
}

// The aim: 1.5 ms natively, 3 ms as WebAssembly. Time is the machine's as much as ours: what it was is
// printed, and asserted is only that a frame fits into a sixtieth of a second even when built for debugging
// or watched by a sanitizer, and that what is drawn keeps its order.
TEST_CASE("frame: the busiest moment of every approach, its vertices, draw calls and time") {
    constexpr double aim_ms = sizeof(void*) == 4 ? 3.0 : 1.5;  // pointers of 4 bytes: WebAssembly
    double worst_ms = 0;
    for (const std::string runway :
         {"larkmoor", "larkmoor_downhill", "hazelcombe", "hazelcombe_uphill", "sandholm"}) {
        CAPTURE(runway);
        ApproachFrames approach(full_screen, runway);
        const Busiest busiest = busiest_moment(approach);
        REQUIRE(busiest.vertices > 0);
        CHECK(busiest.to_aim_m < 3 * 1852.0);
        const double ms = least_frame_ms(approach, busiest.moment);
        worst_ms = std::max(worst_ms, ms);
        MESSAGE("frame at 1920 x 1080, day, all instruments, ", runway, ", ", busiest.to_aim_m,
                " m from the aim point: ", busiest.vertices, " vertices, ", busiest.draw_calls,
                " draw calls, ", ms, " ms");
        CHECK(busiest.vertices < 60000);  // twice what the busiest moment took when this was written
    }
    const std::string aim = worst_ms <= aim_ms ? "reached" : "missed";
    MESSAGE("the longest of these frames: ", worst_ms, " ms; the aim of ", aim_ms, " ms is ", aim);
    CHECK(worst_ms < 16.7);
}
