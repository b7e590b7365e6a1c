#include <string_view>

#include "base/hash.h"
#include "base/random.h"
#include "tests/check.h"

using namespace slopewise;

namespace {

// FNV-1a over bytes, written a second time from its definition.
std::uint64_t fnv1a(std::string_view bytes) {
    std::uint64_t state = 14695981039346656037ull;
    for (const char byte : bytes) state = (state ^ static_cast<unsigned char>(byte)) * 1099511628211ull;
    return state;
}

}  // namespace

TEST_CASE("random: SplitMix64 gives the numbers published for seed 1234567") {
    // The first five outputs as commonly published for this generator, from memory.
    Random random{1234567};
    CHECK(next_bits(random) == 6457827717110365317ull);
    CHECK(next_bits(random) == 3203168211198807973ull);
    CHECK(next_bits(random) == 9817491932198370423ull);
    CHECK(next_bits(random) == 4593380528125082431ull);
    CHECK(next_bits(random) == 16408922859458223821ull);
}

TEST_CASE("random: uniform numbers fill 0 to 1 evenly and normal ones have mean 0 and variance 1") {
    Random random{42};
    constexpr int count = 200000;
    double sum = 0.0, normal_sum = 0.0, normal_square = 0.0, low = 1.0, high = 0.0;
    for (int i = 0; i < count; ++i) {
        const double u = next_uniform(random);
        low = u < low ? u : low;
        high = u > high ? u : high;
        sum += u;
        const double n = next_normal(random);
        normal_sum += n;
        normal_square += n * n;
    }
    CHECK(low >= 0.0);
    CHECK(high < 1.0);
    // Four standard deviations of the estimate: sqrt(1/12/n), sqrt(1/n), and about sqrt(2/n) for the
    // variance.
    CHECK_NEAR(sum / count, 0.5, 4.0 * 0.289 / 447.0);
    CHECK_NEAR(normal_sum / count, 0.0, 4.0 / 447.0);
    CHECK_NEAR(normal_square / count, 1.0, 4.0 * 1.414 / 447.0);
}

TEST_CASE("random: the same seed gives the same sequence and another seed another") {
    Random a{7}, b{7}, c{8};
    bool differs = false;
    for (int i = 0; i < 100; ++i) {
        const std::uint64_t bits = next_bits(a);
        CHECK(bits == next_bits(b));
        differs = differs || bits != next_bits(c);
    }
    CHECK(differs);
}

TEST_CASE("hash: it is FNV-1a over the eight bytes of each field, lowest first") {
    CHECK(fnv1a("foobar") == 0x85944171F73967E8ull);  // the algorithm's published test vector, from memory
    Hash hash;
    CHECK(hash.value() == fnv1a(""));
    hash.add(std::uint64_t{0x3837363534333231});  // "12345678" lowest byte first
    CHECK(hash.value() == fnv1a("12345678"));
    hash.add(1.0);  // 0x3FF0000000000000
    CHECK(hash.value() == fnv1a(std::string_view("12345678\0\0\0\0\0\0\xF0\x3F", 16)));
}

TEST_CASE("hash: order counts, and so does the sign of zero") {
    const auto hash_of = [](double first, double second) {
        Hash hash;
        hash.add(first);
        hash.add(second);
        return hash.value();
    };
    CHECK(hash_of(1.0, 2.0) != hash_of(2.0, 1.0));
    CHECK(hash_of(0.0, 1.0) != hash_of(-0.0, 1.0));
    CHECK(hash_of(1.0, 2.0) == hash_of(1.0, 2.0));
}
