// What can stand in place of the flight: stills side by side, and pages that explain.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "ui/room_shown.h"
#include "ui/scene_view.h"

namespace slopewise {

// Where something is seen: to the right of straight ahead and above the horizon.
struct SeenAt {
    double right_rad = 0, up_rad = 0;
};

struct BoardsView {
    // Which drawing fills the board.
    enum class Figure { none, stills, side, motion, headwind, outlines };

    struct Still {
        SceneView scene;
        std::string mark;   // "A", all that the class knows before the reveal
        std::string label;  // "2.5°"; empty until revealed
    };
    // A height to know, on the path from the side.
    struct Height {
        double distance_nm = 0, height_ft = 0;
        std::string distance, height;  // "3 NM"; "955 ft", empty until revealed
    };
    // How a place on the ground moves in the picture.
    struct Flow {
        SeenAt from;
        double right_radps = 0, up_radps = 0;
        bool beyond = false;  // it lies beyond where the flight would hit
    };
    struct Motion {
        SceneView scene;
        std::vector<Flow> flow;
        SeenAt still;             // the point that stands still
        std::string still_words;  // "here we would hit"; empty until revealed
    };
    struct Headwind {
        std::string wind;                        // "10 kt"
        std::string ground_speed, sink, power;   // empty until revealed
        double sink_share = 0, power_share = 0;  // of the greatest in the table; 0 until revealed
    };
    // A runway as it is seen, and over it the usual one from the same place: corners from the near left one,
    // right and round.
    struct Outline {
        std::string name;  // "18 m wide"
        std::array<SeenAt, 4> seen{}, usual{};
        std::string trap;  // "Looks high: 1.2° too low, 127 ft at 1 NM"; empty until revealed
    };

    std::vector<std::string> still_sets, pages;  // names, for the instructor's panel
    Figure figure = Figure::none;
    std::string title;
    std::vector<std::string> sentences;  // three at most; what is to be found out only once revealed
    std::string answer;                  // for the instructor alone, before the reveal too
    std::vector<Still> stills;
    std::vector<Height> heights;
    Motion motion;
    std::vector<Headwind> headwinds;
    std::vector<Outline> outlines;

    // What it was made of, so that it is made once and not in every frame.
    BoardShown made_of;
    int edition = -1;
};

}  // namespace slopewise
