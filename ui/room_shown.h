// What a class is shown besides the flight itself: chosen by the instructor, drawn from these plain values
// alone, in the instructor's window and in the class window alike.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "ui/display.h"

namespace slopewise {

// A place in the picture, in shares of its width and height from its upper left corner.
struct InkPoint {
    float x = 0, y = 0;

    friend bool operator==(const InkPoint&, const InkPoint&) = default;
};

// As much ink as is kept and told to the class window.
inline constexpr std::size_t most_ink_lines = 48, most_ink_points = 200;  // points of one line

// A line drawn on the frozen picture; one point is a dot.
struct InkLine {
    std::vector<InkPoint> points;

    friend bool operator==(const InkLine&, const InkLine&) = default;
};

// The question as far as the class may know it.
struct AskShown {
    enum class Stage {
        none,       // nothing is asked
        asked,      // everyone decides alone; hands are counted
        discussed,  // after talking it over: counted again
        revealed,   // what the flight says is right
    };

    Stage stage = Stage::none;
    std::string place;     // "2 of 6"
    std::string question;  // "High or low? Fast or slow?"
    std::vector<std::string> choices;
    std::vector<int> first, second;  // hands, one number a choice; of the second count empty before it begins
    bool counts_shown = false;       // hands stay with the instructor until the reveal, unless shown earlier
    int right = -1;                  // of the choices; -1 until revealed
    std::string reveal;              // why; empty until revealed

    friend bool operator==(const AskShown&, const AskShown&) = default;
};

// What fills the picture.
struct BoardShown {
    enum class Kind { flight, stills, explain };

    Kind kind = Kind::flight;
    int page = 0;         // which set of stills, which explanation
    bool labels = false;  // of the stills, and the numbers of an explanation: hidden until revealed

    friend bool operator==(const BoardShown&, const BoardShown&) = default;
};

struct RoomShown {
    bool black = false;         // the whole picture dark
    bool lights = true;         // the slope lights are drawn (a failure is another thing: the flight's)
    bool dials = true;          // the instrument shelf
    bool side_profile = false;  // the path from the side
    bool ghost = false;         // beside it the same hands in calm air
    bool names = true;          // the words over the picture: where and in what wind
    InstrumentSet covered;      // of the dials
    BoardShown board;
    AskShown ask;
    std::vector<InkLine> ink;
    InkPoint pointer;
    bool pointing = false;

    friend bool operator==(const RoomShown&, const RoomShown&) = default;
};

}  // namespace slopewise
