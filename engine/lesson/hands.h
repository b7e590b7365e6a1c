// Who has which control. An instructor gives the student one control at a time, then both (task sharing,
// common practice of flying schools, no source).
#pragma once

#include <array>
#include <string_view>

#include "flight/controls.h"

namespace slopewise {

// What the student has: everything; the throttle alone; stick, trim and flap; nothing, and watches.
enum class Hands { both, power_only, pitch_only, watch };
inline constexpr std::array<std::string_view, 4> hands_names{"both", "power_only", "pitch_only", "watch"};

constexpr bool student_has_power(Hands hands) { return hands == Hands::both || hands == Hands::power_only; }
constexpr bool student_has_pitch(Hands hands) { return hands == Hands::both || hands == Hands::pitch_only; }

// What the aeroplane is given: from each the controls that they have. The flap goes with the pitch. To go
// around is for either to say, and counts from then on: one who goes around has all controls.
Controls shared(Hands hands, const Controls& student, const Controls& instructor);

}  // namespace slopewise
