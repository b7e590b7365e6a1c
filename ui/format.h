// Numbers as words for screens: a true minus sign, no "-0", so many decimals.
#pragma once

#include <string>

namespace slopewise {

// "12", "-3.5" with a minus sign (U+2212); never a negative zero.
std::string number_words(double value, int decimals = 0);

// "+12", "-3", "0": for deviations.
std::string signed_words(double value, int decimals = 0);

// "84 %" from 0.84.
std::string percent_words(double fraction);

}  // namespace slopewise
