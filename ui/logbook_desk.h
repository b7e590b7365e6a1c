// What is done with the attempts of the logbook by a wish of the user.
#pragma once

#include "ui/app.h"

namespace slopewise {

// Loads an attempt to be shown, flown again in the replay, or compared there with another.
void open_attempt(App& app, std::string_view id, Host& host);
void replay_attempt(App& app, std::string_view id, Host& host);
void compare_attempts(App& app, std::string_view id, std::string_view other_id, Host& host);

// It has come: what it was wanted for is done.
void use_loaded(App& app, KeptAttempt attempt, Host& host);

// The attempt as a file for the user.
void save_attempt(App& app, std::string_view id, Host& host);

// Deleted, it is out of every list and figure and can be brought back; erased, it is gone.
void delete_attempt(App& app, std::string_view id, Host& host);
void bring_back_attempt(App& app, std::string_view id, Host& host);
void erase_attempt(App& app, std::string_view id, Host& host);

// Who flies from now on; at most 40 characters.
void choose_student(App& app, std::string_view name, Host& host);

// The student's whole file, deleted attempts left out; a file of attempts taken in.
void export_student(App& app, Host& host);
void import_file(App& app, Host& host);

// "the attempt 1795654559123-7f3a09bc": how a message names one.
std::string attempt_words(const App& app, std::string_view id);

}  // namespace slopewise
