// The flight of a class flown again from what was recorded of it: in the class window, and in a page that
// goes on with a run.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "lockstep/following.h"

namespace slopewise {

struct App;

// The lesson as its own text gives it when it is read: units are turned into a pilot's and back, which can
// cost a last bit. What is flown is this, so that who reads the text flies the same. A lesson that no reader
// would take comes back as it is.
Lesson as_told(const Lesson& lesson);

// Puts the recording's flight at its start, frozen. Empty when it stands; else why it cannot be flown, with
// everything as it was.
std::string put_recorded_flight(App& app, std::string_view recording, std::optional<Following>& following);

// So many ticks of the leader's, as far as they are known; what the station adds follows.
void fly_recorded(App& app, Following& following, std::int64_t ticks);

}  // namespace slopewise
