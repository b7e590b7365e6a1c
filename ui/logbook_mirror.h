// The logbook's two sheets as plain text: of the list at most the fifty newest attempts, the chosen one
// marked.
#pragma once

#include <string>

#include "ui/view_logbook.h"

namespace slopewise {

inline constexpr std::size_t most_rows_told = 50;

std::string logbook_text(const LogbookView& sheet);
std::string progress_text(const ProgressView& sheet);

}  // namespace slopewise
