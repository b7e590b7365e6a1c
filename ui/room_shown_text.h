// What a class is shown as JSON on one line, for the class window and for a page that goes on with the run.
#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "ui/room_shown.h"

namespace slopewise {

// What may stand there; what is written is cut to these, so that it can always be read.
struct RoomLimits {
    static constexpr std::size_t ink_lines = 200, line_points = 4000, ink_points = 20000;
    static constexpr std::size_t choices = 12;
    static constexpr int hands = 999;
    static constexpr int page = 99;
    static constexpr std::size_t words = 2000;          // bytes of each text
    static constexpr float nearest = -1, farthest = 2;  // a point, in shares of the picture
    static constexpr std::size_t bytes = std::size_t{1} << 20;
};

std::string room_shown_text(const RoomShown& shown);

// Every problem is returned: unknown keys, counts that are not of the choices, points that are no places.
Result<RoomShown> read_room_shown(std::string_view text, const std::string& from);

}  // namespace slopewise
