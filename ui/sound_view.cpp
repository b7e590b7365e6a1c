#include "ui/sound_view.h"

#include <cmath>

#include "flight/propeller.h"
#include "flight/propeller_speed.h"
#include "world/atmosphere.h"

namespace slopewise {
namespace {

constexpr double rolls_from_mps = 1.0;  // slower, tyres are not heard in a cabin

}  // namespace

SoundView chosen_sound(const Settings& settings) {
    SoundView sound;
    sound.audible = settings.sound;
    sound.volume = settings.volume;
    return sound;
}

SoundView sound_view(const FlightSession& session, bool stall_warning, const Settings& settings) {
    const Attempt& attempt = session.attempt;
    const FlightForces forces = forces_now(session.scenario, attempt);
    const double share = forces.air.density_kgpm3 / standard_air::density_kgpm3;
    SoundView sound = chosen_sound(settings);
    sound.audible = sound.audible && !session.paused && !waits_for_answer(session);
    sound.power = attempt.flight.power;
    sound.rpm = propeller_rpm(session.scenario.aircraft.engine,
                              attempt.flight.power * power_density_factor(share), forces.tas_mps);
    sound.airspeed_kt = kt_from_mps(forces.tas_mps * std::sqrt(share));  // of the same dynamic pressure
    sound.stall_warning = stall_warning;
    sound.on_runway = attempt.on_ground && std::abs(attempt.flight.vx_mps) > rolls_from_mps;
    sound.gate_chimes = session.gates.chimes;
    return sound;
}

}  // namespace slopewise
