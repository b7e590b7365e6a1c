// The questions of a class: put, counted, revealed, run on.
#pragma once

#include "ui/action.h"
#include "ui/host.h"

namespace slopewise {

struct App;
struct Controls;
struct QuestionSet;
struct Question;

// Reads what is kept: one's own sets, the answers of earlier classes. What cannot be read is told and put
// aside under another key, and nothing is written over it.
void open_ask_desk(App& app, Host& host);

// A class begins, or ends: nothing is asked.
void begin_asking(App& app);

// What flies in the coming tick, when this is what would without a question: up to the freeze the approach
// comes as its question says, and after the reveal a control that was asked about stays moved.
Controls asking_controls(const App& app, const Controls& controls);

// Once a frame after the ticks: what is right is worked out when the flight stands still.
void follow_asking(App& app);

// Nothing is asked any more; what was hidden for it is shown again.
void stop_asking(App& app);

// The same, for a board or another approach: what was revealed is done with, and the next question comes
// next.
void leave_question(App& app);

// After `RoomShown` was taken over from a class window: the set that was chosen is there again, and the
// question that is shown is gone on with.
void take_up_asking(App& app, const std::string& set_id);

void do_with_questions(App& app, const DoWithQuestions& wish, Host& host);

// The chosen set, and its question that is shown; null when there is none.
const QuestionSet* chosen_set(const App& app);
const Question* chosen_question(const App& app);

}  // namespace slopewise
