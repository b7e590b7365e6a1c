#include "ui/estimate_view.h"

#include <algorithm>

#include "debrief/estimate.h"
#include "ui/format.h"

namespace slopewise {
namespace {

// The third, about the gate, is asked only of who came down to it.
std::size_t asked(const FlightSession& session) { return gate_is_known(*session.reviewed) ? 3 : 2; }

std::size_t first_open(const DebriefState& state) {
    return static_cast<std::size_t>(std::ranges::find(state.estimate, -1) - state.estimate.begin());
}

int answers_to(std::size_t question) { return question == 2 ? 2 : 3; }

}  // namespace

EstimateView estimate_view(const FlightSession& session, const DebriefState& state, double now_s) {
    const std::string gate = number_words(session.criteria.decision_gate_ft) + " ft";
    EstimateView view;
    view.blank = now_s < state.questions_from_s;
    view.questions = {{"The path was mostly", {"high", "on", "low"}, state.estimate[0]},
                      {"The speed was mostly", {"fast", "on speed", "slow"}, state.estimate[1]},
                      {"Stable at " + gate, {"yes", "no"}, state.estimate[2]}};
    view.questions.resize(asked(session));
    view.asking = static_cast<int>(first_open(state));
    return view;
}

bool answer_estimate(int question, int answer, FlightSession& session, DebriefState& state) {
    const std::size_t count = asked(session);
    const std::size_t which = question < 0 ? first_open(state) : static_cast<std::size_t>(question);
    if (which >= count || answer < 0 || answer >= answers_to(which)) return false;
    state.estimate[which] = answer;
    if (first_open(state) < count) return false;
    // Answers are listed from above to below and from fast to slow.
    Estimate estimate;
    estimate.path = static_cast<Estimate::Path>(2 - state.estimate[0]);
    estimate.speed = static_cast<Estimate::Speed>(2 - state.estimate[1]);
    estimate.stable_at_gate = count > 2 && state.estimate[2] == 0;
    session.recording.circumstances.estimate = estimate;
    return true;
}

}  // namespace slopewise
