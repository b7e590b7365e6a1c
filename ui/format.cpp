#include "ui/format.h"

#include <cmath>
#include <cstdio>

namespace slopewise {

std::string number_words(double value, int decimals) {
    char digits[48];
    std::snprintf(digits, sizeof digits, "%.*f", decimals, std::abs(value));
    const bool zero = std::string_view(digits).find_first_of("123456789") == std::string_view::npos;
    return (value < 0.0 && !zero ? "\u2212" : "") + std::string(digits);
}

std::string signed_words(double value, int decimals) {
    const std::string words = number_words(value, decimals);
    const bool positive = value > 0.0 && words.find_first_of("123456789") != std::string::npos;
    return (positive ? "+" : "") + words;
}

std::string percent_words(double fraction) { return number_words(100.0 * fraction) + " %"; }

}  // namespace slopewise
