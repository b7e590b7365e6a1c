#include "ui/widgets/profile_panel.h"

#include <cmath>
#include <cstdio>

#include "ui/theme.h"
#include "ui/widgets/paper.h"

namespace slopewise {
namespace {

constexpr double ft_per_nm = 1852.0 / 0.3048;
constexpr double rad_per_deg = 3.14159265358979323846 / 180.0;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

}  // namespace

double height_ft(double angle_deg, double distance_nm) {
    return distance_nm * ft_per_nm * std::tan(angle_deg * rad_per_deg);
}

Tolerance tolerance_at(const PathView& path, double distance_nm) {
    const double middle_ft = height_ft(path.path_deg, distance_nm);
    return {std::max(path.floor_ft, height_ft(path.path_deg + path.wedge_deg, distance_nm) - middle_ft),
            std::max(path.floor_ft, middle_ft - height_ft(path.path_deg - path.wedge_deg, distance_nm))};
}

void draw_wedge(ImDrawList* list, const ProfilePanel& panel, const PathView& path) {
    fill_between(
        list, panel, theme().colour.band,
        [&](double nm) { return height_ft(path.path_deg, nm) + tolerance_at(path, nm).above_ft; },
        [&](double nm) { return height_ft(path.path_deg, nm) - tolerance_at(path, nm).below_ft; });
}

void draw_frame(ImDrawList* list, const ProfilePanel& panel) {
    const Palette& colour = theme().colour;
    list->AddLine({panel.min.x, panel.max.y}, {panel.max.x, panel.max.y}, colour.ink_soft, 1.0f);
    list->AddLine(panel.min, {panel.min.x, panel.max.y}, colour.ink_soft, 1.0f);
}

void draw_distance_axis(ImDrawList* list, const ProfilePanel& panel) {
    const Palette& colour = theme().colour;
    const double step = panel.far_nm > 3.6 ? 1.0 : 0.5;
    const float y = panel.max.y + note_px() * 0.3f, aim_width = text_extent(TextSize::note, "aim point").x;
    const float aim_left = std::min(panel.aim_x - aim_width / 2, panel.max.x - aim_width);
    text_at(list, {std::round(aim_left), y}, TextSize::note, colour.ink, "aim point");
    float free_to = aim_left;  // of the words already set
    for (double nm = 0; nm <= panel.far_nm + 1e-9; nm += step) {
        const float x = panel.x(nm);
        list->AddLine({x, panel.max.y}, {x, panel.max.y + note_px() * 0.25f}, colour.ink_soft, 1.0f);
        if (nm == 0) continue;
        char words[16];
        std::snprintf(words, sizeof words, std::fmod(nm, 1.0) < 0.01 ? "%.0f NM" : "%.1f", nm);
        const float width = text_extent(TextSize::note, words).x;
        if (x + width / 2 + note_px() * 0.4f >= free_to) continue;
        text_at(list, {std::round(x - width / 2), y}, TextSize::note, colour.ink, words);
        free_to = x - width / 2;
    }
}

}  // namespace slopewise
