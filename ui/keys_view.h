// The sheet about keys and fingers: its view and its words.
#pragma once

#include <string>

#include "ui/app.h"

namespace slopewise {

// The keys of the sheet itself; where a row asks for a key, the next one that goes down.
Actions read_key_sheet(const RawInput& raw, const KeyDesk& desk);

// What a command does, by what the stick keys do to the nose and which hand has the stick: "nose up".
std::string what_key_does(KeyCommand command, const Settings& settings);

// With sticky keys: what is held, in place of the caption when there is none; a warning to lower the nose
// says so when it is the nose that is held up.
void tell_what_is_held(const App& app, FlightView& view);

void keys_view(const App& app, KeysView& view);
std::string keys_text(const KeysView& view);

}  // namespace slopewise
