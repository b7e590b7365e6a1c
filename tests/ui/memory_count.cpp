#include "tests/memory_count.h"

#include <atomic>
#include <cstdlib>
#include <new>

namespace {

std::atomic<long> taken{0};

}  // namespace

namespace slopewise::test {

long memory_taken() { return taken; }

void* counted_memory(std::size_t bytes) {
    ++taken;
    void* memory = std::malloc(bytes > 0 ? bytes : 1);
    if (memory == nullptr) std::abort();
    return memory;
}

}  // namespace slopewise::test

using slopewise::test::counted_memory;

void* operator new(std::size_t bytes) { return counted_memory(bytes); }
void* operator new[](std::size_t bytes) { return counted_memory(bytes); }
void* operator new(std::size_t bytes, const std::nothrow_t&) noexcept { return counted_memory(bytes); }
void* operator new[](std::size_t bytes, const std::nothrow_t&) noexcept { return counted_memory(bytes); }
void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete[](void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }
void operator delete[](void* memory, std::size_t) noexcept { std::free(memory); }
