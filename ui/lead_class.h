// The instructor's page as the leader of a class window.
#pragma once

#include "ui/link_message.h"

namespace slopewise {

struct App;
class Host;

void hear_class_window(App& app, const LinkMessage& message, bool lobby, double wall_s, Host& host);

// Once a frame, after everything else: what has changed is told; a run that another window shows is asked
// for.
void lead_class_window(App& app, double wall_s, Host& host);

// A class window follows this page.
bool is_followed(const App& app, double wall_s);

void open_class_window(App& app, Host& host);
void close_class_window(App& app, Host& host);

// With the run that a class window still shows and nobody leads, the first that was found.
void go_on_with_run(App& app, Host& host);

// The page was loaded again: its own run is asked for.
void go_on_after_reload(App& app, const std::string& pair, Host& host);

}  // namespace slopewise
