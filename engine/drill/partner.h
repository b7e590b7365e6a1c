// The other pilot of a shared aeroplane: a model pilot who flies what the student has not.
#pragma once

#include "drill/shared_controls.h"
#include "lesson/demonstrate.h"

namespace slopewise {

// Ready at the scenario's start. Never goes around by himself: that is the student's to say.
ModelPilot make_partner(const Scenario& scenario, std::uint64_t seed);

// What the partner holds in the coming tick; call it once a tick, whoever has what, and merge it with what
// the student holds. With the nose alone he holds the speed and nothing else, for one who saw the path would
// mend it too.
Controls partner_controls(ModelPilot& partner, ControlShare share, const Scenario& scenario,
                          const Attempt& attempt);

}  // namespace slopewise
