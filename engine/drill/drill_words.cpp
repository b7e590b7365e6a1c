#include "drill/drill_words.h"

#include <cmath>

#include "base/units.h"

namespace slopewise {

std::string path_phrase(double error_rad, double distance_m) {
    const double error_deg = deg_from_rad(error_rad);
    if (std::abs(error_deg) < 0.05) return "on the path";
    return drill_format("%.1f\u00b0 (%.0f ft) %s", std::abs(error_deg),
                        std::abs(ft_from_m(distance_m * error_rad)), error_deg < 0.0 ? "low" : "high");
}

std::string sentence(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::string distance_phrase(double distance_m) {
    return drill_format("%.3g NM", std::round(100.0 * nm_from_m(distance_m)) / 100.0);
}

std::string place_phrase(double beyond_m) {
    const double beyond_ft = ft_from_m(beyond_m);
    if (std::abs(beyond_ft) < 5.0) return "at the aim point";
    return drill_format("%.0f ft %s the aim point", std::abs(beyond_ft),
                        beyond_ft < 0.0 ? "short of" : "beyond");
}

}  // namespace slopewise
