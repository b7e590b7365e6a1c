// The path help and the call-outs in the program: called, shown, told, written down. The rules are named as
// in tests/engine/test_path_help.cpp, which gives their sources.
#include <doctest/doctest.h>

#include <string>

#include "tests/check.h"
#include "tests/scene/no_window.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/flight_help.h"
#include "ui/keep_attempts.h"
#include "ui/make_view.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

void fly_s(App& app, double seconds, bool calls = false) {
    watch(*app.flight, app.settings.display, false, calls);
    for (int i = 0; i < static_cast<int>(seconds * 120) && !app.flight->reviewed; ++i)
        tick_session(*app.flight, quantize(app.hands.at));
}

// An approach from a mile, begun and left to itself for a second.
App flying(TestHost& host) {
    App app = make_app(shipped(), host);
    apply(app, ChooseDistance{1}, host);
    apply(app, StartFlight{}, host);
    fly_s(app, 1.0);
    return app;
}

// Whole frames of the program, a tenth of a second each, as long as one counts; drawn with no window.
void run_frames(App& app, TestHost& host, int count) {
    const NoWindow window;
    for (int i = 0; i < count; ++i) {
        RawInput raw;
        raw.wall_s = app.hands.last_wall_s + 0.1;
        frame(app, raw, host);
        ImGui::EndFrame();
        ImGui::NewFrame();
    }
}

// An attempt of the student in the logbook, so far on the path.
void log_run(App& app, int number, double path_share) {
    IndexRow row;
    row.id = "176300000000" + std::to_string(number) + "-00000001";
    row.row.lesson = "final_calm";
    row.row.path_share = path_share;
    app.logbook.rows.push_back(row);
}

}  // namespace

// Huet et al. 2009 (read in abstract): the student calls the help.
TEST_CASE(
    "R1: A held shows the path help in the picture and in the text, and the sheet says how long and how "
    "often") {
    TestHost host;
    App app = flying(host);
    CHECK(make_view(app).flight.scene.path_help.opacity == 0.0);
    fly_s(app, 2.0, true);
    const View shown = make_view(app);
    CHECK(shown.flight.scene.path_help.opacity >= called_opacity);
    CHECK(shown.mirror.screen.find("Path help shown: the bar stands ") != std::string::npos);
    fly_s(app, 1.0);
    CHECK(make_view(app).flight.scene.path_help.opacity == 0.0);
    CHECK(make_view(app).mirror.screen.find("Path help") == std::string::npos);
    fly_s(app, 5.0, true);  // three seconds of it
    fly_s(app, 400.0);
    REQUIRE(app.flight->reviewed);
    apply(app, OpenSummary{}, host);
    CHECK(make_view(app).summary.definitions.back().starts_with(
        "Aids: the path guide (5 s, called 2 times) and the magnifier."));
    CHECK_FALSE(app.flight->recording.circumstances.aids.unaided());
}

TEST_CASE("R1: the key is A held, the button the same for a finger, and both are let go") {
    PilotHands hands;
    RawInput raw;
    raw.held[static_cast<std::size_t>(Key::a)] = true;
    read_input(hands, raw, {}, 3);
    CHECK(hands.calls_for_help());
    read_input(hands, RawInput{}, {}, 3);
    CHECK_FALSE(hands.calls_for_help());

    TestHost host;
    App app = flying(host);
    apply(app, CallHelp{true}, host);
    CHECK(app.hands.calls_for_help());
    apply(app, OpenScreenAndHelp{}, host);  // the finger is let go where nothing sees it
    CHECK_FALSE(app.hands.calls_for_help());
    bool hinted = false;
    for (const KeyHint& hint : key_hints({})) hinted |= hint.key == "A" && hint.meaning == "hold: path help";
    CHECK(hinted);
}

// Lintern 1980 (recalled); Kaul, Collyer & Lintern 1980 (read in abstract).
TEST_CASE(
    "R2: switched on, the help comes by itself off the path, and by itself never before it is switched on") {
    TestHost host;
    App app = make_app(shipped(), host);
    for (const bool by_itself : {false, true}) {
        app.settings.display.help_by_itself = by_itself;
        apply(app, ChooseDistance{2}, host);
        apply(app, ChoosePosition{0}, host);  // above the path, and left there
        apply(app, StartFlight{}, host);
        fly_s(app, 4.0);
        CHECK((make_view(app).flight.scene.path_help.opacity > 0.0) == by_itself);
        CHECK(recorded_aids(*app.flight).guide_ready == by_itself);
    }
    CHECK(app.flight->help.calls == 0);
    CHECK(make_view(app).flight.scene.path_help.over_aim_rad > 0.0);  // high: the bar stands above
    CHECK(make_view(app).mirror.screen.find("above the aim point, you are high") != std::string::npos);
}

TEST_CASE("R4: below 200 ft the help is gone, and a call is answered in words") {
    TestHost host;
    App app = flying(host);
    while (observe(app.flight->scenario, app.flight->attempt).wheel_height_m > m_from_ft(199.0))
        fly_s(app, 0.1);
    fly_s(app, 0.5, true);
    const View view = make_view(app);
    CHECK(view.flight.scene.path_help.opacity == 0.0);
    CHECK(view.flight.caption == "Below 200 ft no path help: the aim point");
    CHECK(app.flight->help.calls == 0);
}

// Guadagnoli & Lee 2004 (read in abstract), Park, Shea & Wright 2000 (recalled).
TEST_CASE("R3: the stage follows from the student's runs in the logbook") {
    TestHost host;
    App app = make_app(shipped(), host);
    for (int i = 0; i < 3; ++i) log_run(app, i, 0.9);
    app.logbook.rows.back().student = "Another";
    apply(app, StartFlight{}, host);
    CHECK(app.flight->help.plan.stage == 0);
    app.logbook.rows.back().student = "";
    apply(app, StartFlight{}, host);
    CHECK(app.flight->help.plan.stage == 1);
}

TEST_CASE("R5: the third run is unaided, says so, and answers no call; its row counts") {
    TestHost host;
    App app = make_app(shipped(), host);
    for (int i = 0; i < 2; ++i) log_run(app, i, 0.5);
    app.settings.display.help_by_itself = app.settings.display.call_outs = true;
    apply(app, ChooseDistance{1}, host);
    apply(app, StartFlight{}, host);
    fly_s(app, 1.0, true);
    const View view = make_view(app);
    CHECK(view.flight.setup.ends_with(", unaided run"));
    CHECK(view.flight.scene.path_help.opacity == 0.0);
    CHECK(view.flight.caption == "This run is flown unaided: no path help");
    fly_s(app, 400.0);
    REQUIRE(app.flight->reviewed);
    CHECK(app.flight->recording.circumstances.aids.unaided());
}

// Cruz et al. 2018 (read in abstract): told only outside a band. Captions always; a voice where there is one.
TEST_CASE("R11: a call-out is captioned, spoken once, told on the sheet, and can be switched off") {
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings.display.call_outs = true;
    app.settings.school.criteria.convention = Convention::power_for_path;
    apply(app, ChooseDistance{2}, host);
    apply(app, ChoosePosition{2}, host);  // below the path, and left there
    apply(app, StartFlight{}, host);
    run_frames(app, host, 20);
    CHECK(make_view(app).flight.caption == "low - power");
    CHECK(host.spoken == "low - power\n");
    CHECK(host.mirror.screen.find("low - power") != std::string::npos);

    app.settings.sound = false;
    run_frames(app, host, 60);
    CHECK(app.flight->call_outs.said >= 2);
    CHECK(host.spoken == "low - power\n");  // captions go on, the voice does not
    fly_s(app, 400.0);
    apply(app, OpenSummary{}, host);
    CHECK(make_view(app).summary.definitions.back().find("call-outs (") != std::string::npos);

    app.settings.display.call_outs = false;
    apply(app, StartFlight{}, host);
    fly_s(app, 4.0);
    CHECK(make_view(app).flight.caption.empty());
    CHECK(recorded_aids(*app.flight).call_outs == -1);
}

// Spaced practice: Arthur et al. 2010 (read in abstract); the figures are common practice, no source.
TEST_CASE("R10: after ten approaches in a session the summary says to stop for today") {
    TestHost host;
    App app = flying(host);
    const std::int64_t now_s = app.flight->recording.circumstances.started_unix_s;
    for (int i = 0; i < 9; ++i) {
        log_run(app, i, 0.5);
        app.logbook.rows.back().row.started_unix_s = now_s - 3600 + 60 * i;
    }
    fly_s(app, 400.0);
    REQUIRE(app.flight->reviewed);
    app.screen = Screen::estimate;
    keep_attempt(app, host);  // as the frame does in which scoring ends
    apply(app, SkipEstimate{}, host);
    const View view = make_view(app);
    CHECK(view.summary.stop == "Ten approaches flown in this session: stop for today.");
    CHECK(view.mirror.screen.find("stop for today") != std::string::npos);
}
