#include "ui/replay_keys.h"

namespace slopewise {

Actions replay_shortcuts(const RawInput& raw) {
    using Wish = DriveReplay::Wish;
    Actions actions;
    const auto on = [&](Key key, Wish wish, double amount = 0) {
        if (raw.was_pressed(key)) actions.emplace_back(DriveReplay{wish, amount});
    };
    on(Key::space, Wish::play_or_pause);
    on(Key::p, Wish::play_or_pause);
    on(Key::left, Wish::step, -replay_step_ticks);
    on(Key::right, Wish::step, replay_step_ticks);
    on(Key::comma, Wish::step, -1);
    on(Key::period, Wish::step, 1);
    on(Key::up, Wish::speed, 1);
    on(Key::down, Wish::speed, -1);
    on(Key::page_up, Wish::mark, -1);
    on(Key::page_down, Wish::mark, 1);
    on(Key::home, Wish::start);
    on(Key::end, Wish::end);
    on(Key::v, Wish::change_view);
    if (raw.was_pressed(Key::escape) || raw.was_pressed(Key::backspace)) actions.emplace_back(CloseReplay{});
    return actions;
}

std::vector<KeyHint> replay_key_hints() {
    return {{"Space", "play / pause"},
            {"\u2190 \u2192", "1/10 s"},
            {", .", "one tick, 1/120 s"},
            {"\u2191 \u2193", "speed"},
            {"PgUp PgDn", "marks"},
            {"V", "seat / side"},
            {"Esc", "back"}};
}

}  // namespace slopewise
