// GLFW's numbers of keys as places on a keyboard. The browser names places itself.
#pragma once

#include "ui/keys.h"

namespace slopewise {

// Key::other where it has no name here.
Key place_of_glfw(int key);

}  // namespace slopewise
