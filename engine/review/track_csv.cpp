#include "review/track_csv.h"

#include <cstdio>

#include "base/units.h"

namespace slopewise {
namespace {

// One column: its header, and its value in pilot units with so many decimals.
struct Column {
    const char* name;
    const char* meaning;  // where the name does not say it
    int decimals;
    double (*value)(const TrackPoint&);
};

constexpr Column columns[] = {
    {"time_s", "since the start", 6, [](const TrackPoint& p) { return p.time_s; }},
    {"distance_to_aim_nm", "eye to aim point along the ground, negative beyond it", 8,
     [](const TrackPoint& p) { return nm_from_m(p.distance_m); }},
    {"eye_height_above_aim_ft", "", 5, [](const TrackPoint& p) { return ft_from_m(p.eye_height_m); }},
    {"wheel_height_above_threshold_ft", "", 5,
     [](const TrackPoint& p) { return ft_from_m(p.wheel_height_m); }},
    {"path_deviation_deg", "elevation of the eye less the nominal path, high positive", 7,
     [](const TrackPoint& p) { return deg_from_rad(p.path_error_rad); }},
    {"path_deviation_ft", "height of the eye above the nominal path", 5,
     [](const TrackPoint& p) { return ft_from_m(p.path_offset_m); }},
    {"airspeed_kt", "calibrated", 6, [](const TrackPoint& p) { return kt_from_mps(p.cas_mps); }},
    {"ground_speed_kt", "", 6, [](const TrackPoint& p) { return kt_from_mps(p.ground_speed_mps); }},
    {"sink_fpm", "down positive", 5, [](const TrackPoint& p) { return fpm_from_mps(p.sink_mps); }},
    {"pitch_deg", "body axis above the horizon", 6,
     [](const TrackPoint& p) { return deg_from_rad(p.pitch_rad); }},
    {"power_percent", "of what the engine can give", 5, [](const TrackPoint& p) { return 100.0 * p.power; }},
    {"lever_percent", "throttle, 0 closed", 5, [](const TrackPoint& p) { return 100.0 * p.lever; }},
    {"stick_percent", "-100 pushed to +100 pulled", 5, [](const TrackPoint& p) { return 100.0 * p.stick; }},
    {"trim_percent", "-100 nose down to +100 nose up", 5, [](const TrackPoint& p) { return 100.0 * p.trim; }},
    {"flap_setting", "of the lever", 0, [](const TrackPoint& p) { return double(p.flap_setting); }},
    {"flap_position", "in settings", 5, [](const TrackPoint& p) { return p.flap_position; }},
    {"headwind_kt", "mean wind and gust", 5, [](const TrackPoint& p) { return kt_from_mps(p.headwind_mps); }},
    {"white_count", "units seen white; -1 none in view", 0,
     [](const TrackPoint& p) { return double(p.white_count); }},
    {"go_around_said", "1: the go-around was called, whatever the lever did", 0,
     [](const TrackPoint& p) { return double(p.go_around_said); }},
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

std::string track_dictionary() {
    std::string text;
    for (const Column& column : columns)
        text += std::string("track.csv,") + column.name + ",\"" + column.meaning + "\"\n";
    return text + "track.csv,scored,\"1: counts; 0: flown on after the end of scoring\"\n";
}

}  // namespace slopewise
