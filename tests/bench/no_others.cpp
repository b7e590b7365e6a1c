// Where the libraries of others are not built in.
#include "tests/bench/others.h"

namespace slopewise::bench {

void measure_others(const std::string&, const Course&) {}

}  // namespace slopewise::bench
