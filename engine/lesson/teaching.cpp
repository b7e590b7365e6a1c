#include "lesson/teaching.h"

namespace slopewise {

std::string source_words(const LessonSource& source) {
    std::string words = source.of + ": ";
    if (!source.document.empty()) {
        words += source.document;
        if (!source.section.empty()) words += ", " + source.section;
        words += " (" + std::string(certainty_words[static_cast<std::size_t>(source.certainty)]) + ")";
        return words;
    }
    return words + std::string(certainty_words[static_cast<std::size_t>(source.certainty)]);
}

}  // namespace slopewise
