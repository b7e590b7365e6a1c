// The whole program but its window, frame by frame down an approach: to count and to time what a frame costs.
#pragma once

#include <string_view>

#include <imgui.h>

#include "ui/app.h"

namespace slopewise::test {

struct SilentHost : Host {
    std::vector<HostEvent> take_events() override { return {}; }
    std::string load(std::string_view) override { return ""; }
    void save(std::string_view, std::string_view) override {}
    void offer_file(std::string_view, std::string_view, std::string_view) override {}
    void play(const SoundView&) override {}
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

private:
    ImGuiContext* context_ = nullptr;
    SilentHost host_;
};

}  // namespace slopewise::test
