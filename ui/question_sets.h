// The sets of questions: those that ship, and one's own, which are written, kept, handed over and taken in.
#pragma once

#include <string>
#include <vector>

#include "ui/app.h"

namespace slopewise {

// Shipped ones by their place, then one's own by title.
std::vector<const QuestionSet*> all_question_sets(const App& app);

// Null: there is none of that id.
const QuestionSet* find_any_set(const App& app, std::string_view id);

// What can be asked about the approach as it stands: each kind, and of the last each control.
std::vector<std::string> kinds_of_question();

void open_own_questions(App& app, Host& host);

// Writing: the wishes `edit` to `done`, and files.
void edit_questions(App& app, const DoWithQuestions& wish, Host& host);
void hand_over_questions(App& app, Host& host);

// A text from outside, where it is or should be a set of questions; false: it is something else.
bool take_in_questions(App& app, const HostText& text, Host& host);

}  // namespace slopewise
