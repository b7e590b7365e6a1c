// Conversions between the pressures of an altimeter's subscale and SI, as those of base/units.h.
#pragma once

namespace slopewise {

namespace factor {
inline constexpr double pa_per_hpa = 100.0;
// The conventional inch of mercury: 3.386 389 kPa (NIST SP 811, appendix B.8; recalled).
inline constexpr double pa_per_inhg = 3386.389;
}  // namespace factor

constexpr double pa_from_hpa(double hpa) { return hpa * factor::pa_per_hpa; }
constexpr double hpa_from_pa(double pa) { return pa / factor::pa_per_hpa; }
constexpr double pa_from_inhg(double inhg) { return inhg * factor::pa_per_inhg; }
constexpr double inhg_from_pa(double pa) { return pa / factor::pa_per_inhg; }

}  // namespace slopewise
