// What is asked of the boards and the ink.
#include "ui/act.h"

#include "ui/boards_view.h"
#include "ui/drive_asking.h"
#include "ui/ink_lines.h"

namespace slopewise {
namespace {

constexpr double pointer_stays_s = 2.0;  // after its last movement

void show_board(App& app, BoardShown::Kind kind, int page) {
    RoomShown& shown = app.room.shown;
    const bool flight = kind == BoardShown::Kind::flight;
    if (!flight && (page < 0 || page >= board_pages(kind))) return;
    if (!flight && shown.ask.stage != AskShown::Stage::none) leave_question(app);
    shown.board = {kind, flight ? 0 : page, false};
    // The ink is of what was shown; and nothing flies on unseen.
    wipe_ink(shown);
    app.room.boards.drawing = false;
    if (app.flight) app.flight->paused = true;
}

// On a moving picture a line would be of what is gone.
bool can_draw(const App& app) {
    const RoomShown& shown = app.room.shown;
    if (shown.black) return false;
    return shown.board.kind != BoardShown::Kind::flight || (app.flight && app.flight->paused);
}

void point_at(App& app, InkPoint at) {
    RoomShown& shown = app.room.shown;
    BoardDesk& desk = app.room.boards;
    const double now_s = app.hands.last_wall_s;
    if (at != shown.pointer) desk.pointer_moved_s = now_s;
    shown.pointer = at;
    shown.pointing = now_s - desk.pointer_moved_s < pointer_stays_s;
}

}  // namespace

void act(App& app, const DoWithBoard& wish, Host&) {
    RoomShown& shown = app.room.shown;
    switch (wish.wish) {
    case DoWithBoard::Wish::show_flight: show_board(app, BoardShown::Kind::flight, 0); break;
    case DoWithBoard::Wish::show_stills: show_board(app, BoardShown::Kind::stills, wish.page); break;
    case DoWithBoard::Wish::show_explain: show_board(app, BoardShown::Kind::explain, wish.page); break;
    case DoWithBoard::Wish::reveal_labels:
        if (shown.board.kind != BoardShown::Kind::flight) shown.board.labels = !shown.board.labels;
        break;
    case DoWithBoard::Wish::wipe: wipe_ink(shown); break;
    case DoWithBoard::Wish::take_back: take_back_ink(shown); break;
    }
}

void act(App& app, const MoveInk& wish, Host&) {
    bool& drawing = app.room.boards.drawing;
    switch (wish.step) {
    case MoveInk::Step::begin:
        drawing = can_draw(app);
        if (drawing) begin_ink(app.room.shown, wish.at);
        break;
    case MoveInk::Step::draw:
        drawing = drawing && can_draw(app);
        if (drawing) draw_ink_to(app.room.shown, wish.at);
        break;
    case MoveInk::Step::end: drawing = false; break;
    case MoveInk::Step::point: point_at(app, wish.at); break;
    case MoveInk::Step::leave: app.room.shown.pointing = false; break;
    }
}

}  // namespace slopewise
