// Draws what Dear ImGui would have a graphics card draw, into memory: triangles with a colour at each corner
// and the coverage of the font atlas, blended as OpenGL does. Slow and plain, for looking at pictures without
// a window.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <imgui.h>

namespace slopewise {

struct Bitmap {
    int width = 0, height = 0;
    std::vector<std::uint8_t> rgb;  // rows from the top, three bytes a pixel

    Bitmap(int wide, int tall) : width(wide), height(tall), rgb(static_cast<std::size_t>(wide * tall * 3)) {}
};

void rasterise(Bitmap& picture, const ImDrawList& list);

// A binary PPM file; false when it cannot be written.
bool write_ppm(const Bitmap& picture, const std::string& path);

}  // namespace slopewise
