// Good texts for the readers to begin from.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "logbook/kept_attempt.h"

namespace slopewise::test {

// The shipped files in a folder of assets/, "lessons".
std::vector<std::string> shipped_texts(std::string_view folder);

// Three seconds of a flight, which an attempt's reader is to take in; its identity ends in `number`.
const Recording& short_recording();
KeptAttempt short_attempt(unsigned number = 1);

}  // namespace slopewise::test
