// Flies each golden flight and prints its name and the hash of the state it ends in. Every build, native or
// WebAssembly, in node or in a browser, must print what stands in hashes.txt.
#include <cstdio>

#include "assets/embedded.h"
#include "tests/golden/flights.h"

namespace {

using namespace slopewise;

Catalog shipped_catalog() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files()) {
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    }
    Result<Catalog> catalog = load_catalog(files);
    for (const Problem& problem : catalog.problems) std::fprintf(stderr, "%s\n", to_text(problem).c_str());
    return catalog.ok() ? std::move(*catalog.value) : Catalog{};
}

}  // namespace

int main() {
    const Catalog catalog = shipped_catalog();
    if (catalog.lessons.empty()) return 1;
    for (const golden::GoldenFlight& flight : golden::golden_flights(catalog)) {
        if (!flight.scenario.start_trim.flyable) return 1;
        Attempt attempt = begin_attempt(flight.scenario);
        flight.fly(flight.scenario, attempt);
        std::printf("%s: %lld ticks %016llx\n", flight.name.c_str(), static_cast<long long>(attempt.tick),
                    static_cast<unsigned long long>(state_hash(attempt)));
    }
    return 0;
}
