// The instructor's panel of questions. What the class sees of it is in `AskShown`.
#pragma once

#include <string>
#include <vector>

namespace slopewise {

struct AskView {
    struct Set {
        std::string id, title, about;
        bool own = false;  // taken in or written here, not shipped
    };
    struct Question {
        std::string words;  // "High or low? Fast or slow?"
        std::string about;  // "1 NM, 0.8° high, 14 kt fast"
        bool asked = false;
    };

    std::vector<Set> sets;
    int set = -1;  // chosen; -1: the list of sets is shown
    std::vector<Question> questions;
    int question = -1;          // the one shown
    std::string answer, close;  // for the instructor alone: what is right, before the reveal too; why that
                                // could be argued about
    std::string
        next;  // what the clicker's next does: "Ask", "Talk it over, then count again", "Reveal", "Run on"
    bool counting = false;          // hands can be counted now
    bool can_discuss = false;       // it may be talked over now
    std::string tally;              // "12 of 14 right at first, 14 of 14 after talking"
    std::string kept;               // how many answered questions can be taken away; empty: none
    std::vector<std::string> news;  // of files; problems
    bool editing = false;
    std::string own_words;           // of the question shown, as one wrote them
    std::vector<std::string> kinds;  // what a question about the approach as it stands can ask
    bool asks_to_remove = false;     // the set: pressed once, to be pressed again
};

}  // namespace slopewise
