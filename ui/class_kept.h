// What an instructor's page knows of its class besides what the class is shown: kept by the class window for
// a page that goes on with the run.
#pragma once

#include <string>
#include <string_view>

namespace slopewise {

struct App;

// JSON on one line: a text for each desk that has something to keep.
std::string kept_room_text(const App& app);

// What cannot be read is left as it is, alone. At most 1 MiB.
void take_kept_room(App& app, std::string_view text);

}  // namespace slopewise
