#include "debrief/sheet_plot.h"

#include <algorithm>
#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "debrief/html_text.h"
#include "review/words.h"

namespace slopewise {
namespace {

// The drawing's own units; the page scales it.
constexpr double left = 44, right = 756, width = 760;
constexpr double profile_top = 8, profile_bottom = 148;
constexpr double lights_top = 154, lights_bottom = 170;
constexpr double speed_top = 178, speed_bottom = 234, height = 254;

struct Axes {
    double far_nm = 3.0, high_ft = 1000.0;
    double slow_kt = 50.0, fast_kt = 80.0;

    double x(double distance_nm) const { return right - (right - left) * distance_nm / far_nm; }
    double y(double height_ft) const {
        return profile_bottom - (profile_bottom - profile_top) * height_ft / high_ft;
    }
    double speed_y(double kt) const {
        return speed_bottom - (speed_bottom - speed_top) * (kt - slow_kt) / (fast_kt - slow_kt);
    }
};

Axes axes_of(const ReviewedFlight& flight) {
    Axes axes{0.5, 100.0, 1e3, 0.0};
    for (const TrackPoint& p : scored_points(flight.track)) {
        axes.far_nm = std::max(axes.far_nm, nm_from_m(p.distance_m));
        axes.high_ft = std::max(axes.high_ft, 1.1 * ft_from_m(p.eye_height_m));
        axes.slow_kt = std::min(axes.slow_kt, kt_from_mps(p.cas_mps));
        axes.fast_kt = std::max(axes.fast_kt, kt_from_mps(p.cas_mps));
    }
    const double target_kt = kt_from_mps(flight.scenario.lesson.target_cas_mps);
    axes.slow_kt = 5.0 * std::floor(std::min(axes.slow_kt, target_kt - 10.0) / 5.0);
    axes.fast_kt = 5.0 * std::ceil(std::max(axes.fast_kt, target_kt + 15.0) / 5.0);
    return axes;
}

std::string line(double x1, double y1, double x2, double y2, const char* name) {
    return format_html("<line class=\"%s\" x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>", name, x1, y1,
                       x2, y2);
}

std::string text_at(double x, double y, const char* anchor, const std::string& text) {
    return format_html("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">", x, y, anchor) + html_text(text) +
           "</text>";
}

// Every third point is enough for a line of this size; the last always.
template <class Y>
std::string trace(const ReviewedFlight& flight, const Axes& axes, Y y) {
    std::string points;
    const TrackPoints scored = scored_points(flight.track);
    for (std::size_t i = 0; i < scored.size();
         i = i + 3 < scored.size() || i + 1 == scored.size() ? i + 3 : scored.size() - 1)
        points += format_html("%.1f,%.1f ", axes.x(nm_from_m(scored[i].distance_m)), y(scored[i]));
    return "<polyline class=\"trace\" points=\"" + points + "\"/>";
}

// Between the lower and the upper tolerance of the path: the larger of the angle and the height.
std::string wedge(const ReviewedFlight& flight, const Axes& axes) {
    const double path_rad = flight.scenario.surroundings.runway.lights.nominal_path_rad;
    const Tolerances& tolerances = flight.scenario.lesson.tolerances;
    const auto edge_ft = [&](double nm, double way) {
        const double distance_m = m_from_nm(nm);
        const double by_angle_m = distance_m * exact::tan(path_rad + way * tolerances.path_rad);
        const double by_height_m = distance_m * exact::tan(path_rad) + way * tolerances.path_floor_m;
        return ft_from_m(way > 0 ? std::max(by_angle_m, by_height_m) : std::min(by_angle_m, by_height_m));
    };
    std::string points;
    constexpr int steps = 40;
    for (int i = 0; i <= steps; ++i) {
        const double nm = axes.far_nm * i / steps;
        points += format_html("%.1f,%.1f ", axes.x(nm), axes.y(std::max(0.0, edge_ft(nm, -1.0))));
    }
    for (int i = steps; i >= 0; --i) {
        const double nm = axes.far_nm * i / steps;
        points += format_html("%.1f,%.1f ", axes.x(nm), axes.y(std::min(axes.high_ft, edge_ft(nm, 1.0))));
    }
    const double end_ft = ft_from_m(m_from_nm(axes.far_nm) * exact::tan(path_rad));
    return "<polygon class=\"wedge\" points=\"" + points + "\"/>" +
           line(axes.x(0), axes.y(0), axes.x(axes.far_nm), axes.y(end_ft), "path");
}

std::string grid(const Axes& axes) {
    std::string svg;
    const double step_ft = axes.high_ft > 600 ? 200 : axes.high_ft > 250 ? 100 : 50;
    for (double ft = 0; ft <= axes.high_ft; ft += step_ft)
        svg += line(left, axes.y(ft), right, axes.y(ft), "grid") +
               text_at(left - 4, axes.y(ft) + 4, "end", format_html("%.0f", ft));
    for (double nm = 0; nm <= axes.far_nm + 1e-6; nm += 0.5)
        svg += line(axes.x(nm), profile_top, axes.x(nm), speed_bottom, "grid") +
               text_at(axes.x(nm), speed_bottom + 13, nm == 0 ? "end" : "middle", format_html("%.1f NM", nm));
    svg += text_at(left + 4, profile_top + 10, "start", "eye above the aim point, ft");
    return svg + text_at(left + 4, speed_top + 9, "start", "airspeed, kt");
}

// A run of one light picture.
struct Picture {
    int white_count, units;
    double from_nm, to_nm;
};

std::string picture_box(const Axes& axes, const Picture& picture) {
    const double x1 = axes.x(picture.from_nm), x2 = axes.x(picture.to_nm);
    const double share = picture.units > 0 ? double(picture.white_count) / picture.units : 0.0;
    const double split = lights_bottom - (lights_bottom - lights_top) * share;  // red above, white below
    std::string svg =
        format_html("<rect class=\"white\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>", x1,
                    lights_top, std::max(0.3, x2 - x1), lights_bottom - lights_top);
    if (picture.white_count < 0) return svg;
    svg += format_html("<rect class=\"red\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>", x1,
                       lights_top, std::max(0.3, x2 - x1), split - lights_top);
    if (x2 - x1 < 34) return svg;
    const std::string label =
        format_html("%dW %dR", picture.white_count, picture.units - picture.white_count);
    const double middle = (x1 + x2) / 2;
    return svg +
           format_html("<rect class=\"label\" x=\"%.1f\" y=\"%.1f\" width=\"30\" height=\"11\"/>",
                       middle - 15, lights_top + 2.5) +
           text_at(middle, lights_top + 12, "middle", label);
}

std::string light_strip(const ReviewedFlight& flight, const Axes& axes) {
    const TrackPoints points = scored_points(flight.track);
    std::string svg;
    std::size_t begin = 0;
    for (std::size_t i = 1; i <= points.size(); ++i) {
        if (i < points.size() && points[i].white_count == points[begin].white_count) continue;
        svg += picture_box(axes, {points[begin].white_count, flight.scenario.lights.pattern,
                                  nm_from_m(points[begin].distance_m),
                                  nm_from_m(points[std::min(i, points.size() - 1)].distance_m)});
        begin = i;
    }
    return svg + text_at(left - 4, lights_top + 12, "end", "lights");
}

std::string speed_plot(const ReviewedFlight& flight, const Axes& axes) {
    const Lesson& lesson = flight.scenario.lesson;
    const double fast_y = axes.speed_y(kt_from_mps(lesson.target_cas_mps + lesson.tolerances.fast_mps));
    const double slow_y = axes.speed_y(kt_from_mps(lesson.target_cas_mps - lesson.tolerances.slow_mps));
    const double target_kt = kt_from_mps(lesson.target_cas_mps);
    std::string svg =
        format_html("<rect class=\"wedge\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>", left,
                    fast_y, right - left, slow_y - fast_y);
    svg += line(left, axes.speed_y(target_kt), right, axes.speed_y(target_kt), "path");
    for (const double kt : {axes.slow_kt, target_kt, axes.fast_kt})
        svg +=
            text_at(left - 4, std::min(axes.speed_y(kt) + 4, speed_bottom), "end", format_html("%.0f", kt));
    return svg +
           trace(flight, axes, [&](const TrackPoint& p) { return axes.speed_y(kt_from_mps(p.cas_mps)); });
}

// Where the gates were passed, and the moments of the priority fault.
std::string marks(const ReviewedFlight& flight, const Axes& axes) {
    std::string svg;
    for (const GateValue& gate : flight.review.summary.gates) {
        if (!gate.reached) continue;
        const double x = axes.x(nm_from_m(gate.distance_m));
        svg += line(x, profile_top, x, profile_bottom, "gate");
        svg += text_at(x - 3, profile_top + 22, "end", format_html("%.0f ft", gate.height_ft));
    }
    const Finding* priority = flight.diagnosis.priority();
    if (priority == nullptr) return svg;
    for (const std::size_t point : priority->evidence.moments) {
        const TrackPoint& p = flight.track.points[point];
        const double x = axes.x(nm_from_m(p.distance_m)), y = axes.y(ft_from_m(p.eye_height_m));
        svg += format_html("<path class=\"mark\" d=\"M%.1f %.1f l-5 -9 h10 z\"/>", x, y - 3);
        if (priority->evidence.moments.size() > 12) break;  // all along: one mark says so
    }
    return svg;
}

}  // namespace

std::string sheet_plot(const ReviewedFlight& flight) {
    const Axes axes = axes_of(flight);
    return format_html(
               "<svg viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"Side profile, lights and "
               "airspeed over the distance to the aim point\">",
               width, height) +
           wedge(flight, axes) + grid(axes) + light_strip(flight, axes) + speed_plot(flight, axes) +
           marks(flight, axes) +
           trace(flight, axes, [&](const TrackPoint& p) { return axes.y(ft_from_m(p.eye_height_m)); }) +
           "</svg>";
}

}  // namespace slopewise
