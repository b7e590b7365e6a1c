#include "logbook/kept_track.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "data/fields.h"

namespace slopewise {
namespace {

// One number of a point: how many of its units make one, and what it may be in them. A track is drawn and
// measured, so that a file's figure must be one that a flight can have: where a lever is indexes a table.
struct Figure {
    std::string_view name;
    double units;
    double least, most;
    double (*get)(const TrackPoint&);
    void (*set)(TrackPoint&, double);
};

#define SLOPEWISE_FIGURE(name, units, least, most, member)                      \
    Figure {                                                                    \
        name, units, least, most, [](const TrackPoint& p) { return p.member; }, \
            [](TrackPoint& p, double value) { p.member = value; }               \
    }

constexpr double most_ms = 20 * 60 * 1e3;  // twenty minutes, as of a recording
constexpr double far_mm = 1e9;             // 1,000 km
constexpr double fast_mmps = 1e6;          // 1,000 m/s
constexpr double turned_urad = 1e7;        // more than once around

const Figure figures[] = {
    SLOPEWISE_FIGURE("time_ms", 1e3, 0, most_ms, time_s),
    SLOPEWISE_FIGURE("distance_mm", 1e3, -far_mm, far_mm, distance_m),
    SLOPEWISE_FIGURE("eye_height_mm", 1e3, -far_mm, far_mm, eye_height_m),
    SLOPEWISE_FIGURE("wheel_height_mm", 1e3, -far_mm, far_mm, wheel_height_m),
    SLOPEWISE_FIGURE("path_error_urad", 1e6, -turned_urad, turned_urad, path_error_rad),
    SLOPEWISE_FIGURE("path_offset_mm", 1e3, -far_mm, far_mm, path_offset_m),
    SLOPEWISE_FIGURE("airspeed_mmps", 1e3, -fast_mmps, fast_mmps, cas_mps),
    SLOPEWISE_FIGURE("ground_speed_mmps", 1e3, -fast_mmps, fast_mmps, ground_speed_mps),
    SLOPEWISE_FIGURE("sink_mmps", 1e3, -fast_mmps, fast_mmps, sink_mps),
    SLOPEWISE_FIGURE("pitch_urad", 1e6, -turned_urad, turned_urad, pitch_rad),
    SLOPEWISE_FIGURE("power_1e4", 1e4, -1e5, 1e5, power),
    SLOPEWISE_FIGURE("lever_1e4", 1e4, 0, 1e4, lever),
    SLOPEWISE_FIGURE("stick_1e4", 1e4, -1e4, 1e4, stick),
    SLOPEWISE_FIGURE("trim_1e4", 1e4, -1e4, 1e4, trim),
    SLOPEWISE_FIGURE("flap_1e4", 1e4, 0, 3e4, flap_position),
    SLOPEWISE_FIGURE("headwind_mmps", 1e3, -fast_mmps, fast_mmps, headwind_mps),
    SLOPEWISE_FIGURE("lamp_1_1e4", 1e4, -1e4, 1e4, white_fraction[0]),
    SLOPEWISE_FIGURE("lamp_2_1e4", 1e4, -1e4, 1e4, white_fraction[1]),
    SLOPEWISE_FIGURE("lamp_3_1e4", 1e4, -1e4, 1e4, white_fraction[2]),
    SLOPEWISE_FIGURE("lamp_4_1e4", 1e4, -1e4, 1e4, white_fraction[3]),
    {"flap_lever", 1, 0, 3, [](const TrackPoint& p) { return static_cast<double>(p.flap_setting); },
     [](TrackPoint& p, double value) { p.flap_setting = static_cast<int>(value); }},
    {"go_around_said", 1, 0, 1, [](const TrackPoint& p) { return p.go_around_said ? 1.0 : 0.0; },
     [](TrackPoint& p, double value) { p.go_around_said = value != 0.0; }},
    {"white", 1, -1, 4, [](const TrackPoint& p) { return static_cast<double>(p.white_count); },
     [](TrackPoint& p, double value) { p.white_count = static_cast<int>(value); }},
};

#undef SLOPEWISE_FIGURE

constexpr int most_points = 20 * 60 * 10 + 2;  // twenty minutes, and where scoring ended

// `key` is the row's place, for what is wrong with it.
bool read_point(const JsonNode& row, const std::string& key, Fields& fields, TrackPoint& point) {
    if (row.kind != JsonNode::Kind::list || row.items.size() != std::size(figures)) {
        fields.report(key, "is not a row of a track", std::to_string(std::size(figures)) + " whole numbers");
        return false;
    }
    for (std::size_t i = 0; i < std::size(figures); ++i) {
        const JsonNode& cell = row.items[i];
        const Figure& figure = figures[i];
        const bool whole = cell.kind == JsonNode::Kind::number && cell.number == std::floor(cell.number);
        if (!whole || cell.number < figure.least || cell.number > figure.most) {
            fields.report(key, "has a bad " + std::string(figure.name),
                          "a whole number, " + number_text(figure.least) + " to " + number_text(figure.most));
            return false;
        }
        figure.set(point, cell.number / figure.units);
    }
    return true;
}

}  // namespace

std::string kept_track_text(const Track& track) {
    std::string text = "{\"scored\":" + std::to_string(track.scored) + ",\"columns\":[";
    for (const Figure& figure : figures)
        text += (&figure == figures ? "\"" : ",\"") + std::string(figure.name) + "\"";
    text += "],\"rows\":[";
    text.reserve(text.size() + track.points.size() * 100);
    for (const TrackPoint& point : track.points) {
        text += &point == track.points.data() ? "[" : ",[";
        for (const Figure& figure : figures) {
            if (&figure != figures) text += ',';
            text += std::to_string(std::llround(figure.get(point) * figure.units));
        }
        text += ']';
    }
    return text + "]}";
}

Track read_kept_track(const JsonNode& node, const std::string& file, std::vector<Problem>& problems) {
    Fields fields(node, file, "/track", problems);
    Track track;
    const int scored = fields.integer("scored", 1, most_points);
    const JsonNode* columns = fields.raw("columns", JsonNode::Kind::list);
    const JsonNode* rows = fields.raw("rows", JsonNode::Kind::list);
    fields.finish();
    if (columns == nullptr || rows == nullptr) return {};
    if (columns->items.size() != std::size(figures))
        fields.report("columns", "has " + std::to_string(columns->items.size()),
                      std::to_string(std::size(figures)));
    for (std::size_t i = 0; i < std::min(columns->items.size(), std::size(figures)); ++i)
        if (columns->items[i].text != figures[i].name)
            fields.report("columns", "names \"" + columns->items[i].text + "\"",
                          std::string(figures[i].name));
    if (rows->items.empty() || rows->items.size() > static_cast<std::size_t>(most_points) ||
        static_cast<std::size_t>(scored) > rows->items.size())
        fields.report("rows", "are " + std::to_string(rows->items.size()),
                      "1 to " + std::to_string(most_points) + ", no fewer than were scored");
    for (const JsonNode& row : rows->items) {
        const std::string key = "rows/" + std::to_string(track.points.size());
        TrackPoint point;
        if (!read_point(row, key, fields, point)) return {};
        if (!track.points.empty() && point.time_s < track.points.back().time_s) {
            fields.report(key, "is earlier than the row before", "");
            return {};
        }
        track.points.push_back(point);
    }
    track.scored = static_cast<std::size_t>(scored);
    return track;
}

}  // namespace slopewise
