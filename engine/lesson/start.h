// Where and how a flight begins: trimmed and steady.
#pragma once

namespace slopewise {

struct Start {
    double distance_m = 0.0;  // along the ground from the eye to the aim point
    double offset_rad = 0.0;  // of the eye's elevation from the nominal path, positive high
    double path_rad = 0.0;    // of the flight over the ground, negative down
    double cas_mps = 0.0;
    int flap = 0;

    friend bool operator==(const Start&, const Start&) = default;
};

}  // namespace slopewise
