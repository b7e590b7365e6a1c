#include "ui/replayed_flight.h"

#include <algorithm>
#include <cmath>

#include "base/interpolate.h"
#include "lesson/gates.h"
#include "review/go_around.h"

namespace slopewise {
namespace {

constexpr double ticks_a_second = 1.0 / tick_s;

// A track does not say how it ended; what it looks like there does.
End end_of(const Track& track) {
    const TrackPoint& last = track.points[track.scored - 1];
    if (last.lever >= full_power_lever) return End::went_around;
    return last.wheel_height_m <= scoring_floor_m + 1.0 ? End::reached_floor : End::none;
}

TrackPoint between(const TrackPoint& a, const TrackPoint& b, double share) {
    TrackPoint point = a;  // what is a whole number holds until the next
    const auto blend = [&](double TrackPoint::*what) { point.*what = lerp(a.*what, b.*what, share); };
    for (const auto what :
         {&TrackPoint::time_s, &TrackPoint::distance_m, &TrackPoint::eye_height_m,
          &TrackPoint::wheel_height_m, &TrackPoint::path_error_rad, &TrackPoint::path_offset_m,
          &TrackPoint::cas_mps, &TrackPoint::ground_speed_mps, &TrackPoint::sink_mps, &TrackPoint::pitch_rad,
          &TrackPoint::power, &TrackPoint::lever, &TrackPoint::stick, &TrackPoint::trim,
          &TrackPoint::flap_position, &TrackPoint::headwind_mps})
        blend(what);
    for (std::size_t i = 0; i < point.white_fraction.size(); ++i) {
        if (a.white_fraction[i] >= 0.0 && b.white_fraction[i] >= 0.0)
            point.white_fraction[i] = lerp(a.white_fraction[i], b.white_fraction[i], share);
    }
    return point;
}

// A place on the track: after so many points, and a share of the way to the next.
struct Place {
    std::size_t point = 0;
    double share = 0.0;
};

TrackPoint point_at(const Track& track, const Place& place) {
    const std::size_t next = std::min(place.point + 1, track.points.size() - 1);
    return between(track.points[place.point], track.points[next], place.share);
}

// Where a value that never falls along the track reaches `wanted`.
template <class Value>
Place place_of(const Track& track, double wanted, Value value) {
    const auto& points = track.points;
    const auto after = std::partition_point(points.begin(), points.end(),
                                            [&](const TrackPoint& p) { return value(p) <= wanted; });
    if (after == points.begin()) return {0, 0.0};
    const auto last = static_cast<std::size_t>(after - points.begin()) - 1;
    if (after == points.end()) return {last, 0.0};
    const double from = value(points[last]), to = value(*after);
    return {last, to > from ? (wanted - from) / (to - from) : 0.0};
}

Place place_at_tick(const Track& track, double tick) {
    return place_of(track, tick * tick_s, [](const TrackPoint& p) { return p.time_s; });
}

// The vertical speed's lag, along the points of a track.
std::vector<double> lagged_climb_mps(const Track& track) {
    std::vector<double> shown;
    double climb_mps = -track.points.front().sink_mps, time_s = track.points.front().time_s;
    for (const TrackPoint& point : track.points) {
        const double share = 1.0 - std::exp(-(point.time_s - time_s) / vertical_speed_lag_s);
        climb_mps += share * (-point.sink_mps - climb_mps);
        time_s = point.time_s;
        shown.push_back(climb_mps);
    }
    return shown;
}

// The attempt that a point of a track tells of, as far as it tells.
FlownMoment moment_of(const ReplayedFlight& flight, const Place& place, const TrackPoint& point,
                      double tick) {
    const Scenario& scenario = flight.rewind.scenario;
    FlownMoment moment;
    Attempt& attempt = moment.attempt;
    attempt.tick = static_cast<std::int64_t>(tick);
    attempt.conditions = begin_conditions(scenario);
    attempt.controls = quantize({point.stick, point.lever, point.trim, point.flap_setting, false});
    FlightState& state = attempt.flight;
    state.pitch_rad = point.pitch_rad;
    const Point3 eye_offset = eye_position(scenario.aircraft, state);  // from a reference point at zero
    const Point3 aim = aim_point(scenario.surroundings.runway);
    state.x_m = aim.x_m - point.distance_m - eye_offset.x_m;
    state.z_m = aim.z_m + point.eye_height_m - eye_offset.z_m;
    state.vx_mps = point.ground_speed_mps;
    state.vz_mps = -point.sink_mps;
    state.power = point.power;
    state.flap = point.flap_position;
    if (place.point + 1 >= flight.track.scored) attempt.end = flight.end;
    moment.before = state;
    const std::size_t next = std::min(place.point + 1, flight.climb_mps.size() - 1);
    moment.instruments.vertical_speed_mps =
        lerp(flight.climb_mps[place.point], flight.climb_mps[next], place.share);
    return moment;
}

}  // namespace

ReplayedFlight replayed_flight(const Recording& recording, const Scenario& scenario, const Track* kept) {
    ReplayedFlight flight;
    flight.name = "this attempt";
    Track& track = flight.track;
    flight.rewind = make_rewind(recording, scenario, [&](const Attempt& attempt, const Events& events) {
        if (track.points.empty()) track = begin_track(scenario, attempt);
        else extend(track, scenario, attempt, events);
    });
    flight.along_track = differs(flight) && kept != nullptr && !kept->points.empty() && kept->scored > 0;
    flight.end = attempt_at(flight.rewind, flight.rewind.last_tick).end;
    if (flight.along_track) {
        track = *kept;
        flight.end = end_of(track);
        flight.climb_mps = lagged_climb_mps(track);
    }
    return flight;
}

std::int64_t last_tick(const ReplayedFlight& flight) {
    return flight.along_track ? std::llround(flight.track.points.back().time_s * ticks_a_second)
                              : flight.rewind.last_tick;
}

ShownMoment shown_at(const ReplayedFlight& flight, double tick) {
    ShownMoment shown;
    if (flight.along_track) {
        const Place place = place_at_tick(flight.track, tick);
        shown.point = point_at(flight.track, place);
        shown.moment = moment_of(flight, place, shown.point, tick);
        return shown;
    }
    const double whole = std::ceil(tick);
    shown.moment = moment_at(flight.rewind, static_cast<std::int64_t>(whole));
    shown.blend = 1.0 - (whole - tick);
    shown.point = observe(flight.rewind.scenario, shown.moment.attempt);
    return shown;
}

std::optional<TrackPoint> point_at_distance(const ReplayedFlight& flight, double distance_m) {
    const Track& track = flight.track;
    if (distance_m > track.points.front().distance_m || distance_m < track.points.back().distance_m)
        return std::nullopt;
    return point_at(track, place_of(track, -distance_m, [](const TrackPoint& p) { return -p.distance_m; }));
}

}  // namespace slopewise
