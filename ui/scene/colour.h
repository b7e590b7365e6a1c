// Colours of the drawn world: three display values 0 ... 1, mixed and packed for a draw list.
#pragma once

#include <imgui.h>

namespace slopewise {

struct Rgb {
    double r = 0, g = 0, b = 0;
};

constexpr Rgb mix(const Rgb& a, const Rgb& b, double share_of_b) {
    return {a.r + (b.r - a.r) * share_of_b, a.g + (b.g - a.g) * share_of_b, a.b + (b.b - a.b) * share_of_b};
}

constexpr Rgb scaled(const Rgb& c, double factor) { return {c.r * factor, c.g * factor, c.b * factor}; }

constexpr Rgb rgb_from_bytes(int r, int g, int b) { return {r / 255.0, g / 255.0, b / 255.0}; }

constexpr ImU32 packed(const Rgb& c, double alpha = 1.0) {
    constexpr auto byte = [](double v) {
        return static_cast<ImU32>((v < 0 ? 0 : (v > 1 ? 1 : v)) * 255.0 + 0.5);
    };
    return byte(c.r) << IM_COL32_R_SHIFT | byte(c.g) << IM_COL32_G_SHIFT | byte(c.b) << IM_COL32_B_SHIFT |
           byte(alpha) << IM_COL32_A_SHIFT;
}

// A theme colour as display values; its alpha is dropped.
constexpr Rgb unpacked(ImU32 c) {
    return rgb_from_bytes(static_cast<int>(c >> IM_COL32_R_SHIFT & 0xFFu),
                          static_cast<int>(c >> IM_COL32_G_SHIFT & 0xFFu),
                          static_cast<int>(c >> IM_COL32_B_SHIFT & 0xFFu));
}

}  // namespace slopewise
