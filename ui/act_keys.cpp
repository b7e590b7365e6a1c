// What is asked of keys and fingers.
#include "ui/act.h"
#include "ui/key_names.h"
#include "ui/keys_view.h"

namespace slopewise {
namespace {

// Why a command cannot have a key.
std::string refusal(Key key) {
    if (key == Key::tab || key == Key::enter)
        return std::string(name_of(key).words) + " is the program's own. Press another key.";
    return "That key belongs to the machine or to the browser. Press another key.";
}

void take_key(App& app, const DoWithKeys& wish, Host& host) {
    const Key key = static_cast<Key>(wish.which);
    if (app.keys.asked < 0 || wish.which < 0 || key >= Key::count) return;
    if (!name_of(key).bindable) {
        app.keys.news = refusal(key);
        return;
    }
    const auto command = static_cast<KeyCommand>(app.keys.asked);
    app.keys.asked = -1;
    KeyBindings& bindings = app.settings.keys;
    const BoundKey taken{key, wish.gives};
    const KeyCommand other = bind_key(bindings, command, taken);
    app.keys.news = key_words(taken) + ": " + what_key_does(command, app.settings) + ".";
    if (other != KeyCommand::count)
        app.keys.news += " It was for " + what_key_does(other, app.settings) + ", which now has " +
                         key_words(bindings.key_of(other)) + ".";
    keep_settings(app, host);
}

}  // namespace

void act(App& app, const OpenKeys&, Host&) {
    app.keys = {};
    app.screen = Screen::keys;
}
void act(App& app, const CloseKeys&, Host&) {
    app.keys = {};
    app.screen = Screen::screen_and_help;
}
void act(App& app, const DoWithKeys& wish, Host& host) {
    KeyDesk& desk = app.keys;
    KeyBindings& bindings = app.settings.keys;
    switch (wish.wish) {
    case DoWithKeys::Wish::ask_key: {
        const bool same = desk.asked == wish.which;
        const bool there = wish.which >= 0 && wish.which < static_cast<int>(command_count);
        desk = {};
        if (there && !same) desk.asked = wish.which;
        return;
    }
    case DoWithKeys::Wish::leave_key: desk = {}; return;
    case DoWithKeys::Wish::take_key: return take_key(app, wish, host);
    case DoWithKeys::Wish::usual_keys:
        bindings.keys = usual_keys();
        desk = {-1, "All commands have their usual keys."};
        return keep_settings(app, host);
    case DoWithKeys::Wish::sticky: bindings.sticky = !bindings.sticky; return keep_settings(app, host);
    case DoWithKeys::Wish::thumb_pads:
        bindings.thumb_pads = !bindings.thumb_pads;
        return keep_settings(app, host);
    }
}

}  // namespace slopewise
