#include "review/words.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "base/units.h"

namespace slopewise {
namespace {

template <class... Values>
std::string format(const char* pattern, Values... values) {
    char buffer[200];
    std::snprintf(buffer, sizeof buffer, pattern, values...);
    return buffer;
}

std::string path_words(const Deviations& off) {
    if (std::abs(deg_from_rad(off.path_rad)) < 0.05) return "on the path";
    return format("%.1f\u00b0 (%.0f ft) %s", std::abs(deg_from_rad(off.path_rad)),
                  std::abs(ft_from_m(off.path_m)), off.path_m < 0.0 ? "low" : "high");
}

std::string speed_words(const Deviations& off) {
    if (std::abs(kt_from_mps(off.speed_mps)) < 0.5) return "on speed";
    return format("%.0f kt %s", std::abs(kt_from_mps(off.speed_mps)), off.speed_mps < 0.0 ? "slow" : "fast");
}

std::string sink_words(const Deviations& off) {
    return format("sinking %.0f ft/min too %s", std::abs(fpm_from_mps(off.sink_mps)),
                  off.sink_mps < 0.0 ? "little" : "fast");
}

// Only what was out of tolerance; where nothing was, the path and the speed.
std::string deviation_words(const Deviations& off) {
    if (off.all_in()) return path_words(off) + ", " + speed_words(off);
    std::string words;
    const auto add = [&](bool in, const std::string& more) {
        if (!in) words += (words.empty() ? "" : ", ") + more;
    };
    add(off.path_in, path_words(off));
    add(off.speed_in, speed_words(off));
    add(off.sink_in, sink_words(off));
    return words;
}

}  // namespace

void light_words(int white_count, int units_showing, LightSite::Kind kind, std::string& words) {
    words.clear();
    if (white_count < 0 || units_showing == 0) {
        words = "no lights in view";
    } else if (kind == LightSite::Kind::vasi && units_showing == 2) {
        // The near bar is the lower, and turns white first.
        words =
            white_count == 1 ? "red over white" : (white_count == 0 ? "red over red" : "white over white");
    } else {
        const int red_count = units_showing - white_count;
        if (white_count > 0) words.append(std::to_string(white_count)).append(" white");
        if (white_count > 0 && red_count > 0) words.append(" ");
        if (red_count > 0) words.append(std::to_string(red_count)).append(" red");
    }
}

std::string light_words(int white_count, int units_showing, LightSite::Kind kind) {
    std::string words;
    light_words(white_count, units_showing, kind, words);
    return words;
}

int units_showing(const std::array<double, 4>& white_fraction) {
    return static_cast<int>(std::count_if(white_fraction.begin(), white_fraction.end(),
                                          [](double white) { return white >= 0.0; }));
}

std::string worst_sentence(const Summary& summary, const Track& track) {
    const TrackPoint& point = track.points[summary.worst.point];
    const std::string where =
        format("at %.0f ft, %.1f NM out", ft_from_m(point.wheel_height_m), nm_from_m(point.distance_m));
    const std::string what = deviation_words(summary.worst.deviations);
    if (summary.worst.severity <= 1.0 || summary.worst.deviations.all_in()) {
        const char* since = summary.worst.back_on_path > 0 ? "Once on the path nothing" : "Nothing";
        return std::string(since) + " left its tolerance; the largest deviation was " + where + ": " + what +
               ".";
    }
    return "Worst moment " + where + ": " + what + ", the lights showing " +
           light_words(point.white_count, units_showing(point.white_fraction), summary.light_kind) + ".";
}

std::string end_sentence(const Summary& summary) {
    const double height_ft = ft_from_m(summary.last.wheel_height_m);
    const double distance_nm = nm_from_m(summary.last.distance_m);
    switch (summary.end) {
    case End::reached_floor:
        return format("Scoring ended at %.0f ft wheel height, %.2f NM from the aim point.", height_ft,
                      distance_nm);
    case End::went_around:
        return format("Scoring ended with the go-around at %.0f ft wheel height, %.2f NM from the aim point.",
                      height_ft, distance_nm);
    case End::ground_short:
        return format("The wheels met the ground short of the runway, %.2f NM before the aim point.",
                      distance_nm);
    case End::overflew: return "Scoring ended past the far end of the runway, never down to 50 ft.";
    case End::none: break;
    }
    return "The approach is not finished.";
}

}  // namespace slopewise
