#include "ui/screens/boards.h"

#include <algorithm>
#include <cmath>

#include "ui/screens/board_figures.h"

namespace slopewise {
namespace {

// Width to height of a figure: one shape for all windows that lie, one for those that stand.
constexpr float lying_shape = 2.0f, standing_shape = 1.25f, standing_stills_shape = 0.62f;
// The sentences' most, of the height; less where that is but a few lines of text high.
constexpr float most_text_share = 0.45f, most_text_share_low = 0.25f, low_lines = 20;

struct BoardLayout {
    Column title, text;
    std::size_t first_sentence = 0;  // the earlier ones have no room
    FigureArea figure;
};

float shape_of(const BoardsView& board, ImVec2 size) {
    if (size.x > 0.9f * size.y) return lying_shape;
    return board.figure == BoardsView::Figure::stills ? standing_stills_shape : standing_shape;
}

// The title above, the sentences below, and in the middle of the rest the figure.
BoardLayout layout_of(ImVec2 min, ImVec2 max, const BoardsView& board) {
    const float pad = grid(1.5f), width = max.x - min.x - 2 * pad, height = max.y - min.y;
    BoardLayout layout;
    layout.title = {nullptr, min.x + pad, width, min.y + pad};
    const float top = min.y + 1.5f * pad + paragraph_height(TextSize::number, board.title, width, true);
    const float most =
        height < low_lines * line_height(TextSize::text) ? most_text_share_low : most_text_share;
    float text = 0;
    // The last of them first: what has been found out is there.
    for (std::size_t i = board.sentences.size(); i-- > 0; layout.first_sentence = i) {
        const float more = paragraph_height(TextSize::text, board.sentences[i], width) + grid(0.5f);
        if (text > 0 && text + more > most * height) break;
        text += more;
    }
    const float bottom = max.y - pad - text;
    layout.text = {nullptr, min.x + pad, width, bottom + grid(0.5f)};
    const ImVec2 room{width, std::max(0.0f, bottom - top - grid(1))};
    const float shape = shape_of(board, {max.x - min.x, height});
    const ImVec2 size{std::round(std::min(room.x, room.y * shape)),
                      std::round(std::min(room.y, room.x / shape))};
    layout.figure.min = {std::round(min.x + pad + (room.x - size.x) / 2),
                         std::round(top + (room.y - size.y) / 2)};
    layout.figure.max = {layout.figure.min.x + size.x, layout.figure.min.y + size.y};
    return layout;
}

}  // namespace

InkSheet ink_over_board(ImVec2 min, ImVec2 max, const View& view) {
    const FigureArea figure = layout_of(min, max, view.class_picture.boards).figure;
    return {min, max, figure.min, figure.max, max.y - min.y};
}

void draw_board(ImDrawList* list, ImVec2 min, ImVec2 max, const View& view) {
    const BoardsView& board = view.class_picture.boards;
    const Palette& c = theme().colour;
    list->AddRectFilled(min, max, c.paper);
    BoardLayout layout = layout_of(min, max, board);
    layout.title.list = layout.text.list = list;
    paragraph(layout.title, TextSize::number, c.ink, board.title, true);
    for (std::size_t i = layout.first_sentence; i < board.sentences.size(); ++i) {
        paragraph(layout.text, TextSize::text, c.ink, board.sentences[i]);
        layout.text.y += grid(0.5f);
    }
    const FigureArea& figure = layout.figure;
    list->PushClipRect(figure.min, figure.max, true);
    switch (board.figure) {
    case BoardsView::Figure::none: break;
    case BoardsView::Figure::stills: draw_stills(list, figure, board); break;
    case BoardsView::Figure::side: draw_side_figure(list, figure, board, view.flight.side_profile); break;
    case BoardsView::Figure::motion: draw_motion_figure(list, figure, board.motion); break;
    case BoardsView::Figure::headwind: draw_headwind_figure(list, figure, board); break;
    case BoardsView::Figure::outlines: draw_outlines_figure(list, figure, board); break;
    }
    list->PopClipRect();
}

}  // namespace slopewise
