#include "review/diagnosis/correction.h"

#include <algorithm>
#include <array>

namespace slopewise {
namespace {

struct ByPitch {
    std::string_view fault, correction;
};

// Only where the usual words would contradict the convention.
constexpr std::array<ByPitch, 5> by_pitch{{
    {"stretching",
     "Nose up and power together, never the nose alone. If low and slow at the gate, go around."},
    {"flap_raised_low", "Leave the flap. The nose mends the path, with power for the speed."},
    {"wind_ignored",
     "In a headwind sink less from the start: the nose a little higher, with more power at once. Still low "
     "at "
     "the gate: go around."},
    {"diving", "Nose down and power off together, never the nose alone; more flap."},
    {"late_power", "Act on the trend, not on the lamp: the nose first, the power with it, small and early."},
}};

}  // namespace

std::string_view correction_of(const Fault& fault, Convention convention) {
    if (convention != Convention::pitch_for_path) return fault.correction;
    const auto found = std::ranges::find(by_pitch, fault.id, &ByPitch::fault);
    return found != by_pitch.end() ? found->correction : fault.correction;
}

}  // namespace slopewise
