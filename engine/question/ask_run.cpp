#include "question/ask_run.h"

#include <algorithm>
#include <numeric>

namespace slopewise {
namespace {

int right_of(const std::vector<int>& hands, int right) {
    const auto at = static_cast<std::size_t>(right);
    return right >= 0 && at < hands.size() ? hands[at] : 0;
}

std::string share_words(const std::vector<int>& hands, int right) {
    return std::to_string(right_of(hands, right)) + " of " + std::to_string(hands_in(hands));
}

}  // namespace

bool is_over(AskStage stage) { return stage == AskStage::revealed || stage == AskStage::ran_on; }

AskStep next_step(const AskRun& run, int right, bool runs_on) {
    switch (run.stage) {
    case AskStage::ready: return run.question < run.questions ? AskStep::ask : AskStep::end;
    case AskStage::asked: return is_worth_discussing(run.first, right) ? AskStep::discuss : AskStep::reveal;
    case AskStage::discussed: return AskStep::reveal;
    case AskStage::revealed:
        if (runs_on) return AskStep::run_on;
        break;
    case AskStage::ran_on: break;
    }
    return run.question + 1 < run.questions ? AskStep::ask : AskStep::end;
}

void take_step(AskRun& run, AskStep step, int choices) {
    switch (step) {
    case AskStep::ask:
        if (is_over(run.stage)) ++run.question;
        run.stage = AskStage::asked;
        run.first.assign(static_cast<std::size_t>(choices), 0);
        run.second.clear();
        break;
    case AskStep::discuss:
        run.stage = AskStage::discussed;
        run.second.assign(run.first.size(), 0);
        break;
    case AskStep::reveal:
        run.stage = AskStage::revealed;
        if (hands_in(run.second) == 0) run.second.clear();  // it was talked over and not counted again
        break;
    case AskStep::run_on: run.stage = AskStage::ran_on; break;
    case AskStep::end: go_to_question(run, 0); break;
    }
}

void go_to_question(AskRun& run, int question) {
    if (question < 0 || question >= run.questions) return;
    run.question = question;
    run.stage = AskStage::ready;
    run.first.clear();
    run.second.clear();
}

bool count_hand(AskRun& run, int choice, int more) {
    if (run.stage != AskStage::asked && run.stage != AskStage::discussed) return false;
    std::vector<int>& hands = run.stage == AskStage::asked ? run.first : run.second;
    const auto at = static_cast<std::size_t>(choice);
    if (choice < 0 || at >= hands.size()) return false;
    hands[at] = std::max(0, hands[at] + more);
    return true;
}

int hands_in(const std::vector<int>& hands) { return std::accumulate(hands.begin(), hands.end(), 0); }

bool is_worth_discussing(const std::vector<int>& hands, int right) {
    const int all = hands_in(hands);
    if (all == 0) return false;
    const double share = static_cast<double>(right_of(hands, right)) / all;
    return share >= least_right_to_discuss && share <= most_right_to_discuss;
}

std::string hands_words(const std::vector<int>& first, const std::vector<int>& second, int right) {
    if (hands_in(first) == 0) return "";
    std::string words = share_words(first, right) + " right at first";
    if (hands_in(second) > 0) words += ", " + share_words(second, right) + " after talking";
    return words;
}

}  // namespace slopewise
