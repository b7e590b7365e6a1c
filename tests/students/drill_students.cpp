#include "tests/students/drill_students.h"

#include <algorithm>
#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "drill/control_deck.h"
#include "drill/picture_deck.h"
#include "drill/quadrant_deck.h"

namespace slopewise::test {

namespace says {
namespace {

SaidAnswer choice(int which, double reaction_s) {
    SaidAnswer said;
    said.choice = which;
    said.reaction_s = reaction_s;
    return said;
}

double quick_s(Random& random) { return 1.0 + 0.15 * next_normal(random); }

SaidAnswer seen_angle(const Card& card, double seen_rad, Random& random) {
    const double edge_rad = rad_from_deg(0.25);
    const int which = seen_rad > edge_rad ? picture_high : (seen_rad < -edge_rad ? picture_low : picture_on);
    return choice(which, quick_s(random) + (card.distance_m > 0.0 ? 0.5 : 0.0));
}

// The point that a flight path angle that is off by so much leads to.
SaidAnswer mark_off_by(const Quiz& quiz, const Card& card, double off_rad, Random& random) {
    SaidAnswer said;
    const double height_m = card.picture.eye.z_m - aim_point(quiz.runway).z_m;
    said.marked = true;
    said.mark_m = height_m / exact::tan(card.truth_rad - off_rad) - card.distance_m;
    said.reaction_s = quick_s(random);
    return said;
}

double first_moment_s(const Card& card) { return card.moments_s.empty() ? 0.0 : card.moments_s.front(); }

}  // namespace

SaidAnswer right(const Quiz&, const Card& card, Random& random) {
    return choice(card.right, quick_s(random));
}

SaidAnswer right_with_slips(const Quiz&, const Card& card, Random& random) {
    const bool slip = next_uniform(random) < 0.01;
    const auto choices = static_cast<int>(card.choices.size());
    return choice(slip ? (card.right + 1) % choices : card.right, quick_s(random));
}

SaidAnswer right_but_slowly(const Quiz&, const Card& card, Random& random) {
    return choice(card.right, 1.2 + quick_s(random));
}

SaidAnswer red_for_white(const Quiz&, const Card& card, Random& random) {
    return choice(static_cast<int>(card.choices.size()) - 1 - card.right, quick_s(random));
}

SaidAnswer sees_angle(const Quiz&, const Card& card, Random& random) {
    return seen_angle(card, card.truth_rad + rad_from_deg(0.125) * next_normal(random), random);
}

SaidAnswer high_is_normal(const Quiz&, const Card& card, Random& random) {
    return seen_angle(card, card.truth_rad - rad_from_deg(0.5), random);
}

SaidAnswer marks_still_point(const Quiz& quiz, const Card& card, Random& random) {
    return mark_off_by(quiz, card, rad_from_deg(0.08) * next_normal(random), random);
}

SaidAnswer marks_aim_point(const Quiz&, const Card&, Random& random) {
    SaidAnswer said;
    said.marked = true;
    said.reaction_s = quick_s(random);
    return said;
}

SaidAnswer marks_too_far(const Quiz& quiz, const Card& card, Random& random) {
    return mark_off_by(quiz, card, rad_from_deg(0.4), random);
}

// The stick makes it climb or sink and keeps the speed; power makes it fast or slow and keeps the path; flap
// slows, and no more.
SaidAnswer pull_is_climb(const Quiz&, const Card& card, Random& random) {
    const auto step = static_cast<ControlStep>(card.control_step);
    const bool speed = card.choices.front() == "faster", sink = card.choices.front() == "more sink";
    const bool up =
        step == ControlStep::power_up || step == ControlStep::nose_up || step == ControlStep::trim_up;
    const bool power = step == ControlStep::power_up || step == ControlStep::power_down;
    if (step == ControlStep::flap_down) return choice(speed ? 2 : 1, quick_s(random));
    if (power) return choice(speed ? (up ? 0 : 2) : 1, quick_s(random));
    if (speed) return choice(1, quick_s(random));
    return choice(up != sink ? 0 : 2, quick_s(random));
}

SaidAnswer nose_for_all(const Quiz&, const Card& card, Random& random) {
    const FirstAction action = card.truth_rad > 0.0 ? FirstAction::nose_down : FirstAction::nose_up;
    return choice(static_cast<int>(action), quick_s(random));
}

SaidAnswer presses_on(const Quiz&, const Card&, Random& random) { return choice(0, quick_s(random)); }
SaidAnswer calls_all_off(const Quiz&, const Card&, Random& random) { return choice(1, quick_s(random)); }

SaidAnswer sees_fault(const Quiz&, const Card& card, Random& random) {
    SaidAnswer said = choice(card.right, quick_s(random));
    said.mark_s = first_moment_s(card) + 3.0 + next_uniform(random);
    return said;
}

SaidAnswer sees_late(const Quiz&, const Card& card, Random& random) {
    SaidAnswer said = choice(card.right, quick_s(random));
    said.mark_s = (card.moments_s.empty() ? 0.0 : card.moments_s.back()) + 20.0;
    return said;
}

SaidAnswer names_another(const Quiz& quiz, const Card& card, Random& random) {
    SaidAnswer said = sees_fault(quiz, card, random);
    said.choice = (card.right + 1) % static_cast<int>(card.choices.size());
    return said;
}

}  // namespace says

namespace flies {
namespace {

constexpr PilotSkill skill;

// The stick towards an attitude.
double stick_to(const Sight& sight, double pitch_rad) {
    return std::clamp(
        skill.attitude_gain * (pitch_rad - sight.pitch_rad) - skill.attitude_damping * sight.pitch_rate_radps,
        -1.0, 1.0);
}

// The attitude at the target speed with this flap and the power that is set: what a pilot knows by heart.
// Found as the descent whose trim asks for that power.
double known_pitch_rad(const Scenario& scenario, const Attempt& attempt, int flap) {
    double low_rad = rad_from_deg(-10.0), high_rad = rad_from_deg(5.0);
    double pitch_rad = 0.0;
    for (int i = 0; i < 20; ++i) {
        const double path_rad = 0.5 * (low_rad + high_rad);
        const TrimState trim =
            solve_trim(scenario.aircraft, scenario.surroundings,
                       {scenario.lesson.target_cas_mps, flap, path_rad, attempt.flight.z_m});
        const bool too_steep = !trim.flyable && trim.reason.find("idle") != std::string::npos;
        if (trim.flyable) pitch_rad = trim.pitch_rad;
        if (too_steep || (trim.flyable && trim.controls.throttle < positions_of(attempt.controls).throttle))
            low_rad = path_rad;
        else high_rad = path_rad;
    }
    return pitch_rad;
}

enum class TrimHabit { trims, never };
enum class FlapHabit { new_attitude, lets_it_rise };

Controls hold_speed(FlownDrill& flown, const Attempt& attempt, Student& student, TrimHabit trim,
                    FlapHabit flap) {
    ControlPositions& held = student.held;
    const Sight sight = sight_of(flown.scenario, attempt);
    const double off_mps = sight.cas_mps - flown.scenario.lesson.target_cas_mps;
    if (flown.speed_hold.task == SpeedHoldState::Task::set_flap && attempt.controls.flap == held.flap &&
        std::abs(attempt.flight.flap - held.flap) < 0.01) {
        ++held.flap;
        if (flap == FlapHabit::new_attitude)
            student.pitch_rad = known_pitch_rad(flown.scenario, attempt, held.flap);
    }
    student.pitch_rad += 0.0006 * off_mps * tick_s;
    const bool hands_off = flown.speed_hold.task == SpeedHoldState::Task::hands_off;
    const bool lets_rise =
        flap == FlapHabit::lets_it_rise && std::abs(attempt.flight.flap - held.flap) > 0.01;
    const double wanted_rad = student.pitch_rad + 0.009 * off_mps + (lets_rise ? rad_from_deg(5.0) : 0.0);
    held.stick = hands_off && trim == TrimHabit::trims ? 0.0 : stick_to(sight, wanted_rad);
    if (trim == TrimHabit::trims) held.trim = std::clamp(held.trim + 0.003 * held.stick, -1.0, 1.0);
    return quantize(held);
}

}  // namespace

Controls speed_by_attitude(FlownDrill& flown, const Attempt& attempt, Student& student) {
    return hold_speed(flown, attempt, student, TrimHabit::trims, FlapHabit::new_attitude);
}
Controls speed_untrimmed(FlownDrill& flown, const Attempt& attempt, Student& student) {
    return hold_speed(flown, attempt, student, TrimHabit::never, FlapHabit::new_attitude);
}
Controls speed_ballooning(FlownDrill& flown, const Attempt& attempt, Student& student) {
    return hold_speed(flown, attempt, student, TrimHabit::trims, FlapHabit::lets_it_rise);
}

namespace {

// The lever of a model pilot who is told what a student sees.
Controls lever_of(FlownDrill& flown, const Attempt& attempt, const PilotSkill& habits, Student& student) {
    if (attempt.tick == 0) student.pilot = pilot_for(flown.scenario, habits, flown.seed);
    return fly(student.pilot, sight_of(flown.scenario, attempt), time_s(attempt));
}

}  // namespace

Controls path_by_power(FlownDrill& flown, const Attempt& attempt, Student& student) {
    PilotSkill habits;
    habits.goes_around = false;
    return lever_of(flown, attempt, habits, student);
}

// All or nothing, by the side of the path that the eye is on.
Controls path_by_big_power(FlownDrill& flown, const Attempt& attempt, Student& student) {
    const Sight sight = sight_of(flown.scenario, attempt);
    const double usual = plan_of(flown.scenario).throttle;
    student.held.throttle = usual + (sight.path_error_rad > 0.0 ? -0.25 : 0.25);
    return quantize(student.held);
}

Controls lever_untouched(FlownDrill&, const Attempt&, Student& student) { return quantize(student.held); }

namespace {

struct AroundHabits {
    double answer_s = 1.0;  // after the call
    double lever = 1.0;
    bool flap_first = false, trims = true;
};

Controls around(FlownDrill& flown, const Attempt& attempt, Student& student, const AroundHabits& habits) {
    ControlPositions& held = student.held;
    const Sight sight = sight_of(flown.scenario, attempt);
    const double since_s = time_s(attempt) - flown.call_s - habits.answer_s;
    const double approach_rad = flown.scenario.start_state.pitch_rad;
    if (since_s < 0.0) {
        held.stick = stick_to(sight, approach_rad);
        return quantize(held);
    }
    held.throttle = std::min(habits.lever, held.throttle + tick_s / 0.8);  // pushed up within a second
    const double pitch_rad = std::min(rad_from_deg(5.0), approach_rad + rad_from_deg(4.0) * since_s);
    held.stick = stick_to(sight, pitch_rad);
    if (habits.flap_first) held.flap = 0;
    const bool climbing = sight.sink_mps < -mps_from_fpm(200.0);
    if (climbing && held.flap == 2) held.flap = 1;
    if (climbing && since_s > 14.0) held.flap = 0;
    if (habits.trims && held.flap < 2 && since_s > 10.0)
        held.trim = std::clamp(held.trim + 0.003 * held.stick, -1.0, 1.0);
    return quantize(held);
}

}  // namespace

Controls go_around(FlownDrill& flown, const Attempt& attempt, Student& student) {
    return around(flown, attempt, student, {});
}
Controls go_around_half_power(FlownDrill& flown, const Attempt& attempt, Student& student) {
    AroundHabits habits;
    habits.lever = 0.75;
    Controls controls = around(flown, attempt, student, habits);
    controls.go_around = time_s(attempt) >= flown.call_s + 1.0;  // says it, at least
    return controls;
}
Controls go_around_flap_first(FlownDrill& flown, const Attempt& attempt, Student& student) {
    AroundHabits habits;
    habits.flap_first = true;
    return around(flown, attempt, student, habits);
}
Controls go_around_late(FlownDrill& flown, const Attempt& attempt, Student& student) {
    AroundHabits habits;
    habits.answer_s = 7.0;
    return around(flown, attempt, student, habits);
}
Controls go_around_untrimmed(FlownDrill& flown, const Attempt& attempt, Student& student) {
    AroundHabits habits;
    habits.trims = false;
    return around(flown, attempt, student, habits);
}

namespace {

constexpr std::int64_t look_ticks = 180;  // looks and speaks every second and a half

bool looks_now(const Attempt& attempt) { return attempt.tick % look_ticks == look_ticks - 1; }

}  // namespace

// Power by how the path error closes, the nose by the speed, trim in between.
Controls tells_well(FlownDrill& flown, const Attempt& attempt, Student&) {
    if (!looks_now(attempt)) return {};
    const Sight sight = sight_of(flown.scenario, attempt);
    const double nominal_rad = flown.scenario.surroundings.runway.lights.nominal_path_rad;
    const double off_m = sight.path_error_rad * sight.distance_m;
    const double wanted_mps =
        sight.ground_speed_mps * exact::tan(nominal_rad) + std::clamp(off_m / 15.0, -1.2, 1.2);
    const double sink_off_mps = sight.sink_mps - wanted_mps;
    const double speed_off_mps = sight.cas_mps - flown.scenario.lesson.target_cas_mps;
    if (attempt.tick / look_ticks % 5 == 4) tell(flown, attempt, Command::trim);
    else if (speed_off_mps > mps_from_kt(2.5) && attempt.tick / look_ticks % 2 == 0)
        tell(flown, attempt, Command::nose_up);
    else if (speed_off_mps < -mps_from_kt(2.5) && attempt.tick / look_ticks % 2 == 0)
        tell(flown, attempt, Command::nose_down);
    else if (sink_off_mps > 0.35) tell(flown, attempt, Command::more_power);
    else if (sink_off_mps < -0.35) tell(flown, attempt, Command::less_power);
    else tell(flown, attempt, Command::wait);
    return {};
}

// The path by the nose: up when low, down when high.
Controls tells_nose_only(FlownDrill& flown, const Attempt& attempt, Student&) {
    if (!looks_now(attempt)) return {};
    const double error_rad = sight_of(flown.scenario, attempt).path_error_rad;
    if (error_rad > rad_from_deg(0.2)) tell(flown, attempt, Command::nose_down);
    if (error_rad < rad_from_deg(-0.2)) tell(flown, attempt, Command::nose_up);
    return {};
}

Controls tells_nothing(FlownDrill&, const Attempt&, Student&) { return {}; }

}  // namespace flies

}  // namespace slopewise::test
