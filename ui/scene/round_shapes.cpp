#include "ui/scene/round_shapes.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/interpolate.h"
#include "base/units.h"

namespace slopewise {

namespace {

constexpr double least_alpha = 0.035;  // fainter than this is not worth a triangle

ImVec2 to_imgui(const ScreenPoint& p) { return {static_cast<float>(p.x_px), static_cast<float>(p.y_px)}; }

ImU32 with_alpha(ImU32 colour, double alpha) {
    const auto a = static_cast<ImU32>(std::clamp(alpha, 0.0, 1.0) * 255.0 + 0.5);
    return (colour & ~IM_COL32_A_MASK) | a << IM_COL32_A_SHIFT;
}

constexpr unsigned most_corners = 28;  // of anything round

// The corners of a round thing, evenly about the middle, computed once.
std::span<const ScreenPoint> circle(unsigned corners) {
    struct Table {
        std::array<std::array<ScreenPoint, most_corners>, most_corners + 1> points;
        Table() {
            for (unsigned n = 1; n <= most_corners; ++n) {
                for (unsigned i = 0; i < n; ++i) {
                    const double angle = 2.0 * pi * (i + 0.5) / n;
                    points[n][i] = {std::cos(angle), std::sin(angle)};
                }
            }
        }
    };
    static const Table table;
    return {table.points[corners].data(), corners};
}

// A fan about a middle point, the rim made by `corners` points.
void emit_fan(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
              unsigned corners, ImU32 middle, ImU32 rim) {
    ImDrawList* list = painter.list;
    const ImVec2 white = painter.white_uv;
    list->PrimReserve(static_cast<int>(corners * 3), static_cast<int>(corners + 1));
    const unsigned base = list->_VtxCurrentIdx;
    list->PrimWriteVtx(to_imgui(centre), white, middle);
    for (const ScreenPoint& at : circle(corners))
        list->PrimWriteVtx(
            to_imgui({centre.x_px + radius_x_px * at.x_px, centre.y_px + radius_y_px * at.y_px}), white, rim);
    for (unsigned i = 0; i < corners; ++i) {
        list->PrimWriteIdx(static_cast<ImDrawIdx>(base));
        list->PrimWriteIdx(static_cast<ImDrawIdx>(base + 1 + i));
        list->PrimWriteIdx(static_cast<ImDrawIdx>(base + 1 + (i + 1) % corners));
    }
}

bool outside(const ScreenPoint& centre, double radius_x_px, double radius_y_px,
             const PixelRectangle& visible) {
    return centre.x_px + radius_x_px < visible.left_px || centre.x_px - radius_x_px > visible.right_px ||
           centre.y_px + radius_y_px < visible.top_px || centre.y_px - radius_y_px > visible.bottom_px;
}

// One soft spot, with the disc's area kept.
void soft_spot(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
               const Rgb& colour, double alpha) {
    constexpr double spread_px = 0.8;
    const double share =
        radius_x_px * radius_y_px * 3.0 / ((radius_x_px + spread_px) * (radius_y_px + spread_px));
    emit_fan(painter, centre, radius_x_px + spread_px, radius_y_px + spread_px, 5,
             with_alpha(packed(colour), alpha * std::min(1.0, share)), with_alpha(packed(colour), 0));
}

void shaded_blob(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
                 const Rgb& light, const Rgb& dark, double alpha) {
    const unsigned corners = std::max(radius_x_px, radius_y_px) < 9.0 ? 9 : 13;
    ImDrawList* list = painter.list;
    const ImVec2 white = painter.white_uv;
    list->PrimReserve(static_cast<int>(corners * 9), static_cast<int>(corners * 2 + 1));
    const unsigned base = list->_VtxCurrentIdx;
    list->PrimWriteVtx(to_imgui({centre.x_px - radius_x_px * 0.25, centre.y_px - radius_y_px * 0.3}), white,
                       with_alpha(packed(light), alpha));
    for (const auto& [x, y] : circle(corners)) {
        const double shade = 0.5 + 0.35 * x + 0.6 * y;  // the sun stands behind the left shoulder
        const ImU32 rim = packed(mix(light, dark, std::clamp(shade, 0.0, 1.0)));
        const double rx = std::max(0.0, radius_x_px - 0.5), ry = std::max(0.0, radius_y_px - 0.5);
        list->PrimWriteVtx(to_imgui({centre.x_px + rx * x, centre.y_px + ry * y}), white,
                           with_alpha(rim, alpha));
        list->PrimWriteVtx(to_imgui({centre.x_px + (rx + 1) * x, centre.y_px + (ry + 1) * y}), white,
                           with_alpha(rim, 0));
    }
    const auto index = [list](unsigned i) { list->PrimWriteIdx(static_cast<ImDrawIdx>(i)); };
    for (unsigned i = 0; i < corners; ++i) {
        const unsigned here = base + 1 + 2 * i, next = base + 1 + 2 * ((i + 1) % corners);
        for (const unsigned corner : {base, here, next, here, next, next + 1, here, next + 1, here + 1})
            index(corner);
    }
}

}  // namespace

void blob(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
          const Rgb& light, const Rgb& dark, double alpha) {
    if (outside(centre, radius_x_px + 1, radius_y_px + 1, painter.visible)) return;
    // Small, it has no shaded side; the one passes into the other.
    const double size = std::max(radius_x_px, radius_y_px) / painter.grain_px;
    const double spot = alpha * (1.0 - smooth_step(size, 5.5, 8.0)),
                 shaded = alpha * smooth_step(size, 3.5, 6.0);
    if (spot > 0) soft_spot(painter, centre, radius_x_px, radius_y_px, mix(light, dark, 0.5), spot);
    if (shaded > 0) shaded_blob(painter, centre, radius_x_px, radius_y_px, light, dark, shaded);
}

void soft_patch(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
                const Rgb& colour, double alpha) {
    if (alpha < least_alpha || outside(centre, radius_x_px, radius_y_px, painter.visible)) return;
    const double radius_px = std::max(radius_x_px, radius_y_px);
    const unsigned corners = radius_px < 8 || radius_y_px < 1.8 ? 4 : (radius_px < 40 ? 6 : 12);
    emit_fan(painter, centre, radius_x_px, radius_y_px, corners, with_alpha(packed(colour), alpha),
             with_alpha(packed(colour), 0));
}

void glow(const Painter& painter, const ScreenPoint& centre, double radius_x_px, double radius_y_px,
          const Rgb& colour, double alpha) {
    if (alpha * 255.0 < 1.0 || outside(centre, radius_x_px, radius_y_px, painter.visible)) return;
    // Rings of the radius and what is left of the light there: about (1 - r)^2.
    constexpr struct { double radius, share; } rings[] = {{0.28, 0.52}, {0.60, 0.16}, {1.0, 0.0}};
    constexpr unsigned ring_count = std::size(rings);
    const double largest_px = std::max(radius_x_px, radius_y_px);
    const unsigned corners = largest_px < 14 ? 10 : (largest_px < 60 ? 16 : 28);
    ImDrawList* list = painter.list;
    list->PrimReserve(static_cast<int>(corners * (3 + 6 * (ring_count - 1))),
                      static_cast<int>(corners * ring_count + 1));
    const unsigned base = list->_VtxCurrentIdx;
    list->PrimWriteVtx(to_imgui(centre), painter.white_uv, packed(colour, alpha));
    for (const auto& ring : rings) {
        for (const auto& [x, y] : circle(corners))
            list->PrimWriteVtx(to_imgui({centre.x_px + ring.radius * radius_x_px * x,
                                         centre.y_px + ring.radius * radius_y_px * y}),
                               painter.white_uv, packed(colour, alpha * ring.share));
    }
    const auto triangle = [list](unsigned a, unsigned b, unsigned c) {
        for (const unsigned corner : {a, b, c}) list->PrimWriteIdx(static_cast<ImDrawIdx>(corner));
    };
    for (unsigned i = 0; i < corners; ++i) {
        const unsigned next = (i + 1) % corners;
        triangle(base, base + 1 + i, base + 1 + next);
        for (unsigned ring = 0; ring + 1 < ring_count; ++ring) {
            const unsigned inner = base + 1 + ring * corners, outer = inner + corners;
            triangle(inner + i, outer + i, outer + next);
            triangle(inner + i, outer + next, inner + next);
        }
    }
}

}  // namespace slopewise
