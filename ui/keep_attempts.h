// What of a flight is kept, and when: its journal each second, the attempt itself when scoring ends, when
// more is known of it, and when it is left.
#pragma once

#include "ui/app.h"

namespace slopewise {

// Of a session that has just begun.
void begin_keeping(App& app, Host& host);

// Once a frame while it is flown: the seconds that passed since.
void keep_up(App& app, Host& host);

// The attempt as far as it is flown, with its row in the list.
void keep_attempt(App& app, Host& host);

// Before the session goes: what is not yet kept of it. A flight of less than five seconds was none.
void leave_attempt(App& app, Host& host);

// The student's attempts at this lesson before this one: what the sheet after it is measured out by.
DebriefState debrief_of(const App& app);

inline constexpr std::int64_t least_kept_ticks = 5 * 120;

}  // namespace slopewise
