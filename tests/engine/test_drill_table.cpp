// A model student of the right skill passes every drill, and one with a systematic fault fails it for the
// right reason: the criterion that speaks of that fault is the one not met. Over the shipped drills, some
// seeds each.
#include <algorithm>
#include <string>

#include "tests/check.h"
#include "tests/engine/drill_answerers.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr std::uint64_t seeds = 4, first_seed = 1;

std::string told(const DrillResult& result) {
    std::string all;
    for (const std::string& line : result_lines(result)) all += line + "; ";
    return all;
}

// The criterion of a measure in a result.
bool met(const DrillResult& result, Measure measure) {
    const std::string words(words_of(measure).words);
    const auto found = std::ranges::find_if(
        result.criteria, [&](const JudgedCriterion& one) { return one.asked.starts_with(words); });
    REQUIRE(found != result.criteria.end());
    return found->met;
}

struct CardRow {
    const char* drill;
    const char* student;
    Answerer answerer;
    std::optional<Measure> fails;      // empty: passes
    std::optional<Measure> still_met;  // what this fault leaves alone
};

const CardRow card_rows[] = {
    {"read_the_lights", "right", says::right_with_slips, {}, {}},
    {"read_the_lights", "red for white", says::red_for_white, Measure::right_percent, Measure::median_s},
    {"read_the_lights", "slow", says::right_but_slowly, Measure::median_s, Measure::right_percent},
    {"read_the_picture", "right", says::sees_angle, {}, {}},
    {"read_the_picture", "high is normal", says::high_is_normal, Measure::bias_deg, {}},
    {"where_would_we_hit", "right", says::marks_still_point, {}, {}},
    {"where_would_we_hit", "marks the aim point", says::marks_aim_point, Measure::impact_error_ft, {}},
    {"where_would_we_hit", "marks too far", says::marks_too_far, Measure::bias_deg, {}},
    {"one_control", "right", says::right_with_slips, {}, {}},
    {"one_control", "pull is climb", says::pull_is_climb, Measure::right_percent, {}},
    {"quadrant_snap", "right", says::right_with_slips, {}, {}},
    {"quadrant_snap", "nose for all", says::nose_for_all, Measure::right_percent, Measure::median_s},
    {"gate_call", "right", says::right, {}, {}},
    {"gate_call", "presses on", says::presses_on, Measure::misses, {}},
    {"gate_call", "calls all off", says::calls_all_off, Measure::right_percent, Measure::misses},
    {"find_the_fault", "right", says::sees_fault, {}, {}},
    {"find_the_fault", "sees it late", says::sees_late, Measure::right_percent, {}},
    {"find_the_fault", "names another", says::names_another, Measure::right_percent, {}},
};

struct FlownRow {
    const char* drill;
    const char* student;
    StudentHands hands;
    std::optional<Measure> fails;
    std::optional<Measure> still_met;
};

const FlownRow flown_rows[] = {
    {"speed_by_attitude", "right", flies::speed_by_attitude, {}, {}},
    {"speed_by_attitude", "never trims", flies::speed_untrimmed, Measure::retrim_s, Measure::bump_ft},
    {"speed_by_attitude", "lets the nose rise", flies::speed_ballooning, Measure::bump_ft, Measure::retrim_s},
    {"path_by_power", "right", flies::path_by_power, {}, {}},
    {"path_by_power", "too much", flies::path_by_big_power, Measure::crossings_per_min, {}},
    {"path_by_power", "nothing", flies::lever_untouched, Measure::path_percent, Measure::crossings_per_min},
    {"go_around", "right", flies::go_around, {}, {}},
    {"go_around", "half power", flies::go_around_half_power, Measure::full_power_s, Measure::decision_s},
    {"go_around", "flap first", flies::go_around_flap_first, Measure::flap_out_of_turn, Measure::decision_s},
    {"go_around", "late", flies::go_around_late, Measure::decision_s, Measure::full_power_s},
    {"go_around", "never trims", flies::go_around_untrimmed, Measure::steps_in_order, Measure::full_power_s},
    {"student_tells", "right", flies::tells_well, {}, {}},
    {"student_tells", "nose only", flies::tells_nose_only, Measure::speed_percent, {}},
    {"student_tells", "nothing", flies::tells_nothing, Measure::path_percent, {}},
};

template <class Row>
void check_row(const Row& row, const DrillResult& result) {
    CAPTURE(row.drill);
    CAPTURE(row.student);
    CAPTURE(result.seed);
    CAPTURE(told(result));
    CHECK(result.finished);
    CHECK(result.passed() == !row.fails.has_value());
    if (row.fails) CHECK_FALSE(met(result, *row.fails));
    if (row.still_met) CHECK(met(result, *row.still_met));
}

}  // namespace

TEST_CASE(
    "drills: the right student passes the cards of every drill, a wrong one fails for the right reason") {
    for (const CardRow& row : card_rows)
        for (std::uint64_t seed = first_seed; seed < first_seed + seeds; ++seed)
            check_row(row, result_of(take_quiz(row.drill, seed, row.answerer)));
}

TEST_CASE("drills: the right hands pass every flown drill, wrong ones fail for the right reason") {
    for (const FlownRow& row : flown_rows)
        for (std::uint64_t seed = first_seed; seed < first_seed + seeds; ++seed)
            check_row(row, fly_drill(row.drill, seed, row.hands).result);
}

TEST_CASE("drills: every kind is in the table, with a student who passes and one who does not") {
    for (const std::string_view kind : drill_kind_names) {
        CAPTURE(kind);
        int passes = 0, fails = 0;
        const auto count = [&](const auto& row) {
            if (row.drill == kind) ++(row.fails ? fails : passes);
        };
        std::ranges::for_each(card_rows, count);
        std::ranges::for_each(flown_rows, count);
        CHECK(passes == 1);
        CHECK(fails >= 1);
    }
}
