// What the contact sheet shows: places on final, lights of the hour, and the view from there.
#pragma once

#include <span>
#include <vector>

#include <imgui.h>

#include "tests/contact/rasterise.h"
#include "ui/view.h"
#include "world/outlook.h"
#include "world/runway.h"

namespace slopewise {

struct Station {
    const char* name;
    double to_aim_m;  // along the ground, on the nominal path
};
std::span<const Station> stations();

struct Weathering {
    const char* name;
    Outlook outlook;
};
std::span<const Weathering> weatherings();

// The view from a station, steady on the nominal path.
SceneView still(const Runway& runway, const Outlook& outlook, const Station& station);

// Dear ImGui with no window, and the shipped runways.
class Darkroom {
public:
    Darkroom(int width, int height);
    ~Darkroom();
    Darkroom(const Darkroom&) = delete;
    Darkroom& operator=(const Darkroom&) = delete;

    std::span<const Runway> runways() const { return runways_; }
    Bitmap draw(const SceneView& scene) const;

private:
    int width_, height_;
    ImGuiContext* context_ = nullptr;
    std::vector<Runway> runways_;
};

}  // namespace slopewise
