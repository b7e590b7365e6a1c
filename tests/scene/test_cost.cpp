// What a picture costs: corners, memory and time, printed and held where a machine's mood cannot fail it.
#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>

#include "tests/memory_count.h"
#include "tests/scene/no_window.h"
#include "tests/screens/stage.h"
#include "ui/scene/scene.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

RunwayView airfield(CountrysideView::Kind kind) {
    RunwayView view = runway();
    view.countryside = {kind, 3};
    if (kind == CountrysideView::Kind::woodland) view.length_m = 700, view.width_m = 18;
    if (kind == CountrysideView::Kind::coast) view.length_m = 2500, view.width_m = 45;
    return view;
}

SceneView busy(CountrysideView::Kind kind, SkyView::Light hour, double to_aim_m) {
    SceneView scene = on_path(to_aim_m);
    scene.runway = airfield(kind);
    scene.sky.light = hour;
    scene.sky.time_s = 10;
    scene.sky.headwind_mps = 5;
    if (hour == SkyView::Light::dusk) scene.sky.threshold_lux = 1e-5;
    if (hour == SkyView::Light::night) scene.sky.threshold_lux = 8e-7;
    if (hour == SkyView::Light::dusk || hour == SkyView::Light::night) scene.sky.lights_setting = 0.5;
    return scene;
}

constexpr const char* kinds[] = {"farmland", "woodland", "coast"};
constexpr const char* hours[] = {"day", "low sun", "dusk", "night"};
constexpr double stations_m[] = {5556, 3704, 1852, 926, 580, 290};

double frame_ms(ImDrawList& list, const SceneView& scene) {
    using Clock = std::chrono::steady_clock;
    double best_ms = 1e9;  // the least of several: what else the machine does only adds
    for (int i = 0; i < 12; ++i) {
        list._ResetForNewFrame();
        const auto begin = Clock::now();
        draw_scene(&list, {0, 0}, {1920, 820}, scene);
        const std::chrono::duration<double, std::milli> taken = Clock::now() - begin;
        best_ms = std::min(best_ms, taken.count());
    }
    return best_ms;
}

}  // namespace

TEST_CASE("cost: vertices and time of every country, hour and distance at 1920 pixels") {
    NoWindow imgui(1920, 1080);
    ImDrawList list(ImGui::GetDrawListSharedData());
    int most = 0;
    double worst_ms = 0;
    std::printf("vertices (ms) at 3, 2, 1, 0.5 NM, 100 ft, 50 ft\n");
    for (int kind = 0; kind < 3; ++kind) {
        for (int hour = 0; hour < 4; ++hour) {
            std::printf("%-9s %-8s", kinds[kind], hours[hour]);
            for (const double to_aim_m : stations_m) {
                const SceneView scene = busy(static_cast<CountrysideView::Kind>(kind),
                                             static_cast<SkyView::Light>(hour), to_aim_m);
                const double ms = frame_ms(list, scene);
                most = std::max(most, list.VtxBuffer.Size);
                worst_ms = std::max(worst_ms, ms);
                std::printf("%7d (%.2f)", list.VtxBuffer.Size, ms);
            }
            std::printf("\n");
        }
    }
    std::printf("most vertices %d, longest %.2f ms, %d draw commands\n", most, worst_ms, list.CmdBuffer.Size);
    // Twice what the busiest view took when this was written: a slip of an order is caught, a new wood is
    // not.
    CHECK(most < 60000);
}

TEST_CASE("cost: a steady frame takes no memory") {
    NoWindow imgui(1920, 1080);
    ImDrawList list(ImGui::GetDrawListSharedData());
    for (int hour = 0; hour < 4; ++hour) {
        SceneView scene = busy(CountrysideView::Kind::farmland, static_cast<SkyView::Light>(hour), 926);
        scene.sky.rain = true;
        for (int warm = 0; warm < 2; ++warm) {
            list._ResetForNewFrame();
            draw_scene(&list, {0, 0}, {1920, 820}, scene);
        }
        ImGuiMemAllocFunc allocate;
        ImGuiMemFreeFunc release;
        void* data;
        ImGui::GetAllocatorFunctions(&allocate, &release, &data);
        ImGui::SetAllocatorFunctions([](std::size_t size, void*) { return counted_memory(size); },
                                     [](void* memory, void*) { std::free(memory); });
        list._ResetForNewFrame();
        const long before = memory_taken();
        draw_scene(&list, {0, 0}, {1920, 820}, scene);
        const long after = memory_taken();
        ImGui::SetAllocatorFunctions(allocate, release, data);
        CHECK(after == before);
    }
}

// The aim is 1.5 ms for everything that a frame draws; what is asserted is the memory's order, for time is
// the machine's as much as ours.
TEST_CASE("cost: the whole flight screen at 1920 x 1080, printed") {
    Stage stage({1920, 1080});
    using Clock = std::chrono::steady_clock;
    for (int warm = 0; warm < 5; ++warm) stage.draw(Screen::flight);
    double best_ms = 1e9, sum_ms = 0;
    constexpr int frames = 60;
    const long before = memory_taken();
    for (int i = 0; i < frames; ++i) {
        const auto begin = Clock::now();
        stage.draw(Screen::flight);
        const std::chrono::duration<double, std::milli> taken = Clock::now() - begin;
        best_ms = std::min(best_ms, taken.count());
        sum_ms += taken.count();
    }
    const long per_frame = (memory_taken() - before) / frames;
    std::printf("flight screen: least %.2f ms, mean %.2f ms, %d vertices, %ld allocations of ours a frame\n",
                best_ms, sum_ms / frames, stage.vertices(), per_frame);
    CHECK(per_frame < 200);
}
