// A replay of an invented approach from 3 NM: high at first, then low and slow, flap on the way, marks of
// every kind.
#pragma once

#include "ui/view_replay.h"

namespace slopewise {

ReplayView sample_replay();

// The same compared with another attempt, and with a recording that no longer flies the same.
ReplayView sample_comparison();

}  // namespace slopewise
