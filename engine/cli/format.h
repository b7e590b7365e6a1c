// Plain text for the terminal.
#pragma once

#include <cstdio>
#include <string>

namespace slopewise::cli {

// As printf does, into a string of at most 299 bytes.
template <class... Values>
std::string format(const char* pattern, Values... values) {
    char buffer[300];
    std::snprintf(buffer, sizeof buffer, pattern, values...);
    return buffer;
}

// "  ground speed      65.1 kt\n": a name and its value, in two columns.
inline std::string row(const std::string& name, const std::string& value) {
    return format("  %-26s %s\n", name.c_str(), value.c_str());
}

}  // namespace slopewise::cli
