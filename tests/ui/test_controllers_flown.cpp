// A gamepad in the whole program: it flies an approach, the sheet says so, and it may be unplugged.
#include <algorithm>

#include "tests/check.h"
#include "tests/memory_count.h"
#include "tests/ui/approach_frames.h"
#include "tests/ui/controller_player.h"
#include "ui/controllers_view.h"
#include "ui/theme.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

struct GamepadFrames : ApproachFrames {
    GamepadFrames() : ApproachFrames({1280, 720}, "larkmoor") {
        raw.controllers.count = 1;
        raw.controllers.at[0] = standard_gamepad();
    }
    ControllerReading& pad() { return raw.controllers.at[0]; }
    void pass(double seconds) {
        for (double t = 0; t < seconds - 1e-9; t += frame_s) next_frame(frame_s);
    }
};

}  // namespace

TEST_CASE("controllers: a whole approach is flown by a gamepad alone, and what is kept says so") {
    GamepadFrames frames;
    App& app = frames.app;
    for (int i = 0; i < 60 * 400 && frames.flying(); ++i) {
        // Stick for the speed, throttle for the path: a hand that is glad of 5 kt and half a degree.
        const FlightView& seen = app.view.flight;
        const double fast = std::clamp((seen.instruments.airspeed_kt - 65.0) / 20.0, -0.6, 0.6);
        const double low = std::clamp((-345.0 - seen.instruments.vertical_speed_fpm) / 400.0, -0.5, 0.5);
        frames.pad().axes[1] = i < 2 ? 0.0 : fast;
        frames.pad().axes[3] = i < 2 ? 0.0 : -low;
        frames.next_frame(frame_s);
    }
    CHECK(app.screen == Screen::estimate);
    CHECK(app.flight->attempt.end == End::reached_floor);
    CHECK(app.flight->recording.circumstances.device == "controller: Standard gamepad");
    CHECK(app.flight->reviewed.has_value());
}

TEST_CASE("controllers: the button that pauses a flight also flies on") {
    GamepadFrames frames;
    frames.pass(0.5);
    for (const bool paused : {true, false, true}) {
        frames.pad().buttons = frames.pad().pressed = 1u << 9;
        frames.next_frame(frame_s);
        frames.pad().pressed = 0;
        frames.pass(0.2);
        frames.pad().buttons = 0;
        frames.pass(0.2);
        CHECK(frames.app.flight->paused == paused);
    }
}

TEST_CASE("controllers: the flight pauses when a device goes that has flown it, and only then") {
    GamepadFrames frames;
    frames.pass(0.5);
    frames.raw.controllers = {};
    frames.pass(0.5);
    CHECK_FALSE(frames.app.flight->paused);  // it had moved nothing
    frames.raw.controllers.count = 1;
    frames.pad() = standard_gamepad();
    frames.pass(0.5);
    frames.pad().axes[1] = 0.5;
    frames.pass(0.5);
    CHECK(frames.app.flight->attempt.controls.stick > 0);
    frames.raw.controllers = {};
    frames.next_frame(frame_s);
    CHECK(frames.app.flight->paused);
}

TEST_CASE("controllers: a frame with four of them moving takes no memory") {
    GamepadFrames frames;
    frames.raw.controllers.count = most_controllers;
    for (int i = 0; i < most_controllers; ++i) {
        ControllerReading& one = frames.raw.controllers.at[static_cast<std::size_t>(i)];
        one = device("A device with quite a long name, number one", most_axes, most_buttons,
                     static_cast<char>('a' + i));
    }
    const auto move = [&](int frame) {
        for (ControllerReading& one : frames.raw.controllers.at)
            for (std::size_t axis = 0; axis < one.axes.size(); ++axis)
                one.axes[axis] = 0.3 * std::sin(0.1 * frame + static_cast<double>(axis));
        frames.next_frame(frame_s);
    };
    for (int i = 0; i < 240; ++i) move(i);
    const long before = memory_taken();
    for (int i = 240; i < 600; ++i) move(i);
    CHECK(memory_taken() == before);
    REQUIRE(frames.flying());
}

TEST_CASE(
    "controllers: the sheet's words say what is connected, the step now, and what to do when nothing is") {
    GamepadFrames frames;
    frames.raw.controllers = {};
    frames.app.screen = Screen::controllers;
    frames.pass(0.1);
    CHECK(frames.app.mirror.screen.find("press one of its buttons") != std::string::npos);
    frames.raw.controllers.count = 1;
    frames.pad() = standard_gamepad();
    frames.pad().axes[1] = 0.5;
    frames.pass(0.1);
    const auto says = [&](std::string_view words) {
        const bool found = frames.app.mirror.screen.find(words) != std::string::npos;
        CHECK_MESSAGE(found, frames.app.mirror.screen);
    };
    says("Connected: Standard gamepad.");
    says("Shown: Standard gamepad");
    says("Axis 2: stick, dead zone 6 %, expo 0.4.");
    says("Axis 4: throttle, faster or slower, inverted");
    says("Button 6: flap down a step.");
    CHECK(frames.app.mirror.instruments.find("Axis 2 gives 50 %, flies 33 %") != std::string::npos);
    begin_calibration(frames.app.controllers, {});
    frames.pass(0.1);
    says("Step 1 of 5: Move the stick or yoke about, then let go");
}
