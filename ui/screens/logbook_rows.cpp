#include "ui/screens/logbook_rows.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/widgets/controls.h"
#include "ui/widgets/list_keys.h"

namespace slopewise {
namespace {

constexpr float table_from = 36;  // text sizes across the page
constexpr float least_finger_px = 44;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }
float line_px() { return line_height(TextSize::note); }

bool is_table(const Column& page) { return measure(page) >= table_from; }

constexpr std::array<ButtonWords, 5> what_to_do{{{"Open it", Weight::primary},
                                                 {"Replay"},
                                                 {"Compare with the one before"},
                                                 {"Save as a file"},
                                                 {"Delete"}}};

// Where each row stands: all are alike but for the room below the chosen one.
struct Places {
    float top = 0, row = 0, below_chosen = 0;
    int count = 0, chosen = -1;

    float y(int index) const {
        return top + row * static_cast<float>(index) + (index > chosen ? below_chosen : 0.0f);
    }
    int at(float y_px) const {  // the row there, or one before it
        return std::clamp(static_cast<int>((y_px - top - below_chosen) / row), 0, std::max(0, count - 1));
    }
};

// The columns of the table: their left edges and widths.
struct Columns {
    std::array<float, 5> left{}, width{};
};

Columns columns_of(const Column& page) {
    const float figures = text_extent(TextSize::note, "\u2212188.8 kt", true).x;
    const float verdict = std::max(text_extent(TextSize::note, "not reached").x,
                                   text_extent(TextSize::note, "not stable", true).x + 1.2f * note_px());
    const float between = grid(3), fault = 0.24f * page.width;
    Columns columns;
    columns.width = {page.width - grid(1.5f) - 2 * figures - verdict - fault - 4 * between, figures, figures,
                     verdict, fault};
    float left = page.left + grid(1.5f);
    for (std::size_t i = 0; i < columns.left.size(); ++i) {
        columns.left[i] = std::round(left);
        left += columns.width[i] + between;
    }
    return columns;
}

// A word with the open diamond before it where it asks for attention.
void verdict(ImDrawList* list, ImVec2 place, float width, const std::string& words, bool attention) {
    const Palette& c = theme().colour;
    if (attention) {
        mark_out(list, {place.x + note_px() * 0.35f, place.y + note_px() * 0.5f}, note_px() * 0.6f,
                 c.attention);
        place.x += note_px();
        width -= note_px();
    }
    text_within(list, place, width, TextSize::note, attention ? c.attention : c.ink, words, attention);
}

void two_lines(ImDrawList* list, ImVec2 place, float width, std::string_view words) {
    std::string_view rest = words;
    const std::string_view first = take_line(rest, TextSize::note, width);
    text_within(list, place, width, TextSize::note, theme().colour.ink, first);
    text_within(list, {place.x, place.y + line_px()}, width, TextSize::note, theme().colour.ink, rest);
}

void table_row(ImDrawList* list, const Columns& at, float y, const LogbookRowView& row) {
    const Palette& c = theme().colour;
    const float second = y + line_px();
    const float when = text_at(list, {at.left[0], y}, TextSize::note, c.ink, row.when, true).x;
    text_within(list, {at.left[0] + when + grid(1.5f), y}, at.width[0] - when - grid(1.5f), TextSize::note,
                c.ink_soft, row.marks);
    text_within(list, {at.left[0], second}, at.width[0], TextSize::note, c.ink, row.lesson);
    const auto figures = [&](std::size_t column, const std::string& bias, const std::string& scatter) {
        const float right = at.left[column] + at.width[column];
        text_right(list, {right, y}, TextSize::note, c.ink, bias, true);
        text_right(list, {right, second}, TextSize::note, c.ink_soft, scatter);
    };
    figures(1, row.path_bias, row.path_scatter);
    figures(2, row.speed_bias, row.speed_scatter);
    verdict(list, {at.left[3], y}, at.width[3], row.stability, row.unstable);
    verdict(list, {at.left[3], second}, at.width[3], row.decision, row.missed);
    two_lines(list, {at.left[4], y}, at.width[4], row.fault);
}

void table_head(Column& page, const LogbookView& sheet) {
    const Palette& c = theme().colour;
    const Columns at = columns_of(page);
    const float y = page.y, second = y + line_px();
    const auto head = [&](std::size_t i, const char* upper, const char* lower, bool right) {
        const float x = at.left[i] + (right ? at.width[i] : 0.0f);
        const auto put = [&](float line_y, const char* words) {
            if (right) text_right(page.list, {x, line_y}, TextSize::note, c.ink_soft, words);
            else text_at(page.list, {x, line_y}, TextSize::note, c.ink_soft, words);
        };
        put(y, upper);
        put(second, lower);
    };
    head(0, "When", "and which lesson", false);
    head(1, "Path", "scatter", true);
    head(2, "Speed", "scatter", true);
    head(3, sheet.gate.c_str(), "decision", false);
    head(4, "First fault", "", false);
    page.y += 2 * line_px() + grid(0.5f);
}

// On a narrow page, four lines.
void stacked_row(const Column& page, float y, const LogbookRowView& row) {
    const Palette& c = theme().colour;
    const float left = page.left + grid(1.5f), width = page.right() - left;
    const float right_words = text_extent(TextSize::note, "not reached", true).x + note_px() * 1.2f;
    const float left_width = width - right_words - grid(1);
    const auto line = [&](float lines) { return y + lines * line_px(); };
    text_within(page.list, {left, y}, left_width, TextSize::note, c.ink, row.when, true);
    verdict(page.list, {left + left_width + grid(1), y}, right_words, row.stability, row.unstable);
    text_within(page.list, {left, line(1)}, left_width, TextSize::note, c.ink, row.lesson);
    verdict(page.list, {left + left_width + grid(1), line(1)}, right_words, row.decision, row.missed);
    text_within(page.list, {left, line(2)}, width, TextSize::note, c.ink_soft,
                row.path_bias + " " + row.path_scatter + ", " + row.speed_bias + " " + row.speed_scatter);
    const float marks = row.marks.empty() ? 0 : text_extent(TextSize::note, row.marks).x;
    text_within(page.list, {left, line(3)}, width - marks - grid(1), TextSize::note, c.ink, row.fault);
    text_right(page.list, {page.right(), line(3)}, TextSize::note, c.ink_soft, row.marks);
}

void do_with(int pressed, const LogbookView& sheet, const LogbookRowView& row, LogbookUi& ui,
             Actions& actions) {
    switch (pressed) {
    case 0: actions.emplace_back(OpenAttempt{row.id}); break;
    case 1: actions.emplace_back(ReplayAttempt{row.id}); break;
    case 2: actions.emplace_back(CompareAttempts{row.id, sheet.earlier}); break;
    case 3: actions.emplace_back(SaveAttempt{row.id}); break;
    case 4:
        ui.asks = LogbookUi::Asks::remove;
        ui.just_asked = true;
        ui.id = row.id;
        ui.words = row.when;
        break;
    default: break;
    }
}

// The oldest attempt has none before it to be compared with.
std::vector<int> possible(const LogbookView& sheet) {
    return sheet.earlier.empty() ? std::vector<int>{0, 1, 3, 4} : std::vector<int>{0, 1, 2, 3, 4};
}

std::vector<ButtonWords> words_of(const std::vector<int>& wishes) {
    std::vector<ButtonWords> words;
    for (const int wish : wishes) words.push_back(what_to_do[static_cast<std::size_t>(wish)]);
    return words;
}

Column inset(const Column& page, float y) {
    return {page.list, page.left + grid(1.5f), page.width - grid(3), y};
}

// After the arrow keys the chosen row is brought into the window, with its buttons.
void follow(const Places& places, int chosen, float foot_px) {
    const float top = places.y(chosen) - grid(1);
    const float bottom = places.y(chosen) + places.row + places.below_chosen + foot_px;
    const float window = ImGui::GetIO().DisplaySize.y;
    if (top < 0) ImGui::SetScrollY(ImGui::GetScrollY() + top);
    else if (bottom > window) ImGui::SetScrollY(ImGui::GetScrollY() + bottom - window);
}

void choose_with_keys(const LogbookView& sheet, const LogbookUi& ui, Actions& actions) {
    if (ui.asks != LogbookUi::Asks::nothing) return;
    const int wanted = sheet.chosen + list_steps();
    if (wanted == sheet.chosen || wanted < 0 || wanted >= static_cast<int>(sheet.rows.size())) return;
    actions.emplace_back(ChooseAttempt{sheet.rows[static_cast<std::size_t>(wanted)].id});
}

}  // namespace

void text_within(ImDrawList* list, ImVec2 place, float width, TextSize size, ImU32 colour,
                 std::string_view words, bool bold) {
    if (text_extent(size, words, bold).x <= width) {
        text_at(list, place, size, colour, words, bold);
        return;
    }
    std::string cut(words);
    const auto whole = [&] { return text_extent(size, cut + "\u2026", bold).x <= width; };
    while (!cut.empty() && !whole()) {
        while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xC0u) == 0x80u) cut.pop_back();
        if (!cut.empty()) cut.pop_back();
    }
    while (!cut.empty() && cut.back() == ' ') cut.pop_back();
    if (!cut.empty()) text_at(list, place, size, colour, cut + "\u2026", bold);
}

void draw_logbook_rows(Column& page, const LogbookView& sheet, LogbookUi& ui, Actions& actions) {
    const Palette& c = theme().colour;
    const bool table = is_table(page);
    if (table) table_head(page, sheet);
    const std::vector<int> wishes = possible(sheet);
    const std::vector<ButtonWords> buttons = words_of(wishes);
    const float padding = grid(0.75f), lines = table ? 2 : 4;
    Places places{page.y, std::max(least_finger_px, std::round(lines * line_px() + 2 * padding)),
                  button_row_height(inset(page, 0).width, buttons) + grid(1.5f),
                  static_cast<int>(sheet.rows.size()), sheet.chosen};
    choose_with_keys(sheet, ui, actions);
    if (ui.shown >= 0 && ui.shown != sheet.chosen && sheet.chosen >= 0) follow(places, sheet.chosen, grid(1));
    ui.shown = sheet.chosen;

    const Columns at = columns_of(page);
    const float window = ImGui::GetIO().DisplaySize.y;
    for (int i = places.at(0); i < places.count && places.y(i) < window; ++i) {
        const LogbookRowView& row = sheet.rows[static_cast<std::size_t>(i)];
        const bool chosen = i == sheet.chosen;
        const float y = std::round(places.y(i));
        const ImVec2 min{page.left, y}, max{page.right(), y + places.row};
        const Press press = press_area(row.id.c_str(), min, {page.width, places.row});
        const float bottom = max.y + (chosen ? places.below_chosen : 0.0f);
        if (chosen || press.hovered) page.list->AddRectFilled(min, {max.x, bottom}, c.band);
        if (chosen) page.list->AddRectFilled(min, {min.x + grid(0.5f), bottom}, c.accent);
        Column line{page.list, page.left, page.width, y};
        rule(line);
        if (table) table_row(page.list, at, y + padding, row);
        else stacked_row(page, y + padding, row);
        if (press.focused) focus_ring(page.list, min, max, c.ink);
        if (press.pressed && !chosen) actions.emplace_back(ChooseAttempt{row.id});
        if (!chosen) continue;
        Column below = inset(page, max.y);
        if (sheet.is_loading) {
            paragraph(below, TextSize::note, c.ink_soft, "It is being opened.");
            continue;
        }
        const int pressed = button_row(below, buttons);
        if (pressed >= 0) do_with(wishes[static_cast<std::size_t>(pressed)], sheet, row, ui, actions);
    }
    page.y = places.y(places.count);
    rule(page);
}

void draw_deleted_rows(Column& page, const LogbookView& sheet, LogbookUi& ui, Actions& actions) {
    constexpr std::array<ButtonWords, 2> buttons{
        {{"Bring back", Weight::quiet}, {"Delete for good", Weight::quiet}}};
    const float buttons_width = button_width(buttons[0]) + button_width(buttons[1]) + grid(1.5f);
    const bool beside = page.width - buttons_width > 16 * note_px();
    const Places places{page.y, press_height() + (beside ? 0.0f : line_px() + grid(0.5f)), 0,
                        static_cast<int>(sheet.deleted.size()), -1};
    const float window = ImGui::GetIO().DisplaySize.y;
    for (int i = places.at(0); i < places.count && places.y(i) < window; ++i) {
        const LogbookView::Deleted& one = sheet.deleted[static_cast<std::size_t>(i)];
        const float y = std::round(places.y(i));
        const float words_y = beside ? y + (press_height() - note_px()) / 2 : y + grid(0.5f);
        text_within(page.list, {page.left, words_y}, page.width - (beside ? buttons_width + grid(1) : 0.0f),
                    TextSize::note, theme().colour.ink, one.words);
        Column hands{page.list, beside ? page.right() - buttons_width : page.left, buttons_width,
                     beside ? y : y + line_px() + grid(0.5f)};
        ImGui::PushID(one.id.c_str());
        const int pressed = button_row(hands, buttons);
        ImGui::PopID();
        Column line{page.list, page.left, page.width, y};
        rule(line);
        if (pressed == 0) actions.emplace_back(BringBackAttempt{one.id});
        if (pressed == 1) {
            ui.asks = LogbookUi::Asks::erase;
            ui.just_asked = true;
            ui.id = one.id;
            ui.words = one.words;
        }
    }
    page.y = places.y(places.count);
}

}  // namespace slopewise
