// A set of questions as it is put to a class: which one, how far, and the hands that were counted. No clock
// and no flight of its own.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

enum class AskStage {
    ready,      // the next step asks it
    asked,      // everyone decides alone; hands are counted
    discussed,  // after talking it over: counted again
    revealed,
    ran_on,  // flown on after the reveal
};

struct AskRun {
    int questions = 0;  // of the set
    int question = 0;   // this one
    AskStage stage = AskStage::ready;
    std::vector<int> first, second;  // hands, one number a choice; none of the second before it is counted
};

// What the one key of a clicker does next.
enum class AskStep { ask, discuss, reveal, run_on, end };

// `right`: of the choices, by which the hands say whether talking it over is worth while. `runs_on`: the
// question is flown on after its reveal.
AskStep next_step(const AskRun& run, int right, bool runs_on);

// Takes the step. Asking begins the count with so many choices; from a question that was revealed, asking
// goes on to the next one.
void take_step(AskRun& run, AskStep step, int choices);

// To another question, to be asked from its beginning; one that there is not changes nothing.
// Revealed; whether it was flown on or not.
bool is_over(AskStage stage);

void go_to_question(AskRun& run, int question);

// One hand more or less for a choice, in the count that is open; never below none. False: nothing is counted
// now, or there is no such choice.
bool count_hand(AskRun& run, int choice, int more);

int hands_in(const std::vector<int>& hands);

// Talking it over gains most where between 30 and 70 per cent were right alone (Lasry, Mazur and Watkins
// 2008, Am J Phys 76, 1066, on peer instruction; from memory).
inline constexpr double least_right_to_discuss = 0.30, most_right_to_discuss = 0.70;
bool is_worth_discussing(const std::vector<int>& hands, int right);

// "12 of 14 right at first, 14 of 14 after talking"; empty where no hand was counted.
std::string hands_words(const std::vector<int>& first, const std::vector<int>& second, int right);

}  // namespace slopewise
