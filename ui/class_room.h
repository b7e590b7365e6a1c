// A class being taught: what it is shown, and the desks of its questions, its station, its boards and its
// window.
#pragma once

#include <cstdint>
#include <optional>

#include "ui/ask_desk.h"
#include "ui/board_desk.h"
#include "ui/class_link.h"
#include "ui/class_table_desk.h"
#include "ui/room_shown.h"
#include "ui/screens/screens.h"
#include "ui/station_desk.h"
#include "ui/view_class.h"

namespace slopewise {

struct ClassRoom {
    bool open = false;  // App::flight is the class's: nothing of it is kept in the logbook
    ClassRoomView::Panel panel = ClassRoomView::Panel::ask;
    bool alone = false;  // the panel is put away
    RoomShown shown;
    AskDesk ask;
    StationDesk station;
    BoardDesk boards;
    ClassLink link;
    ClassTableDesk table;
    std::optional<std::int64_t> freeze_at_tick;  // where running on after a reveal ends
    int flights = 0;                             // counts them: a reposition begins another
    Screen behind = Screen::welcome;             // where leaving leads
};

}  // namespace slopewise
