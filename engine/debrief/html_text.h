// Text for HTML and SVG.
#pragma once

#include <cstdio>
#include <string>
#include <string_view>

namespace slopewise {

// With & < > " ' escaped, for content and for quoted attributes; control characters are left out.
std::string html_text(std::string_view text);

// As printf does, into a string of at most 399 bytes: for numbers, not for texts.
template <class... Values>
std::string format_html(const char* pattern, Values... values) {
    char buffer[400];
    std::snprintf(buffer, sizeof buffer, pattern, values...);
    return buffer;
}

}  // namespace slopewise
