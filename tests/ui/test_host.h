// A host that keeps what it is given and shows nothing, and everything that ships, for the tests of the
// program.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "assets/embedded.h"
#include "data/catalog.h"
#include "tests/ui/memory_store.h"
#include "ui/host.h"
#include "ui/settings.h"

namespace slopewise::test {

struct TestHost : Host {
    std::string kept;                          // the settings
    std::map<std::string, std::string> texts;  // other kept texts, by their key
    std::vector<HostText> from_outside;        // what comes next
    std::string copied;                        // last
    bool asked_for_file = false;
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
    std::string load(std::string_view key) override { return text_of(key); }
    void save(std::string_view key, std::string_view text) override { text_of(key) = text; }
    std::string& text_of(std::string_view key) {
        return key == settings_key ? kept : texts[std::string(key)];
    }
    void choose_text_file() override { asked_for_file = true; }
    std::vector<HostText> take_texts() override { return std::exchange(from_outside, {}); }
    std::string address = "https://example.org/slopewise/";
    std::string page_address() override { return address; }
    std::string build;
    std::string build_id() override { return build; }
    int updates_taken = 0;
    void take_update() override { ++updates_taken; }
    void copy_text(std::string_view words) override { copied = words; }
    bool prefers_reduced_motion() override { return less_motion; }
    void offer_file(std::string_view, std::string_view, std::string_view text) override { file = text; }
    LogbookStore& logbook() override { return store; }
    bool writes_by_finger() override { return fingers; }
    std::optional<std::string> ask_text(std::string_view) override { return written; }
    std::int64_t now_unix_ms() override { return now_ms += 1000; }
    std::uint32_t random() override { return ++drawn; }
    bool erased = false;
    std::string kept_where() override { return "the tests' memory"; }
    void erase_all() override { erased = true; }
    void play(const SoundView&) override {}
    std::string spoken;  // all of it, a line each
    void speak(std::string_view words) override { spoken += std::string(words) + "\n"; }
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
