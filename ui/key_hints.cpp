#include <string_view>
#include <utility>

#include "ui/input.h"
#include "ui/key_meanings.h"

namespace slopewise {

std::vector<KeyHint> key_hints(const Settings& settings, bool eyes_outside) {
    namespace meaning = key_meaning;
    using enum KeyCommand;
    const bool pushes = settings.up_key_pushes.value_or(true);
    const bool left = settings.school.stick_hand == StickHand::left;
    const bool sticky = settings.keys.sticky;
    const auto cap = [&](KeyCommand command) { return key_cap(settings.keys.key_of(command)); };
    const auto caps = [&](KeyCommand one, KeyCommand other) { return cap(one) + " " + cap(other); };
    const std::string arrows = caps(stick_up_key, stick_down_key), letters = caps(more_power, less_power);
    const auto add = [](std::vector<KeyHint>& to, std::string key, std::string_view words) {
        to.push_back({std::move(key), std::string(words)});
    };
    std::vector<KeyHint> hints;
    add(hints, left ? letters : arrows, pushes ? "stick: nose down / nose up" : "stick: nose up / nose down");
    add(hints, left ? arrows : letters, meaning::power);
    add(hints, left ? caps(trim_down, trim_up) : caps(flap_down, flap_up), meaning::flap);
    add(hints, left ? caps(flap_up, flap_down) : caps(trim_up, trim_down), meaning::trim);
    // Needed only while the panel is dark; then it is a key of the hands.
    if (eyes_outside) add(hints, cap(look_in), sticky ? meaning::look_in_sticky : meaning::look_in);
    add(hints, cap(go_around), meaning::go_around);
    add(hints, cap(path_help), sticky ? meaning::path_help_sticky : meaning::path_help);
    add(hints, cap(close_throttle), meaning::close_throttle);
    add(hints, caps(KeyCommand::pause, screen_and_help), meaning::pause);
    add(hints, caps(same_again, mirror_start), meaning::again);
    add(hints, cap(exchange), meaning::exchange);
    add(hints, cap(sound), meaning::sound);
    return hints;
}

}  // namespace slopewise
