#include "review/go_around.h"

#include <algorithm>

namespace slopewise {
namespace {

constexpr double stages_apart_s = 3.0;
constexpr double recognised_within_s = 10.0;  // full power and climbing is seen within this time

// Where the lever began its way up to full, in the time before scoring ended.
std::size_t beginning(const Track& track) {
    const std::size_t end = track.scored - 1;
    std::size_t begin = end;
    while (begin > 0 && track.points[begin].lever >= full_power_lever &&
           track.points[end].time_s - track.points[begin].time_s < recognised_within_s)
        --begin;
    return begin;
}

void watch_flap(const Track& track, std::size_t i, GoAroundFigures& around) {
    const TrackPoint& p = track.points[i];
    if (p.flap_setting >= track.points[i - 1].flap_setting) return;
    if (around.first_flap_s < 0.0) around.first_flap_s = p.time_s - track.points[around.point].time_s;
    around.flap_before_climb |= p.sink_mps > 0.0;
    for (std::size_t j = i; j-- > 0 && p.time_s - track.points[j].time_s <= stages_apart_s;)
        around.flap_all_at_once |= track.points[j].flap_setting - p.flap_setting > 1;
}

}  // namespace

GoAroundFigures go_around_of(const Track& track, End end) {
    GoAroundFigures around;
    if (end != End::went_around) return around;
    around.flown = true;
    around.point = beginning(track);
    const TrackPoint& first = track.points[around.point];
    around.height_m = around.lowest_m = first.wheel_height_m;
    around.slowest_mps = first.cas_mps;
    around.most_pitch_rad = first.pitch_rad;
    for (std::size_t i = around.point; i < track.points.size(); ++i) {
        const TrackPoint& p = track.points[i];
        const double elapsed_s = p.time_s - first.time_s;
        if (elapsed_s > go_around_look_s) break;
        around.flown_on_s = elapsed_s;
        if (around.full_power_s < 0.0 && p.lever >= full_power_lever) around.full_power_s = elapsed_s;
        around.lowest_m = std::min(around.lowest_m, p.wheel_height_m);
        around.slowest_mps = std::min(around.slowest_mps, p.cas_mps);
        around.most_pitch_rad = std::max(around.most_pitch_rad, p.pitch_rad);
        if (i > around.point) watch_flap(track, i, around);
    }
    return around;
}

}  // namespace slopewise
