#include "ui/judgement_view.h"

#include "base/units.h"
#include "debrief/estimate.h"
#include "debrief/sheet.h"
#include "review/diagnosis/correction.h"
#include "ui/format.h"

namespace slopewise {
namespace {

constexpr std::size_t most_moments = 12;  // more of them say "all along", which the first says as well

// No decision was due at the gate: it lay above where the approach began, or below where it ended.
std::string no_decision_sentence(const ReviewedFlight& flight, const std::string& gate) {
    const double began_ft =
        flight.track.points.empty() ? 0.0 : ft_from_m(flight.track.points.front().wheel_height_m);
    return began_ft < flight.criteria.decision_gate_ft ? "It began below the gate at " + gate + "."
                                                       : "The gate at " + gate + " was not reached.";
}

std::string decision_sentence(const DecisionView& view, Decision decision) {
    const std::string done = view.continued ? "continued" : "gone around";
    const std::string was = view.stable ? "Stable and " : "Not stable and ";
    switch (decision) {
    case Decision::right: return was + done + ": right.";
    case Decision::miss: return was + done + ": a miss.";
    case Decision::cautious: return was + done + ": cautious, which is no fault.";
    case Decision::none: break;
    }
    return "";
}

FaultView card_of(const Fault& fault, Convention convention) {
    FaultView view;
    view.title = fault.title;
    view.symptom = fault.symptom;
    view.cause = fault.cause;
    view.could_lead_to = fault.could_lead_to;
    view.correction = correction_of(fault, convention);
    return view;
}

// Of three attempts, the fault that came most often is the one to work on.
void sum_up(const LastRuns& last, Convention convention, SummaryView& view) {
    view.last_runs = last_runs_view(last);
    const Fault* fault = find_fault(last.fault);
    if (fault == nullptr) {
        view.fault = {};
        view.fault.none = view.last_runs.most_often;
    } else if (fault->title != view.fault.title) {
        view.fault = card_of(*fault, convention);
    }
}

std::string run_name(std::size_t i, std::size_t count) {
    if (i + 1 == count) return "This run";
    return i + 2 == count ? "One before" : "Two before";
}

}  // namespace

DecisionView decision_view(const ReviewedFlight& flight) {
    const Decision decision = flight.review.decision;
    const Stability* stability = stability_at(flight.review, flight.criteria.decision_gate_ft);
    DecisionView view;
    view.gate = number_words(flight.criteria.decision_gate_ft) + " ft";
    view.known = stability != nullptr && decision != Decision::none;
    view.stable = stability != nullptr && stability->stable();
    view.continued = view.stable ? decision == Decision::right : decision == Decision::miss;
    view.words = decision == Decision::none ? no_decision_sentence(flight, view.gate)
                                            : decision_sentence(view, decision);
    return view;
}

FaultView fault_view(const ReviewedFlight& flight) {
    const Finding* priority = flight.diagnosis.priority();
    if (priority == nullptr) {
        FaultView view;
        view.none = no_fault_words(flight);
        return view;
    }
    FaultView view = card_of(*priority->fault, flight.criteria.convention);
    const std::vector<std::size_t>& moments = priority->evidence.moments;
    for (const std::size_t point : moments) {
        view.moments_nm.push_back(nm_from_m(flight.track.points[point].distance_m));
        if (moments.size() > most_moments) break;
    }
    for (std::size_t i = 1; i < flight.diagnosis.findings.size(); ++i)
        view.others += (view.others.empty() ? "Also seen: " : "; ") +
                       std::string(flight.diagnosis.findings[i].fault->title);
    if (!view.others.empty()) view.others += ".";
    return view;
}

SheetDetail sheet_detail(const DebriefState& state) {
    if (state.detail_asked) return SheetDetail::full;
    switch (run_feedback(state.earlier_runs)) {
    case RunFeedback::whole: return SheetDetail::full;
    case RunFeedback::brief: return SheetDetail::brief;
    case RunFeedback::last_three: break;
    }
    return SheetDetail::last_three;
}

LastRunsView last_runs_view(const LastRuns& last) {
    LastRunsView view;
    view.table.title = "The last runs";
    view.table.heads = {"", "Path bias", "scatter", "Speed bias", "scatter", "Decision"};
    view.table.units = {"", "\u00b0", "\u00b0", "kt", "kt", ""};
    for (std::size_t i = 0; i < last.rows.size(); ++i) {
        const AttemptRow& row = last.rows[i];
        view.table.rows.push_back({run_name(i, last.rows.size()),
                                   signed_words(deg_from_rad(row.path_rad.bias), 2),
                                   number_words(deg_from_rad(row.path_rad.scatter), 2),
                                   signed_words(kt_from_mps(row.speed_mps.bias), 1),
                                   number_words(kt_from_mps(row.speed_mps.scatter), 1),
                                   std::string(decision_names[static_cast<std::size_t>(row.decision)])});
    }
    const Fault* fault = find_fault(last.fault);
    view.most_often = fault == nullptr ? "No fault stands out in these runs."
                                       : "Most often: " + std::string(fault->title) + ", in " +
                                             std::to_string(last.fault_times) + " of " +
                                             std::to_string(last.rows.size()) + ".";
    return view;
}

void judge(const FlightSession& session, const DebriefState& state, SummaryView& view) {
    const ReviewedFlight& flight = *session.reviewed;
    const Circumstances& circumstances = session.recording.circumstances;
    view.detail = sheet_detail(state);
    if (circumstances.estimate) view.estimate = estimate_sentence(*circumstances.estimate, flight);
    view.strongest = strongest_sentence(flight.review.summary);
    view.decision = decision_view(flight);
    view.fault = fault_view(flight);
    if (view.detail == SheetDetail::last_three)
        sum_up(last_runs(state.earlier_rows, attempt_row(flight, circumstances)), flight.criteria.convention,
               view);
}

}  // namespace slopewise
