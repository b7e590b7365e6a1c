// What is asked of the class window.
#include "ui/act.h"

#include "ui/lead_class.h"

namespace slopewise {

void act(App& app, const DoWithClassWindow& wish, Host& host) {
    switch (wish.wish) {
    case DoWithClassWindow::Wish::open: return open_class_window(app, host);
    case DoWithClassWindow::Wish::close: return close_class_window(app, host);
    case DoWithClassWindow::Wish::go_on_with: return go_on_with_run(app, host);
    }
}

}  // namespace slopewise
