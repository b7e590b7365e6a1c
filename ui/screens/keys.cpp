// Which key does what, a row each: press a row, then the key it shall have.
#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string>

#include "ui/screens/screens.h"
#include "ui/widgets/controls.h"
#include "ui/widgets/notes.h"
#include "ui/widgets/switches.h"

namespace slopewise {
namespace {

using Row = KeysView::Row;
using Wish = DoWithKeys::Wish;

// Text sizes across the page from which it has so many columns.
constexpr float three_columns_from = 44;
constexpr float two_columns_from = 27;

float note_height() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

bool key_row(Column& column, const Row& row) {
    const Palette& c = theme().colour;
    const float height = std::max(44.0f, std::round(note_height() * 1.7f));
    const ImVec2 min{std::round(column.left), std::round(column.y)};
    const ImVec2 max{min.x + column.width, min.y + height};
    const Press press = press_area(row.what.c_str(), min, {column.width, height});
    if (row.asked || press.hovered) column.list->AddRectFilled(min, max, c.band, grid(0.5f));
    const float y = min.y + (height - note_height()) / 2;
    text_at(column.list, {min.x + grid(1), y}, TextSize::note, c.ink, row.what);
    text_right(column.list, {max.x - grid(1), y}, TextSize::note, row.asked ? c.attention : c.accent,
               row.asked ? "press a key" : row.key, true);
    column.list->AddLine({min.x, max.y}, max, c.rule, 1.0f);
    if (press.focused) focus_ring(column.list, min, max, c.ink);
    column.y = max.y + 1;
    return press.pressed;
}

void key_rows_from(Column& column, std::span<const Row> rows, int first, Actions& actions) {
    for (const Row& row : rows) {
        if (key_row(column, row)) actions.emplace_back(DoWithKeys{Wish::ask_key, first});
        ++first;
    }
}

void switches(Column& column, const KeysView& sheet, Actions& actions) {
    constexpr ButtonWords usual{"Usual keys"};
    if (switch_row(column, "Sticky keys", sheet.sticky)) actions.emplace_back(DoWithKeys{Wish::sticky});
    if (switch_row(column, "Thumb pads on a touch screen", sheet.thumb_pads))
        actions.emplace_back(DoWithKeys{Wish::thumb_pads});
    gap(column, 1);
    if (button_row(column, std::span(&usual, 1)) == 0) actions.emplace_back(DoWithKeys{Wish::usual_keys});
    gap(column, 1);
}

// Each into the column that has come least far down.
void notes(std::span<Column> columns) {
    for (const std::string_view line : key_notes) {
        Column& column = *std::ranges::min_element(columns, {}, &Column::y);
        paragraph(column, TextSize::note, theme().colour.ink_soft, line);
        gap(column, 0.5f);
    }
}

// What to do, or what came of it. It always takes the same room, so that no row moves under the hand.
void say(Column& page, const KeysView& sheet) {
    const auto asked = std::ranges::find(sheet.rows, true, &Row::asked);
    const float top = page.y;
    if (!sheet.news.empty()) attention_note(page, sheet.news);
    else if (asked != sheet.rows.end())
        attention_note(page, "Press the key for: " + asked->what + ". Escape leaves it as it is.");
    else
        paragraph(page, TextSize::note, theme().colour.ink_soft,
                  "Press a row, then the key that it shall have.");
    const float lines = measure(page) >= two_columns_from ? 2 : 3;
    page.y = std::max(page.y, top + lines * line_height(TextSize::note));
    gap(page, 0.5f);
}

}  // namespace

Actions draw_keys(const View& view) {
    const KeysView& sheet = view.keys;
    const std::span<const Row> rows = sheet.rows;
    const bool asks = std::ranges::find(rows, true, &Row::asked) != rows.end();
    const std::size_t half = (rows.size() + 1) / 2;
    const auto first_half = rows.first(half), second_half = rows.subspan(half);
    const int second = static_cast<int>(half);
    Actions actions;
    let_keys_move_focus(!asks);  // the key that is waited for may be any
    Column page = begin_sheet("keys");
    const ButtonWords back{"Done", asks ? Weight::plain : Weight::primary, "Esc"};
    if (title_with_way_back(page, "Keys and fingers", back)) actions.emplace_back(CloseKeys{});
    say(page, sheet);
    if (measure(page) >= three_columns_from) {
        const std::array<float, 3> shares{1, 1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        key_rows_from(columns[0], first_half, 0, actions);
        key_rows_from(columns[1], second_half, second, actions);
        switches(columns[2], sheet, actions);
        gap(columns[0], 1);
        gap(columns[1], 1);
        notes(columns);
        join(page, columns);
    } else if (measure(page) >= two_columns_from) {
        const std::array<float, 2> shares{1, 1};
        std::vector<Column> columns = side_by_side(page, shares, 4);
        key_rows_from(columns[0], first_half, 0, actions);
        key_rows_from(columns[1], second_half, second, actions);
        join(page, columns);
        gap(page, 1);
        switches(page, sheet, actions);
        notes(std::span(&page, 1));
    } else {
        key_rows_from(page, rows, 0, actions);
        gap(page, 1);
        switches(page, sheet, actions);
        notes(std::span(&page, 1));
    }
    end_sheet(page, !asks);
    return actions;
}

}  // namespace slopewise
