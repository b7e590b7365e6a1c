// Nothing appears suddenly on the way from 3 NM to 50 ft, at any of the airfields: what comes into the view
// enters at its edge, fades in, or is smaller than a pixel.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "base/units.h"
#include "tests/contact/stills.h"
#include "ui/scene/projection.h"
#include "ui/scene/scene.h"

using namespace slopewise;

namespace {

constexpr int width_px = 1280, height_px = 547;
constexpr float least_px =
    1.0f;  // a triangle of less area, weighted by how opaque it is, is not seen to come

// The corners of a frame, sorted into cells of the screen so that one near a place is found at once.
class Corners {
public:
    explicit Corners(const ImDrawList& list) : first_(cells + 1, 0), corner_(list.VtxBuffer.Size) {
        for (const ImDrawVert& v : list.VtxBuffer) ++first_[cell_of(v.pos) + 1];
        for (std::size_t i = 1; i <= cells; ++i) first_[i] += first_[i - 1];
        std::vector<int> next(first_.begin(), first_.end() - 1);
        for (const ImDrawVert& v : list.VtxBuffer)
            corner_[static_cast<std::size_t>(next[cell_of(v.pos)]++)] = v;
    }

    // Whether there is a corner of nearly this colour within so many pixels.
    bool holds_one_like(const ImDrawVert& v, float within_px) const {
        const int low_x = column(v.pos.x - within_px), high_x = column(v.pos.x + within_px);
        const int low_y = row(v.pos.y - within_px), high_y = row(v.pos.y + within_px);
        for (int y = low_y; y <= high_y; ++y) {
            const auto begin =
                static_cast<std::size_t>(first_[static_cast<std::size_t>(y * columns + low_x)]);
            const auto end =
                static_cast<std::size_t>(first_[static_cast<std::size_t>(y * columns + high_x) + 1]);
            for (std::size_t i = begin; i < end; ++i)
                if (alike(v, corner_[i], within_px)) return true;
        }
        return false;
    }

private:
    static constexpr int cell_px = 8, columns = width_px / cell_px + 3, rows = height_px / cell_px + 3;
    static constexpr std::size_t cells = static_cast<std::size_t>(columns) * rows;

    static int column(float x_px) {
        return std::clamp(static_cast<int>(std::floor(x_px / cell_px)) + 1, 0, columns - 1);
    }
    static int row(float y_px) {
        return std::clamp(static_cast<int>(std::floor(y_px / cell_px)) + 1, 0, rows - 1);
    }
    static std::size_t cell_of(ImVec2 at) {
        return static_cast<std::size_t>(row(at.y) * columns + column(at.x));
    }
    static bool alike(const ImDrawVert& a, const ImDrawVert& b, float within_px) {
        if (std::abs(a.pos.x - b.pos.x) > within_px || std::abs(a.pos.y - b.pos.y) > within_px) return false;
        for (int shift = 0; shift < 32; shift += 8) {
            const int one = static_cast<int>(a.col >> shift & 0xFF),
                      two = static_cast<int>(b.col >> shift & 0xFF);
            if (std::abs(one - two) > 32) return false;
        }
        return true;
    }

    std::vector<int> first_;
    std::vector<ImDrawVert> corner_;
};

float alpha_of(const ImDrawVert& v) { return static_cast<float>(v.col >> IM_COL32_A_SHIFT & 0xFF) / 255.0f; }

struct Frame {
    ImDrawList list{ImGui::GetDrawListSharedData()};
    Projection projection;
};

void draw(Frame& frame, const Runway& runway, double to_aim_m) {
    SceneView scene = still(runway, {}, {"", to_aim_m});
    scene.magnifier = false;  // it comes and goes by itself, above the world
    frame.projection = make_projection(scene.camera, {0, 0, width_px, height_px});
    frame.list._ResetForNewFrame();
    frame.list.PushClipRectFullScreen();
    draw_scene(&frame.list, {0, 0}, {width_px, height_px}, scene);
}

// How far something there can have moved while the eye went `step_m`: the flow of the ground at that place,
// which nothing that stands on it outruns, half as much again for what stands in front of it, and two pixels.
float reach_px(const Projection& p, ImVec2 at, double step_m) {
    const double down = std::max(0.004, (at.y - elevation_to_y_px(p, 0)) / p.focal_px);
    const double distance_m = p.eye_z_m / down;
    const double across = std::abs(at.x - p.centre_x_px) / p.focal_px;
    return static_cast<float>(2.0 + 1.5 * p.focal_px * (down + across) * step_m / distance_m);
}

// Whether there is a triangle, away from the edges of the view, of which no corner was there a moment ago.
bool something_new(const Frame& now, const Corners& before, double step_m) {
    const ImDrawList& list = now.list;
    const float bottom_px = height_px * 0.8f;  // below it lies the nose
    for (int i = 0; i + 2 < list.IdxBuffer.Size; i += 3) {
        std::array<ImDrawVert, 3> corner;
        for (int k = 0; k < 3; ++k)
            corner[static_cast<std::size_t>(k)] = list.VtxBuffer[static_cast<int>(list.IdxBuffer[i + k])];
        const ImVec2 a = corner[0].pos, b = corner[1].pos, c = corner[2].pos;
        const float area = 0.5f * std::abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
        const float opaque = std::max({alpha_of(corner[0]), alpha_of(corner[1]), alpha_of(corner[2])});
        if (area * opaque < least_px) continue;
        const auto was_there = [&](const ImDrawVert& v) {
            const float reach = reach_px(now.projection, v.pos, step_m);
            return v.pos.x < reach || v.pos.x > width_px - reach || v.pos.y > bottom_px - reach ||
                   before.holds_one_like(v, reach);
        };
        if (std::none_of(corner.begin(), corner.end(), was_there)) return true;
    }
    return false;
}

Bitmap developed(const Frame& frame) {
    Bitmap picture(width_px, height_px);
    rasterise(picture, frame.list);
    return picture;
}

struct Jump {
    double pixels = 0, to_aim_m = 0;
    int x_px = 0, y_px = 0;
};

// The block of 8 by 8 pixels that changes most, in pixels turned from black to white.
Jump largest_change(const Bitmap& a, const Bitmap& b, double to_aim_m) {
    constexpr int block_px = 8;
    Jump largest{0, to_aim_m};
    for (int y = 0; y + block_px <= height_px; y += block_px) {
        for (int x = 0; x + block_px <= width_px; x += block_px) {
            int change = 0;
            for (int row = 0; row < block_px; ++row) {
                for (int k = 0; k < 3 * block_px; ++k) {
                    const auto at = static_cast<std::size_t>(3 * ((y + row) * width_px + x) + k);
                    change += std::abs(int(a.rgb[at]) - int(b.rgb[at]));
                }
            }
            if (change / (3 * 255.0) > largest.pixels) largest = {change / (3 * 255.0), to_aim_m, x, y};
        }
    }
    return largest;
}

// Something new came between two places: halves the way between them until it is a centimetre, in which
// nothing moves that can be seen, and looks at the two pictures.
Jump jump_between(const Runway& runway, double far_m, double near_m) {
    Frame before, now;
    draw(before, runway, far_m);
    draw(now, runway, near_m);
    while (far_m - near_m > 0.01) {
        const double middle_m = (far_m + near_m) / 2;
        Frame middle;
        draw(middle, runway, middle_m);
        const bool in_first_half = something_new(middle, Corners(before.list), far_m - middle_m);
        (in_first_half ? near_m : far_m) = middle_m;
        draw(in_first_half ? now : before, runway, middle_m);
    }
    return largest_change(developed(before), developed(now), near_m);
}

}  // namespace

// A block of 8 by 8 pixels may change by the hundredth part of the way from black to white, 0.64 of its 64
// pixels: about the least step of contrast that is noticed (Weber's fraction, 1 %: general textbook figure,
// from memory). A thing of two and a half pixels in green on straw, which differ by a quarter, would be more.
TEST_CASE("appearing: from 3 NM to 50 ft nothing is there at once that can be seen to come") {
#ifdef SLOPEWISE_WHOLE_APPROACH
    constexpr int one_in = 2;  // the ten airfields share their rules, which are so looked at five times
#else
    constexpr int one_in = 50;  // slow builds look at as many steps as they can afford
#endif
    constexpr double most_px = 0.64;
    Darkroom darkroom(width_px, height_px);
    REQUIRE(darkroom.runways().size() == 10);
    for (const Runway& runway : darkroom.runways()) {
        CAPTURE(runway.id);
        Jump worst;
        int step = 0, with_something_new = 0;
        double near_m = 3 * 1852.0;
        for (double far_m = near_m; far_m > 50 * 0.3048 / std::tan(rad_from_deg(3.0)); far_m = near_m) {
            const double step_m = far_m > 1000 ? 2.0 : 0.5;  // 4 frames of flight, and 1 near the ground
            near_m = far_m - step_m;
            if (step++ % one_in != 0) continue;
            Frame before, now;
            draw(before, runway, far_m);
            draw(now, runway, near_m);
            if (!something_new(now, Corners(before.list), step_m)) continue;
            ++with_something_new;
            const Jump jump = jump_between(runway, far_m, near_m);
            if (jump.pixels > worst.pixels) worst = jump;
        }
        CAPTURE(worst.x_px);
        CAPTURE(worst.y_px);
        MESSAGE(runway.id, ": something new in ", with_something_new, " of ", step / one_in,
                " steps; the most that a block changed, ", worst.pixels, " px, at ", worst.to_aim_m, " m");
        CHECK(worst.pixels < most_px);
    }
}

// That the search finds what comes: a lone barn, put up in a field two metres before the eye gets on.
TEST_CASE("appearing: a thing that is there at once is found, and is more than may be") {
    Darkroom darkroom(width_px, height_px);
    Frame before, now;
    draw(before, darkroom.runways()[0], 2000);
    draw(now, darkroom.runways()[0], 1998);
    CHECK_FALSE(something_new(now, Corners(before.list), 2.0));
    const float x = 0.3f * width_px, y = 0.55f * height_px;
    now.list.AddRectFilled({x, y}, {x + 3, y + 2}, IM_COL32(120, 40, 30, 255));
    CHECK(something_new(now, Corners(before.list), 2.0));
    Frame without;
    draw(without, darkroom.runways()[0], 1998);
    CHECK(largest_change(developed(without), developed(now), 1998).pixels > 0.64);
}
