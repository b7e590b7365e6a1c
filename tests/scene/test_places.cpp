// How many airfields are remembered: as many as stand beside each other before a class.
#include <doctest/doctest.h>

#include "tests/contact/stills.h"
#include "tests/memory_count.h"
#include "ui/scene/scene.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// Memory that a frame takes which shows the first so many runways beside each other. (Dear ImGui's own is not
// counted here.)
long taken_by_frame(ImDrawList& list, std::span<const SceneView> scenes) {
    list._ResetForNewFrame();
    list.PushClipRectFullScreen();
    const long before = memory_taken();
    float left = 0;
    for (const SceneView& scene : scenes) {
        draw_scene(&list, {left, 0}, {left + 300, 400}, scene);
        left += 300;
    }
    return memory_taken() - before;
}

}  // namespace

TEST_CASE("scene: four runways beside each other are made once, a fifth pushes one out") {
    const Darkroom darkroom(1280, 720);
    REQUIRE(darkroom.runways().size() >= 5);
    std::vector<SceneView> scenes;
    for (const Runway& runway : darkroom.runways().first(5))
        scenes.push_back(still(runway, Outlook{}, stations().front()));
    ImDrawList list(ImGui::GetDrawListSharedData());
    const std::span<const SceneView> four = std::span(scenes).first(4);
    taken_by_frame(list, four);
    CHECK(taken_by_frame(list, four) == 0);
    CHECK(taken_by_frame(list, four) == 0);
    taken_by_frame(list, scenes);
    CHECK(taken_by_frame(list, scenes) > 0);
}
