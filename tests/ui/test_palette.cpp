// The three looks: all text stands out from its ground, for every kind of colour vision, and the lights' red
// and white are nobody else's.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

#include "ui/palette.h"

using namespace slopewise;

namespace {

struct Linear {
    double r = 0, g = 0, b = 0;
};

// sRGB to linear light, and the relative luminance and contrast of WCAG 2.2 (its definitions).
double linear(double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); }

Linear linear(ImU32 c) {
    const auto part = [c](int shift) { return linear((c >> shift & 0xFFu) / 255.0); };
    return {part(IM_COL32_R_SHIFT), part(IM_COL32_G_SHIFT), part(IM_COL32_B_SHIFT)};
}

double luminance(const Linear& c) { return 0.2126 * c.r + 0.7152 * c.g + 0.0722 * c.b; }

double contrast(const Linear& a, const Linear& b) {
    const double high = std::max(luminance(a), luminance(b)), low = std::min(luminance(a), luminance(b));
    return (high + 0.05) / (low + 0.05);
}

// See-through paint on a ground, mixed as the screen does it: in sRGB.
ImU32 over(ImU32 paint, ImU32 ground) {
    const unsigned alpha = paint >> IM_COL32_A_SHIFT & 0xFFu;
    ImU32 mixed = IM_COL32_A_MASK;
    for (const int shift : {IM_COL32_R_SHIFT, IM_COL32_G_SHIFT, IM_COL32_B_SHIFT}) {
        const unsigned top = paint >> shift & 0xFFu, below = ground >> shift & 0xFFu;
        mixed |= static_cast<ImU32>((top * alpha + below * (255 - alpha)) / 255) << shift;
    }
    return mixed;
}

// How protanopes, deuteranopes and tritanopes see linear light: Machado, Oliveira and Fernandes, A
// physiologically-based model for simulation of color vision deficiency, IEEE TVCG 15(6), 2009, severity 1.0
// (the table as several public programs print it, alike in all of them).
using Matrix = std::array<std::array<double, 3>, 3>;
constexpr std::array<Matrix, 3> deficiencies{
    {{{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}},
     {{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}},
     {{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}}}};

Linear seen(const Linear& c, const Matrix& m) {
    const auto row = [&](std::size_t i) {
        return std::clamp(m[i][0] * c.r + m[i][1] * c.g + m[i][2] * c.b, 0.0, 1.0);
    };
    return {row(0), row(1), row(2)};
}

// Distance of two colours in OKLab (Ottosson 2020), which is about even to the eye: black to white is 1.
double apart(const Linear& a, const Linear& b) {
    const auto lab = [](const Linear& c) {
        const double l = std::cbrt(0.4122214708 * c.r + 0.5363325363 * c.g + 0.0514459929 * c.b);
        const double m = std::cbrt(0.2119034982 * c.r + 0.6806995451 * c.g + 0.1073969566 * c.b);
        const double s = std::cbrt(0.0883024619 * c.r + 0.2817188376 * c.g + 0.6299787005 * c.b);
        return std::array<double, 3>{0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
                                     1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
                                     0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s};
    };
    const auto x = lab(a), y = lab(b);
    return std::sqrt(std::pow(x[0] - y[0], 2) + std::pow(x[1] - y[1], 2) + std::pow(x[2] - y[2], 2));
}

struct Pair {
    const char* what;
    ImU32 text, ground;
};

// Every colour that text has on every ground that it stands on.
std::vector<Pair> text_pairs(const Palette& c) {
    constexpr ImU32 brightest_view = IM_COL32(255, 255, 255, 255);
    return {{"ink on paper", c.ink, c.paper},
            {"soft ink on paper", c.ink_soft, c.paper},
            {"accent on paper", c.accent, c.paper},
            {"ink on the accent", c.accent_ink, c.accent},
            {"good on paper", c.good, c.paper},
            {"attention on paper", c.attention, c.paper},
            {"ink on the band", c.ink, c.band},
            {"soft ink on the band", c.ink_soft, c.band},
            {"attention on the band", c.attention, c.band},
            {"digits on a dial", c.dial_ink, c.dial},
            {"numerals on a dial", c.dial_soft, c.dial},
            {"digits on the shelf", c.dial_ink, c.shelf},
            {"words on the shelf", c.dial_soft, c.shelf},
            {"keys on the strip over the brightest view", c.dial_ink, over(c.strip, brightest_view)}};
}

constexpr std::array<Look, 3> looks{Look::standard, Look::high_contrast, Look::night};

}  // namespace

// WCAG 2.2, success criteria 1.4.3 (4.5 to 1) and 1.4.6 (7 to 1); 1.4.11 for what is no text (3 to 1).
TEST_CASE("palette: all text has 4.5 to 1 against its ground, and 7 to 1 in the look for a bright room") {
    for (const Look look : looks) {
        const Palette& c = palette_of(look);
        for (const Pair& pair : text_pairs(c)) {
            CAPTURE(static_cast<int>(look));
            CAPTURE(std::string(pair.what));
            CHECK(contrast(linear(pair.text), linear(pair.ground)) >=
                  (look == Look::high_contrast ? 7.0 : 4.5));
        }
        CHECK(contrast(linear(c.needle), linear(c.dial)) >= 3.0);
        for (const ImU32 arc : {c.flap_range, c.normal_range, c.caution_range})
            CHECK(contrast(linear(arc), linear(c.dial)) >= 3.0);
    }
}

TEST_CASE(
    "palette: with protan, deutan and tritan vision the text still stands out, and blue is not orange") {
    for (const Matrix& deficiency : deficiencies) {
        for (const auto& row : deficiency) CHECK(std::abs(row[0] + row[1] + row[2] - 1.0) < 2e-6);
        for (const Look look : looks) {
            const Palette& c = palette_of(look);
            for (const Pair& pair : text_pairs(c)) {
                CAPTURE(static_cast<int>(look));
                CAPTURE(std::string(pair.what));
                CHECK(contrast(seen(linear(pair.text), deficiency), seen(linear(pair.ground), deficiency)) >=
                      (look == Look::high_contrast ? 7.0 : 4.5));
            }
            // A tenth of black to white is five times what is just noticed (0.02; common practice, no
            // source).
            CHECK(apart(seen(linear(c.good), deficiency), seen(linear(c.attention), deficiency)) > 0.1);
            // Red is not only another hue than white but much darker: at least three to one.
            CHECK(contrast(seen(linear(c.lamp_white), deficiency), seen(linear(c.lamp_red), deficiency)) >=
                  3.0);
        }
    }
}

TEST_CASE("palette: red and white belong to the lights alone") {
    for (const Look look : looks) {
        const Palette& c = palette_of(look);
        CAPTURE(static_cast<int>(look));
        for (const ImU32 colour :
             {c.paper, c.paper_edge, c.ink, c.ink_soft, c.rule, c.accent, c.accent_ink, c.good, c.attention,
              c.band, c.shelf, c.shelf_edge, c.dial, c.dial_ink, c.dial_soft, c.needle}) {
            CHECK(apart(linear(colour), linear(c.lamp_red)) > 0.1);
            CHECK(colour != c.lamp_white);
        }
        // What is drawn on the dark shelf beside the lights is cream, not white.
        for (const ImU32 colour : {c.dial_ink, c.dial_soft, c.needle, c.flap_range})
            CHECK(luminance(linear(colour)) < 0.95 * luminance(linear(c.lamp_white)));
    }
}

TEST_CASE("palette: at night nothing is bright, and everything is warm") {
    const Palette& c = palette_of(Look::night);
    for (const ImU32 colour : {c.paper, c.paper_edge, c.ink, c.ink_soft, c.rule, c.accent, c.band, c.shelf,
                               c.shelf_edge, c.dial, c.dial_ink, c.dial_soft, c.needle, c.attention}) {
        CHECK(luminance(linear(colour)) < 0.5);  // the daylight sheet has 0.89
        CHECK(linear(colour).r >= linear(colour).b);
    }
    CHECK(luminance(linear(c.paper)) < 0.02);
}
