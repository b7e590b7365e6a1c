// The questions of a class as they are asked: the sets, the one that is run, what was counted.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "flight/controls.h"
#include "question/answer.h"
#include "question/ask_run.h"
#include "question/tally.h"
#include "ui/display.h"

namespace slopewise {

// What the class saw before a question hid some of it.
struct AidsBefore {
    bool lights = true, dials = true, side_profile = false, names = true;
    InstrumentSet covered;
};

struct AskDesk {
    std::vector<QuestionSet> own;  // written here or taken in, by title
    std::string chosen;            // the set's id; empty: the list of sets is shown
    AskRun run;

    // What is right, worked out once the flight is frozen: of which flight, at which tick.
    std::optional<Answer> answer;
    int answered_flight = -1;
    std::int64_t answered_tick = -1;

    // Flown until the freeze, whoever has the controls: hands off to it, with the moved control after it.
    std::optional<Controls> held;

    std::optional<AidsBefore> before;  // while a question has a say in what is shown
    std::vector<AskedQuestion> tally;  // oldest first
    bool editing = false;
    bool asks_to_remove = false;
    bool waits_for_file = false;    // the next text from outside is a set of questions
    std::vector<std::string> news;  // of the last wish
};

inline constexpr std::string_view own_questions_key = "slopewise-questions";
inline constexpr std::string_view class_tally_key = "slopewise-class-answers";

}  // namespace slopewise
