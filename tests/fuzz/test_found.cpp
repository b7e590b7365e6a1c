// Every good text, and every text that a reader once failed on (tests/fuzz/found/READER/), through what the
// fuzzer runs.
#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "tests/engine/mutation.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"

using namespace slopewise::test;

namespace slopewise::test {

void demand(bool holds, const std::string& what) { CHECK_MESSAGE(holds, what); }

}  // namespace slopewise::test

namespace {

std::string bytes_of(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

const std::filesystem::path found = SLOPEWISE_SOURCE_DIR "/tests/fuzz/found";

}  // namespace

TEST_CASE("fuzz: every reader takes the texts that it begins from, and these changed at random") {
    slopewise::Random random{8};
    for (const Reader& reader : readers()) {
        CAPTURE(reader.name);
        const std::vector<std::string> seeds = reader.seeds();
        CHECK(!seeds.empty());
        for (const std::string& seed : seeds) {
            reader.meet(seed);
            for (int i = 0; i < 20; ++i) reader.meet(mutated(seed, random));
        }
        for (const char* text : {"", "\n", "{", "{}", "[]", "null", "\"\"", "0"}) reader.meet(text);
    }
}

TEST_CASE("fuzz: what a reader once failed on does it no harm now") {
    for (const std::filesystem::directory_entry& folder : std::filesystem::directory_iterator(found)) {
        if (!folder.is_directory()) continue;
        const Reader* reader = find_reader(folder.path().filename().string());
        REQUIRE_MESSAGE(reader != nullptr, folder.path().string() << " is of no reader");
        for (const std::filesystem::directory_entry& file : std::filesystem::directory_iterator(folder)) {
            CAPTURE(file.path().string());
            reader->meet(bytes_of(file.path()));
        }
    }
}
