#include "ui/widgets/profile_panel.h"

#include <cmath>

#include "ui/theme.h"

namespace slopewise {
namespace {

constexpr double ft_per_nm = 1852.0 / 0.3048;
constexpr double rad_per_deg = 3.14159265358979323846 / 180.0;

}  // namespace

double height_ft(double angle_deg, double distance_nm) {
    return distance_nm * ft_per_nm * std::tan(angle_deg * rad_per_deg);
}

Tolerance tolerance_at(const PathView& path, double distance_nm) {
    const double middle_ft = height_ft(path.path_deg, distance_nm);
    return {std::max(path.floor_ft, height_ft(path.path_deg + path.wedge_deg, distance_nm) - middle_ft),
            std::max(path.floor_ft, middle_ft - height_ft(path.path_deg - path.wedge_deg, distance_nm))};
}

void draw_wedge(ImDrawList* list, const ProfilePanel& panel, const PathView& path) {
    fill_between(
        list, panel, theme().colour.band,
        [&](double nm) { return height_ft(path.path_deg, nm) + tolerance_at(path, nm).above_ft; },
        [&](double nm) { return height_ft(path.path_deg, nm) - tolerance_at(path, nm).below_ft; });
}

}  // namespace slopewise
