// The flight of a class: put somewhere, frozen, run on.
#pragma once

#include "lesson/lesson.h"
#include "ui/host.h"

namespace slopewise {

struct App;
struct Controls;

void open_class_room(App& app, Host& host);
void close_class_room(App& app, Host& host);

// The flight stands where a lesson begins, frozen. A lesson that cannot be flown changes nothing: false.
bool put_class_flight(App& app, const Lesson& lesson);

// Neither frozen nor over, and seen: the questions and boards freeze it too.
bool class_runs(const App& app);
void freeze_or_run(App& app);

// Runs on for so long (s), then freezes by itself.
void run_class_for(App& app, double seconds);

// The ticks that are due. `controls`: of who sits at this machine.
void advance_class(App& app, const Controls& controls, double wall_s);

}  // namespace slopewise
