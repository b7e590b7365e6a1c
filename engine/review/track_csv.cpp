#include "review/track_csv.h"

#include <cstdio>

#include "base/units.h"

namespace slopewise {
namespace {

// One column: its header, and its value in pilot units with so many decimals.
struct Column {
    const char* name;
    int decimals;
    double (*value)(const TrackPoint&);
};

constexpr Column columns[] = {
    {"time_s", 3, [](const TrackPoint& p) { return p.time_s; }},
    {"distance_to_aim_nm", 5, [](const TrackPoint& p) { return nm_from_m(p.distance_m); }},
    {"eye_height_above_aim_ft", 2, [](const TrackPoint& p) { return ft_from_m(p.eye_height_m); }},
    {"wheel_height_above_threshold_ft", 2, [](const TrackPoint& p) { return ft_from_m(p.wheel_height_m); }},
    {"path_deviation_deg", 4, [](const TrackPoint& p) { return deg_from_rad(p.path_error_rad); }},
    {"path_deviation_ft", 2, [](const TrackPoint& p) { return ft_from_m(p.path_offset_m); }},
    {"airspeed_kt", 3, [](const TrackPoint& p) { return kt_from_mps(p.cas_mps); }},
    {"ground_speed_kt", 3, [](const TrackPoint& p) { return kt_from_mps(p.ground_speed_mps); }},
    {"sink_fpm", 2, [](const TrackPoint& p) { return fpm_from_mps(p.sink_mps); }},
    {"pitch_deg", 3, [](const TrackPoint& p) { return deg_from_rad(p.pitch_rad); }},
    {"power_percent", 2, [](const TrackPoint& p) { return 100.0 * p.power; }},
    {"lever_percent", 2, [](const TrackPoint& p) { return 100.0 * p.lever; }},
    {"stick_percent", 2, [](const TrackPoint& p) { return 100.0 * p.stick; }},
    {"trim_percent", 2, [](const TrackPoint& p) { return 100.0 * p.trim; }},
    {"flap_setting", 0, [](const TrackPoint& p) { return double(p.flap_setting); }},
    {"flap_position", 3, [](const TrackPoint& p) { return p.flap_position; }},
    {"headwind_kt", 3, [](const TrackPoint& p) { return kt_from_mps(p.headwind_mps); }},
    {"white_count", 0, [](const TrackPoint& p) { return double(p.white_count); }},
};

}  // namespace

std::string track_csv(const Track& track) {
    std::string text = std::string("# ") + file_caution + "\n";
    for (const Column& column : columns) text += std::string(column.name) + ",";
    text += "scored\n";
    char cell[40];
    for (std::size_t i = 0; i < track.points.size(); ++i) {
        for (const Column& column : columns) {
            std::snprintf(cell, sizeof cell, "%.*f,", column.decimals, column.value(track.points[i]));
            text += cell;
        }
        text += i < track.scored ? "1\n" : "0\n";
    }
    return text;
}

}  // namespace slopewise
