#include "tests/engine/source_figures.h"

#include "base/units.h"
#include "progress/cusum.h"
#include "progress/evidence_list.h"
#include "progress/run_feedback.h"
#include "progress/sessions.h"
#include "progress/trend.h"
#include "review/aim_point.h"
#include "review/answers.h"
#include "review/bands.h"
#include "review/configuration.h"
#include "review/control_activity.h"
#include "review/diagnosis/detectors.h"
#include "review/go_around.h"
#include "review/lever_step.h"
#include "tests/fixtures.h"

namespace slopewise::test {
namespace {

// Whether the words of a fault's card tell a figure.
bool card_tells(std::string_view fault, double figure) {
    const Fault& card = *find_fault(fault);
    for (const std::string_view words : {card.symptom, card.cause, card.could_lead_to, card.correction})
        for (const ToldFigure& told : told_figures(words))
            if (told.value == figure) return true;
    return false;
}

// The figures of an item of the evidence list, as its sentence has them.
std::vector<double> evidence_figures(std::size_t item) {
    std::vector<double> figures;
    for (const ToldFigure& told : told_figures(evidence_list({}, {}, {})[item].what))
        figures.push_back(told.value);
    return figures;
}

void hold_measures(HeldFigures& held) {
    held.tells("measured_points", {1.0 / (track_interval_ticks * tick_s)});
    std::vector<double> ends;  // of the bands, as their names tell them
    for (const std::string_view name : band_names) ends.push_back(told_figures(name).back().value);
    held.tells("measured_bands", ends);
    held.tells("measured_turns", {100.0 * stick_reversal, 100.0 * lever_reversal});
    held.tells("measured_inputs", {100.0 * stick_input, 100.0 * lever_input});
    held.tells("measured_answers", {light_answer_s, overshoot_s});
    held.tells("measured_lever_step", {lever_step_s});
    held.tells("measured_flap", {balloon_s, retrim_within_s});
    held.tells("measured_held_stick", {held_over_s});
    held.tells("measured_aim", {aim_heights_ft.begin(), aim_heights_ft.end()});
    held.tells("measured_go_around", {go_around_look_s});
}

// A card tells its figure in words as well.
void hold_faults(HeldFigures& held) {
    using namespace detect;
    held.tells("fault_sink", {excessive_sink_fpm});
    CHECK(card_tells("excessive_sink", excessive_sink_fpm));
    held.tells("fault_flap", {late_flap_ft});
    CHECK(card_tells("late_flap", late_flap_ft));
    held.tells("fault_balloon", {balloon_ft});
    held.tells("fault_idle", {idle_below_ft});
    CHECK(card_tells("idle_power", idle_below_ft));
    held.tells("fault_inside", {100.0 * most_inside, 100.0 * least_inside});
    held.tells("fault_near_ground", {near_ground_ft});
    for (const char* fault : {"ducking_under", "flattening", "chasing_lights"})
        CHECK(card_tells(fault, near_ground_ft));
}

void hold_learning(HeldFigures& held) {
    held.tells("feedback_runs", {whole_runs, summed_runs});
    const CusumParameters usual;
    const double inadequate = 100.0 * usual.inadequate_failure_rate;
    held.tells("curve_rates",
               {inadequate, 100.0 * usual.adequate_failure_rate, usual.limit, strict_cusum_limit});
    held.tells("curve_scores", {pass_score(usual), -failure_score(usual)});
    // Of these test_learning_curve.cpp holds the share and the number of attempts.
    held.tells("curve_errors", {inadequate, 24, 100, usual.limit, 30});
    held.tells("trend_median", {double(median_window)});
    held.tells("session_gap", {double(session_gap_s) / 3600.0});
    held.tells("session_end", {session_cap_s / 60.0, session_cap_attempts, worsening_in_a_row});
    held.tells("refresher", {double(refresher_after_s) / 86400.0});
    held.tells("evidence_lights", evidence_figures(0));
    held.tells("evidence_picture", evidence_figures(1));
    held.tells("evidence_variants", evidence_figures(5));
}

std::vector<AttemptRow> decided(int count, int unstable) {
    std::vector<AttemptRow> rows(static_cast<std::size_t>(count));
    for (AttemptRow& row : rows) {
        row.decision = Decision::right;
        row.gate_reached = true;
        row.stable_at_gate = unstable-- <= 0;
    }
    return rows;
}

// The first attempt of each day, two days apart, passed or not.
std::vector<AttemptRow> days(const std::vector<bool>& passed) {
    std::vector<AttemptRow> rows;
    for (const bool one : passed) {
        rows.push_back(decided(1, one ? 0 : 1)[0]);
        rows.back().started_unix_s = (1 + 2 * static_cast<std::int64_t>(rows.size())) * 86400;
    }
    return rows;
}

// Told in words ("the last ten decisions"): as many as the entries tell are just enough.
void hold_evidence(HeldFigures& held) {
    const auto complete = [](std::size_t item, const std::vector<AttemptRow>& rows) {
        return evidence_list(rows, {}, {})[item].complete;
    };
    held.tells("evidence_decisions", {10, 3});
    CHECK(complete(3, decided(10, 3)));
    CHECK_FALSE(complete(3, decided(9, 3)));
    CHECK_FALSE(complete(3, decided(10, 2)));
    held.tells("evidence_days", {2, 3});
    CHECK(complete(4, days({true, false, true})));
    CHECK_FALSE(complete(4, days({false, false, true})));
    CHECK_FALSE(complete(4, days({true, true})));
}

}  // namespace

void hold_what_is_judged(HeldFigures& held) {
    hold_measures(held);
    hold_faults(held);
    hold_learning(held);
    hold_evidence(held);
}

}  // namespace slopewise::test
