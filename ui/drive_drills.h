// What is done with the drills.
#pragma once

#include "ui/app.h"

namespace slopewise {

// Reads the results that are kept. Lines that cannot be read are told, and the whole text is kept under
// another key before anything is written over it.
void open_drill_desk(App& app, Host& host);

// The aeroplane and the airfield that are chosen, by day and in calm air: what drills are drawn over.
Scenario drill_base(const App& app);

void open_drill(App& app, const std::string& id);
// Deals the open drill's cards, or begins its flight. Where it cannot be flown here, that is told.
void begin_drill(App& app, std::uint64_t seed, Host& host);
void answer_card(App& app, int choice);
void move_place_mark(App& app, const MovePlaceMark& wish);
void do_with_drill(App& app, DoWithDrill::Wish wish, Host& host);

// Leaves the flight of a drill, which is never kept as an attempt; nothing where none is flown.
void drop_drill_flight(App& app);

// The flight of a drill advances to the wall clock's time. `controls`: what the student holds.
void advance_drill_flight(App& app, const Controls& controls, double wall_s, Host& host);

}  // namespace slopewise
