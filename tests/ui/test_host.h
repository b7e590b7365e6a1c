// A host that keeps what it is given and shows nothing, and everything that ships, for the tests of the
// program.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "assets/embedded.h"
#include "data/catalog.h"
#include "tests/ui/memory_store.h"
#include "ui/host.h"

namespace slopewise::test {

struct TestHost : Host {
    std::string kept;  // the settings
    std::string file;  // last handed over
    Mirror mirror;
    std::vector<HostEvent> events;
    bool less_motion = false;
    bool fingers = false;
    std::optional<std::string> written;  // what the user writes in the machine's own window
    MemoryStore store;
    std::int64_t now_ms = 1764000000000;  // November 2025
    std::uint32_t drawn = 0;

    std::vector<HostEvent> take_events() override { return std::exchange(events, {}); }
    std::string load(std::string_view) override { return kept; }
    void save(std::string_view, std::string_view text) override { kept = text; }
    bool prefers_reduced_motion() override { return less_motion; }
    void offer_file(std::string_view, std::string_view, std::string_view text) override { file = text; }
    LogbookStore& logbook() override { return store; }
    bool writes_by_finger() override { return fingers; }
    std::optional<std::string> ask_text(std::string_view) override { return written; }
    std::int64_t now_unix_ms() override { return now_ms += 1000; }
    std::uint32_t random() override { return ++drawn; }
    void play(const SoundView&) override {}
    void show_mirror(std::string_view screen, std::string_view instruments) override {
        mirror = {std::string(screen), std::string(instruments)};
    }
};

inline Catalog shipped() {
    std::vector<DataFile> files;
    for (const EmbeddedFile& file : embedded_files())
        if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
    return *load_catalog(files).value;
}

}  // namespace slopewise::test
