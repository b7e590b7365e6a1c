// The whole program but its window, frame by frame down an approach: to count and to time what a frame costs.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <imgui.h>

#include "ui/app.h"

namespace slopewise::test {

// A logbook that is open, so that a flight's journal is written, and keeps nothing.
struct SilentStore : LogbookStore {
    bool opening = false;

    void open() override { opening = true; }
    void keep(const std::string&, const std::string&, const std::string&) override {}
    void keep_row(const std::string&, const std::string&) override {}
    void load(const std::string&) override {}
    void erase(const std::string&) override {}
    void begin_journal(const std::string&, const std::string&) override {}
    void extend_journal(const std::string&, const std::string&) override {}
    void drop_journal(const std::string&) override {}
    void export_file(const std::string&, const std::string&, const std::vector<std::string>&) override {}
    void choose_import() override {}
    void next_import_line() override {}
    void choose_files(bool) override {}
    void next_file_lines() override {}
    void take_events(std::vector<StoreEvent>& events) override {
        events.clear();
        if (std::exchange(opening, false)) events.push_back({});
    }
};

struct SilentHost : Host {
    SilentStore store;
    std::vector<HostEvent> events;  // that come in the next frame
    SoundView heard;                // last

    LogbookStore& logbook() override { return store; }
    std::int64_t now_unix_ms() override { return 1764000000000; }
    std::uint32_t random() override { return 1; }
    std::vector<HostEvent> take_events() override { return std::exchange(events, {}); }
    std::string load(std::string_view) override { return ""; }
    void save(std::string_view, std::string_view) override {}
    void offer_file(std::string_view, std::string_view, std::string_view) override {}
    void choose_text_file() override {}
    std::vector<HostText> take_texts() override { return {}; }
    void copy_text(std::string_view) override {}
    void play(const SoundView& sound) override { heard = sound; }
    void show_mirror(std::string_view, std::string_view) override {}
};

// A flight from 3 NM by day with everything shown, in a window of this size. Hands off, it flies down the
// path as it was trimmed. Every piece of memory that Dear ImGui takes is counted with ours
// (tests/memory_count.h).
class ApproachFrames {
public:
    ApproachFrames(ImVec2 size, std::string_view runway_id);
    ~ApproachFrames();
    ApproachFrames(const ApproachFrames&) = delete;
    ApproachFrames& operator=(const ApproachFrames&) = delete;

    void next_frame(double step_s);
    bool flying() const { return app.screen == Screen::flight; }
    int vertices() const;
    int draw_calls() const;

    App app;
    RawInput raw;
    SilentHost host;

private:
    ImGuiContext* context_ = nullptr;
};

}  // namespace slopewise::test
