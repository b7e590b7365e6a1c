// What the station does with the class's flight: who flies it, and the calm air beside it. The class window
// follows with `follow_in_calm` and `begin_station_flight` alone.
#pragma once

#include <string>

namespace slopewise {

struct App;
struct Lesson;

// The key of the exchange: the model pilot flies everything, or the one at the keys does again.
void exchange_at_station(App& app);

// One who goes around has all controls.
void take_all_at_station(App& app);

// The approach begins again where it was put last, or there on the other side of the path; where that cannot
// be flown, the desk says why.
void begin_again_at_station(App& app, bool mirrored);

// The lesson, running on where the flight ran. False, and nothing changes, where it cannot be flown.
bool put_and_go_on(App& app, const Lesson& lesson);

// "That cannot be flown: idle is still too much power."
std::string why_not_flown(const App& app, const Lesson& lesson);

// Seats the pilots as the desk has them, in the flight as it stands.
void seat_at_station(App& app);

// After ticks flown; however many there were, the calm air catches up by the recording.
void follow_in_calm(App& app);

// After the flight was put anew.
void begin_station_flight(App& app);

}  // namespace slopewise
