#include "drill/measure.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace slopewise {

std::optional<Measure> measure_of(std::string_view id) {
    for (std::size_t i = 0; i < measure_words.size(); ++i)
        if (measure_words[i].id == id) return static_cast<Measure>(i);
    return std::nullopt;
}

const Figure* find_figure(std::span<const Figure> figures, Measure measure) {
    const auto found =
        std::ranges::find_if(figures, [&](const Figure& figure) { return figure.measure == measure; });
    return found == figures.end() ? nullptr : &*found;
}

std::string value_text(Measure measure, double value) {
    const MeasureWords& words = words_of(measure);
    if (words.yes_or_no) return value != 0.0 ? "yes" : "no";
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", words.decimals, value);
    const bool only_zeros = std::string_view(text).find_first_of("123456789") == std::string_view::npos;
    const bool signless = text[0] == '-' && only_zeros;  // never "-0"
    return std::string(signless ? text + 1 : text) + std::string(words.unit);
}

std::string figure_text(const Figure& figure) {
    return std::string(words_of(figure.measure).words) + ": " + value_text(figure.measure, figure.value);
}

}  // namespace slopewise
