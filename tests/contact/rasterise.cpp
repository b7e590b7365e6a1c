#include "tests/contact/rasterise.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace slopewise {

namespace {

struct Atlas {
    const unsigned char* alpha = nullptr;
    int width = 0, height = 0;

    // Nearest texel: letters are drawn at the size they are stored in.
    float at(float u, float v) const {
        const int x = std::clamp(static_cast<int>(u * static_cast<float>(width)), 0, width - 1);
        const int y = std::clamp(static_cast<int>(v * static_cast<float>(height)), 0, height - 1);
        return static_cast<float>(alpha[y * width + x]) / 255.0f;
    }
};

Atlas font_atlas() {
    Atlas atlas;
    unsigned char* pixels = nullptr;
    ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&pixels, &atlas.width, &atlas.height);
    atlas.alpha = pixels;
    return atlas;
}

struct Channels {
    float r, g, b, a;
};

Channels channels(ImU32 c) {
    const auto part = [c](int shift) { return static_cast<float>(c >> shift & 0xFFu); };
    return {part(IM_COL32_R_SHIFT), part(IM_COL32_G_SHIFT), part(IM_COL32_B_SHIFT),
            part(IM_COL32_A_SHIFT) / 255.0f};
}

// Twice the area on the left of an edge; in double, so that neighbours agree about the pixels between them.
double side(const ImVec2& a, const ImVec2& b, double x, double y) {
    return (double(b.x) - a.x) * (y - a.y) - (double(b.y) - a.y) * (x - a.x);
}

// A pixel whose middle lies on an edge belongs to one of the two triangles that share it.
bool owns_edge(const ImVec2& a, const ImVec2& b) { return a.y == b.y ? b.x > a.x : b.y < a.y; }

class Raster {
public:
    Raster(Bitmap& picture, const Atlas& atlas) : picture_(picture), atlas_(atlas) {}

    void triangle(ImDrawVert a, ImDrawVert b, ImDrawVert c, const ImVec4& clip) const {
        double area = side(a.pos, b.pos, c.pos.x, c.pos.y);
        if (area == 0) return;
        if (area < 0) {
            std::swap(b, c);
            area = -area;
        }
        const auto low = [](float v, float edge) { return static_cast<int>(std::max(std::floor(v), edge)); };
        const auto high = [](float v, float edge) { return static_cast<int>(std::min(std::ceil(v), edge)); };
        const int left = low(std::min({a.pos.x, b.pos.x, c.pos.x}), std::max(0.0f, clip.x));
        const int top = low(std::min({a.pos.y, b.pos.y, c.pos.y}), std::max(0.0f, clip.y));
        const int right =
            high(std::max({a.pos.x, b.pos.x, c.pos.x}), std::min(static_cast<float>(picture_.width), clip.z));
        const int bottom = high(std::max({a.pos.y, b.pos.y, c.pos.y}),
                                std::min(static_cast<float>(picture_.height), clip.w));
        const Channels ca = channels(a.col), cb = channels(b.col), cc = channels(c.col);
        const bool textured = a.uv.x != b.uv.x || a.uv.y != b.uv.y || a.uv.x != c.uv.x || a.uv.y != c.uv.y;
        for (int y = top; y < bottom; ++y) {
            for (int x = left; x < right; ++x) {
                const double px = x + 0.5, py = y + 0.5;
                const double wa = side(b.pos, c.pos, px, py), wb = side(c.pos, a.pos, px, py),
                             wc = side(a.pos, b.pos, px, py);
                if (!inside(wa, b.pos, c.pos) || !inside(wb, c.pos, a.pos) || !inside(wc, a.pos, b.pos))
                    continue;
                const auto ta = static_cast<float>(wa / area), tb = static_cast<float>(wb / area),
                           tc = static_cast<float>(wc / area);
                float cover = 1.0f;
                if (textured)
                    cover = atlas_.at(ta * a.uv.x + tb * b.uv.x + tc * c.uv.x,
                                      ta * a.uv.y + tb * b.uv.y + tc * c.uv.y);
                blend(x, y,
                      {ta * ca.r + tb * cb.r + tc * cc.r, ta * ca.g + tb * cb.g + tc * cc.g,
                       ta * ca.b + tb * cb.b + tc * cc.b, cover * (ta * ca.a + tb * cb.a + tc * cc.a)});
            }
        }
    }

private:
    static bool inside(double weight, const ImVec2& from, const ImVec2& to) {
        return weight > 0 || (weight == 0 && owns_edge(from, to));
    }

    void blend(int x, int y, const Channels& c) const {
        std::uint8_t* pixel = &picture_.rgb[static_cast<std::size_t>((y * picture_.width + x) * 3)];
        const auto mixed = [&c](std::uint8_t under, float over) {
            return static_cast<std::uint8_t>(
                std::clamp(over * c.a + static_cast<float>(under) * (1.0f - c.a) + 0.5f, 0.0f, 255.0f));
        };
        pixel[0] = mixed(pixel[0], c.r);
        pixel[1] = mixed(pixel[1], c.g);
        pixel[2] = mixed(pixel[2], c.b);
    }

    Bitmap& picture_;
    const Atlas& atlas_;
};

}  // namespace

void rasterise(Bitmap& picture, const ImDrawList& list) {
    const Atlas atlas = font_atlas();
    const Raster raster(picture, atlas);
    for (const ImDrawCmd& command : list.CmdBuffer) {
        for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
            const auto corner = [&](unsigned k) {
                const auto index = list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)];
                return list.VtxBuffer[static_cast<int>(command.VtxOffset + index)];
            };
            raster.triangle(corner(0), corner(1), corner(2), command.ClipRect);
        }
    }
}

bool write_ppm(const Bitmap& picture, const std::string& path) {
    std::FILE* file = std::fopen(path.c_str(), "wb");
    if (file == nullptr) return false;
    std::fprintf(file, "P6\n%d %d\n255\n", picture.width, picture.height);
    const bool whole = std::fwrite(picture.rgb.data(), 1, picture.rgb.size(), file) == picture.rgb.size();
    return std::fclose(file) == 0 && whole;
}

}  // namespace slopewise
