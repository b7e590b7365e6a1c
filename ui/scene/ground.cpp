#include "ui/scene/ground.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "ui/scene/buildings.h"
#include "ui/scene/ground_grain.h"
#include "ui/scene/landmarks.h"
#include "ui/scene/round_shapes.h"
#include "ui/scene/sky.h"
#include "ui/scene/vegetation.h"

namespace slopewise {

namespace {

// A field is drawn on its own above the second figure, melts into its neighbours between, and is part
// of their mean below the first: so the far country neither shimmers nor costs anything.
constexpr double melt_from_px = 4.8, melt_to_px = 10.0;

struct Viewpoint {
    double x_m, y_m, z_m, focal_px, side_tangent;
};

// Height on the screen of level ground between two distances along the axis (px).
double height_px(const Viewpoint& eye, double near_x_m, double far_x_m) {
    const double near_m = std::max(20.0, near_x_m - eye.x_m), far_m = std::max(21.0, far_x_m - eye.x_m);
    return eye.focal_px * eye.z_m * (1.0 / near_m - 1.0 / far_m);
}

double size_px(const Viewpoint& eye, const FieldNode& node) {
    const double width_px =
        eye.focal_px * (node.max_y_m - node.min_y_m) / std::max(20.0, node.max_x_m - eye.x_m);
    return std::min(height_px(eye, node.min_x_m, node.max_x_m), width_px);
}

bool in_view(const Viewpoint& eye, const FieldNode& node) {
    const double reach_m = node.max_x_m - eye.x_m;
    if (reach_m < near_plane_m) return false;
    const double side_m = eye.side_tangent * reach_m + 5.0;
    return node.min_y_m - eye.y_m < side_m && node.max_y_m - eye.y_m > -side_m;
}

// Haze is right at a polygon's corners alone: what reaches from near to far is drawn in parts, though of one
// colour.
bool evenly_hazed(const Painter& painter, const Viewpoint& eye, const FieldNode& node) {
    const double near_m = std::max(20.0, node.min_x_m - eye.x_m), far_m = node.max_x_m - eye.x_m;
    if (far_m < 1.5 * near_m) return true;
    return clearness(painter.light.haze, near_m) - clearness(painter.light.haze, far_m) < 0.05;
}

// No field shows more of its parts than what it is a part of shows of it, or it would be there all at once.
void draw_fields(const Painter& painter, const GroundLayout& ground, const Viewpoint& eye, std::int32_t index,
                 const Rgb& colour, double most_detail = 1.0) {
    const FieldNode& node = ground.fields[static_cast<std::size_t>(index)];
    if (!in_view(eye, node)) return;
    if (painter.light.dark && node.min_x_m > eye.x_m + landing_light_reach_m) return;
    double detail = 0;
    if (node.far_half >= 0) {
        const double smaller_px =
            std::min(size_px(eye, ground.fields[static_cast<std::size_t>(node.far_half)]),
                     size_px(eye, ground.fields[static_cast<std::size_t>(node.near_half)]));
        detail = std::min(most_detail, smooth_step(smaller_px / painter.grain_px, melt_from_px, melt_to_px));
    }
    // What straddles the eye cannot be judged by its near end: go on down.
    const bool underfoot = node.far_half >= 0 && node.min_x_m < eye.x_m + 30.0;
    if (underfoot) detail = 1.0;
    if (detail <= 0 && (node.far_half < 0 || evenly_hazed(painter, eye, node))) {
        fill(painter, ground.at(node.corners), colour, Edge::overlap);
        return;
    }
    for (const std::int32_t half : {node.far_half, node.near_half}) {
        draw_fields(painter, ground, eye, half,
                    mix(colour, ground.fields[static_cast<std::size_t>(half)].colour, detail), detail);
    }
}

// From the horizon down to where the fields begin: the haze with a trace of green in it.
void draw_far_plain(const Painter& painter, const GroundLayout& ground, const Viewpoint& eye) {
    const FieldNode& root = ground.fields.front();
    const double far_m = root.max_x_m - eye.x_m;
    const double fall_m = painter.projection.eye_z_m - ground_height_m(ground, root.max_x_m);
    const double top_px = elevation_to_y_px(painter.projection, 0.0);
    const double bottom_px =
        elevation_to_y_px(painter.projection, -std::atan2(std::max(1.0, fall_m), far_m)) + 2.0;
    const ImU32 haze = packed(painter.light.haze.colour);
    const ImU32 below = packed(seen_colour(painter.light, root.colour, far_m));
    const PixelRectangle& frame = painter.visible;
    ScreenPolygon band;
    band.count = 4;
    band.point = {{{frame.left_px - 2, top_px},
                   {frame.right_px + 2, top_px},
                   {frame.right_px + 2, bottom_px},
                   {frame.left_px - 2, bottom_px}}};
    band.colour = {haze, haze, below, below};
    fill(painter, band, Edge::coverage);
}

void draw_patches(const Painter& painter, const GroundLayout& ground, const Viewpoint& eye) {
    for (const GroundPatch& patch : ground.patches) {
        const double nearest_m = patch.min_x_m - eye.x_m;
        if (patch.max_x_m - eye.x_m < near_plane_m || nearest_m > patch.seen_within_m) continue;
        const double fade = smooth_step(patch.seen_within_m - nearest_m, 0.0, 0.4 * patch.seen_within_m);
        fill(painter, ground.at(patch.corners), patch.colour, patch.faint ? Edge::plain : Edge::coverage,
             patch.alpha * fade);
    }
}

void draw_tufts(const Painter& painter, const GroundLayout& ground, const Viewpoint& eye) {
    constexpr double seen_within_m = 1300.0;
    const double least_width_px = 9.0 * painter.grain_px;
    const auto first = std::lower_bound(ground.tufts.begin(), ground.tufts.end(), eye.x_m + seen_within_m,
                                        [](const Tuft& tuft, double x_m) { return tuft.foot.x_m > x_m; });
    for (auto tuft = first; tuft != ground.tufts.end() && tuft->foot.x_m > eye.x_m + 20.0; ++tuft) {
        const CameraPoint seen = to_camera(painter.projection, tuft->foot);
        const double wide_px = tuft->radius_m * pixels_per_m(painter, seen);
        if (wide_px < least_width_px / 2) continue;
        const double tall_px = std::max(0.6, wide_px * (eye.z_m - tuft->foot.z_m) / seen.ahead_m);
        const double fade = smooth_step(wide_px, least_width_px / 2, 2.0 * least_width_px) *
                            smooth_step(seen_within_m - seen.ahead_m, 0.0, 500.0);
        soft_patch(painter, to_screen(painter.projection, seen), wide_px * 1.3, tall_px * 1.3,
                   seen_colour(painter.light, tuft->colour, seen.ahead_m), 0.7 * fade);
    }
}

Viewpoint viewpoint_of(const Painter& painter, const GroundLayout& ground) {
    const Projection& p = painter.projection;
    const double height_m = std::max(0.5, p.eye_z_m - ground_height_m(ground, p.eye_x_m));
    return {p.eye_x_m, p.eye_y_m, height_m, p.focal_px,
            (p.frame.right_px - p.frame.left_px) / 2 / p.focal_px};
}

}  // namespace

void draw_ground(const Painter& painter, const GroundLayout& ground) {
    const Viewpoint eye = viewpoint_of(painter, ground);
    draw_far_plain(painter, ground, eye);
    draw_fields(painter, ground, eye, 0, ground.fields.front().colour);
    draw_ground_grain(painter, ground);
    draw_patches(painter, ground, eye);
    draw_tufts(painter, ground, eye);
}

void draw_standing(const Painter& painter, const GroundLayout& ground) {
    // Where less than three parts in a hundred of a thing's contrast is left, it is not drawn.
    const double farthest_m = painter.light.dark
                                  ? landing_light_reach_m
                                  : std::min(24000.0, 3.5 / painter.light.haze.extinction_per_m);
    const Viewpoint eye = viewpoint_of(painter, ground);
    const auto first =
        std::lower_bound(ground.standing.begin(), ground.standing.end(), eye.x_m + farthest_m,
                         [](const StandingThing& thing, double x_m) { return thing.x_m > x_m; });
    for (auto thing = first; thing != ground.standing.end() && thing->x_m > eye.x_m - 300.0; ++thing) {
        if (thing->x_m - eye.x_m > thing->seen_within_m) continue;
        switch (thing->kind) {
        case StandingThing::Kind::hedge: draw_hedge(painter, ground.hedges[thing->index]); break;
        case StandingThing::Kind::tree: draw_tree(painter, ground.trees[thing->index], thing->index); break;
        case StandingThing::Kind::wood: draw_wood(painter, ground, ground.woods[thing->index]); break;
        case StandingThing::Kind::house: draw_house(painter, ground.houses[thing->index]); break;
        case StandingThing::Kind::pylon: draw_pylon(painter, ground.pylons[thing->index]); break;
        case StandingThing::Kind::aircraft: draw_aircraft(painter, ground.aircraft[thing->index]); break;
        }
    }
}

}  // namespace slopewise
