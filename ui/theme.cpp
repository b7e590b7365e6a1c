#include "ui/theme.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace slopewise {
namespace {

constexpr ImU32 rgb(unsigned hex) { return IM_COL32((hex >> 16) & 255u, (hex >> 8) & 255u, hex & 255u, 255); }

constexpr Palette daylight{.paper = rgb(0xF7F2E7),
                           .paper_edge = rgb(0xE6DECD),
                           .ink = rgb(0x1E2429),
                           .ink_soft = rgb(0x565B5F),
                           .rule = rgb(0xCDC4B2),
                           .accent = rgb(0x1D4F56),
                           .accent_ink = rgb(0xFBF8F0),
                           .good = rgb(0x1F5AA6),
                           .attention = rgb(0xA04A00),
                           .band = rgb(0xDCE4DF),
                           .lamp_red = rgb(0xDB1F1A),
                           .lamp_white = rgb(0xFFFDF4),
                           .shelf = rgb(0x25282B),
                           .shelf_edge = rgb(0x3A3E41),
                           .dial = rgb(0x17191B),
                           .dial_ink = rgb(0xEFEADF),
                           .dial_soft = rgb(0xA6A59D),
                           .needle = rgb(0xF2D58C)};

// Dear ImGui 1.90 draws a glyph from the picture it was given once, so each face is drawn at a ladder of
// sizes (device pixels). The rungs that common windows ask for are among them, so their text is not scaled.
constexpr std::array<float, 18> rungs{14, 16, 18, 20, 22, 24, 26, 29, 33, 36, 40, 44, 48, 54, 60, 66, 72, 80};
constexpr float largest_full_rung = 40;  // above it only the characters that titles and numbers need

// A dense screen never asks for the small rungs.
constexpr float least_layout_size = 12;

// What the screens may write: Latin, punctuation, arrows, signs.
constexpr std::array<ImWchar, 13> all_characters{0x20,   0x7E,   0xA0,   0xFF,   0x2010, 0x2027, 0x2030,
                                                 0x203A, 0x2190, 0x2193, 0x2212, 0x2212, 0};
constexpr std::array<ImWchar, 13> large_characters{0x20,   0x7E,   0xA0,   0xB7,   0xD7,   0xD7, 0x2013,
                                                   0x2026, 0x2190, 0x2193, 0x2212, 0x2212, 0};

struct Face {
    std::array<ImFont*, rungs.size()> at{};

    // The smallest rung that need not be enlarged; the largest where none is large enough.
    ImFont* for_size(float device_pixels) const {
        ImFont* best = nullptr;
        for (std::size_t i = 0; i < rungs.size(); ++i) {
            if (at[i] == nullptr) continue;
            best = at[i];
            if (rungs[i] + 0.25f >= device_pixels) break;
        }
        return best;
    }
};

struct State {
    Theme shown;
    Face regular, bold;
    float pixel_ratio = 1;
    std::array<std::array<ImFont*, 2>, 4> chosen{};  // by TextSize, regular and bold
};

// Fonts live in ImGui's own single atlas, so what points into it is single too.
State& state() {
    static State only;
    return only;
}

Face load_face(std::string_view bytes, float pixel_ratio) {
    Face face;
    for (std::size_t i = 0; i < rungs.size(); ++i) {
        if (i + 8 < rungs.size() && rungs[i] < least_layout_size * pixel_ratio) continue;
        ImFontConfig config;
        config.FontDataOwnedByAtlas = false;
        config.OversampleH = rungs[i] < 40 ? 2 : 1;
        config.OversampleV = 1;
        const ImWchar* characters =
            rungs[i] > largest_full_rung ? large_characters.data() : all_characters.data();
        // ImGui takes a mutable pointer for the case in which it owns the bytes; it only reads them.
        face.at[i] = ImGui::GetIO().Fonts->AddFontFromMemoryTTF(
            const_cast<char*>(bytes.data()), static_cast<int>(bytes.size()), rungs[i], &config, characters);
    }
    return face;
}

// Whole device pixels; a rung where one is near, so that most text is drawn unscaled.
float fitted(float layout_pixels, float pixel_ratio) {
    const float device = layout_pixels * pixel_ratio;
    for (const float rung : rungs) {
        if (rung >= device * 0.995f && rung <= device * 1.05f) return rung / pixel_ratio;
    }
    return std::ceil(device - 0.01f) / pixel_ratio;
}

std::size_t index(TextSize size) { return static_cast<std::size_t>(size); }

ImFont* font_of(TextSize size, bool bold) { return state().chosen[index(size)][bold ? 1 : 0]; }

}  // namespace

void load_fonts(std::string_view regular, std::string_view bold, float pixel_ratio) {
    State& s = state();
    s.pixel_ratio = pixel_ratio > 0.0f ? pixel_ratio : 1.0f;
    ImFontAtlas* atlas = ImGui::GetIO().Fonts;
    atlas->Flags |= ImFontAtlasFlags_NoMouseCursors | ImFontAtlasFlags_NoPowerOfTwoHeight;
    atlas->TexDesiredWidth = 2048;
    s.regular = load_face(regular, s.pixel_ratio);
    s.bold = load_face(bold, s.pixel_ratio);
    ImGui::GetIO().FontDefault = s.regular.for_size(22 * s.pixel_ratio);
    ImGui::GetIO().FontGlobalScale = 1.0f / s.pixel_ratio;
    fit_theme(1280, 720);
}

void fit_theme(float window_width, float window_height) {
    State& s = state();
    // Landscape: 3 % of the height, read from the last row. Upright windows are held in the hand.
    const bool upright = window_width < window_height;
    const float note = std::max(14.0f, upright ? 0.024f * window_width : 0.0303f * window_height);
    const std::array<float, 4> wanted{note * 1.82f, note * 1.10f, note * 1.46f,
                                      note};  // title, text, number, note

    s.shown.colour = daylight;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        s.shown.size[i] = fitted(wanted[i], s.pixel_ratio);
        const float device = s.shown.size[i] * s.pixel_ratio;
        s.chosen[i] = {s.regular.for_size(device), s.bold.for_size(device)};
    }
    s.shown.unit = std::max(5.0f, std::round(note * 8.0f / 22.0f));
    s.shown.regular = font_of(TextSize::number, false);
    s.shown.bold = font_of(TextSize::number, true);
}

const Theme& theme() { return state().shown; }

ImVec2 text_at(ImDrawList* list, ImVec2 position, TextSize size, ImU32 colour, std::string_view words,
               bool bold) {
    if (words.empty()) return {0, theme().size[index(size)]};
    list->AddText(font_of(size, bold), theme().size[index(size)], position, colour, words.data(),
                  words.data() + words.size());
    return text_extent(size, words, bold);
}

ImVec2 text_extent(TextSize size, std::string_view words, bool bold) {
    const float height = theme().size[index(size)];
    if (words.empty()) return {0, height};
    return font_of(size, bold)->CalcTextSizeA(height, 1e6f, 0.0f, words.data(), words.data() + words.size());
}

}  // namespace slopewise
