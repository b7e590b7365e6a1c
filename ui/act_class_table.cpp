// What is asked of the class in a table.
#include "ui/act.h"

namespace slopewise {

void act(App& app, const OpenClassTable&, Host&) { app.screen = Screen::class_table; }
void act(App& app, const CloseClassTable&, Host&) { app.screen = app.home; }
void act(App& app, const DoWithClassTable& wish, Host& host) { do_with_class_table(app, wish, host); }

}  // namespace slopewise
