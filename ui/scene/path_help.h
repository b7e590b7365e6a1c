// The path help in the picture: a short bar beside the runway that stands where the aim point belongs.
//
// Seen from the nominal path the aim point lies as far below the horizon as the path is steep, at every
// distance. The bar marks that place, moved by where the eye will be in a moment, so that it stands level
// with the aim point while the path is held or returned to well. It is above the aim point when the eye is
// high: the aim point has to come up to it.
#pragma once

#include "ui/scene/painter.h"
#include "ui/view.h"

namespace slopewise {

// Where its parts fall on the screen.
struct PathHelpBar {
    bool seen = false;
    double inner_px = 0, outer_px = 0;  // the bar's ends: that nearer the runway, the other
    double bar_px = 0, aim_px = 0;      // heights on the screen: of the bar, and of the aim point
};

// It stands on the side without lamps, or beyond them where both have some.
PathHelpBar path_help_bar(const Projection& projection, const SceneView& scene);

void draw_path_help(const Painter& painter, const SceneView& scene);

}  // namespace slopewise
