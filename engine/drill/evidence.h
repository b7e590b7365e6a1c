// What the drills say to the list of evidence.
#pragma once

#include <span>

#include "drill/result.h"
#include "progress/evidence_list.h"

namespace slopewise {

// From results in the order they were made: the latest finished one of each kind counts, so that the list
// shows what can be done now and not what once went well. The knowledge of what each control does is the
// drill of one control at a time, all criteria met.
DrillResults evidence_of(std::span<const DrillResult> results);

}  // namespace slopewise
