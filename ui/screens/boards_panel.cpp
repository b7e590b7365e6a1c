#include "ui/screens/boards_panel.h"

#include <algorithm>
#include <array>
#include <span>

#include "ui/widgets/controls.h"

namespace slopewise {
namespace {

using Kind = BoardShown::Kind;
using Wish = DoWithBoard::Wish;

// The names two in a row, as they fit beside the picture; the one chosen is pressed in.
void draw_pages(Column& column, std::span<const std::string> names, int chosen, Wish wish, Actions& actions) {
    constexpr std::size_t in_a_row = 2;
    for (std::size_t first = 0; first < names.size(); first += in_a_row) {
        const auto row = names.subspan(first, std::min(in_a_row, names.size() - first));
        const int pressed = choice_row(column, row.front().c_str(), row, chosen - static_cast<int>(first));
        if (pressed >= 0) actions.emplace_back(DoWithBoard{wish, static_cast<int>(first) + pressed});
        gap(column, 0.5f);
    }
}

void draw_ink_buttons(Column& column, const RoomShown& shown, Actions& actions) {
    heading(column, "Ink");
    paragraph(
        column, TextSize::note, theme().colour.ink_soft,
        "Draw with the mouse or a finger over the frozen picture or a board. The class sees the pointer.");
    if (shown.ink.empty()) return;
    const std::array<ButtonWords, 2> buttons{{{"Take back", Weight::plain}, {"Wipe", Weight::plain}}};
    const int pressed = button_row(column, buttons);
    if (pressed == 0) actions.emplace_back(DoWithBoard{Wish::take_back});
    if (pressed == 1) actions.emplace_back(DoWithBoard{Wish::wipe});
}

}  // namespace

void draw_boards_panel(Column& column, const View& view, Actions& actions) {
    static const std::array<std::string, 3> kinds{"Flight", "Stills", "Explain"};
    const RoomShown& shown = view.class_picture.shown;
    const BoardsView& board = view.class_picture.boards;
    const Kind kind = shown.board.kind;
    heading(column, "What fills the picture");
    const int pressed = choice_row(column, "fills", kinds, static_cast<int>(kind));
    if (pressed >= 0 && pressed != static_cast<int>(kind))
        actions.emplace_back(DoWithBoard{
            pressed == 0 ? Wish::show_flight : (pressed == 1 ? Wish::show_stills : Wish::show_explain)});
    gap(column, 0.5f);
    if (kind == Kind::stills)
        draw_pages(column, board.still_sets, shown.board.page, Wish::show_stills, actions);
    if (kind == Kind::explain) draw_pages(column, board.pages, shown.board.page, Wish::show_explain, actions);
    if (kind != Kind::flight) {
        const std::array<ButtonWords, 1> reveal{
            {{shown.board.labels ? "Hide again" : "Reveal", Weight::plain, "Y"}}};
        if (button_row(column, reveal) == 0) actions.emplace_back(DoWithBoard{Wish::reveal_labels});
        paragraph(column, TextSize::note, theme().colour.ink_soft, board.answer);
    }
    draw_ink_buttons(column, shown, actions);
}

}  // namespace slopewise
