// Are the lamps drawn in aviation red, white and green? Boundaries of ICAO Annex 14 Volume I, Appendix
// 1, 2.1.1 as EASA CS ADR-DSN.U.930 reprints them (CIE 1931, filament lamps). That a PAPI's red is held to y
// <= 0.320 (Annex 14, Appendix 1) is from memory and not checked here: see the last test for why no screen
// gets there.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/palette.h"
#include "ui/scene/airfield_lights.h"
#include "ui/scene/colour.h"

using namespace slopewise;

namespace {

struct Chromaticity {
    double x = 0, y = 0;
};

constexpr Chromaticity d65{0.3127, 0.3290};  // the white of sRGB

// sRGB to CIE 1931: transfer and matrix of IEC 61966-2-1.
Chromaticity chromaticity(const Rgb& c) {
    const auto linear = [](double v) {
        return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    const double r = linear(c.r), g = linear(c.g), b = linear(c.b);
    const double x = 0.4124 * r + 0.3576 * g + 0.1805 * b;
    const double y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    const double z = 0.0193 * r + 0.1192 * g + 0.9505 * b;
    return {x / (x + y + z), y / (x + y + z)};
}

// The purple boundary is two lines, and white lies above whichever of them is lower: daylight's own white is
// white.
bool is_aviation_white(const Chromaticity& c) {
    return c.x >= 0.285 && c.x <= 0.500 && c.y <= 0.440 && c.y <= 0.150 + 0.640 * c.x &&
           c.y >= std::min(0.050 + 0.750 * c.x, 0.382);
}

bool is_aviation_green(const Chromaticity& c) {
    return c.x <= 0.360 - 0.080 * c.y && c.x <= 0.650 * c.y && c.y >= 0.390 - 0.171 * c.x;
}

bool is_aviation_red(const Chromaticity& c) { return c.y <= 0.335 && c.y >= 0.980 - c.x; }

// The pure colour of the same hue: from daylight white through c to x + y = 1, which the spectrum follows in
// the red to within 0.001 (CIE 1931).
Chromaticity pure_red_of_hue(const Chromaticity& c) {
    const double dx = c.x - d65.x, dy = c.y - d65.y;
    const double t = (1.0 - d65.x - d65.y) / (dx + dy);
    return {d65.x + t * dx, d65.y + t * dy};
}

bool has_the_hue_of_aviation_red(const Chromaticity& c) {
    const Chromaticity pure = pure_red_of_hue(c);
    return is_aviation_red(pure) && pure.y >= 0.265;  // the spectrum's red end; beyond it the hue is a purple
}

constexpr std::array<Look, 3> looks{Look::standard, Look::high_contrast, Look::night};

}  // namespace

TEST_CASE("lamp colours: white is aviation white, and red has the hue of aviation red, in every look") {
    for (const Look look : looks) {
        const Palette& palette = palette_of(look);
        const Chromaticity white = chromaticity(unpacked(palette.lamp_white));
        const Chromaticity red = chromaticity(unpacked(palette.lamp_red));
        CAPTURE(static_cast<int>(look));
        CAPTURE(white.x);
        CAPTURE(white.y);
        CAPTURE(red.x);
        CAPTURE(red.y);
        CHECK(is_aviation_white(white));
        CHECK(has_the_hue_of_aviation_red(red));
    }
}

TEST_CASE("lamp colours: the runway's lights are aviation white and green, with the hue of aviation red") {
    RunwayView runway;
    runway.length_m = 1500;
    runway.width_m = 30;
    runway.edge_lights = runway.approach_lights = true;
    int white = 0, green = 0, red = 0;
    for (const PointLight& light : make_airfield_lights(runway)) {
        const Chromaticity c = chromaticity(light.colour);
        CAPTURE(c.x);
        CAPTURE(c.y);
        const bool is_white = is_aviation_white(c), is_green = is_aviation_green(c),
                   is_red = has_the_hue_of_aviation_red(c) && c.x > 0.5;
        CHECK(is_white + is_green + is_red == 1);
        white += is_white;
        green += is_green;
        red += is_red;
    }
    CHECK(white > 0);
    CHECK(green > 0);
    CHECK(red > 0);
}

// The note that goes with the picture: aviation red is purer than anything a common screen can show.
TEST_CASE("lamp colours: no colour of an sRGB screen is aviation red, so hue is all that can be matched") {
    double nearest = 0;  // the largest x + y; aviation red begins at 0.980
    for (int green = 0; green <= 255; green += 5) {
        for (int blue = 0; blue <= 255; blue += 5) {
            const Chromaticity c = chromaticity(rgb_from_bytes(255, green, blue));
            CHECK_FALSE(is_aviation_red(c));
            nearest = std::max(nearest, c.x + c.y);
        }
    }
    CHECK(nearest == doctest::Approx(0.970).epsilon(0.001));  // the red primary: x 0.640, y 0.330
}
