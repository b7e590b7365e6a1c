#include "ui/theme.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace slopewise {
namespace {

// Dear ImGui 1.90 draws a glyph from the picture it was given once, so each face is drawn at a ladder of
// sizes (device pixels). The rungs that common windows ask for are among them, so their text is not scaled.
constexpr std::array<float, 20> rungs{14, 16, 18, 20, 22, 24, 26, 29, 33,  36,
                                      40, 44, 48, 54, 60, 66, 72, 80, 108, 144};
constexpr float largest_full_rung = 40;     // above it only the characters that titles and numbers need
constexpr float largest_regular_rung = 80;  // larger text is bold

// Above it only digits: the atlas grows with the square of a rung.
float largest_word_rung(float pixel_ratio) { return pixel_ratio > 2.0f ? 144 : 108; }

constexpr std::size_t rungs_always = 10;  // the largest so many are there on every screen

// A dense screen never asks for the small rungs.
constexpr float least_layout_size = 12;

// What the screens may write: Latin, punctuation, arrows, signs.
constexpr std::array<ImWchar, 13> all_characters{0x20,   0x7E,   0xA0,   0xFF,   0x2010, 0x2027, 0x2030,
                                                 0x203A, 0x2190, 0x2193, 0x2212, 0x2212, 0};
constexpr std::array<ImWchar, 13> large_characters{0x20,   0x7E,   0xA0,   0xB7,   0xD7,   0xD7, 0x2013,
                                                   0x2026, 0x2190, 0x2193, 0x2212, 0x2212, 0};
constexpr std::array<ImWchar, 5> digits{0x30, 0x39, 0x2013, 0x2013, 0};

const ImWchar* characters_at(float rung, float pixel_ratio) {
    if (rung > largest_word_rung(pixel_ratio)) return digits.data();
    return rung > largest_full_rung ? large_characters.data() : all_characters.data();
}

struct Face {
    std::array<ImFont*, rungs.size()> at{};
    float largest_word = 0;  // rung

    // The smallest rung that need not be enlarged; the largest where none is large enough.
    ImFont* for_size(float device_pixels, bool digits_alone) const {
        ImFont* best = nullptr;
        for (std::size_t i = 0; i < rungs.size(); ++i) {
            if (at[i] == nullptr || (rungs[i] > largest_word && !digits_alone)) continue;
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
    ImVec2 window{1280, 720};
    Look look = Look::standard;
    bool projector_text = false;
    std::array<std::array<ImFont*, 2>, 5> chosen{};  // by TextSize, regular and bold
};

// Fonts live in ImGui's own single atlas, so what points into it is single too.
State& state() {
    static State only;
    return only;
}

Face load_face(std::string_view bytes, float pixel_ratio, float largest_rung) {
    Face face;
    face.largest_word = largest_word_rung(pixel_ratio);
    for (std::size_t i = 0; i < rungs.size(); ++i) {
        if (i + rungs_always < rungs.size() && rungs[i] < least_layout_size * pixel_ratio) continue;
        if (rungs[i] > largest_rung) break;
        ImFontConfig config;
        config.FontDataOwnedByAtlas = false;
        config.OversampleH = rungs[i] < 40 ? 2 : 1;
        config.OversampleV = 1;
        // ImGui takes a mutable pointer for the case in which it owns the bytes; it only reads them.
        face.at[i] = ImGui::GetIO().Fonts->AddFontFromMemoryTTF(
            const_cast<char*>(bytes.data()), static_cast<int>(bytes.size()), rungs[i], &config,
            characters_at(rungs[i], pixel_ratio));
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

// Landscape: 3 % of the height, read from the last row; upright windows are held in the hand. A projector
// stands further off.
float note_size(const State& s) {
    const bool upright = s.window.x < s.window.y;
    if (!s.projector_text) return std::max(14.0f, upright ? 0.024f * s.window.x : 0.0303f * s.window.y);
    // Twenty-five to a line is the least that the sheets' longest words need.
    const float wanted = upright ? std::min(0.0303f * s.window.y, s.window.x / 25) : 0.036f * s.window.y;
    return std::max(14.0f, wanted);
}

ImFont* font_of(TextSize size, bool bold) { return state().chosen[index(size)][bold ? 1 : 0]; }

}  // namespace

void load_fonts(std::string_view regular, std::string_view bold, float pixel_ratio) {
    State& s = state();
    s.pixel_ratio = pixel_ratio > 0.0f ? pixel_ratio : 1.0f;
    ImFontAtlas* atlas = ImGui::GetIO().Fonts;
    atlas->Clear();
    atlas->Flags |= ImFontAtlasFlags_NoMouseCursors | ImFontAtlasFlags_NoPowerOfTwoHeight;
    atlas->TexDesiredWidth = 2048;
    s.regular = load_face(regular, s.pixel_ratio, largest_regular_rung);
    s.bold = load_face(bold, s.pixel_ratio, rungs.back());
    ImGui::GetIO().FontDefault = s.regular.for_size(22 * s.pixel_ratio, false);
    ImGui::GetIO().FontGlobalScale = 1.0f / s.pixel_ratio;
    fit_theme(s.window.x, s.window.y);
}

void fit_theme(float window_width, float window_height) {
    State& s = state();
    s.window = {window_width, window_height};
    const float note = note_size(s);
    // title, text, number, note, back row
    const std::array<float, 5> wanted{note * 1.82f, note * 1.10f, note * 1.46f, note, note * 3.2f};

    s.shown.colour = palette_of(s.look);
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        s.shown.size[i] = fitted(wanted[i], s.pixel_ratio);
        const float device = s.shown.size[i] * s.pixel_ratio;
        const bool digits_alone = i == index(TextSize::back_row);
        s.chosen[i] = {s.regular.for_size(device, digits_alone), s.bold.for_size(device, digits_alone)};
    }
    s.shown.unit = std::max(5.0f, std::round(note * 8.0f / 22.0f));
    s.shown.regular = font_of(TextSize::number, false);
    s.shown.bold = font_of(TextSize::number, true);
}

void wear_look(Look look, bool projector_text) {
    State& s = state();
    if (s.look == look && s.projector_text == projector_text) return;
    s.look = look;
    s.projector_text = projector_text;
    fit_theme(s.window.x, s.window.y);
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
