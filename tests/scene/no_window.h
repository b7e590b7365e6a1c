// Dear ImGui with no window and no renderer, and a plain view to draw in it.
#pragma once

#include <cmath>

#include <imgui.h>

#include "assets/embedded.h"
#include "ui/theme.h"
#include "ui/view.h"

namespace slopewise::test {

inline constexpr double deg = 3.14159265358979323846 / 180.0;

struct NoWindow {
    explicit NoWindow(float width = 1280, float height = 720) {
        context = ImGui::CreateContext();
        ImGui::SetCurrentContext(context);
        ImGuiIO& io = ImGui::GetIO();
        io.IniFilename = nullptr;
        io.DisplaySize = {width, height};
        io.DeltaTime = 1.0f / 60.0f;
        load_fonts(embedded_file("fonts/regular"), embedded_file("fonts/bold"), 1.0f);
        fit_theme(width, height);
        unsigned char* pixels = nullptr;
        int wide = 0, tall = 0;
        io.Fonts->GetTexDataAsAlpha8(&pixels, &wide, &tall);
        ImGui::NewFrame();
    }
    ~NoWindow() {
        ImGui::EndFrame();
        ImGui::DestroyContext(context);
    }
    NoWindow(const NoWindow&) = delete;
    NoWindow& operator=(const NoWindow&) = delete;
    ImGuiContext* context;
};

inline RunwayView runway(double length_m = 1500, double slope = 0) {
    RunwayView view{length_m, 30, slope, 300, 45, 6, 18, "27"};
    view.edge_lights = view.approach_lights = true;
    return view;
}

// So far from the aim point along the ground, on a path to it.
inline SceneView on_path(double to_aim_m, double path_deg = 3.0) {
    SceneView scene;
    scene.runway = runway();
    scene.camera = {300 - to_aim_m, 0, to_aim_m * std::tan(path_deg * deg), -4.4 * deg, 40 * deg};
    scene.body_pitch_rad = -3 * deg;
    scene.look_over_rad = 5.5 * deg;
    scene.lamp_count = 4;
    for (std::size_t i = 0; i < 4; ++i)
        scene.lamps[i] = {300, -30 - 9.0 * static_cast<double>(i), 0, i > 1 ? 1.0 : 0.0, true};
    return scene;
}

}  // namespace slopewise::test
