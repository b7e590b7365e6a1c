// A 64-bit hash of named fields (FNV-1a), for golden flights and recordings. Fields are hashed one by
// one, never a struct's raw memory: padding has no value.
#pragma once

#include <bit>
#include <cstdint>

namespace slopewise {

class Hash {
public:
    void add(std::uint64_t value) {
        for (int byte = 0; byte < 8; ++byte) {
            state_ ^= (value >> (8 * byte)) & 0xFFu;
            state_ *= 0x100000001B3ull;  // FNV-1a prime, 64 bit
        }
    }
    void add(double value) { add(std::bit_cast<std::uint64_t>(value)); }
    std::uint64_t value() const { return state_; }

private:
    std::uint64_t state_ = 0xCBF29CE484222325ull;  // FNV-1a offset basis, 64 bit
};

}  // namespace slopewise
