#include "ui/scene/ground_places.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/scene/ground_layout.h"

namespace slopewise {

namespace {

// The lane that crosses under final half a mile out, the road two miles out, the lane to the hangars
// and on to the far villages, and the road behind the field.
constexpr WorldPoint near_lane[] = {{-1580, -4200, 0}, {-1290, -2300, 0}, {-1120, -1250, 0}, {-940, -560, 0},
                                    {-870, -180, 0},   {-850, 60, 0},     {-800, 330, 0},    {-640, 760, 0},
                                    {-560, 1220, 0},   {-330, 2100, 0},   {-420, 3600, 0}};
constexpr WorldPoint far_road[] = {{-2700, -5200, 0}, {-3080, -2600, 0}, {-3390, -1150, 0}, {-3480, -260, 0},
                                   {-3500, 420, 0},   {-3410, 1250, 0},  {-3660, 2600, 0},  {-3500, 5200, 0}};
constexpr WorldPoint field_lane[] = {{-640, 760, 0}, {-330, 560, 0}, {120, 440, 0},  {560, 405, 0},
                                     {1250, 430, 0}, {2300, 640, 0}, {3900, 760, 0}, {6200, 1500, 0}};
constexpr WorldPoint back_road[] = {{2300, -4800, 0}, {2650, -1700, 0}, {2480, -300, 0},
                                    {2300, 640, 0},   {2150, 1900, 0},  {2500, 4600, 0}};
constexpr WorldPoint stream[] = {{-3400, -4000, 0}, {-2980, -2500, 0}, {-2690, -1600, 0}, {-2420, -1080, 0},
                                 {-2470, -640, 0},  {-2280, -300, 0},  {-2260, 60, 0},    {-2080, 330, 0},
                                 {-2130, 700, 0},   {-1870, 1080, 0},  {-1720, 1700, 0},  {-1250, 2400, 0},
                                 {-1000, 3800, 0}};

constexpr Course road_courses[] = {{near_lane, 3.2}, {far_road, 4.0}, {field_lane, 2.8}, {back_road, 4.0}};
constexpr Course river_course{stream, 9.0};

constexpr WorldPoint pond_rim[] = {{-1392, -232, 0}, {-1366, -258, 0}, {-1330, -262, 0}, {-1301, -243, 0},
                                   {-1290, -214, 0}, {-1306, -187, 0}, {-1340, -176, 0}, {-1374, -190, 0}};

constexpr Village village_list[] = {
    {{-610, 960, 0}, 260, 24}, {{-1790, -560, 0}, 110, 7},  {{-3440, 560, 0}, 170, 12},
    {{-3160, -930, 0}, 90, 5}, {{-2560, 520, 0}, 60, 3},    {{-4650, -420, 0}, 70, 4},
    {{-4900, 760, 0}, 60, 3},  {{-1420, 420, 0}, 55, 3},    {{-1060, -420, 0}, 50, 3},
    {{2380, 560, 0}, 260, 16}, {{2700, -1300, 0}, 240, 12}, {{3800, 700, 0}, 150, 6},
    {{330, 470, 0}, 60, 4},    {{900, -560, 0}, 60, 3}};

double distance_to_segment_m(const WorldPoint& a, const WorldPoint& b, double x_m, double y_m) {
    const double dx = b.x_m - a.x_m, dy = b.y_m - a.y_m;
    const double t = std::clamp(((x_m - a.x_m) * dx + (y_m - a.y_m) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
    return std::hypot(x_m - a.x_m - t * dx, y_m - a.y_m - t * dy);
}

}  // namespace

std::span<const Course> roads() { return road_courses; }
const Course& river() { return river_course; }
std::span<const WorldPoint> pond() { return pond_rim; }
std::span<const Village> villages() { return village_list; }

double distance_to_m(const Course& course, double x_m, double y_m) {
    double nearest_m = 1e30;
    for (std::size_t i = 1; i < course.points.size(); ++i) {
        nearest_m =
            std::min(nearest_m, distance_to_segment_m(course.points[i - 1], course.points[i], x_m, y_m));
    }
    return nearest_m;
}

bool is_free(double x_m, double y_m, double runway_length_m, double margin_m) {
    const bool on_strip = std::abs(y_m) < strip_half_width_m + margin_m &&
                          x_m > -strip_overrun_m - margin_m &&
                          x_m < runway_length_m + strip_overrun_m + margin_m;
    const bool under_short_final = std::abs(y_m) < 45.0 + margin_m && x_m > -700.0 && x_m < 0.0;
    const bool in_pond = std::hypot((x_m + 1341.0) / 58.0, (y_m + 219.0) / 50.0) < 1.0;
    if (on_strip || under_short_final || in_pond) return false;
    if (distance_to_m(river_course, x_m, y_m) < river_course.half_width_m + margin_m) return false;
    return std::none_of(std::begin(road_courses), std::end(road_courses), [&](const Course& road) {
        return distance_to_m(road, x_m, y_m) < road.half_width_m + margin_m;
    });
}

}  // namespace slopewise
