#include "ui/widgets/side_profile.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "ui/theme.h"
#include "ui/widgets/aircraft_mark.h"
#include "ui/widgets/light_picture.h"
#include "ui/widgets/paper.h"
#include "ui/widgets/profile_panel.h"

namespace slopewise {
namespace {

constexpr float rad_per_deg = 3.14159265f / 180.0f;

float note_px() { return theme().size[static_cast<std::size_t>(TextSize::note)]; }

// Beyond the outermost changes the picture stays: its sector is shown as far beyond as the path is before.
double beyond_deg(double change_deg, double path_deg) { return 2 * change_deg - path_deg; }

// What it is and how far heights are stretched, under the path, where there is nothing.
void draw_words(ImDrawList* list, const ProfilePanel& panel, const SideProfileView& view) {
    const Palette& c = theme().colour;
    const double width_ft = view.far_nm * 6076.115 * static_cast<double>(panel.max.x - panel.min.x) /
                            static_cast<double>(panel.aim_x - panel.min.x);
    const double stretch = static_cast<double>((panel.max.y - panel.min.y) / (panel.max.x - panel.min.x)) *
                           width_ft / panel.high;
    char words[48];
    std::snprintf(words, sizeof words, "heights \xC3\x97%.0f", stretch);
    text_at(list, {panel.min.x + grid(0.5f), panel.max.y - note_px() * 1.2f}, TextSize::note, c.ink_soft,
            words);
    text_right(list, {panel.max.x, panel.max.y + 1}, TextSize::note, c.ink_soft, "aim point");
    const bool whole = std::abs(view.far_nm - std::round(view.far_nm)) < 0.05;
    std::snprintf(words, sizeof words, whole ? "%.0f NM" : "%.1f NM", view.far_nm);
    text_at(list, {panel.min.x, panel.max.y + 1}, TextSize::note, c.ink_soft, words);
}

// The same hands in calm air: a line of dots under the flown one, a ring where they are now, and in words
// what became of them, above the near end, where paths are low.
void draw_calm(ImDrawList* list, const ProfilePanel& panel, const SideProfileView& view) {
    if (view.calm.empty()) return;
    const Palette& c = theme().colour;
    const float note = note_px(), dot = std::max(1.5f, note * 0.09f);
    const auto place = [&](const ProfilePoint& p) {
        return ImVec2{panel.x(std::clamp(p.distance_nm, -0.05, panel.far_nm)), panel.y_inside(p.height_ft)};
    };
    ImVec2 last{-1e6f, -1e6f};
    for (const ProfilePoint& point : view.calm) {
        const ImVec2 at = place(point);
        if (std::hypot(at.x - last.x, at.y - last.y) < 5 * dot) continue;  // apart enough to be dots
        list->AddCircleFilled(at, dot, c.ink);
        last = at;
    }
    const ImVec2 now = place(view.calm.back());
    const float ring = std::max(5.0f, note * 0.38f);
    list->AddCircleFilled(now, ring, c.paper);
    list->AddCircle(now, ring, c.ink, 0, std::max(1.5f, note * 0.11f));
    const float words = text_extent(TextSize::note, view.calm_words).x;
    list->AddCircle({panel.max.x - words - 2 * ring, panel.min.y + note * 0.6f}, ring, c.ink, 0,
                    std::max(1.5f, note * 0.11f));  // which mark the words are about
    text_right(list, {panel.max.x, panel.min.y}, TextSize::note, c.ink, view.calm_words);
}

}  // namespace

double highest_sector_deg(const SideProfileView& view) {
    return beyond_deg(view.sector_deg.back(), view.path_deg);
}

float light_sector_px(const ProfilePanel& panel, const SideProfileView& view) {
    const double span_deg = view.sector_deg.back() - view.sector_deg.front();
    const double count = static_cast<double>(std::max<std::size_t>(view.sector_deg.size() - 1, 1));
    return panel.y(height_ft(view.path_deg, panel.far_nm)) -
           panel.y(height_ft(view.path_deg + span_deg / count, panel.far_nm));
}

void draw_light_sectors(ImDrawList* list, const ProfilePanel& panel, const SideProfileView& view,
                        float lamp_px) {
    const Palette& c = theme().colour;
    for (const double deg : view.sector_deg) {
        const ImVec2 far_end{panel.x(panel.far_nm), panel.y_inside(height_ft(deg, panel.far_nm))};
        list->AddLine(far_end, {panel.x(0), panel.y(0)}, c.rule, std::max(1.0f, note_px() * 0.05f));
    }
    const std::size_t lamps = view.sector_deg.size();
    const float width = light_picture_size(lamp_px, view.sectors.front()).x;
    for (std::size_t white = 0; white < view.sectors.size(); ++white) {
        const double low =
            white == 0 ? beyond_deg(view.sector_deg.front(), view.path_deg) : view.sector_deg[white - 1];
        const double high =
            white == lamps ? beyond_deg(view.sector_deg.back(), view.path_deg) : view.sector_deg[white];
        const float middle = panel.y_inside(height_ft((low + high) / 2, panel.far_nm));
        draw_light_picture(list, {panel.min.x - width - note_px() * 0.3f, middle - lamp_px / 2}, lamp_px,
                           view.sectors[white]);
    }
}

void draw_side_profile(ImDrawList* list, ImVec2 min, ImVec2 max, const SideProfileView& view) {
    if (view.flown.empty() || view.sector_deg.empty()) return;
    const Palette& c = theme().colour;
    const float note = note_px(), pad = grid(0.75f);
    const float lamps_px = note * 2.4f;
    if (max.x - min.x < lamps_px + 6 * note || max.y - min.y < 4.5f * note) return;

    list->AddRectFilled(min, max, c.paper, grid(0.25f));
    list->AddRect(min, max, c.paper_edge, grid(0.25f));
    const ProfilePanel panel{{min.x + pad + lamps_px, min.y + pad},
                             {max.x - pad, max.y - pad - note * 1.1f},
                             view.far_nm + 0.1,
                             max.x - pad - note,
                             0,
                             // Room for the highest sector.
                             std::max(1.08 * height_ft(highest_sector_deg(view), view.far_nm + 0.1), 100.0)};
    const float lamp_px = std::clamp(0.95f * light_sector_px(panel, view), 5.0f, note * 0.62f);

    list->PushClipRect(min, max, true);
    draw_wedge(list, panel, view);
    draw_light_sectors(list, panel, view, lamp_px);
    draw_calm(list, panel, view);
    draw_flown(list, panel, view.flown, note * 0.11f, c.ink,
               [](const ProfilePoint& p) { return p.height_ft; });
    list->AddLine({panel.min.x, panel.max.y}, panel.max, c.ink_soft, 1.0f);

    const ProfilePoint& now = view.flown.back();
    const ImVec2 place{panel.x(std::clamp(now.distance_nm, -0.05, panel.far_nm)),
                       panel.y_inside(now.height_ft)};
    aircraft_mark(list, place, std::max(18.0f, note * 1.7f), -3.0f * rad_per_deg, c.accent, c.paper);

    draw_words(list, panel, view);
    list->PopClipRect();
}

}  // namespace slopewise
