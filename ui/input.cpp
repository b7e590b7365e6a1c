#include "ui/input.h"

#include <cmath>

#include "base/interpolate.h"
#include "ui/replay_keys.h"

namespace slopewise {
namespace {

// A key has no position, so it commands a rate, slow at first: a tap moves the stick 1-2 % of its
// travel. Released, the stick springs back to the trimmed position. (Common practice, no source.)
constexpr double stick_rate_ps = 1.2;  // full travel each way is 1
constexpr double stick_first_share = 0.15;
constexpr double stick_ramp_s = 0.6;
constexpr double spring_back_s = 0.4;

// A tap on the lever is two per cent; held, it moves on after a moment.
constexpr double lever_tap = 0.02;
constexpr double lever_rate_ps = 0.15;
constexpr double lever_repeat_after_s = 0.3;

constexpr double trim_rate_ps = 0.12;
constexpr double longest_frame_s = 0.1;

// A controller's axis: a dead zone about its centre, then gentle near it (expo), as common practice has it.
constexpr double dead_zone = 0.06;
constexpr double expo = 0.4;

double shaped(double axis) {
    const double size = std::abs(axis);
    if (size <= dead_zone) return 0.0;
    const double beyond = clamp((size - dead_zone) / (1.0 - dead_zone), 0.0, 1.0);
    return std::copysign((1.0 - expo) * beyond + expo * beyond * beyond * beyond, axis);
}

double direction(const RawInput& raw, Key more, Key less) {
    return (raw.is_held(more) ? 1.0 : 0.0) - (raw.is_held(less) ? 1.0 : 0.0);
}

void move_stick(Hands& hands, const RawInput& raw, bool up_key_pushes, double dt_s) {
    if (hands.mouse_has_stick) return;
    const double keys = direction(raw, Key::up, Key::down);
    const double axis = shaped(raw.controller_stick.value_or(0.0));
    if (axis != 0.0) hands.controller_has_stick = true;
    if (keys != 0.0 || !raw.controller_stick) hands.controller_has_stick = false;
    if (hands.controller_has_stick) {
        hands.at.stick = axis;
        return;
    }
    const double pull = up_key_pushes ? -keys : keys;
    if (pull == 0.0) {
        hands.stick_held_s = 0.0;
        hands.at.stick *= std::exp(-dt_s / spring_back_s);
        if (std::abs(hands.at.stick) < 0.001) hands.at.stick = 0.0;
        return;
    }
    const double share = lerp(stick_first_share, 1.0, clamp(hands.stick_held_s / stick_ramp_s, 0.0, 1.0));
    hands.at.stick = clamp(hands.at.stick + pull * share * stick_rate_ps * dt_s, -1.0, 1.0);
    hands.stick_held_s += dt_s;
}

void move_lever(Hands& hands, const RawInput& raw, double dt_s) {
    const double tap =
        (raw.was_pressed(Key::e) ? lever_tap : 0.0) - (raw.was_pressed(Key::d) ? lever_tap : 0.0);
    const double held = direction(raw, Key::e, Key::d);
    hands.lever_held_s = held == 0.0 ? 0.0 : hands.lever_held_s + dt_s;
    const double moving = hands.lever_held_s > lever_repeat_after_s ? held * lever_rate_ps * dt_s : 0.0;
    hands.at.throttle = clamp(hands.at.throttle + tap + moving, 0.0, 1.0);
    if (raw.was_pressed(Key::x)) hands.at.throttle = 0.0;
}

void step_flap(Hands& hands, const RawInput& raw, int flap_count) {
    const int step = (raw.was_pressed(Key::f) ? 1 : 0) - (raw.was_pressed(Key::r) ? 1 : 0);
    const int flap = hands.at.flap + step;
    hands.at.flap = flap < 0 ? 0 : (flap >= flap_count ? flap_count - 1 : flap);
}

}  // namespace

Wishes read_input(Hands& hands, const RawInput& raw, const Settings& settings, int flap_count) {
    const double dt_s = clamp(raw.wall_s - hands.last_wall_s, 0.0, longest_frame_s);
    hands.last_wall_s = raw.wall_s;
    move_stick(hands, raw, settings.up_key_pushes.value_or(true), dt_s);
    move_lever(hands, raw, dt_s);
    step_flap(hands, raw, flap_count);
    hands.key_peeks = raw.is_held(Key::v);
    hands.at.trim = clamp(hands.at.trim + direction(raw, Key::u, Key::j) * trim_rate_ps * dt_s, -1.0, 1.0);

    Wishes wishes;
    wishes.controls = hands.at;
    if (raw.was_pressed(Key::g)) wishes.actions.push_back(GoAround{});
    if (raw.was_pressed(Key::p) || raw.was_pressed(Key::space) || raw.was_pressed(Key::escape))
        wishes.actions.push_back(TogglePause{});
    if (raw.was_pressed(Key::h)) wishes.actions.push_back(OpenScreenAndHelp{});
    if (raw.was_pressed(Key::s)) wishes.actions.push_back(ToggleSound{});
    if (raw.was_pressed(Key::n)) wishes.actions.push_back(RestartSame{});
    if (raw.was_pressed(Key::m)) wishes.actions.push_back(RestartMirrored{});
    return wishes;
}

Actions read_shortcuts(const RawInput& raw, Screen screen) {
    if (screen == Screen::replay) return replay_shortcuts(raw);
    Actions actions;
    const auto on = [&](Key key, const Action& action) {
        if (raw.was_pressed(key)) actions.push_back(action);
    };
    if (screen == Screen::choices) {
        on(Key::one, ChooseDistance{1});
        on(Key::two, ChooseDistance{2});
        on(Key::three, ChooseDistance{3});
        on(Key::h, OpenScreenAndHelp{});
        on(Key::w, OpenWhereAndWhen{});
        on(Key::l, OpenLogbook{});
    } else if (screen == Screen::stick_sense) {  // the question is answered by the very key
        on(Key::up, AnswerStickSense{true});
        on(Key::down, AnswerStickSense{false});
    } else if (screen == Screen::summary) {
        on(Key::n, RestartSame{});
        on(Key::m, RestartMirrored{});
        on(Key::o, FlyOn{});
        on(Key::c, SaveTrack{});
        on(Key::d, ShowDetail{});
        on(Key::t, OpenTakeAway{});
        on(Key::r, OpenReplay{});
    } else if (screen == Screen::estimate) {
        on(Key::one, AnswerEstimate{-1, 0});
        on(Key::two, AnswerEstimate{-1, 1});
        on(Key::three, AnswerEstimate{-1, 2});
    } else if (screen == Screen::logbook) {
        on(Key::p, OpenProgress{});
        on(Key::t, ExportStudent{});
        on(Key::i, ImportFile{});
    } else if (screen == Screen::progress) {
        on(Key::c, SaveProgress{});
    }
    if (screen == Screen::screen_and_help) {
        on(Key::escape, CloseScreenAndHelp{});
        on(Key::h, CloseScreenAndHelp{});
    } else if (screen == Screen::where_and_when) {
        on(Key::escape, CloseWhereAndWhen{});
        on(Key::w, CloseWhereAndWhen{});
    } else if (screen == Screen::estimate) {
        on(Key::escape, SkipEstimate{});
    } else if (screen == Screen::take_away) {
        on(Key::escape, CloseTakeAway{});
        on(Key::t, CloseTakeAway{});
    } else if (screen == Screen::criteria) {
        on(Key::escape, CloseCriteria{});
    } else if (screen == Screen::logbook) {
        on(Key::escape, CloseLogbook{});
        on(Key::l, CloseLogbook{});
    } else if (screen == Screen::progress) {
        on(Key::escape, CloseProgress{});
        on(Key::p, CloseProgress{});
    } else if (screen != Screen::choices) {
        on(Key::escape, GoToChoices{});
    }
    return actions;
}

std::vector<KeyHint> key_hints(const Settings& settings) {
    const bool pushes = settings.up_key_pushes.value_or(true);
    std::vector<KeyHint> hints{
        {"\u2191 \u2193", pushes ? "stick: nose down / nose up" : "stick: nose up / nose down"},
        {"E D", "more / less power"},
        {"F R", "flap down / up a step"},
        {"U J", "trim nose up / down"},
        {"G", "go around: full power"},
        {"X", "close the throttle"},
        {"P H", "pause / screen and help"},
        {"N M", "same again / mirror start"},
        {"S", "sound on / off"}};
    // Needed only while the panel is dark; then it is a key of the hands.
    if (settings.display.eyes_outside) hints.insert(hints.begin() + 4, {"V", "hold: look at the panel"});
    return hints;
}

}  // namespace slopewise
