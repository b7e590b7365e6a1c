// The fingers that rest on the screen now, in layout pixels from its upper left corner.
#pragma once

#include <array>

namespace slopewise {

inline constexpr int most_fingers = 5;

struct Finger {
    int id = 0;         // stays while it rests
    bool came = false;  // it is seen for the first time in this frame
    double x = 0, y = 0;
    double began_x = 0, began_y = 0;
};

struct Fingers {
    int count = 0;
    bool ever = false;  // this screen has been touched
    std::array<Finger, most_fingers> at{};
};

// A part of the screen.
struct FingerArea {
    double left = 0, top = 0, right = 0, bottom = 0;

    bool holds(double x, double y) const { return x >= left && x < right && y >= top && y < bottom; }
};

// The thumb pads that are shown: a finger that comes down on one of them is not the mouse.
struct FingerAreas {
    int count = 0;
    std::array<FingerArea, 2> at{};

    bool hold(double x, double y) const {
        for (int i = 0; i < count; ++i)
            if (at[static_cast<std::size_t>(i)].holds(x, y)) return true;
        return false;
    }
};

}  // namespace slopewise
