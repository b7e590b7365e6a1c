#include "review/control_activity.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "review/lever_step.h"
#include "review/spread.h"

namespace slopewise {
namespace {

template <class Value>
int count_reversals(TrackPoints points, const std::vector<bool>& counts, double least, Value value) {
    std::vector<double> values;
    for (const TrackPoint& point : points) values.push_back(value(point));
    int count = 0;
    for (const std::size_t i : reversals(values, least)) count += counts[i];
    return count;
}

// The largest step inside each unbroken run of points that count.
double largest_step(TrackPoints points, const std::vector<bool>& counts) {
    double largest = 0.0;
    for (std::size_t i = 0; i < points.size();) {
        std::size_t end = i;
        while (end < points.size() && counts[end]) ++end;
        if (end > i) largest = std::max(largest, largest_lever_step(points.subspan(i, end - i)));
        i = end + 1;
    }
    return largest;
}

}  // namespace

std::vector<std::size_t> reversals(std::span<const double> values, double least) {
    std::vector<std::size_t> turned;
    if (values.empty()) return turned;
    double low = values[0], high = values[0];  // since the last reversal
    int way = 0;
    for (std::size_t i = 1; i < values.size(); ++i) {
        low = std::min(low, values[i]);
        high = std::max(high, values[i]);
        const bool falls = way >= 0 && values[i] < high - least;
        const bool rises = way <= 0 && values[i] > low + least;
        if (!falls && !rises) continue;
        if (way != 0) turned.push_back(i);
        way = falls ? -1 : 1;
        low = high = values[i];
    }
    return turned;
}

ControlActivity control_activity(TrackPoints points, const std::vector<bool>& counts) {
    ControlActivity activity;
    std::vector<double> pitch;
    double squares = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!counts[i]) continue;
        pitch.push_back(points[i].pitch_rad);
        if (i == 0) continue;
        const double dt_s = points[i].time_s - points[i - 1].time_s;
        activity.time_s += dt_s;
        if (dt_s > 0.0) squares += square(points[i].stick - points[i - 1].stick) / dt_s;
    }
    if (activity.time_s > 0.0) activity.stick_rate_rms_per_s = std::sqrt(squares / activity.time_s);
    activity.stick_reversals =
        count_reversals(points, counts, stick_reversal, [](const TrackPoint& p) { return p.stick; });
    activity.lever_reversals =
        count_reversals(points, counts, lever_reversal, [](const TrackPoint& p) { return p.lever; });
    activity.largest_lever_step = largest_step(points, counts);
    activity.pitch_scatter_rad = spread_of(pitch).scatter;
    return activity;
}

}  // namespace slopewise
