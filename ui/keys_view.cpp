#include "ui/keys_view.h"

#include "ui/key_names.h"

namespace slopewise {
namespace {

// As for_hands has it (input.cpp): what each hand does changes places with the keys opposite.
KeyCommand by_hand(KeyCommand command, StickHand hand) {
    if (hand == StickHand::right) return command;
    switch (command) {
    case KeyCommand::stick_up_key: return KeyCommand::more_power;
    case KeyCommand::stick_down_key: return KeyCommand::less_power;
    case KeyCommand::more_power: return KeyCommand::stick_up_key;
    case KeyCommand::less_power: return KeyCommand::stick_down_key;
    case KeyCommand::flap_up: return KeyCommand::trim_up;
    case KeyCommand::flap_down: return KeyCommand::trim_down;
    case KeyCommand::trim_up: return KeyCommand::flap_up;
    case KeyCommand::trim_down: return KeyCommand::flap_down;
    default: return command;
    }
}

}  // namespace

Actions read_key_sheet(const RawInput& raw, const KeyDesk& desk) {
    using Wish = DoWithKeys::Wish;
    Actions actions;
    if (raw.was_pressed(Key::escape)) {
        if (desk.asked < 0) actions.emplace_back(CloseKeys{});
        else actions.emplace_back(DoWithKeys{Wish::leave_key});
        return actions;
    }
    if (desk.asked < 0) return actions;
    for (std::size_t i = 0; i < raw.pressed.size(); ++i) {
        if (!raw.pressed[i]) continue;
        actions.emplace_back(DoWithKeys{Wish::take_key, static_cast<int>(i), raw.gives});
        break;  // one key a row
    }
    return actions;
}

std::string what_key_does(KeyCommand command, const Settings& settings) {
    const bool pushes = settings.up_key_pushes.value_or(true);
    switch (by_hand(command, settings.school.stick_hand)) {
    case KeyCommand::stick_up_key: return pushes ? "nose down" : "nose up";
    case KeyCommand::stick_down_key: return pushes ? "nose up" : "nose down";
    case KeyCommand::more_power: return "more power";
    case KeyCommand::less_power: return "less power";
    case KeyCommand::close_throttle: return "close the throttle";
    case KeyCommand::flap_down: return "flap down a step";
    case KeyCommand::flap_up: return "flap up a step";
    case KeyCommand::trim_up: return "trim nose up";
    case KeyCommand::trim_down: return "trim nose down";
    case KeyCommand::go_around: return "go around";
    case KeyCommand::look_in: return "look at the panel";
    case KeyCommand::path_help: return "path help";
    case KeyCommand::exchange: return "hand over, take back";
    case KeyCommand::pause: return "pause";
    case KeyCommand::same_again: return "same again";
    case KeyCommand::mirror_start: return "mirror start";
    case KeyCommand::screen_and_help: return "screen and help";
    case KeyCommand::sound: return "sound on, off";
    case KeyCommand::count: break;
    }
    return "";
}

void tell_what_is_held(const App& app, FlightView& view) {
    const HeldSo& held = app.hands.held_so;
    if (!held.any()) return;
    const bool pushes = app.settings.up_key_pushes.value_or(true);
    const bool nose_up = held.on[pushes ? 1 : 0];
    if (view.caption.empty()) held_words(held, pushes, view.caption);
    else if (view.instruments.stall_warning && nose_up) view.caption = "Stall warning: nose up is held";
}

void keys_view(const App& app, KeysView& view) {
    const KeyBindings& keys = app.settings.keys;
    view.rows.resize(command_count);
    for (std::size_t i = 0; i < command_count; ++i)
        view.rows[i] = {what_key_does(static_cast<KeyCommand>(i), app.settings), key_words(keys.keys[i]),
                        app.keys.asked == static_cast<int>(i)};
    view.sticky = keys.sticky;
    view.thumb_pads = keys.thumb_pads;
    view.news = app.keys.news;
}

std::string keys_text(const KeysView& view) {
    std::string text = "Keys and fingers.\n";
    if (!view.news.empty()) text += view.news + "\n";
    for (const KeysView::Row& row : view.rows)
        text += row.what + ": " + (row.asked ? "press its key now" : row.key) + "\n";
    text += std::string("Sticky keys: ") + (view.sticky ? "on" : "off") + "\n";
    text += std::string("Thumb pads: ") + (view.thumb_pads ? "on" : "off") + "\n";
    for (const std::string_view line : key_notes) text.append(line).append("\n");
    return text;
}

}  // namespace slopewise
