// Thrust of a piston engine with a propeller: momentum theory with a figure for the losses, so that it
// is finite at rest and tends to efficiency x power / speed; a closed throttle gives drag.
#pragma once

#include "flight/aircraft.h"

namespace slopewise {

// Share of sea-level power left at a density ratio (0.5 to 1.2): Gagg and Ferrar, sigma - (1 - sigma)/7.55.
double power_density_factor(double density_ratio);

// Net thrust (N) at a power fraction (0 to 1 of what the engine can give here), true airspeed (m/s) and
// density (kg/m3). Momentum theory: T (V + v) = eta P and T = 2 rho A v (V + v). The windmilling drag
// fades in linearly as the power fraction falls to zero.
double net_thrust_n(const Engine& engine, double power_fraction, double tas_mps, double density_kgpm3);

// The power fraction that gives a net thrust; may come out below 0 or above 1, where it cannot be had.
double power_fraction_for_thrust(const Engine& engine, double thrust_n, double tas_mps, double density_kgpm3);

}  // namespace slopewise
