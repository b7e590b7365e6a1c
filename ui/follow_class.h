// The class window: flies what the instructor's page flew, and shows what it shows.
#pragma once

#include "ui/action.h"
#include "ui/link_message.h"

namespace slopewise {

struct App;
class Host;

void hear_instructor(App& app, const LinkMessage& message, bool lobby, double wall_s, Host& host);

// Something that was said did not arrive: everything is asked for.
void miss_something(App& app);

// Once a frame after all was heard: the flight goes on as far as it is known, and the instructor's page hears
// that this window is there.
void follow_instructor(App& app, double wall_s, Host& host);

// What is pressed here is a wish of the instructor's page: a clicker speaks to the window in front.
void pass_to_instructor(const App& app, const Action& action, Host& host);

}  // namespace slopewise
