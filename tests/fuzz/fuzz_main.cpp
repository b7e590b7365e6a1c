// The readers met by libFuzzer: `fuzz --reader=NAME FOLDER...`, with libFuzzer's own options. `fuzz --list`
// prints the names; `fuzz --reader=NAME --seeds=FOLDER` writes the texts that the reader begins from.
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>

#include "tests/engine/mutation.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"

namespace slopewise::test {
namespace {

const Reader* met = nullptr;

void write_seeds(const Reader& reader, const std::string& folder) {
    int number = 0;
    for (const std::string& seed : reader.seeds())
        std::ofstream(folder + "/seed-" + std::to_string(number++), std::ios::binary) << seed;
}

}  // namespace

void demand(bool holds, const std::string& what) {
    if (holds) return;
    std::fprintf(stderr, "not kept: %s\n", what.c_str());
    std::abort();
}

}  // namespace slopewise::test

using namespace slopewise::test;

extern "C" int LLVMFuzzerInitialize(int* count, char*** arguments) {
    std::string folder;
    for (int i = 1; i < *count; ++i) {
        const std::string_view argument = (*arguments)[i];
        if (argument == "--list") {
            for (const Reader& reader : readers())
                std::printf("%.*s\n", static_cast<int>(reader.name.size()), reader.name.data());
            std::exit(0);
        }
        if (argument.starts_with("--reader=")) met = find_reader(argument.substr(9));
        if (argument.starts_with("--seeds=")) folder = argument.substr(8);
    }
    if (met == nullptr) {
        std::fprintf(stderr, "say which reader: --reader=NAME; --list names them\n");
        std::exit(2);
    }
    if (folder.empty()) return 0;
    write_seeds(*met, folder);
    std::exit(0);
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    // A copy of its own size, so that a byte read beyond its end is seen.
    const std::string text(reinterpret_cast<const char*>(data), size);
    met->meet(text);
    return 0;
}

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

// libFuzzer's own changes, and those that keep a text near to one of ours: another number, a piece said
// twice.
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most,
                                               unsigned int seed) {
    if (seed % 2 == 0 || size == 0) return LLVMFuzzerMutate(data, size, most);
    slopewise::Random random{seed};
    const std::string text = mutated(std::string(reinterpret_cast<const char*>(data), size), random);
    if (text.empty() || text.size() > most) return LLVMFuzzerMutate(data, size, most);
    std::memcpy(data, text.data(), text.size());
    return text.size();
}
