#include "ui/boards_view.h"

#include "ui/app.h"
#include "ui/board_makers.h"

namespace slopewise {
namespace {

void make_board(const App& app, const BoardShown& shown, BoardsView& view) {
    const FlightSession& session = *app.flight;
    const Scenario& flown = session.scenario;
    if (shown.page < 0 || shown.page >= board_pages(shown.kind)) return;
    if (shown.kind == BoardShown::Kind::stills)
        return stills_board(flown, app.settings.display, static_cast<StillSet>(shown.page), shown.labels,
                            view);
    const auto page = static_cast<ExplainPage>(shown.page);
    switch (page) {
    case ExplainPage::side: return side_board(flown, shown.labels, view);
    case ExplainPage::motion: return motion_board(session, shown.labels, view);
    case ExplainPage::headwind: return headwind_board(flown, shown.labels, view);
    case ExplainPage::width:
    case ExplainPage::slope: return outlines_board(flown, page, shown.labels, view);
    }
}

// Of what is flown, where it is now.
bool moves(const BoardShown& shown) {
    return shown.kind == BoardShown::Kind::explain && shown.page == static_cast<int>(ExplainPage::motion);
}

void line(std::string& text, const std::string& words) {
    if (!words.empty()) text += words + "\n";
}

void figures_text(const BoardsView& board, std::string& text) {
    for (const BoardsView::Still& still : board.stills)
        line(text, still.label.empty() ? still.mark : still.mark + ": " + still.label + ".");
    for (const BoardsView::Height& one : board.heights)
        if (!one.height.empty()) line(text, one.distance + ": " + one.height + ".");
    line(text, board.motion.still_words);
    for (const BoardsView::Headwind& one : board.headwinds) {
        const std::string begun = "Headwind " + one.wind + " kt";
        line(text, one.sink.empty() ? begun + "."
                                    : begun + ": ground speed " + one.ground_speed + " kt, sink " + one.sink +
                                          " ft/min, power " + one.power + " %.");
    }
    for (const BoardsView::Outline& one : board.outlines)
        line(text, one.trap.empty() ? one.name + "." : one.name + ": " + one.trap);
}

}  // namespace

int board_pages(BoardShown::Kind kind) {
    if (kind == BoardShown::Kind::stills) return static_cast<int>(still_set_names.size());
    return kind == BoardShown::Kind::explain ? static_cast<int>(explain_names.size()) : 0;
}

void boards_view(const App& app, ClassPictureView& view) {
    const BoardShown& shown = app.room.shown.board;
    BoardsView& board = view.boards;
    if (board.made_of == shown && board.edition == app.edition && !moves(shown)) return;
    board = {};
    board.still_sets.assign(still_set_names.begin(), still_set_names.end());
    board.pages.assign(explain_names.begin(), explain_names.end());
    board.made_of = shown;
    board.edition = app.edition;
    if (app.flight && shown.kind != BoardShown::Kind::flight) make_board(app, shown, board);
}

void boards_text(const ClassPictureView& view, std::string& text) {
    const BoardsView& board = view.boards;
    if (board.figure == BoardsView::Figure::none) return;
    line(text, board.title + ".");
    for (const std::string& sentence : board.sentences) line(text, sentence);
    figures_text(board, text);
}

}  // namespace slopewise
