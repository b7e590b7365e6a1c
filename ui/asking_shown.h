// What the class is shown of a question, and what is hidden from it meanwhile.
#pragma once

#include <string>

namespace slopewise {

struct App;
struct QuestionSet;
struct Question;

// "Energy states: 2 of 6".
std::string place_words(const QuestionSet& set, int question);

// The run into `RoomShown::ask`; nothing of what is right before the reveal.
void show_run(App& app);

// What the question hides, and the words over the picture, which would tell; remembers what was shown.
void hide_aids(App& app, const Question& question);
// As it was before the question hid some of it, with the path from the side where the question wants it.
void show_aids_after(App& app, const Question& question);
// As it was before; nothing where no question has a say.
void bring_aids_back(App& app);

}  // namespace slopewise
