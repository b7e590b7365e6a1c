// The pages that explain: the path from the side, what moves in the picture, the headwind.
#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "board/ground_flow.h"
#include "drill/drill_words.h"
#include "drill/still.h"
#include "review/track.h"
#include "station/headwind_table.h"
#include "ui/board_makers.h"
#include "ui/format.h"
#include "ui/seat_scene.h"
#include "world/sight.h"

namespace slopewise {
namespace {

std::string degrees(double rad) { return number_words(deg_from_rad(rad), 1) + "\u00b0"; }

// The eye and the attitude of a moving picture.
struct Glimpse {
    MovingEye moving;
    double pitch_rad = 0.0;
    double time_s = 0.0;
    std::string where;  // "From 1 NM"
};

Glimpse present(const FlightSession& session) {
    const FlightState& flight = session.attempt.flight;
    const TrackPoint now = observe(session.scenario, session.attempt);
    return {{eye_position(session.scenario.aircraft, flight), flight.vx_mps, flight.vz_mps},
            flight.pitch_rad,
            time_s(session.attempt),
            "From " + number_words(nm_from_m(now.distance_m), 1) + " NM"};
}

Glimpse from_one_mile(const Scenario& scenario) {
    const Picture still = still_at(scenario, eye_on_line(scenario.surroundings.runway, m_from_nm(1.0), 0.0));
    return {{still.eye, still.ground_speed_mps, still.ground_speed_mps * std::tan(still.path_rad)},
            still.pitch_rad,
            0.0,
            "From 1 NM"};
}

// In the picture, and the eye high enough over the ground for what it sees.
bool hits_ahead(const Runway& runway, const MovingEye& moving) {
    constexpr double least_height_m = 10.0, least_path_rad = rad_from_deg(1.0),
                     most_path_rad = rad_from_deg(6.0);
    const double path_rad = std::atan2(-moving.up_mps, moving.forward_mps);
    return moving.eye.x_m < 0.0 && moving.eye.z_m >= least_height_m && path_rad >= least_path_rad &&
           path_rad <= most_path_rad && point_of_impact(runway, moving).has_value();
}

}  // namespace

void side_board(const Scenario& flown, bool revealed, BoardsView& view) {
    const Runway& runway = flown.surroundings.runway;
    const double path_rad = runway.lights.nominal_path_rad;
    const double a_mile_m = path_height_m(runway, m_from_nm(1.0));
    view.figure = BoardsView::Figure::side;
    view.title = "The path from the side";
    view.sentences = {"The path is a line of " + degrees(path_rad) +
                          " to the aim point; the shaded wedge about it is good enough.",
                      "Each picture of the lights is a sector: the nearer, the smaller.",
                      "How high is the eye over the aim point?"};
    constexpr std::array<double, 4> distances_nm{3.0, 2.0, 1.0, 0.5};
    for (const double nm : distances_nm) {
        BoardsView::Height height;
        height.distance_nm = nm;
        height.height_ft = ft_from_m(path_height_m(runway, m_from_nm(nm)));
        height.distance = number_words(nm, nm < 1.0 ? 1 : 0) + " NM";
        const std::string words = number_words(height.height_ft) + " ft";
        if (revealed) height.height = words;
        view.answer += height.distance + ": " + words + ". ";
        view.heights.push_back(std::move(height));
    }
    if (revealed) view.sentences.back() = "Every mile is " + number_words(ft_from_m(a_mile_m)) + " ft.";
}

void motion_board(const FlightSession& session, bool revealed, BoardsView& view) {
    constexpr double down_rad = rad_from_deg(6.6),
                     aside_rad = rad_from_deg(7.0);  // the view shows a little more
    constexpr int rows = 6, columns = 9;
    const Scenario& scenario = session.scenario;
    const Runway& runway = scenario.surroundings.runway;
    Glimpse glimpse = present(session);
    if (!hits_ahead(runway, glimpse.moving)) glimpse = from_one_mile(scenario);
    const MovingEye& moving = glimpse.moving;

    BoardsView::Motion& motion = view.motion;
    motion.scene = seen_from(scenario, {moving.eye, glimpse.pitch_rad, glimpse.time_s, {}});
    motion.scene.camera.pitch_rad = rad_from_deg(-3.0);
    motion.scene.lamp_count = 0;
    motion.scene.reduced_motion = true;
    for (const GroundFlow& flow : ground_flow(runway, moving, down_rad, aside_rad, rows, columns))
        motion.flow.push_back(
            {{flow.seen.right_rad, flow.seen.up_rad}, flow.right_radps, flow.up_radps, flow.beyond});

    view.figure = BoardsView::Figure::motion;
    view.title = "What moves, and what stands still";
    view.sentences = {"What moves down, toward you, is nearer than where you would hit.",
                      "What moves up, away from you, lies beyond it.",
                      glimpse.where + ": which point stands still?"};
    const auto hit = point_of_impact(runway, moving);
    if (!hit) return;
    const Bearing still = bearing_of(moving.eye, *hit);
    motion.still = {still.right_rad, still.up_rad};
    const std::string words =
        "Here the flight would hit: " + place_phrase(hit->x_m - runway.aim_distance_m) + ".";
    view.answer = words;
    if (!revealed) return;
    motion.still_words = "here we would hit";
    view.sentences.back() = glimpse.where + ". " + words;
}

void headwind_board(const Scenario& flown, bool revealed, BoardsView& view) {
    // Halfway down three miles, as a briefing and the handout have them.
    const auto rows = headwind_table(flown, m_from_nm(3.0) / 2.0);
    view.figure = BoardsView::Figure::headwind;
    view.title = "Why more power against the wind";
    view.sentences = {"The same path over the ground at the same airspeed, " +
                      number_words(kt_from_mps(flown.lesson.target_cas_mps)) + " kt."};
    double most_sink_mps = 1e-9, most_power = 1e-9;
    for (const HeadwindRow& row : rows) {
        most_sink_mps = std::max(most_sink_mps, row.sink_mps);
        most_power = std::max(most_power, row.power);
    }
    for (const HeadwindRow& row : rows) {
        BoardsView::Headwind shown;
        shown.wind = number_words(kt_from_mps(row.headwind_mps));
        if (revealed && row.flyable) {
            shown.ground_speed = number_words(kt_from_mps(row.ground_speed_mps));
            shown.sink = number_words(fpm_from_mps(row.sink_mps));
            shown.power = number_words(100.0 * row.power);
            shown.sink_share = row.sink_mps / most_sink_mps;
            shown.power_share = row.power / most_power;
        }
        view.headwinds.push_back(std::move(shown));
    }
    view.answer = "Less sink, more power.";
    if (!revealed) {
        view.sentences.emplace_back("As the headwind grows: what becomes of the sink, and of the power?");
        return;
    }
    view.sentences.emplace_back("Slower over the ground, down the same slope: less sink.");
    const HeadwindRow& calm = rows.front();
    const HeadwindRow& most = rows.back();
    if (calm.flyable && most.flyable)
        view.sentences.push_back("Through the air the path is flatter, " + degrees(most.air_path_rad) +
                                 " in " + number_words(kt_from_mps(most.headwind_mps)) + " kt and not " +
                                 degrees(calm.air_path_rad) +
                                 ": gravity pulls less along it, so power must pull more.");
}

}  // namespace slopewise
