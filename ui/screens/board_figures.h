// The drawings on the boards, one function each; each fills its area.
#pragma once

#include <imgui.h>

#include "ui/view.h"

namespace slopewise {

struct FigureArea {
    ImVec2 min, max;

    float width() const { return max.x - min.x; }
    float height() const { return max.y - min.y; }
};

void draw_stills(ImDrawList* list, const FigureArea& area, const BoardsView& board);
void draw_side_figure(ImDrawList* list, const FigureArea& area, const BoardsView& board,
                      const SideProfileView& flown);
void draw_motion_figure(ImDrawList* list, const FigureArea& area, const BoardsView::Motion& motion);
void draw_headwind_figure(ImDrawList* list, const FigureArea& area, const BoardsView& board);
void draw_outlines_figure(ImDrawList* list, const FigureArea& area, const BoardsView& board);

}  // namespace slopewise
