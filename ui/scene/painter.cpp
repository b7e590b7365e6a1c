#include "ui/scene/painter.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

namespace {

constexpr double least_corner_gap_px = 0.02;
constexpr double least_alpha = 0.035;  // fainter than this is not worth a triangle
constexpr double longest_mitre = 3.0;  // times the offset; sharper corners are cut

double length_of(double x, double y) { return std::sqrt(x * x + y * y); }

ImVec2 to_imgui(const ScreenPoint& p) { return {static_cast<float>(p.x_px), static_cast<float>(p.y_px)}; }

ImU32 with_alpha(ImU32 colour, double alpha) {
    const auto a = static_cast<ImU32>(std::clamp(alpha, 0.0, 1.0) * 255.0 + 0.5);
    return (colour & ~IM_COL32_A_MASK) | a << IM_COL32_A_SHIFT;
}

bool outside(const ScreenPolygon& polygon, const PixelRectangle& visible) {
    double left = 1e30, right = -1e30, top = 1e30, bottom = -1e30;
    for (std::size_t i = 0; i < polygon.count; ++i) {
        left = std::min(left, polygon.point[i].x_px);
        right = std::max(right, polygon.point[i].x_px);
        top = std::min(top, polygon.point[i].y_px);
        bottom = std::max(bottom, polygon.point[i].y_px);
    }
    return right < visible.left_px || left > visible.right_px || bottom < visible.top_px ||
           top > visible.bottom_px;
}

// Drops corners that fall on the one before: they have no direction to offset along.
ScreenPolygon without_repeats(const ScreenPolygon& polygon) {
    ScreenPolygon out;
    for (std::size_t i = 0; i < polygon.count; ++i) {
        const ScreenPoint& p = polygon.point[i];
        const ScreenPoint& last = out.count > 0 ? out.point[out.count - 1] : polygon.point[polygon.count - 1];
        if (std::abs(p.x_px - last.x_px) + std::abs(p.y_px - last.y_px) < least_corner_gap_px) continue;
        out.point[out.count] = p;
        out.colour[out.count++] = polygon.colour[i];
    }
    return out;
}

struct Outline {
    std::array<ScreenPoint, ClippedPolygon::capacity>
        edge_normal;                                          // outward, unit, of the edge from corner i
    std::array<ScreenPoint, ClippedPolygon::capacity> mitre;  // outward offset of corner i for one pixel
    double thickness_px = 0;                                  // the least extent across any edge
};

Outline outline_of(const ScreenPolygon& polygon) {
    Outline out;
    const std::size_t n = polygon.count;
    double area_twice = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const ScreenPoint& a = polygon.point[i];
        const ScreenPoint& b = polygon.point[(i + 1) % n];
        area_twice += a.x_px * b.y_px - b.x_px * a.y_px;
    }
    const double turn = area_twice >= 0 ? 1.0 : -1.0;

    out.thickness_px = 1e30;
    for (std::size_t i = 0; i < n; ++i) {
        const ScreenPoint& a = polygon.point[i];
        const ScreenPoint& b = polygon.point[(i + 1) % n];
        const double length = length_of(b.x_px - a.x_px, b.y_px - a.y_px);
        const ScreenPoint normal{turn * (b.y_px - a.y_px) / length, -turn * (b.x_px - a.x_px) / length};
        double depth = 0;
        for (std::size_t k = 0; k < n; ++k) {
            const ScreenPoint& c = polygon.point[k];
            depth = std::max(depth, -(c.x_px - a.x_px) * normal.x_px - (c.y_px - a.y_px) * normal.y_px);
        }
        out.thickness_px = std::min(out.thickness_px, depth);
        out.edge_normal[i] = normal;
    }
    for (std::size_t i = 0; i < n; ++i) {
        const ScreenPoint& before = out.edge_normal[(i + n - 1) % n];
        const ScreenPoint& after = out.edge_normal[i];
        const double x = (before.x_px + after.x_px) / 2, y = (before.y_px + after.y_px) / 2;
        const double stretch =
            std::min(1.0 / std::max(x * x + y * y, 1e-6), longest_mitre / std::max(length_of(x, y), 1e-3));
        out.mitre[i] = {x * stretch, y * stretch};
    }
    return out;
}

// The fan of the whole polygon, and a skirt around it that fades to nothing. An edge that looks down the
// screen by more than `skirt_down` (0 ... 1) gets none: what is painted next will cover it.
void emit(const Painter& painter, const ScreenPolygon& polygon, const Outline& outline, double inset_px,
          double outset_px, double alpha, double skirt_down) {
    ImDrawList* list = painter.list;
    const auto n = static_cast<unsigned>(polygon.count);
    unsigned skirts = 0;
    for (unsigned i = 0; i < n; ++i) skirts += outline.edge_normal[i].y_px <= skirt_down ? 1 : 0;
    list->PrimReserve(static_cast<int>((n - 2) * 3 + skirts * 6), static_cast<int>(n * 2));
    const unsigned base = list->_VtxCurrentIdx;
    for (unsigned i = 0; i < n; ++i) {
        const ScreenPoint& p = polygon.point[i];
        const ScreenPoint& m = outline.mitre[i];
        list->PrimWriteVtx(to_imgui({p.x_px - m.x_px * inset_px, p.y_px - m.y_px * inset_px}),
                           painter.white_uv, with_alpha(polygon.colour[i], alpha));
        list->PrimWriteVtx(to_imgui({p.x_px + m.x_px * outset_px, p.y_px + m.y_px * outset_px}),
                           painter.white_uv, with_alpha(polygon.colour[i], 0));
    }
    const auto index = [list](unsigned i) { list->PrimWriteIdx(static_cast<ImDrawIdx>(i)); };
    for (unsigned i = 2; i < n; ++i) {
        index(base);
        index(base + 2 * (i - 1));
        index(base + 2 * i);
    }
    for (unsigned i = 0; i < n; ++i) {
        if (outline.edge_normal[i].y_px > skirt_down) continue;
        const unsigned here = base + 2 * i, next = base + 2 * ((i + 1) % n);
        for (const unsigned corner : {here, next, next + 1, here, next + 1, here + 1}) index(corner);
    }
}

void emit_plain(const Painter& painter, const ScreenPolygon& polygon, double alpha) {
    ImDrawList* list = painter.list;
    const auto n = static_cast<unsigned>(polygon.count);
    list->PrimReserve(static_cast<int>((n - 2) * 3), static_cast<int>(n));
    const unsigned base = list->_VtxCurrentIdx;
    for (unsigned i = 0; i < n; ++i)
        list->PrimWriteVtx(to_imgui(polygon.point[i]), painter.white_uv,
                           with_alpha(polygon.colour[i], alpha));
    for (unsigned i = 2; i < n; ++i) {
        for (const unsigned corner : {base, base + i - 1, base + i})
            list->PrimWriteIdx(static_cast<ImDrawIdx>(corner));
    }
}

double length_px(const ScreenPoint& a, const ScreenPoint& b) {
    return length_of(b.x_px - a.x_px, b.y_px - a.y_px);
}
ScreenPoint half_way(const ScreenPoint& a, const ScreenPoint& b) {
    return {(a.x_px + b.x_px) / 2, (a.y_px + b.y_px) / 2};
}

// A four-cornered thing thinner than a pixel, drawn as the line through its middle.
void fill_as_line(const Painter& painter, const ScreenPolygon& polygon, double alpha) {
    const auto& p = polygon.point;
    const bool first_is_long =
        length_px(p[0], p[1]) + length_px(p[2], p[3]) > length_px(p[1], p[2]) + length_px(p[3], p[0]);
    const ScreenPoint end_a = first_is_long ? half_way(p[3], p[0]) : half_way(p[0], p[1]);
    const ScreenPoint end_b = first_is_long ? half_way(p[1], p[2]) : half_way(p[2], p[3]);
    const double reach = std::max(length_px(end_a, end_b), 1e-6);
    const ScreenPoint across{-(end_b.y_px - end_a.y_px) / reach, (end_b.x_px - end_a.x_px) / reach};
    const auto extent = [&across](const ScreenPoint& a, const ScreenPoint& b) {
        return std::abs((b.x_px - a.x_px) * across.x_px + (b.y_px - a.y_px) * across.y_px);
    };
    const double thick_a = first_is_long ? extent(p[3], p[0]) : extent(p[0], p[1]);
    const double thick_b = first_is_long ? extent(p[1], p[2]) : extent(p[2], p[3]);
    thin_line(painter, end_a, end_b, thick_a, thick_b, unpacked(polygon.colour[0]), alpha);
}

}  // namespace

void fill(const Painter& painter, const ScreenPolygon& polygon, Edge edge, double opacity) {
    if (polygon.count < 3 || opacity < least_alpha || outside(polygon, painter.visible)) return;
    const double alpha =
        (opacity - least_alpha) / (1.0 - least_alpha);  // begins at nothing: none is seen to come
    if (edge == Edge::plain) return emit_plain(painter, polygon, alpha);
    const ScreenPolygon clean = without_repeats(polygon);
    if (clean.count < 3) return;
    const Outline outline = outline_of(clean);
    if (edge == Edge::overlap) {
        emit(painter, clean, outline, 0.0, 1.0, alpha, 0.75);
        return;
    }
    // Across the thin way the profile is a trapezium: a plateau, and a slope of one pixel astride each
    // edge. Below one pixel the plateau is gone and the peak falls so that the area stays the thickness.
    const double t = outline.thickness_px;
    const double peak = t >= 1.0 ? 1.0 : 2.0 * t / (1.0 + t);
    if (t < 1.0 && clean.count == 4) return fill_as_line(painter, clean, alpha);
    emit(painter, clean, outline, std::min(0.5, t / 2.0), 0.5, alpha * peak, 2.0);
}

void fill(const Painter& painter, std::span<const WorldPoint> polygon, const Rgb& colour, Edge edge,
          double alpha) {
    const ClippedPolygon seen = clip_near(painter.projection, polygon);
    if (seen.count < 3) return;
    ScreenPolygon flat;
    flat.count = seen.count;
    for (std::size_t i = 0; i < seen.count; ++i) flat.point[i] = to_screen(painter.projection, seen.point[i]);
    if (outside(flat, painter.visible)) return;
    for (std::size_t i = 0; i < seen.count; ++i) {
        flat.colour[i] = packed(seen_colour(painter.light, colour, seen.point[i].ahead_m));
    }
    fill(painter, flat, edge, alpha);
}

void thin_line(const Painter& painter, const ScreenPoint& from, const ScreenPoint& to, double from_px,
               double to_px, const Rgb& colour, double alpha) {
    ScreenPolygon box;
    box.count = 2;
    box.point[0] = from;
    box.point[1] = to;
    if (outside(box, painter.visible)) return;
    const double length_px = length_of(to.x_px - from.x_px, to.y_px - from.y_px);
    if (length_px < least_corner_gap_px) return;
    const double nx = -(to.y_px - from.y_px) / length_px, ny = (to.x_px - from.x_px) / length_px;
    ImDrawList* list = painter.list;
    list->PrimReserve(12, 6);
    const unsigned base = list->_VtxCurrentIdx;
    const auto end = [&](const ScreenPoint& p, double thickness_px) {
        // A triangular profile a pixel to either side, or the thickness if that is more.
        const double reach = std::max(1.0, thickness_px);
        const ImU32 middle = packed(colour, alpha * std::min(1.0, thickness_px / reach)),
                    rim = packed(colour, 0);
        list->PrimWriteVtx(to_imgui({p.x_px - nx * reach, p.y_px - ny * reach}), painter.white_uv, rim);
        list->PrimWriteVtx(to_imgui(p), painter.white_uv, middle);
        list->PrimWriteVtx(to_imgui({p.x_px + nx * reach, p.y_px + ny * reach}), painter.white_uv, rim);
    };
    end(from, from_px);
    end(to, to_px);
    for (const unsigned corner : {0u, 1u, 4u, 0u, 4u, 3u, 1u, 2u, 5u, 1u, 5u, 4u})
        list->PrimWriteIdx(static_cast<ImDrawIdx>(base + corner));
}

}  // namespace slopewise
