#include <algorithm>

#include "base/units.h"
#include "review/words.h"
#include "ui/format.h"
#include "ui/judgement_view.h"
#include "ui/measures_view.h"
#include "ui/views.h"

namespace slopewise {
namespace {

ProfilePoint profile_point_with_lights(const Scenario& scenario, const TrackPoint& point) {
    ProfilePoint shown = profile_point(point);
    const std::vector<double> lamps = light_picture(scenario, point.white_fraction).white_fraction;
    for (std::size_t i = 0; i < shown.white_fraction.size(); ++i)
        shown.white_fraction[i] = i < lamps.size() ? lamps[i] : -1.0;
    return shown;
}

GateRow gate_row(const Scenario& scenario, const GateValue& gate, const Stability& stability) {
    GateRow row;
    row.height = number_words(gate.height_ft) + " ft";
    row.reached = gate.reached;
    if (!gate.reached) return row;
    row.deviation_deg = signed_words(deg_from_rad(gate.mean.path_rad), 2);
    row.deviation_ft = signed_words(ft_from_m(gate.mean.path_m));
    row.lights = light_picture(scenario, gate.white_fraction);
    row.speed = signed_words(kt_from_mps(gate.mean.speed_mps));
    row.sink = signed_words(fpm_from_mps(gate.mean.sink_mps));
    row.power = number_words(100.0 * gate.power);
    row.flap = scenario.aircraft.flaps[static_cast<std::size_t>(gate.flap_setting)].name;
    row.path_in = gate.mean.path_in;
    row.speed_in = gate.mean.speed_in;
    row.sink_in = gate.mean.sink_in;
    row.stable = stability.stable();
    row.stability = stability_words(stability);
    return row;
}

// Which side a bias lies on, or neither when it rounds to nothing.
std::string bias_note(double bias, double nothing, const char* plus, const char* minus) {
    if (bias > nothing) return plus;
    return bias < -nothing ? minus : "neither way";
}

std::vector<LabelledValue> path_figures(const Summary& summary) {
    const double bias_deg = deg_from_rad(summary.path_rad.bias);
    return {
        {"Bias", signed_words(bias_deg, 2), "\u00b0",
         bias_note(bias_deg, 0.005, "mostly high", "mostly low")},
        {"Scatter", number_words(deg_from_rad(summary.path_rad.scatter), 2), "\u00b0", "about that bias"}};
}

std::vector<LabelledValue> speed_figures(const Summary& summary) {
    const double bias_kt = kt_from_mps(summary.speed_mps.bias);
    return {{"Bias", signed_words(bias_kt, 1), "kt", bias_note(bias_kt, 0.05, "mostly fast", "mostly slow")},
            {"Scatter", number_words(kt_from_mps(summary.speed_mps.scatter), 1), "kt", "about that bias"}};
}

ShareBar share_bar(std::string label, double fraction) {
    return {std::move(label), fraction, percent_words(fraction)};
}

std::vector<ShareBar> tolerance_bars(const Scenario& scenario, const Summary& summary) {
    const Tolerances& t = scenario.lesson.tolerances;
    const std::string path = "Path within " + number_words(deg_from_rad(t.path_rad), 1) + "\u00b0 or " +
                             number_words(ft_from_m(t.path_floor_m)) + " ft";
    const std::string speed = "Speed within \u2212" + number_words(kt_from_mps(t.slow_mps)) + " to +" +
                              number_words(kt_from_mps(t.fast_mps)) + " kt";
    const std::string sink = "Sink within " + number_words(fpm_from_mps(t.sink_mps)) + " ft/min";
    return {share_bar(path, summary.path_share), share_bar(speed, summary.speed_share),
            share_bar(sink, summary.sink_share), share_bar("All three at once", summary.all_share)};
}

std::vector<PictureShare> picture_shares(const Scenario& scenario, const Summary& summary) {
    std::vector<PictureShare> shares;
    for (int white = summary.light_units; white >= 0; --white) {
        const double share = summary.light_share[static_cast<std::size_t>(white)];
        shares.push_back({picture_of(scenario, white), share, percent_words(share)});
    }
    return shares;
}

std::vector<std::string> definition_words(const Scenario& scenario, const Summary& summary) {
    const std::string path =
        number_words(deg_from_rad(scenario.surroundings.runway.lights.nominal_path_rad), 1);
    return {
        "Path: the angle of your eye above the aim point less " + path + "\u00b0; plus is high.",
        "Speed: indicated airspeed less the target. Sink: less ground speed \u00d7 tan " + path + "\u00b0.",
        "Gates: wheel height above the threshold; means over 2 s before to 2 s after.",
        "Bias and scatter: mean and standard deviation of the track, ten points a second, " +
            number_words(summary.scored_s) + " s in all.",
        "The lights changed " + std::to_string(summary.light_changes) + " times."};
}

}  // namespace

ProfilePoint profile_point(const TrackPoint& point) {
    return {nm_from_m(point.distance_m), ft_from_m(point.eye_height_m), kt_from_mps(point.cas_mps), {}};
}

SummaryView summary_view(const FlightSession& session, const DebriefState& state) {
    const Scenario& scenario = session.scenario;
    const Review& review = session.reviewed->review;
    const Summary& summary = review.summary;
    const Lesson& lesson = scenario.lesson;
    SummaryView view;
    view.title = "Deviation summary";
    view.ended = end_sentence(summary);
    view.setup = place_words(scenario) + ": " + setup_words(scenario);
    view.worst = worst_sentence(summary, session.track);
    for (std::size_t i = 0; i < session.track.scored; ++i)
        view.profile.push_back(profile_point_with_lights(scenario, session.track.points[i]));
    view.path_deg = deg_from_rad(scenario.surroundings.runway.lights.nominal_path_rad);
    view.wedge_deg = deg_from_rad(lesson.tolerances.path_rad);
    view.floor_ft = ft_from_m(lesson.tolerances.path_floor_m);
    view.target_kt = kt_from_mps(lesson.target_cas_mps);
    view.slow_kt = kt_from_mps(lesson.tolerances.slow_mps);
    view.fast_kt = kt_from_mps(lesson.tolerances.fast_mps);
    view.worst_distance_nm = nm_from_m(session.track.points[summary.worst.point].distance_m);
    for (std::size_t i = 0; i < summary.gates.size(); ++i)
        view.gates.push_back(gate_row(scenario, summary.gates[i], review.stability[i]));
    view.path_figures = path_figures(summary);
    view.speed_figures = speed_figures(summary);
    view.in_tolerance = tolerance_bars(scenario, summary);
    view.light_pictures = picture_shares(scenario, summary);
    view.stacked_lights = view.light_pictures.front().picture.stacked;
    view.definitions = definition_words(scenario, summary);
    view.definitions.push_back(aids_words(session));
    view.from_logbook = session.from_logbook;
    view.can_fly_on =
        !session.from_logbook && !session.attempt.at_rest && session.attempt.end != End::ground_short;
    view.can_mirror = lesson.start.offset_rad != 0.0;
    if (!session.from_logbook) view.stop = stop_hint_words[static_cast<std::size_t>(state.stop)];
    view.measures = measures_view(session);
    judge(session, state, view);
    return view;
}

}  // namespace slopewise
