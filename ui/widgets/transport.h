// Small buttons with a sign instead of a word: play, steps, marks, slower and faster.
#pragma once

#include <imgui.h>

namespace slopewise {

enum class Sign { play, pause, step_back, step_on, mark_back, mark_on, slower, faster };

// True in the frame in which it is let go. `name` is its identity. A press that would change nothing is drawn
// pale, and is no press.
bool sign_button(ImDrawList* list, ImVec2 min, ImVec2 size, const char* name, Sign sign, bool live = true);

}  // namespace slopewise
