// A small bar of lamps on a dark tablet, as it would be seen: white needs the dark, red is the darker disc.
#pragma once

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

// `height` of the tablet in pixels; returns the size it took. With nothing to be seen the tablet is empty.
ImVec2 draw_light_picture(ImDrawList* list, ImVec2 position, float height, const LightPicture& picture);

ImVec2 light_picture_size(float height, const LightPicture& picture);

}  // namespace slopewise
