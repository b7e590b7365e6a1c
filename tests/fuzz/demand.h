// What every reader of foreign bytes must keep to, whatever it is given.
#pragma once

#include <string>

#include "base/result.h"

namespace slopewise::test {

// Met by libFuzzer it ends the run, so that the bytes are kept; met by doctest it fails the test.
void demand(bool holds, const std::string& what);

// Each problem can be acted on: it names the file and says what is there.
void demand_told(const std::vector<Problem>& problems);

// Taken in, or refused with the reason: never both, never neither.
template <class T>
bool demand_answer(const Result<T>& result) {
    demand(result.ok() == result.problems.empty(), "it is taken in, or refused with the reason");
    demand_told(result.problems);
    return result.ok();
}

}  // namespace slopewise::test
