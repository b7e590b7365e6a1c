// The station as the instructor sees it, and as lines; and the calm air beside the flight, as everyone does.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

void station_view(const App& app, StationView& view);
void station_text(const StationView& view, std::string& text);

// The same hands in calm air, for the path from the side: it is there only while shown. Written over what the
// view held, so that a steady frame takes no memory.
void calm_beside_view(const App& app, SideProfileView& view);

}  // namespace slopewise
