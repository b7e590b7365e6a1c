// The two windows of a class: one leads, the other follows.
#pragma once

#include <string>
#include <string_view>

#include "ui/class_wishes.h"
#include "ui/host.h"
#include "ui/view.h"

namespace slopewise {

struct App;

// When the program begins: it is the class window, or goes on with a run that it had before it was loaded
// again, or neither.
void begin_class_link(App& app, Host& host);

// Before anything else of a frame: what the other window said. In the class window, the flight is moved on by
// it.
void hear_other_window(App& app, double wall_s, Host& host);

// After everything else of a frame: what has changed is told to the class window.
void tell_class_window(App& app, double wall_s, Host& host);

// What a clicker asks for in the class window, as words, and what words ask for; empty: nothing.
std::string passed_words(const ClassWish& wish);
std::optional<ClassWish> passed_wish(std::string_view words);

// How the windows stand to each other, for the instructor.
void class_link_view(const App& app, View& view);

// The same as lines, for a screen reader.
void class_link_text(const View& view, std::string& text);

// In the class window: what is said in place of a picture.
void class_window_view(const App& app, View& view);

// The class window as lines, for a screen reader.
void class_window_text(const View& view, std::string& text);

}  // namespace slopewise
