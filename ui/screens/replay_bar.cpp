#include "ui/screens/replay_bar.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "ui/widgets/controls.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/time_line.h"
#include "ui/widgets/transport.h"

namespace slopewise {
namespace {

using Wish = DriveReplay::Wish;

constexpr float least_height_for_keys = 600;  // less is a phone, which has none

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float cap_px() { return std::round(note_px() * 1.12f); }
float between_px() { return std::max(4.0f, grid(0.75f)); }

bool shows_keys() {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    return window.x > window.y && window.y >= least_height_for_keys;
}

// The keys stand on the buttons only where there is a keyboard.
const char* if_keys(const char* key) { return shows_keys() ? key : ""; }

ButtonWords view_words(ReplayShows shows) {
    switch (shows) {
    case ReplayShows::both: return {"Seat and side", Weight::plain, if_keys("V")};
    case ReplayShows::seat: return {"From the seat", Weight::plain, if_keys("V")};
    case ReplayShows::side: return {"From the side", Weight::plain, if_keys("V")};
    }
    return {};
}
ButtonWords back_words() { return {"Back", Weight::plain, if_keys("Esc")}; }

float view_width() {
    float widest = 0;
    for (const ReplayShows shows : {ReplayShows::both, ReplayShows::seat, ReplayShows::side})
        widest = std::max(widest, button_width(view_words(shows)));
    return widest;
}

// The groups that stay together when the bar is too narrow for one row.
struct Widths {
    float sign = 0, player = 0, speed = 0, view = 0, back = 0;
};

Widths widths() {
    Widths w;
    w.sign = std::round(1.1f * press_height());
    w.player = 5 * w.sign + 4 * between_px();
    w.speed = 2 * press_height() + text_extent(TextSize::text, "\u00d7 0.25", true).x + 2 * grid(1);
    w.view = view_width();
    w.back = button_width(back_words());
    return w;
}

float group_gap() { return std::max(6.0f, grid(2)); }

bool one_row(float width, const Widths& w) {
    return w.player + w.speed + w.view + w.back + 3 * group_gap() <= width;
}

// Two rows: the player with the speed where they fit side by side, else the speed with the rest.
bool speed_above(float width, const Widths& w) { return w.player + w.speed + group_gap() <= width; }

int button_rows(float width) { return one_row(width, widths()) ? 1 : 2; }

// Where it stands, in words: the time, then the mark.
void draw_place(Column& column, const ReplayView& replay) {
    const Palette& c = theme().colour;
    float x = column.left;
    const auto put = [&](std::string_view words, ImU32 ink, bool bold) {
        x += text_at(column.list, {x, column.y}, TextSize::note, ink, words, bold).x;
    };
    // The clock's room never changes, so that nothing beside it moves.
    const float clock = text_extent(TextSize::note, "00:00.00", true).x;
    put(replay.clock, c.ink, true);
    x = column.left + clock + grid(0.5f);
    put(replay.length, c.ink_soft, false);
    x += grid(2);
    std::string_view place = replay.place;
    const std::string_view fits = take_line(place, TextSize::note, column.right() - x, true);
    put(fits, replay.at_mark ? c.ink : c.ink_soft, replay.at_mark);
    column.y += line_height(TextSize::note);
}

struct Row {
    ImDrawList* list;
    float x, y;
    Actions& actions;

    void sign(const char* name, Sign sign, float width, const DriveReplay& wish, bool live = true) {
        if (sign_button(list, {std::round(x), std::round(y)}, {width, press_height()}, name, sign, live))
            actions.emplace_back(wish);
        x += width + between_px();
    }
};

void draw_player(Row& row, const ReplayView& replay, float sign_width) {
    const bool at_start = replay.tick <= 0, at_end = replay.tick >= replay.last_tick;
    row.sign("previous mark", Sign::mark_back, sign_width, {Wish::mark, -1}, !at_start);
    row.sign("step back", Sign::step_back, sign_width, {Wish::step, -replay_step_ticks}, !at_start);
    row.sign("play", replay.playing ? Sign::pause : Sign::play, sign_width, {Wish::play_or_pause, 0});
    row.sign("step on", Sign::step_on, sign_width, {Wish::step, replay_step_ticks}, !at_end);
    row.sign("next mark", Sign::mark_on, sign_width, {Wish::mark, 1}, !at_end);
}

void draw_speed(Row& row, const ReplayView& replay, float width) {
    const float end = row.x + width, side = press_height();
    row.sign("slower", Sign::slower, side, {Wish::speed, -1}, !replay.slowest);
    const float from = row.x - between_px(), to = end - side;
    text_centred(row.list, {(from + to) / 2, row.y + press_height() / 2}, TextSize::text, theme().colour.ink,
                 replay.speed, true);
    row.x = to;
    row.sign("faster", Sign::faster, side, {Wish::speed, 1}, !replay.fastest);
}

void draw_rest(Row& row, const ReplayView& replay, float right, const Widths& w) {
    if (button(row.list, {std::round(row.x), std::round(row.y)}, {w.view, press_height()},
               view_words(replay.shows)))
        row.actions.emplace_back(DriveReplay{Wish::change_view, 0});
    if (button(row.list, {std::round(right - w.back), std::round(row.y)}, {w.back, press_height()},
               back_words()))
        row.actions.emplace_back(CloseReplay{});
}

void draw_buttons(Column& column, const ReplayView& replay, Actions& actions) {
    const Widths w = widths();
    Row row{column.list, column.left, column.y, actions};
    const bool one = one_row(column.width, w), above = one || speed_above(column.width, w);
    draw_player(row, replay, std::min(w.sign, (column.width - 4 * between_px()) / 5));
    row.x = column.left + w.player + group_gap();
    if (above) draw_speed(row, replay, w.speed);
    if (one) row.x = column.left + w.player + w.speed + 2 * group_gap();
    if (!one && above) {
        row.x = column.left;
        row.y += press_height() + between_px();
    }
    if (!above) {
        row.x = column.left;
        row.y += press_height() + between_px();
        draw_speed(row, replay, w.speed);
        row.x = column.left + w.speed + between_px();
    }
    draw_rest(row, replay, column.right(), w);
    column.y = row.y + press_height();
}

// As many keys as fit whole.
void draw_keys(Column& column, const std::vector<KeyHint>& keys) {
    const Palette& c = theme().colour;
    float left = column.left;
    for (const KeyHint& hint : keys) {
        const float width =
            key_caps_width(cap_px(), hint.key) + grid(1) + text_extent(TextSize::note, hint.meaning).x;
        if (left + width > column.right()) break;
        const float caps = key_caps(column.list, {left, column.y}, cap_px(), hint.key, c.ink, c.ink_soft);
        text_at(column.list, {left + caps + grid(1), column.y + (cap_px() - note_px()) / 2}, TextSize::note,
                c.ink_soft, hint.meaning);
        left += width + grid(2.5f);
    }
    column.y += cap_px();
}

float row_gap() { return std::max(3.0f, grid(0.75f)); }

}  // namespace

float replay_bar_height(float width) {
    const auto rows = static_cast<float>(button_rows(width));
    const float keys = shows_keys() ? cap_px() + row_gap() : 0.0f;
    return line_height(TextSize::note) + time_line_height() + row_gap() + rows * press_height() +
           (rows - 1) * between_px() + keys;
}

Actions draw_replay_bar(Column column, const View& view) {
    const ReplayView& replay = view.replay;
    Actions actions;
    const bool keys = shows_keys();
    draw_place(column, replay);
    const ImVec2 min{column.left, column.y};
    const auto sought =
        draw_time_line(column.list, min, {column.right(), min.y + time_line_height()}, replay);
    if (sought) actions.emplace_back(DriveReplay{Wish::seek, *sought});
    column.y += time_line_height() + row_gap();
    draw_buttons(column, replay, actions);
    column.y += row_gap();
    if (keys) draw_keys(column, view.flight.keys);
    return actions;
}

}  // namespace slopewise
