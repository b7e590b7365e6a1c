#include "ui/widgets/aircraft_mark.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace slopewise {
namespace {

// In hundredths of the length, x forward of the middle, y up; each piece convex and clockwise, as ImGui fills
// best.
constexpr std::array<ImVec2, 14> body{{{-50, 4.5f},
                                       {-30, 6.6f},
                                       {-14, 8},
                                       {8, 8.5f},
                                       {26, 7.5f},
                                       {38, 5},
                                       {43.5f, 2},
                                       {45, -0.5f},
                                       {43.5f, -3.5f},
                                       {36, -6},
                                       {20, -7.5f},
                                       {0, -7},
                                       {-22, -3.2f},
                                       {-50, 2}}};
constexpr std::array<ImVec2, 7> canopy{
    {{-16, 7.5f}, {-8, 12.5f}, {2, 15}, {11, 14.5f}, {18, 12}, {25, 7.6f}, {4, 6}}};
constexpr std::array<ImVec2, 6> glass{
    {{-9, 8.5f}, {-4, 11.6f}, {3, 13.2f}, {10, 12.8f}, {15.5f, 11}, {20.5f, 8}}};
constexpr std::array<ImVec2, 5> fin{{{-50, 4}, {-52, 20}, {-45, 20.5f}, {-40, 12}, {-33, 5.5f}}};
constexpr std::array<ImVec2, 5> wing{{{-17, -5}, {-6, -3.2f}, {10, -3.4f}, {14, -5}, {6, -6.6f}}};
constexpr std::array<ImVec2, 4> tailplane{{{-50, 4.9f}, {-47, 6.6f}, {-35, 6.6f}, {-38, 4.9f}}};
constexpr ImVec2 propeller_top{46.5f, 14}, propeller_bottom{46.5f, -15};
constexpr ImVec2 main_root{-1, -6}, main_wheel{-3, -17}, nose_root{32, -5}, nose_wheel{33, -17};

struct Place {
    ImVec2 centre;
    float scale, cosine, sine;

    ImVec2 operator()(ImVec2 p) const {
        const float forward = (p.x * cosine - p.y * sine) * scale;
        const float up = (p.x * sine + p.y * cosine) * scale;
        return {centre.x + forward, centre.y - up};
    }
};

template <std::size_t N>
void fill(ImDrawList* list, const Place& place, const std::array<ImVec2, N>& shape, ImU32 colour) {
    std::array<ImVec2, N> points;
    for (std::size_t i = 0; i < N; ++i) points[i] = place(shape[i]);
    list->AddConvexPolyFilled(points.data(), static_cast<int>(N), colour);
}

}  // namespace

void aircraft_mark(ImDrawList* list, ImVec2 centre, float length, float pitch_rad, ImU32 colour,
                   ImU32 paper) {
    const Place place{centre, length / 100.0f, std::cos(pitch_rad), std::sin(pitch_rad)};
    const float line = std::fmax(1.5f, length * 0.014f);
    list->AddLine(place(main_root), place(main_wheel), colour, line);
    list->AddLine(place(nose_root), place(nose_wheel), colour, line);
    list->AddCircleFilled(place(main_wheel), length * 0.036f, colour, 24);
    list->AddCircleFilled(place(nose_wheel), length * 0.03f, colour, 24);
    fill(list, place, fin, colour);
    fill(list, place, canopy, colour);
    fill(list, place, glass, paper);
    fill(list, place, body, colour);
    fill(list, place, tailplane, colour);
    // The wing's edge, lifted from the body by a line of paper.
    fill(list, place, wing, colour);
    const std::array<ImVec2, 4> over{place(wing[0]), place(wing[1]), place(wing[2]), place(wing[3])};
    list->AddPolyline(over.data(), 4, paper, 0, 0.8f * line);
    list->AddLine(place(propeller_top), place(propeller_bottom), colour, line);
}

}  // namespace slopewise
