// What to do next time, in the words of a school: which control is named first depends on its convention, and
// nothing else does.
#pragma once

#include "review/criteria.h"
#include "review/diagnosis/fault.h"

namespace slopewise {

// The fault's own correction, which names power first where the path is mended; for a school whose students
// mend it with pitch, the same advice led by the nose. Both conventions move both controls: pitch and power
// together, the speed held (Airplane Flying Handbook, FAA-H-8083-3, stabilised approach; read in an extract).
std::string_view correction_of(const Fault& fault, Convention convention);

}  // namespace slopewise
