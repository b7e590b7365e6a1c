// The brush of the scene: antialiased polygons and lines, hazed by distance, into a draw list.
//
// Three kinds of edge. `overlap` keeps the whole polygon and adds a soft pixel outside it, except below:
// neighbours painted far to near then meet without a gap. `coverage` gives every pixel the share of it
// that the polygon covers, so a thing thinner than a pixel fades instead of growing: right for paint and
// lines. `plain` has no soft edge: for faint bands whose steps nobody sees.
#pragma once

#include <span>

#include <imgui.h>

#include "ui/scene/light.h"
#include "ui/scene/projection.h"

namespace slopewise {

enum class Edge { overlap, coverage, plain };

struct Painter {
    ImDrawList* list = nullptr;
    ImVec2 white_uv;  // a white spot of the font atlas
    Projection projection;
    Light light;
    double grain_px = 1;     // one pixel of a 1280-pixel view: what is left out for smallness scales with it
    PixelRectangle visible;  // the part of the frame that nothing hides; painting outside it is skipped
};

// A convex polygon of the screen. Corners come in either order.
struct ScreenPolygon {
    std::array<ScreenPoint, ClippedPolygon::capacity> point;
    std::array<ImU32, ClippedPolygon::capacity> colour;  // opaque; `alpha` below applies to all
    std::size_t count = 0;
};

// A convex polygon of the world, clipped, projected and hazed corner by corner.
void fill(const Painter& painter, std::span<const WorldPoint> polygon, const Rgb& colour, Edge edge,
          double alpha = 1.0);

// A convex polygon already on the screen; its colours are taken as they are.
void fill(const Painter& painter, const ScreenPolygon& polygon, Edge edge, double alpha = 1.0);

// A line of about a pixel or less, whose thickness may differ at its ends; thinner is fainter.
void thin_line(const Painter& painter, const ScreenPoint& from, const ScreenPoint& to, double from_px,
               double to_px, const Rgb& colour, double alpha = 1.0);

// Pixels to a metre across the line of sight at a camera point.
inline double pixels_per_m(const Painter& painter, const CameraPoint& point) {
    return painter.projection.focal_px / point.ahead_m;
}

}  // namespace slopewise
