#include "base/result.h"

namespace slopewise {

std::string to_text(const Problem& problem) {
    std::string text = problem.file;
    if (problem.line > 0) text += ":" + std::to_string(problem.line);
    text += ": ";
    if (!problem.path.empty()) text += problem.path + " ";
    text += problem.what;
    if (!problem.allowed.empty()) text += "; allowed: " + problem.allowed;
    return text;
}

}  // namespace slopewise
