// Every flown lesson of the syllabus: a pilot of the right skill meets its criterion, and one with the fault
// that the lesson is about does not, for the reason that the lesson names.
#include <algorithm>
#include <cstdio>

#include "base/units.h"
#include "tests/check.h"
#include "tests/engine/lesson_flights.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

using Kind = Requirement::Kind;

PilotSkill named(std::string_view name) { return *pilot_skill(name); }

// Takes the attitude for each flap, lowers it at these heights (ft) and learns from the speed.
PilotSkill with_flap(PilotSkill skill, double first_ft, double landing_ft) {
    skill.knows_flaps = true;
    skill.speed_learning = 0.002;
    skill.first_flap_at_m = m_from_ft(first_ft);
    skill.flap_at_m = m_from_ft(landing_ft);
    return skill;
}

PilotSkill waiting_level(PilotSkill skill) {
    skill.level_until_path = true;
    return skill;
}

PilotSkill nose_high_deg(double deg) {
    PilotSkill skill;
    skill.nose_high_rad = rad_from_deg(deg);
    skill.goes_around = false;
    return skill;
}

// Sees the runway further away than it is, and aims short of the aim point all the way.
PilotSkill aiming_short_m(double short_m) {
    PilotSkill skill;
    skill.duck_below_m = 1e9;
    skill.duck_m = short_m;
    skill.goes_around = false;
    return skill;
}

PilotSkill aiming_beyond_m(double beyond_m) {
    PilotSkill skill;
    skill.aim_beyond_m = beyond_m;
    return skill;
}

PilotSkill gliding(double flap_at_m) {
    PilotSkill skill;
    skill.glides = skill.knows_flaps = true;
    skill.speed_learning = 0.002;
    skill.flap_at_m = flap_at_m;
    skill.goes_around = false;
    return skill;
}

// Reads white as low and red as high.
PilotSkill misreading() {
    PilotSkill skill;
    skill.rate_to_power = -skill.rate_to_power;
    skill.goes_around = false;
    return skill;
}

// Large movements of nose and power, all the way.
PilotSkill never_settled() {
    PilotSkill skill = named("over_control");
    skill.attitude_gain = 8.0;
    skill.attitude_damping = -2.0;
    skill.rate_to_power = 0.4;
    return skill;
}

// Small power, seldom: what lasts is answered, what jumps is not.
PilotSkill letting_gusts_pass() {
    PilotSkill skill;
    skill.rate_to_power = 0.02;
    skill.decision_s = 2.0;
    skill.power_dead_band_rad = rad_from_deg(0.25);
    skill.power_wait_s = 2.0;
    return skill;
}

PilotSkill checking_all() {
    PilotSkill skill;
    skill.checks_all = true;
    return skill;
}

struct Row {
    const char* lesson;
    PilotSkill right, wrong;
    Kind reason;  // what the wrong pilot must miss
};

const std::vector<Row>& rows() {
    static const std::vector<Row> all{
        {"speed_by_attitude", with_flap({}, 1150, 700), with_flap(named("needle_chasing"), 1150, 700),
         Kind::speed_held},
        {"path_by_power", {}, named("late_power"), Kind::path_share},
        {"last_half_mile", {}, named("duck_under"), Kind::path_change_at_end},
        {"one_and_two_miles", {}, never_settled(), Kind::stable_to_50_ft},
        {"full_final", waiting_level(with_flap({}, 0, 850)),
         waiting_level(with_flap(named("late_flap"), 0, 260)), Kind::landing_flap_by},
        {"from_above_and_below", waiting_level({}), misreading(), Kind::first_input},
        {"wind_on_final", {}, named("ignores_wind"), Kind::stable_to_50_ft},
        {"gusts_on_final", letting_gusts_pass(), named("over_control"), Kind::power_reversals},
        {"lights_not_usable", {}, aiming_short_m(400), Kind::stable_to_50_ft},
        {"no_airspeed", {}, nose_high_deg(3.0), Kind::speed_always},
        {"go_around_at_the_gate", checking_all(), named("presses_on"), Kind::no_miss},
        {"steeper_path", {}, nose_high_deg(-6.0), Kind::speed_share},
        {"runway_that_lies", {}, aiming_short_m(400), Kind::path_bias},
        {"night_final", {}, aiming_short_m(400), Kind::path_angle},
        {"haze_and_low_sun", {}, aiming_short_m(400), Kind::stable_to_50_ft},
        {"flapless_final", {}, nose_high_deg(-2.5), Kind::speed_share},
        {"glide_approach", gliding(0.0), gliding(1e9), Kind::touchdown},
        {"behind_a_larger_aircraft", aiming_beyond_m(150), {}, Kind::above_leader},
        {"straight_in_from_5_nm", waiting_level(with_flap({}, 1350, 900)),
         waiting_level(with_flap(named("late_flap"), 1350, 260)), Kind::landing_flap_by},
        {"join_from_below", waiting_level(with_flap({}, 0, 750)), with_flap({}, 0, 750),
         Kind::level_until_path},
        {"hot_and_high", {}, nose_high_deg(5.0), Kind::speed_share},
        {"check_flight", checking_all(), named("presses_on"), Kind::right_decision},
    };
    return all;
}

std::vector<bool> met_of(const std::vector<LessonFlight>& flights) {
    std::vector<bool> met;
    for (const LessonFlight& flight : flights) met.push_back(flight.judged.met());
    return met;
}

// The requirement of this kind where it was missed; null where it was met or not due.
const JudgedRequirement* missed(const LessonFlight& flight, Kind kind) {
    for (const JudgedRequirement& one : flight.judged.requirements)
        if (one.requirement.kind == kind && one.verdict == Verdict::not_met) return &one;
    return nullptr;
}

std::string all_missed(const std::vector<LessonFlight>& flights) {
    std::string words;
    for (std::size_t run = 0; run < flights.size(); ++run) {
        for (const JudgedRequirement& one : flights[run].judged.requirements)
            if (one.verdict == Verdict::not_met)
                words += "\n    run " + std::to_string(run + 1) + ": " + judged_words(one);
    }
    return words;
}

}  // namespace

TEST_CASE(
    "lessons: a pilot of the right skill meets each lesson's criterion, a wrong one fails for its reason") {
    for (const Row& row : rows()) {
        const Lesson* lesson = find_lesson(shipped(), row.lesson);
        REQUIRE_MESSAGE(lesson != nullptr, row.lesson);
        const std::vector<LessonFlight> right = fly_runs(*lesson, row.right, 7);
        const std::vector<LessonFlight> wrong = fly_runs(*lesson, row.wrong, 7);
        const JudgedRuns right_runs = judge_runs(lesson->success, met_of(right));
        const JudgedRuns wrong_runs = judge_runs(lesson->success, met_of(wrong));
        CHECK_MESSAGE(right_runs.reached, row.lesson, all_missed(right));
        CHECK_MESSAGE(!wrong_runs.reached, row.lesson);
        const JudgedRequirement* reason = nullptr;
        for (const LessonFlight& flight : wrong)
            if (reason == nullptr) reason = missed(flight, row.reason);
        CHECK_MESSAGE(reason != nullptr, row.lesson, all_missed(wrong));
        std::printf("%2d %-26s right %d/%d, wrong %d/%d: %s\n", lesson->syllabus.place, row.lesson,
                    right_runs.met, right_runs.counted, wrong_runs.met, wrong_runs.counted,
                    reason != nullptr ? judged_words(*reason).c_str() : "-");
    }
}

TEST_CASE("lessons: the table of pilots leaves no flown lesson of the syllabus out") {
    for (const Lesson& lesson : shipped().lessons) {
        if (lesson.syllabus.place == 0) continue;
        const bool in_table =
            std::ranges::any_of(rows(), [&](const Row& row) { return lesson.id == row.lesson; });
        CHECK_MESSAGE(in_table == lesson.syllabus.drill.empty(), lesson.id);
        CHECK_MESSAGE(lesson.success.requirements.empty() == !lesson.syllabus.drill.empty(), lesson.id);
    }
}
