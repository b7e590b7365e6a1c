// What is asked of the questions of a class.
#include "ui/act.h"
#include "ui/drive_asking.h"

namespace slopewise {

void act(App& app, const DoWithQuestions& wish, Host& host) { do_with_questions(app, wish, host); }

}  // namespace slopewise
