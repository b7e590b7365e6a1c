// What a frame of the flight screen costs: memory taken, vertices, draw calls and time, view and drawing
// together, with everything shown.
#include <doctest/doctest.h>

#include <chrono>
#include <cstdlib>
#include <string>

#include <imgui.h>

#include "assets/embedded.h"
#include "tests/memory_count.h"
#include "ui/app.h"
#include "ui/make_view.h"
#include "ui/theme.h"

using namespace slopewise;

namespace {

struct SilentHost : Host {
    std::vector<HostEvent> take_events() override { return {}; }
    std::string load(std::string_view) override { return ""; }
    void save(std::string_view, std::string_view) override {}
    void offer_file(std::string_view, std::string_view, std::string_view) override {}
    void play(const SoundView&) override {}
    void show_mirror(std::string_view, std::string_view) override {}
};

// A flight from 3 NM with everything shown, in a window of this size, a frame every sixtieth of a second.
struct Flight {
    explicit Flight(ImVec2 size) {
        ImGui::SetAllocatorFunctions([](std::size_t bytes, void*) { return test::counted_memory(bytes); },
                                     [](void* memory, void*) { std::free(memory); });
        context = ImGui::CreateContext();
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.DisplaySize = size;
        io.DeltaTime = 1.0f / 60.0f;
        load_fonts(embedded_file("fonts/regular"), embedded_file("fonts/bold"), 1.0f);
        unsigned char* pixels = nullptr;
        int width = 0, height = 0;
        io.Fonts->GetTexDataAsAlpha8(&pixels, &width, &height);
        fit_theme(size.x, size.y);

        std::vector<DataFile> files;
        for (const EmbeddedFile& file : embedded_files())
            if (file.name.ends_with(".json")) files.push_back({std::string(file.name), file.bytes});
        app = make_app(*load_catalog(files).value, host);
        app.settings.display.side_profile = true;
        app.settings.display.screen_width_cm = 34;
        app.settings.display.viewing_distance_cm = 60;
        apply(app, ChooseDistance{3}, host);
        apply(app, StartFlight{}, host);
    }
    ~Flight() { ImGui::DestroyContext(context); }
    Flight(const Flight&) = delete;
    Flight& operator=(const Flight&) = delete;

    void next_frame() {
        raw.wall_s += 1.0 / 60.0;
        ImGui::NewFrame();
        frame(app, raw, host);
        ImGui::Render();
    }

    ImGuiContext* context = nullptr;
    SilentHost host;
    App app;
    RawInput raw;
};

int draw_calls() {
    int calls = 0;
    for (const ImDrawList* list : ImGui::GetDrawData()->CmdLists) calls += list->CmdBuffer.Size;
    return calls;
}

}  // namespace

TEST_CASE("frame: after warm-up a flight takes no memory, whatever is shown and whatever changes") {
    Flight flight({1920, 1080});
    constexpr int warm_up = 240, watched = 600;
    for (int i = 0; i < warm_up; ++i) flight.next_frame();
    REQUIRE(flight.app.screen == Screen::flight);
    const long before = test::memory_taken();
    int frames_that_took = 0;
    for (int i = 0; i < watched; ++i) {
        const long so_far = test::memory_taken();
        flight.raw.held[static_cast<std::size_t>(Key::down)] = i / 60 % 3 == 0;  // the stick moves, too
        flight.next_frame();
        frames_that_took += test::memory_taken() > so_far ? 1 : 0;
    }
    const long pieces = test::memory_taken() - before;
    MESSAGE("at 1920 x 1080, day, everything shown: ", ImGui::GetDrawData()->TotalVtxCount, " vertices, ",
            draw_calls(), " draw calls, ", pieces, " pieces of memory in ", watched, " frames");
    CHECK(frames_that_took == 0);
}

TEST_CASE("frame: its time is printed, and is far from what would be felt") {
    Flight flight({1920, 1080});
    for (int i = 0; i < 120; ++i) flight.next_frame();
    double least_ms = 1e9;
    for (int round = 0; round < 5; ++round) {
        const auto start = std::chrono::steady_clock::now();
        for (int i = 0; i < 60; ++i) flight.next_frame();
        const std::chrono::duration<double, std::milli> spent = std::chrono::steady_clock::now() - start;
        least_ms = std::min(least_ms, spent.count() / 60);
    }
    MESSAGE("view, scene, instruments and Dear ImGui at 1920 x 1080: ", least_ms, " ms a frame");
    CHECK(least_ms < 16.7);  // a frame of a sixtieth; built for debugging or watched by a sanitizer, too
}
