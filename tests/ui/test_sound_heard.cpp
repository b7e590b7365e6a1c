// When a flight is heard, and what of it.
#include <algorithm>
#include <string>
#include <vector>

#include "base/units.h"
#include "tests/check.h"
#include "tests/ui/approach_frames.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/flight_session.h"
#include "ui/make_view.h"
#include "ui/sound.h"

using namespace slopewise;
using namespace slopewise::test;

TEST_CASE("sound: a flight is heard as it is, a failed or covered instrument notwithstanding") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, StartFlight{}, host);
    const SoundView sound = make_view(app).sound;
    CHECK(sound.audible);
    CHECK(sound.volume == 0.8);
    CHECK(sound.rpm > 1000);
    CHECK(sound.rpm < 2300);
    CHECK_NEAR(sound.airspeed_kt, make_view(app).flight.instruments.airspeed_kt, 0.5);  // true air, no wind
    app.settings.display.failed.airspeed = app.settings.display.failed.power = true;
    const SoundView failed = make_view(app).sound;
    CHECK(failed.rpm == sound.rpm);
    CHECK(failed.airspeed_kt == sound.airspeed_kt);
    apply(app, SetVolume{0.25}, host);
    CHECK(make_view(app).sound.volume == 0.25);
    CHECK(host.kept.find("\"volume\": 0.25") != std::string::npos);
    apply(app, SetVolume{7.0}, host);
    CHECK(make_view(app).sound.volume == 1.0);
}

TEST_CASE("sound: silent in a pause, without sound, and on every screen but the flight") {
    TestHost host;
    App app = make_app(shipped(), host);
    CHECK_FALSE(make_view(app).sound.audible);
    apply(app, StartFlight{}, host);
    REQUIRE(make_view(app).sound.audible);
    apply(app, TogglePause{}, host);
    CHECK_FALSE(make_view(app).sound.audible);
    apply(app, TogglePause{}, host);
    apply(app, ToggleSound{}, host);
    CHECK_FALSE(make_view(app).sound.audible);
    apply(app, ToggleSound{}, host);
    apply(app, OpenScreenAndHelp{}, host);  // there it says what is chosen, and nothing turns
    const View sheet = make_view(app);
    CHECK(sheet.sound.audible);
    CHECK(sheet.sound.rpm == 0.0);
    CHECK(sheet.sound.airspeed_kt == 0.0);
    CHECK(sheet.mirror.screen.find("Sound: on\nVolume: 80 %") != std::string::npos);
    SoundState state;
    tell(state, sheet.sound);
    std::vector<float> second(sound_rate_hz);
    synthesise(state, second);
    CHECK(std::ranges::all_of(second, [](float sample) { return sample == 0.0f; }));
}

TEST_CASE("sound: each gate is heard once with its height as a caption, down a whole approach") {
    ApproachFrames approach({1280, 720}, "larkmoor");
    std::vector<std::string> captions;
    int chimes = 0;
    for (approach.next_frame(0.1); approach.flying(); approach.next_frame(0.1)) {
        const View& view = approach.app.view;
        if (!approach.flying()) break;
        if (view.sound.gate_chimes > chimes) {
            chimes = view.sound.gate_chimes;
            captions.push_back(view.flight.caption);
            CHECK(view.mirror.screen.ends_with(view.flight.caption));
        }
    }
    // It begins at 955 ft above the aim point, so below the gate of 1,000; 50 ft is the sheet.
    CHECK(captions == std::vector<std::string>{"500 ft", "300 ft", "200 ft"});
    CHECK_FALSE(approach.host.heard.audible);  // the sheet is silent
}

TEST_CASE(
    "sound: a gate is passed once however the height comes and goes, and a covered altimeter gives nothing "
    "away") {
    GateChimes gates = begin_gates(m_from_ft(600));
    for (const double ft : {501.0, 499.0, 520.0, 490.0, 301.0, 500.0, 299.0, 150.0, 400.0, 60.0, 40.0})
        advance_gates(gates, m_from_ft(ft));
    CHECK(gates.chimes == 3);
    std::string words = "as it was";
    GateChimes covered = begin_gates(m_from_ft(600));
    covered.height_shown = false;
    for (const double ft : {499.0, 299.0}) advance_gates(covered, m_from_ft(ft));
    gate_caption(covered, words);
    CHECK(covered.chimes == 0);
    CHECK(words == "as it was");
    covered.height_shown = true;
    advance_gates(covered, m_from_ft(199));
    gate_caption(covered, words);
    CHECK(words == "200 ft");
    for (int i = 0; i < 241; ++i) advance_gates(covered, m_from_ft(180));
    words.clear();
    gate_caption(covered, words);
    CHECK(words == "");

    TestHost host;
    App app = make_app(slopewise::test::shipped(), host);
    apply(app, StartFlight{}, host);
    Display display;
    display.covered.altimeter = true;
    watch(*app.flight, display, false);
    CHECK_FALSE(app.flight->gates.height_shown);
    watch(*app.flight, Display{}, false);
    CHECK(app.flight->gates.height_shown);
}
