// The views of the class's screens.
#pragma once

#include "ui/view.h"

namespace slopewise {

struct App;

// The picture as the class sees it: `View::flight`, `View::class_picture`.
void class_picture_view(const App& app, View& view);

// The instructor's screen besides the picture.
void class_room_view(const App& app, View& view);

// Both as lines, for a screen reader.
void class_picture_text(const View& view, std::string& text);
void class_room_text(const View& view, std::string& text);

}  // namespace slopewise
