// The short phrases that several drills say.
#pragma once

#include <cstdio>
#include <string>

namespace slopewise {

template <class... Values>
std::string drill_format(const char* pattern, Values... values) {
    char text[240];
    std::snprintf(text, sizeof text, pattern, values...);
    return text;
}

// "0.5° (53 ft) high", "on the path" within a twentieth of a degree. `distance_m`: eye to aim point.
std::string path_phrase(double error_rad, double distance_m);

// The same with a capital letter at its beginning.
std::string sentence(std::string words);

// "1 NM", "0.7 NM".
std::string distance_phrase(double distance_m);

// "230 ft short", "40 ft beyond", "at the aim point" within 5 ft. Positive beyond.
std::string place_phrase(double beyond_m);

}  // namespace slopewise
