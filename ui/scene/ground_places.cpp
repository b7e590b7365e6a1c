#include "ui/scene/ground_places.h"

#include <algorithm>
#include <cmath>

namespace slopewise {

namespace {

// Open farmland: the lane that crosses under final half a mile out, the road two miles out, the lane to the
// hangars and on to the far villages, and the road behind the field; a stream, and a pond by the approach.
Places farmland() {
    Places p;
    p.roads = {{{{-1580, -4200, 0},
                 {-1290, -2300, 0},
                 {-1120, -1250, 0},
                 {-940, -560, 0},
                 {-870, -180, 0},
                 {-850, 60, 0},
                 {-800, 330, 0},
                 {-640, 760, 0},
                 {-560, 1220, 0},
                 {-330, 2100, 0},
                 {-420, 3600, 0}},
                3.2},
               {{{-2700, -5200, 0},
                 {-3080, -2600, 0},
                 {-3390, -1150, 0},
                 {-3480, -260, 0},
                 {-3500, 420, 0},
                 {-3410, 1250, 0},
                 {-3660, 2600, 0},
                 {-3500, 5200, 0}},
                4.0},
               {{{-640, 760, 0},
                 {-330, 560, 0},
                 {120, 440, 0},
                 {560, 405, 0},
                 {1250, 430, 0},
                 {2300, 640, 0},
                 {3900, 760, 0},
                 {6200, 1500, 0}},
                2.8},
               {{{2300, -4800, 0},
                 {2650, -1700, 0},
                 {2480, -300, 0},
                 {2300, 640, 0},
                 {2150, 1900, 0},
                 {2500, 4600, 0}},
                4.0}};
    p.rivers = {{{{-3400, -4000, 0},
                  {-2980, -2500, 0},
                  {-2690, -1600, 0},
                  {-2420, -1080, 0},
                  {-2470, -640, 0},
                  {-2280, -300, 0},
                  {-2260, 60, 0},
                  {-2080, 330, 0},
                  {-2130, 700, 0},
                  {-1870, 1080, 0},
                  {-1720, 1700, 0},
                  {-1250, 2400, 0},
                  {-1000, 3800, 0}},
                 9.0}};
    p.ponds = {{{-1341, -219, 0}, 50, 44}};
    p.villages = {{{-610, 960, 0}, 260, 24}, {{-1790, -560, 0}, 110, 7},  {{-3440, 560, 0}, 170, 12},
                  {{-3160, -930, 0}, 90, 5}, {{-2560, 520, 0}, 60, 3},    {{-4650, -420, 0}, 70, 4},
                  {{-4900, 760, 0}, 60, 3},  {{-1420, 420, 0}, 55, 3},    {{-1010, -330, 0}, 55, 4},
                  {{2380, 560, 0}, 260, 16}, {{2700, -1300, 0}, 240, 12}, {{3800, 700, 0}, 150, 6},
                  {{900, -560, 0}, 60, 3}};
    p.pylons = {{-1400, -3300, 0}, {-1480, -2950, 0}, {-1560, -2600, 0}, {-1640, -2250, 0}, {-1705, -1900, 0},
                {-1740, -1560, 0}, {-1765, -1220, 0}, {-1780, -880, 0},  {-1790, -545, 0},  {-1800, -205, 0},
                {-1800, 140, 0},   {-1790, 480, 0},   {-1770, 820, 0},   {-1740, 1160, 0},  {-1690, 1500, 0},
                {-1630, 1850, 0},  {-1570, 2200, 0},  {-1500, 2550, 0}};
    return p;
}

// A clearing among woods: small pastures, a lake beside the approach, one road, hamlets.
Places woodland() {
    Places p;
    p.roads = {{{{-1900, -4600, 0},
                 {-1500, -2700, 0},
                 {-1050, -1500, 0},
                 {-760, -720, 0},
                 {-690, -240, 0},
                 {-720, 120, 0},
                 {-560, 420, 0},
                 {-180, 520, 0},
                 {420, 470, 0},
                 {1200, 640, 0},
                 {2600, 1100, 0},
                 {5200, 2600, 0}},
                3.0},
               {{{-3900, -4000, 0},
                 {-3500, -1800, 0},
                 {-3260, -500, 0},
                 {-3060, 300, 0},
                 {-2500, 900, 0},
                 {-1500, 1300, 0},
                 {-560, 1500, 0},
                 {420, 2300, 0}},
                3.0}};
    p.rivers = {{{{-2750, -820, 0},
                  {-2900, -330, 0},
                  {-2780, 120, 0},
                  {-2520, 480, 0},
                  {-1900, 760, 0},
                  {-1300, 1020, 0},
                  {-700, 1900, 0},
                  {-500, 3600, 0}},
                 6.0}};
    p.ponds = {{{-2150, -560, 0}, 330, 190}, {{-1010, 330, 0}, 60, 46}, {{1900, -520, 0}, 260, 180}};
    p.villages = {{{-860, -900, 0}, 130, 9},  {{-470, 620, 0}, 80, 6},   {{-3130, 180, 0}, 70, 4},
                  {{-1480, 1180, 0}, 110, 7}, {{-1330, -210, 0}, 45, 3}, {{2000, 820, 0}, 160, 9},
                  {{-4700, 300, 0}, 60, 3},   {{1300, -760, 0}, 70, 4}};
    p.pylons = {{-300, 2300, 0},  {-420, 2020, 0},  {-540, 1740, 0},   {-660, 1460, 0},   {-780, 1180, 0},
                {-900, 900, 0},   {-1020, 620, 0},  {-1120, 350, 0},   {-1200, 80, 0},    {-1290, -190, 0},
                {-1380, -460, 0}, {-1480, -760, 0}, {-1580, -1060, 0}, {-1690, -1370, 0}, {-1810, -1690, 0}};
    p.growing = {0.46, 0.07, 0.07, 0.03, 27000, 0.62, 0.40, 150, 100};
    return p;
}

// Flat land behind a shore: wide crops, straight ditches, few trees, a harbour town, the sea to the right.
Places coast() {
    Places p;
    p.roads = {{{{-1180, -5200, 0},
                 {-1150, -2600, 0},
                 {-1120, -900, 0},
                 {-1110, -120, 0},
                 {-1090, 320, 0},
                 {-1010, 560, 0},
                 {-640, 660, 0},
                 {200, 720, 0},
                 {1400, 800, 0},
                 {2700, 760, 0}},
                4.0},
               {{{-3300, -5000, 0},
                 {-3250, -1800, 0},
                 {-3240, -200, 0},
                 {-3230, 420, 0},
                 {-2700, 560, 0},
                 {-1900, 520, 0},
                 {-1010, 560, 0}},
                3.2},
               {{{3900, -5000, 0}, {3950, -1500, 0}, {3900, 200, 0}, {3760, 700, 0}}, 4.0},
               {{{-1150, -1050, 0}, {400, -1090, 0}, {2400, -1120, 0}, {3950, -1150, 0}}, 2.8}};
    p.rivers = {
        {{{-4300, -5000, 0}, {-2350, -1500, 0}, {-2280, -600, 0}, {-2260, 100, 0}, {-2240, 700, 0}}, 5.0},
        {{{1200, -5000, 0}, {900, -2400, 0}, {860, -1500, 0}, {820, -1250, 0}}, 4.0}};
    p.villages = {{{-700, 560, 0}, 190, 22}, {{-3080, 330, 0}, 110, 8}, {{-1220, -700, 0}, 80, 5},
                  {{-1320, 190, 0}, 55, 4},  {{3500, 560, 0}, 300, 26}, {{-4700, -500, 0}, 60, 3},
                  {{600, -1160, 0}, 70, 4},  {{-2150, -330, 0}, 50, 3}, {{5200, -700, 0}, 200, 10}};
    p.pylons = {{-1560, -3600, 0}, {-1560, -3240, 0}, {-1560, -2880, 0}, {-1560, -2520, 0}, {-1560, -2160, 0},
                {-1560, -1800, 0}, {-1560, -1440, 0}, {-1560, -1080, 0}, {-1560, -720, 0},  {-1560, -360, 0},
                {-1555, 0, 0},     {-1540, 330, 0},   {-1340, 560, 0},   {-1010, 640, 0}};
    p.shore = {{-9000, 560, 0},  {-6800, 780, 0}, {-5400, 640, 0}, {-4300, 760, 0}, {-3500, 640, 0},
               {-2800, 690, 0},  {-2200, 800, 0}, {-1600, 700, 0}, {-1000, 800, 0}, {-400, 930, 0},
               {300, 960, 0},    {1100, 1060, 0}, {1900, 1030, 0}, {2700, 940, 0},  {3400, 880, 0},
               {4100, 1060, 0},  {5200, 1500, 0}, {7000, 1350, 0}, {9500, 1900, 0}, {13000, 1700, 0},
               {18000, 2600, 0}, {26000, 2300, 0}};
    p.growing = {0.30, 0.27, 0.28, 0.13, 64000, 0.20, 0.10, 330, 45};
    return p;
}

double distance_to_segment_m(const WorldPoint& a, const WorldPoint& b, double x_m, double y_m) {
    const double dx = b.x_m - a.x_m, dy = b.y_m - a.y_m;
    const double t = std::clamp(((x_m - a.x_m) * dx + (y_m - a.y_m) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
    return std::hypot(x_m - a.x_m - t * dx, y_m - a.y_m - t * dy);
}

// The country turned over about the extended centreline; not a coast, whose sea is to the right.
void mirror(Places& p) {
    const auto flip = [](WorldPoint& point) { point.y_m = -point.y_m; };
    for (Course& road : p.roads) std::for_each(road.points.begin(), road.points.end(), flip);
    for (Course& river : p.rivers) std::for_each(river.points.begin(), river.points.end(), flip);
    for (Pond& pond : p.ponds) flip(pond.middle);
    for (Village& village : p.villages) flip(village.middle);
    std::for_each(p.pylons.begin(), p.pylons.end(), flip);
    p.apron_side = -p.apron_side;
}

Places unplaced(CountrysideView::Kind kind) {
    switch (kind) {
    case CountrysideView::Kind::farmland: return farmland();
    case CountrysideView::Kind::woodland: return woodland();
    case CountrysideView::Kind::coast: return coast();
    }
    return {};
}

}  // namespace

Places places_of(const RunwayView& runway) {
    Places places = unplaced(runway.countryside.kind);
    if (places.shore.empty() && runway.countryside.seed % 2 == 0) mirror(places);
    places.strip_half_width_m = strip_half_width_m(runway.width_m);
    places.strip_from_m = -strip_overrun_m;
    places.strip_to_m = runway.length_m + strip_overrun_m;
    return places;
}

double strip_half_width_m(double runway_width_m) { return runway_width_m < 23.0 ? 75.0 : 150.0; }

double distance_to_m(const Course& course, double x_m, double y_m) {
    double nearest_m = 1e30;
    for (std::size_t i = 1; i < course.points.size(); ++i) {
        nearest_m =
            std::min(nearest_m, distance_to_segment_m(course.points[i - 1], course.points[i], x_m, y_m));
    }
    return nearest_m;
}

double shore_y_m(const Places& places, double x_m) {
    const std::vector<WorldPoint>& shore = places.shore;
    if (shore.empty()) return 1e9;
    const auto after = std::lower_bound(shore.begin(), shore.end(), x_m,
                                        [](const WorldPoint& p, double x) { return p.x_m < x; });
    if (after == shore.begin()) return shore.front().y_m;
    if (after == shore.end()) return shore.back().y_m;
    const WorldPoint &a = *(after - 1), &b = *after;
    return a.y_m + (b.y_m - a.y_m) * (x_m - a.x_m) / (b.x_m - a.x_m);
}

bool is_free(const Places& places, double x_m, double y_m, double margin_m) {
    const bool on_strip = std::abs(y_m) < places.strip_half_width_m + margin_m &&
                          x_m > places.strip_from_m - margin_m && x_m < places.strip_to_m + margin_m;
    const bool under_short_final = std::abs(y_m) < 45.0 + margin_m && x_m > -700.0 && x_m < 0.0;
    if (on_strip || under_short_final || y_m > shore_y_m(places, x_m) - 30.0 - margin_m) return false;
    const auto in_pond = [&](const Pond& pond) {
        return std::hypot((x_m - pond.middle.x_m) / (pond.reach_x_m * 1.1 + margin_m),
                          (y_m - pond.middle.y_m) / (pond.reach_y_m * 1.1 + margin_m)) < 1.0;
    };
    const auto on_course = [&](const Course& c) {
        return distance_to_m(c, x_m, y_m) < c.half_width_m + margin_m;
    };
    return std::none_of(places.ponds.begin(), places.ponds.end(), in_pond) &&
           std::none_of(places.rivers.begin(), places.rivers.end(), on_course) &&
           std::none_of(places.roads.begin(), places.roads.end(), on_course);
}

}  // namespace slopewise
