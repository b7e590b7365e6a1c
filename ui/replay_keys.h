// The keys of the replay; a presenter's clicker sends page up and page down.
#pragma once

#include "ui/input.h"

namespace slopewise {

Actions replay_shortcuts(const RawInput& raw);

// The same in words.
std::vector<KeyHint> replay_key_hints();

}  // namespace slopewise
