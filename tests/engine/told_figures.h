// The figures that a sentence tells, as they are written.
#pragma once

#include <cctype>
#include <cmath>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

namespace slopewise::test {

struct ToldFigure {
    double value = 0.0;
    double rounding = 0.0;  // half a unit of the last digit written
};

// "1,000 ft" is one figure, "23.2130" another; "W20" and "3NM" tell none, since a letter touches them.
inline std::vector<ToldFigure> told_figures(std::string_view words) {
    const auto is_digit = [&](std::size_t i) {
        return i < words.size() && std::isdigit(static_cast<unsigned char>(words[i])) != 0;
    };
    std::vector<ToldFigure> figures;
    for (std::size_t i = 0; i < words.size();) {
        if (!is_digit(i)) {
            ++i;
            continue;
        }
        const bool part_of_a_name = i > 0 && std::isalpha(static_cast<unsigned char>(words[i - 1])) != 0;
        std::string digits;
        int decimals = 0;
        bool after_point = false;
        for (; i < words.size(); ++i) {
            const bool thousands = words[i] == ',' && is_digit(i + 1) && is_digit(i + 2) && is_digit(i + 3);
            const bool point = words[i] == '.' && is_digit(i + 1) && !after_point;
            if (thousands) continue;
            if (!is_digit(i) && !point) break;
            digits += words[i];
            if (after_point) ++decimals;
            if (point) after_point = true;
        }
        if (!part_of_a_name)
            figures.push_back({std::strtod(digits.c_str(), nullptr), 0.5 * std::pow(10.0, -decimals)});
    }
    return figures;
}

}  // namespace slopewise::test
