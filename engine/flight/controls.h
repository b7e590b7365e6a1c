// The controls as the flight sees them: small integers, so that live and replayed flights are the same.
#pragma once

#include <cstdint>

namespace slopewise {

// What the hands hold, in full precision.
struct ControlPositions {
    double stick = 0.0;      // -1 pushed ... +1 pulled, from the trimmed position
    double throttle = 0.0;   // lever, 0 closed ... 1 full
    double trim = 0.0;       // wheel, -1 nose down ... +1 nose up
    int flap = 0;            // setting
    bool go_around = false;  // the student says so
};

// The same in 16-bit steps.
struct Controls {
    std::int16_t stick = 0;
    std::uint16_t throttle = 0;
    std::int16_t trim = 0;
    std::uint8_t flap = 0;
    bool go_around = false;

    friend bool operator==(const Controls&, const Controls&) = default;
};

// Out-of-range positions are limited; a position that is not a number counts as zero.
Controls quantize(const ControlPositions& positions);
ControlPositions positions_of(const Controls& controls);

}  // namespace slopewise
