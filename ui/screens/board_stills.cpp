// Three views side by side, or one over the other where the window stands.
#include <algorithm>
#include <cmath>

#include "ui/scene/scene.h"
#include "ui/screens/board_figures.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/tag.h"

namespace slopewise {
namespace {

// The shorter side of each view shows so much: the runway at a mile stands a fifth of it high.
constexpr double shorter_side_rad = 9.0 * 3.14159265358979323846 / 180.0;
constexpr int label_lines = 2;
constexpr float magnifier_lines = 9;  // in a lower view the lights' magnifier would hide the runway

double fov_of(ImVec2 size) {
    const double half = std::tan(shorter_side_rad / 2);
    return 2 * std::atan(half * std::max(1.0, static_cast<double>(size.x / size.y)));
}

void draw_still(ImDrawList* list, ImVec2 min, ImVec2 max, const SceneView& scene) {
    SceneView shown = scene;
    shown.camera.horizontal_fov_rad = fov_of({max.x - min.x, max.y - min.y});
    shown.magnifier &=
        std::min(max.x - min.x, max.y - min.y) >= magnifier_lines * line_height(TextSize::note);
    list->PushClipRect(min, max, true);
    draw_scene(list, min, max, shown);
    list->PopClipRect();
}

}  // namespace

void draw_stills(ImDrawList* list, const FigureArea& area, const BoardsView& board) {
    const Palette& c = theme().colour;
    const bool beside = area.width() > area.height();
    const float gap = grid(1), count = static_cast<float>(board.stills.size());
    const float across = beside ? area.width() : area.height();
    const float each = std::floor((across - gap * (count - 1)) / count);
    const float strip = beside ? label_lines * line_height(TextSize::note) : 0;
    float from = beside ? area.min.x : area.min.y;
    for (const BoardsView::Still& still : board.stills) {
        const ImVec2 min = beside ? ImVec2{from, area.min.y} : ImVec2{area.min.x, from};
        const ImVec2 max = beside ? ImVec2{from + each, area.max.y - strip} : ImVec2{area.max.x, from + each};
        draw_still(list, min, max, still.scene);
        const std::string words = still.label.empty() ? still.mark : still.mark + ": " + still.label;
        if (beside) {
            Column label{list, min.x, each, max.y};
            paragraph(label, TextSize::note, c.ink, words, true);
        } else {
            draw_tag(list, {min.x + grid(0.5f), min.y + grid(0.5f)}, words, {c.paper, c.ink, true});
        }
        from += each + gap;
    }
}

}  // namespace slopewise
