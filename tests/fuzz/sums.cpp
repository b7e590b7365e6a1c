#include "tests/fuzz/sums.h"

#include "logbook/text_sum.h"

namespace slopewise::test {

std::string with_sum(std::string_view text, std::string_view before, std::string_view from) {
    std::string mended(text);
    const std::size_t sum = mended.find(before), summed = mended.find(from);
    if (sum == std::string::npos || summed == std::string::npos) return mended;
    const std::size_t at = sum + before.size();
    if (at + text_sum_digits > summed) return mended;
    mended.replace(at, text_sum_digits, text_sum(std::string_view(mended).substr(summed)));
    return mended;
}

std::string attempt_with_sum(std::string_view text) {
    while (text.ends_with('\n') || text.ends_with('\r')) text.remove_suffix(1);
    return with_sum(text, "\"sum\":\"", "\"id\":");
}

std::string rows_with_sum(std::string_view line) {
    while (line.ends_with('\n') || line.ends_with('\r')) line.remove_suffix(1);
    constexpr std::string_view key = "\"rows\":[";
    const std::size_t at = line.find(key);
    if (at == std::string_view::npos) return std::string(line);
    return with_sum(line, "\"sum\":\"", line.substr(at + key.size()));
}

}  // namespace slopewise::test
