// The instructor's station: what it holds besides the flight itself.
#pragma once

#include <string>

#include "drill/shared_controls.h"
#include "lesson/start.h"
#include "station/calm_beside.h"

namespace slopewise {

struct StationDesk {
    Start began;                              // where the approach was put last
    ControlShare share = ControlShare::both;  // what the one at the keys has
    int demonstrator = -1;                    // of `pilot_names`: flies everything; -1: nobody shows
    std::string trouble;                      // why the last change was not made
    CalmBeside calm;                          // the same hands in calm air
};

}  // namespace slopewise
