#include "ui/scene/ribbon.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

namespace {

// From one place towards another, half a pixel long.
ScreenPoint half_pixel(const ScreenPoint& from, const ScreenPoint& to) {
    const double x = to.x_px - from.x_px, y = to.y_px - from.y_px;
    const double length = std::max(0.5, std::sqrt(x * x + y * y));
    return {x / length / 2, y / length / 2};
}

ScreenPoint turned(const ScreenPoint& p) { return {-p.x_px, -p.y_px}; }

}  // namespace

void Ribbon::add(const ScreenPoint& upper, const ScreenPoint& lower, const Rgb& upper_colour,
                 const Rgb& lower_colour) {
    if (count_ < columns_.size()) columns_[count_++] = {upper, lower, upper_colour, lower_colour};
}

bool Ribbon::hidden() const {
    double left = 1e30, right = -1e30, top = 1e30;
    for (std::size_t i = 0; i < count_; ++i) {
        left = std::min({left, columns_[i].upper.x_px, columns_[i].lower.x_px});
        right = std::max({right, columns_[i].upper.x_px, columns_[i].lower.x_px});
        top = std::min({top, columns_[i].upper.y_px, columns_[i].lower.y_px});
    }
    const PixelRectangle& visible = painter_.visible;
    return right < visible.left_px || left > visible.right_px || top > visible.bottom_px;
}

void Ribbon::finish(double alpha) const {
    if (count_ < 2 || hidden()) return;
    ImDrawList* list = painter_.list;
    const auto rows = static_cast<unsigned>(count_) + 2;  // the ends are soft too
    list->PrimReserve(static_cast<int>((rows - 1) * 18), static_cast<int>(rows * 4));
    const unsigned base = list->_VtxCurrentIdx;
    const Column &first = columns_[0], &last = columns_[count_ - 1];
    const ScreenPoint in = half_pixel(first.lower, columns_[1].lower),
                      out = half_pixel(columns_[count_ - 2].lower, last.lower);
    write(first, turned(in), 0.0);
    write(first, in, alpha);
    for (std::size_t i = 1; i + 1 < count_; ++i) write(columns_[i], {}, alpha);
    write(last, turned(out), alpha);
    write(last, out, 0.0);
    for (unsigned i = 0; i + 1 < rows; ++i) {
        for (unsigned row = 0; row < 3; ++row) {
            const unsigned a = base + 4 * i + row, b = a + 4;
            for (const unsigned corner : {a, b, b + 1, a, b + 1, a + 1})
                list->PrimWriteIdx(static_cast<ImDrawIdx>(corner));
        }
    }
}

void Ribbon::write(const Column& column, const ScreenPoint& along_px, double alpha) const {
    const ScreenPoint soft = half_pixel(column.lower, column.upper);
    const auto vertex = [&](const ScreenPoint& p, double side, const Rgb& colour, double shown) {
        painter_.list->PrimWriteVtx({static_cast<float>(p.x_px + side * soft.x_px + along_px.x_px),
                                     static_cast<float>(p.y_px + side * soft.y_px + along_px.y_px)},
                                    painter_.white_uv, packed(colour, shown));
    };
    vertex(column.upper, 1.0, column.upper_colour, 0.0);
    vertex(column.upper, -1.0, column.upper_colour, alpha);
    vertex(column.lower, 1.0, column.lower_colour, alpha);
    vertex(column.lower, -1.0, column.lower_colour, 0.0);
}

}  // namespace slopewise
