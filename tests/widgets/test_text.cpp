// Letters on dense and on large screens: drawn for the pixels they cover, never enlarged until they blur.
#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <string>

#include <imgui.h>

#include "assets/embedded.h"
#include "ui/theme.h"

using namespace slopewise;

namespace {

struct Atlas {
    explicit Atlas(float ratio) {
        context = ImGui::CreateContext();
        ImGui::GetIO().IniFilename = nullptr;
        reload(ratio);
    }
    ~Atlas() { ImGui::DestroyContext(context); }
    Atlas(const Atlas&) = delete;
    Atlas& operator=(const Atlas&) = delete;

    void reload(float ratio) {
        load_fonts(embedded_file("fonts/regular"), embedded_file("fonts/bold"), ratio);
        unsigned char* pixels = nullptr;
        ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&pixels, &width, &height);
    }

    // Pixels of the atlas down a letter for each pixel of the screen that it covers.
    double sharpness(TextSize size, bool bold, float ratio) const {
        ImDrawList list(ImGui::GetDrawListSharedData());
        list._ResetForNewFrame();
        list.PushClipRect({0, 0}, {1000, 1000});
        list.PushTextureID(ImGui::GetIO().Fonts->TexID);
        text_at(&list, {10, 10}, size, IM_COL32_WHITE, "6", bold);
        REQUIRE(list.VtxBuffer.Size >= 4);
        const ImDrawVert &top = list.VtxBuffer[0], &bottom = list.VtxBuffer[2];
        return static_cast<double>((bottom.uv.y - top.uv.y) * static_cast<float>(height) /
                                   ((bottom.pos.y - top.pos.y) * ratio));
    }

    ImGuiContext* context = nullptr;
    int width = 0, height = 0;
};

}  // namespace

TEST_CASE("text: at one to three device pixels a pixel no letter is enlarged by more than a tenth") {
    for (const float ratio : {1.0f, 1.25f, 1.5f, 2.0f, 3.0f}) {
        Atlas atlas(ratio);
        CHECK(atlas.height <= 4096);  // what every WebGL 2 can hold, with room to spare
        for (const ImVec2 size : {ImVec2{844, 390}, ImVec2{390, 844}, ImVec2{1280, 720}, ImVec2{1024, 768}}) {
            fit_theme(size.x, size.y);
            CAPTURE(ratio);
            CAPTURE(size.x);
            for (const TextSize text : {TextSize::text, TextSize::note})
                CHECK(atlas.sharpness(text, false, ratio) >= 0.9);
            for (const TextSize text : {TextSize::title, TextSize::number, TextSize::text, TextSize::note})
                CHECK(atlas.sharpness(text, true, ratio) >= 0.9);
        }
    }
    Atlas large(1.0f);
    for (const ImVec2 size : {ImVec2{1920, 1080}, ImVec2{3840, 2160}}) {
        fit_theme(size.x, size.y);
        for (const TextSize text : {TextSize::title, TextSize::number, TextSize::text, TextSize::note})
            CHECK(large.sharpness(text, true, 1.0f) >= 0.9);
    }
}

TEST_CASE("text: letters are drawn anew when the page is zoomed or the window moved to a denser screen") {
    Atlas atlas(1.0f);
    fit_theme(1280, 720);
    atlas.reload(2.0f);
    CHECK(atlas.sharpness(TextSize::text, false, 2.0f) >= 0.9);
}
