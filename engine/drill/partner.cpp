#include "drill/partner.h"

namespace slopewise {

ModelPilot make_partner(const Scenario& scenario, std::uint64_t seed) {
    PilotSkill skill;
    skill.goes_around = false;
    return pilot_for(scenario, skill, seed);
}

Controls partner_controls(ModelPilot& partner, ControlShare share, const Scenario& scenario,
                          const Attempt& attempt) {
    Sight sight = sight_of(scenario, attempt);
    if (share == ControlShare::power) sight.path_error_rad = 0.0;
    return fly(partner, sight, time_s(attempt));
}

}  // namespace slopewise
