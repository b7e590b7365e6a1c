// What the class's screens show. The picture of the flight itself is in `View::flight`.
#pragma once

#include "ui/room_shown.h"
#include "ui/view_ask.h"
#include "ui/view_boards.h"
#include "ui/view_class_table.h"
#include "ui/view_station.h"

namespace slopewise {

// The class window, and the picture in the instructor's.
struct ClassPictureView {
    RoomShown shown;
    BoardsView boards;
    std::string waiting;  // said in place of the picture, while there is none; empty mostly
};

// How the two windows stand to each other.
struct ClassLinkView {
    bool open = false;     // a class window follows
    std::string standing;  // "Class window: follows", "No class window"
    std::string offer;     // a run that is still shown in a class window and can be gone on with; empty: none
};

// The instructor's screen: the picture as the class sees it, and beside it one panel of several.
struct ClassRoomView {
    enum class Panel { ask, station, show };

    Panel panel = Panel::ask;
    bool alone = false;  // the panel is put away
    bool paused = true;
    bool ended = false;  // the approach is over: flown on only after a reposition
    std::string state;   // "Frozen at 1.2 NM, 380 ft", "Running"
    std::string truth;   // for the instructor alone: path, speed, lights as they are now
    ClassLinkView link;
};

}  // namespace slopewise
