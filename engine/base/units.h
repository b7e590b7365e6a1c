// Conversions between the pilot's units and SI. The only place where a conversion factor is written. Each is
// one multiplication, so that what came from a pilot's unit goes back into it and returns with all its bits:
// dividing gives the nearest number there is, and that is no further off than the one it came from.
#pragma once

namespace slopewise {

inline constexpr double pi = 3.14159265358979323846;
inline constexpr double gravity_mps2 = 9.80665;  // standard gravity, ISO 80000-3

namespace factor {
inline constexpr double m_per_ft = 0.3048;             // international foot, exact
inline constexpr double m_per_nm = 1852.0;             // international nautical mile, exact
inline constexpr double mps_per_kt = 1852.0 / 3600.0;  // one nautical mile an hour
inline constexpr double mps_per_fpm = 0.3048 / 60.0;
inline constexpr double rad_per_deg = pi / 180.0;
inline constexpr double rad_per_minute = pi / 10800.0;  // of arc
}  // namespace factor

constexpr double m_from_ft(double ft) { return ft * factor::m_per_ft; }
constexpr double ft_from_m(double m) { return m / factor::m_per_ft; }
constexpr double m_from_nm(double nm) { return nm * factor::m_per_nm; }
constexpr double nm_from_m(double m) { return m / factor::m_per_nm; }
constexpr double mps_from_kt(double kt) { return kt * factor::mps_per_kt; }
constexpr double kt_from_mps(double mps) { return mps / factor::mps_per_kt; }
constexpr double mps_from_fpm(double fpm) { return fpm * factor::mps_per_fpm; }
constexpr double fpm_from_mps(double mps) { return mps / factor::mps_per_fpm; }
constexpr double rad_from_deg(double deg) { return deg * factor::rad_per_deg; }
constexpr double deg_from_rad(double rad) { return rad / factor::rad_per_deg; }
constexpr double rad_from_minutes(double minutes) { return minutes * factor::rad_per_minute; }
constexpr double minutes_from_rad(double rad) { return rad / factor::rad_per_minute; }
constexpr double kelvin_from_celsius(double celsius) { return celsius + 273.15; }
constexpr double celsius_from_kelvin(double kelvin) { return kelvin - 273.15; }

}  // namespace slopewise
