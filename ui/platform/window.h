// The window and its picture: GLFW, OpenGL and Dear ImGui's backends for them. Knows nothing of flying.
#pragma once

#include <functional>
#include <string>

#include "ui/input.h"

namespace slopewise {

// Opens the window (or takes over the page's canvas) and loads the fonts. On failure the returned words
// say why; empty when it is open.
std::string open_window(const char* title, int width, int height);

// While true, F5 does not load the page anew: many clickers send it to begin a show.
void keep_page(bool stays);

// Calls `draw` once a frame with the input since the last one, until the window closes; in a browser it
// returns at once and the page keeps calling. It answers where a finger that comes down next is no mouse.
void run_frames(std::function<FingerAreas(const RawInput&)> draw);

// For now nothing can be drawn; only in a browser.
bool picture_lost();

void close_window();

}  // namespace slopewise
