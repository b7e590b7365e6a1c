#include "ui/input.h"

#include <array>
#include <cmath>
#include <utility>

#include "base/interpolate.h"
#include "flight/dynamics.h"
#include "ui/key_bindings.h"
#include "ui/replay_keys.h"
#include "ui/sources_view.h"

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

double direction(const RawInput& raw, Key more, Key less) {
    return (raw.is_held(more) ? 1.0 : 0.0) - (raw.is_held(less) ? 1.0 : 0.0);
}

void move_stick(PilotHands& hands, const RawInput& raw, bool up_key_pushes, double dt_s) {
    if (hands.mouse_has_stick || hands.controller_has_stick) return;
    const double keys = direction(raw, Key::up, Key::down);
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

void move_lever(PilotHands& hands, const RawInput& raw, double dt_s) {
    const double tap =
        (raw.was_pressed(Key::e) ? lever_tap : 0.0) - (raw.was_pressed(Key::d) ? lever_tap : 0.0);
    const double held = direction(raw, Key::e, Key::d);
    hands.lever_held_s = held == 0.0 ? 0.0 : hands.lever_held_s + dt_s;
    const double moving = hands.lever_held_s > lever_repeat_after_s ? held * lever_rate_ps * dt_s : 0.0;
    hands.at.throttle = clamp(hands.at.throttle + tap + moving, 0.0, 1.0);
    if (raw.was_pressed(Key::x)) hands.at.throttle = 0.0;
}

void step_flap(PilotHands& hands, const RawInput& raw, int flap_count) {
    const int step = (raw.was_pressed(Key::f) ? 1 : 0) - (raw.was_pressed(Key::r) ? 1 : 0);
    const int flap = hands.at.flap + step;
    hands.at.flap = flap < 0 ? 0 : (flap >= flap_count ? flap_count - 1 : flap);
}

// Whether a key moves a control now.
bool keys_fly(const RawInput& raw) {
    constexpr std::array<Key, 10> keys{Key::up, Key::down, Key::e, Key::d, Key::x,
                                       Key::f,  Key::r,    Key::u, Key::j, Key::g};
    for (const Key key : keys)
        if (raw.is_held(key) || raw.was_pressed(key)) return true;
    return false;
}

// What each hand does changes places with what the other does on the keys opposite: stick and trim to the
// left hand's E D and R F, power and flap to the right hand's arrows and U J.
RawInput for_hands(RawInput raw, StickHand stick_hand) {
    constexpr std::array<std::pair<Key, Key>, 4> opposite{
        {{Key::up, Key::e}, {Key::down, Key::d}, {Key::r, Key::u}, {Key::f, Key::j}}};
    if (stick_hand == StickHand::right) return raw;
    for (const auto& [one, other] : opposite) {
        std::swap(raw.held[static_cast<std::size_t>(one)], raw.held[static_cast<std::size_t>(other)]);
        std::swap(raw.pressed[static_cast<std::size_t>(one)], raw.pressed[static_cast<std::size_t>(other)]);
    }
    return raw;
}

// Answers by their number; what there is none of now is not heard.
void add_drill_shortcuts(const RawInput& raw, Actions& actions) {
    constexpr std::array<Key, 8> numbers{Key::one,  Key::two, Key::three, Key::four,
                                         Key::five, Key::six, Key::seven, Key::eight};
    constexpr double fine_m = 15.0, coarse_m = 60.0;  // about 50 and 200 ft
    constexpr double second_ticks = 1.0 / tick_s;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        if (raw.was_pressed(numbers[i])) actions.emplace_back(AnswerCard{static_cast<int>(i)});
    const double mark_m =
        (raw.was_pressed(Key::right) ? fine_m : 0.0) - (raw.was_pressed(Key::left) ? fine_m : 0.0) +
        (raw.was_pressed(Key::up) ? coarse_m : 0.0) - (raw.was_pressed(Key::down) ? coarse_m : 0.0);
    if (mark_m != 0.0) actions.emplace_back(MovePlaceMark{mark_m, true});
    if (raw.was_pressed(Key::left)) actions.emplace_back(DriveReplay{DriveReplay::Wish::step, -second_ticks});
    if (raw.was_pressed(Key::right)) actions.emplace_back(DriveReplay{DriveReplay::Wish::step, second_ticks});
    if (raw.was_pressed(Key::m)) actions.emplace_back(DoWithDrill{DoWithDrill::Wish::mark_moment});
    if (!raw.was_pressed(Key::p) && !raw.was_pressed(Key::space)) return;
    actions.emplace_back(DriveReplay{DriveReplay::Wish::play_or_pause});
    actions.emplace_back(TogglePause{});
}

}  // namespace

Wishes read_input(PilotHands& hands, const RawInput& given, const Settings& settings, int flap_count) {
    RawInput raw = for_hands(rebound(given, settings.keys), settings.school.stick_hand);
    if (settings.keys.sticky) raw = stuck(hands.held_so, raw);
    else hands.held_so = {};
    const double dt_s = clamp(raw.wall_s - hands.last_wall_s, 0.0, longest_frame_s);
    hands.last_wall_s = raw.wall_s;
    const ControllerHolds holds = fly_by_controllers(hands, raw, settings.controllers, flap_count, dt_s);
    if (keys_fly(raw)) mark(hands.used, Device::keyboard);
    move_stick(hands, raw, settings.up_key_pushes.value_or(true), dt_s);
    move_lever(hands, raw, dt_s);
    step_flap(hands, raw, flap_count);
    hands.key_peeks = raw.is_held(Key::v) || holds.look_in;
    hands.key_calls_help = raw.is_held(Key::a) || holds.path_help;
    hands.at.trim = clamp(hands.at.trim + direction(raw, Key::u, Key::j) * trim_rate_ps * dt_s, -1.0, 1.0);

    Wishes wishes;
    wishes.controls = hands.at;
    wishes.actions = controller_actions(raw.controllers, settings.controllers);
    if (raw.was_pressed(Key::g)) wishes.actions.emplace_back(GoAround{});
    if (raw.was_pressed(Key::p) || raw.was_pressed(Key::space) || raw.was_pressed(Key::escape))
        wishes.actions.emplace_back(TogglePause{});
    if (raw.was_pressed(Key::h)) wishes.actions.emplace_back(OpenScreenAndHelp{});
    if (raw.was_pressed(Key::c)) wishes.actions.emplace_back(ExchangeControls{});
    if (raw.was_pressed(Key::s)) wishes.actions.emplace_back(ToggleSound{});
    if (raw.was_pressed(Key::n)) wishes.actions.emplace_back(RestartSame{});
    if (raw.was_pressed(Key::m)) wishes.actions.emplace_back(RestartMirrored{});
    return wishes;
}

RawInput without_class_keys(RawInput raw) {
    constexpr std::array<Key, 19> own{Key::b,     Key::period, Key::z,       Key::l,        Key::i,
                                      Key::v,     Key::y,      Key::w,       Key::o,        Key::one,
                                      Key::two,   Key::three,  Key::four,    Key::five,     Key::six,
                                      Key::seven, Key::eight,  Key::page_up, Key::page_down};
    for (const Key key : own)
        raw.held[static_cast<std::size_t>(key)] = raw.pressed[static_cast<std::size_t>(key)] = false;
    return raw;
}

Actions read_class_keys(const RawInput& raw, const KeyBindings& bindings) {
    Actions actions;
    const RawInput flown = rebound(without_class_keys(raw), bindings);
    const auto on = [&](Key key, const Action& action) {
        if (raw.was_pressed(key)) actions.emplace_back(action);
    };
    const auto on_flying = [&](Key key, const Action& action) {
        if (flown.was_pressed(key)) actions.emplace_back(action);
    };
    on_flying(Key::p, FreezeOrRun{});
    on_flying(Key::space, FreezeOrRun{});
    on(Key::b, ShowToClass{ShowToClass::What::black});
    on(Key::period, ShowToClass{ShowToClass::What::black});  // which some clickers send
    on(Key::z, PutPanelAway{});
    on(Key::l, ShowToClass{ShowToClass::What::lights});
    on(Key::i, ShowToClass{ShowToClass::What::side_profile});
    on(Key::v, DoWithQuestions{DoWithQuestions::Wish::show_counts, 0, ""});
    on(Key::y, DoWithBoard{DoWithBoard::Wish::reveal_labels});
    on(Key::w, DoWithClassWindow{DoWithClassWindow::Wish::open});
    on(Key::o, DoWithClassWindow{DoWithClassWindow::Wish::go_on_with});
    on_flying(Key::g, GoAround{});
    on_flying(Key::s, ToggleSound{});
    on_flying(Key::c, ExchangeControls{});
    on_flying(Key::n, RestartSame{});      // where it was put last
    on_flying(Key::m, RestartMirrored{});  // there on the other side of the path
    on_flying(Key::h, OpenScreenAndHelp{});
    on(Key::page_down, DoWithQuestions{DoWithQuestions::Wish::next, 0, ""});
    on(Key::page_up, DoWithQuestions{DoWithQuestions::Wish::previous, 0, ""});
    constexpr std::array<Key, 8> numbers{Key::one,  Key::two, Key::three, Key::four,
                                         Key::five, Key::six, Key::seven, Key::eight};
    for (std::size_t i = 0; i < numbers.size(); ++i)
        on(numbers[i], DoWithQuestions{DoWithQuestions::Wish::count_hand, static_cast<int>(i), ""});
    on_flying(Key::backspace, CloseClassRoom{});  // not Escape, which clickers send to end a show
    return actions;
}

Actions read_shortcuts(const RawInput& raw, Screen screen) {
    if (screen == Screen::replay) return replay_shortcuts(raw);
    Actions actions;
    const auto on = [&](Key key, const Action& action) {
        if (raw.was_pressed(key)) actions.emplace_back(action);
    };
    if (screen == Screen::choices) {
        on(Key::one, ChooseDistance{1});
        on(Key::two, ChooseDistance{2});
        on(Key::three, ChooseDistance{3});
        on(Key::h, OpenScreenAndHelp{});
        on(Key::w, OpenWhereAndWhen{});
        on(Key::l, OpenLogbook{});
        on(Key::k, OpenOwnLessons{});
        on(Key::d, OpenDrills{});
        on(Key::s, OpenLessons{});
        on(Key::f, FlyNow{});
        on(Key::escape, OpenFirstPage{});
    } else if (screen == Screen::welcome) {
        on(Key::f, FlyNow{});
        on(Key::s, OpenLessons{});
        on(Key::c, GoToChoices{});
        on(Key::d, OpenDrills{});
        on(Key::l, OpenLogbook{});
        on(Key::k, OpenOwnLessons{});
        on(Key::t, OpenClassRoom{});
        on(Key::i, OpenClassTable{});
        on(Key::h, OpenScreenAndHelp{});
    } else if (screen == Screen::lessons || screen == Screen::lesson_card) {
        on(Key::h, OpenScreenAndHelp{});
    } else if (screen == Screen::stick_sense) {  // the question is answered by the very key
        on(Key::up, AnswerStickSense{true});
        on(Key::down, AnswerStickSense{false});
    } else if (screen == Screen::summary) {
        on(Key::n, RestartSame{});
        on(Key::a, FlyNextRun{});
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
    } else if (screen == Screen::own_lessons) {
        on(Key::n, DoWithLesson{DoWithLesson::Wish::write_new, ""});
        on(Key::i, DoWithLesson{DoWithLesson::Wish::take_in, ""});
    } else if (screen == Screen::logbook) {
        on(Key::p, OpenProgress{});
        on(Key::t, ExportStudent{});
        on(Key::i, ImportFile{});
    } else if (screen == Screen::progress) {
        on(Key::c, SaveProgress{});
    } else if (screen == Screen::drill) {
        add_drill_shortcuts(raw, actions);
    } else if (screen == Screen::drill_result) {
        on(Key::n, DoWithDrill{DoWithDrill::Wish::again});
    }
    if (has_sources(screen)) on(Key::q, OpenSources{});
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
    } else if (screen == Screen::school) {
        on(Key::escape, CloseSchool{});
    } else if (screen == Screen::controllers) {
        on(Key::escape, CloseControllers{});
    } else if (screen == Screen::about) {
        on(Key::escape, CloseAbout{});
    } else if (screen == Screen::logbook) {
        on(Key::escape, CloseLogbook{});
        on(Key::l, CloseLogbook{});
    } else if (screen == Screen::progress) {
        on(Key::escape, CloseProgress{});
        on(Key::p, CloseProgress{});
    } else if (screen == Screen::sources) {
        on(Key::escape, CloseSources{});
        on(Key::q, CloseSources{});
    } else if (screen == Screen::own_lessons) {
        on(Key::escape, CloseOwnLessons{});
        on(Key::k, CloseOwnLessons{});
    } else if (screen == Screen::lessons) {
        on(Key::escape, CloseLessons{});
        on(Key::s, CloseLessons{});
    } else if (screen == Screen::lesson_card) {
        on(Key::escape, OpenLessons{});
        on(Key::s, OpenLessons{});
    } else if (screen == Screen::lesson_editor || screen == Screen::arrived_lesson) {
        on(Key::escape, CloseOwnLessons{});
    } else if (screen == Screen::drill || screen == Screen::drill_result) {
        on(Key::escape, DoWithDrill{DoWithDrill::Wish::leave});
    } else if (screen == Screen::class_table) {
        on(Key::c, DoWithClassTable{DoWithClassTable::Wish::save, 0});
        on(Key::escape, CloseClassTable{});
    } else if (screen == Screen::class_window) {  // of a clicker, for the instructor's window
        on(Key::p, FreezeOrRun{});
        on(Key::b, ShowToClass{ShowToClass::What::black});
        on(Key::period, ShowToClass{ShowToClass::What::black});
        on(Key::page_down, DoWithQuestions{DoWithQuestions::Wish::next, 0, ""});
        on(Key::page_up, DoWithQuestions{DoWithQuestions::Wish::previous, 0, ""});
    } else if (screen == Screen::drills) {
        on(Key::escape, CloseDrills{});
        on(Key::d, CloseDrills{});
    } else if (screen != Screen::choices && screen != Screen::welcome) {
        on(Key::escape, GoToChoices{});
    }
    return actions;
}

}  // namespace slopewise
