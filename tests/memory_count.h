// How often memory was taken in this program, by anybody. Linked into the programs that ask.
#pragma once

#include <cstddef>

namespace slopewise::test {

long memory_taken();

// For libraries with a door of their own to memory: taken from here it is counted too.
void* counted_memory(std::size_t bytes);

}  // namespace slopewise::test
