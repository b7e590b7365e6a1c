#include "ui/palette.h"

namespace slopewise {
namespace {

constexpr ImU32 rgb(unsigned hex, unsigned alpha = 255) {
    return IM_COL32((hex >> 16) & 255u, (hex >> 8) & 255u, hex & 255u, alpha);
}

// A printed sheet by daylight.
constexpr Palette standard{.paper = rgb(0xF7F2E7),
                           .paper_edge = rgb(0xE6DECD),
                           .ink = rgb(0x1E2429),
                           .ink_soft = rgb(0x565B5F),
                           .rule = rgb(0xCDC4B2),
                           .accent = rgb(0x1D4F56),
                           .accent_ink = rgb(0xFBF8F0),
                           .good = rgb(0x1F5AA6),
                           .attention = rgb(0x934200),
                           .band = rgb(0xDCE4DF),
                           .lamp_red = rgb(0xDB1F1A),
                           .lamp_white = rgb(0xFFFDF4),
                           .shelf = rgb(0x25282B),
                           .shelf_edge = rgb(0x3A3E41),
                           .dial = rgb(0x17191B),
                           .dial_ink = rgb(0xEFEADF),
                           .dial_soft = rgb(0xA6A59D),
                           .needle = rgb(0xF2D58C),
                           .strip = rgb(0x25282B, 200),
                           .flap_range = rgb(0xDED9CB),
                           .normal_range = rgb(0x6A8E60),
                           .caution_range = rgb(0xC4A654),
                           .never_line = rgb(0xB24A3C)};

// For a room that washes the picture out: fewer greys, all text at least seven to one.
constexpr Palette high_contrast{.paper = rgb(0xFCF9F1),
                                .paper_edge = rgb(0xDAD4C5),
                                .ink = rgb(0x0B0E11),
                                .ink_soft = rgb(0x2C3135),
                                .rule = rgb(0x7A7466),
                                .accent = rgb(0x063940),
                                .accent_ink = rgb(0xFCF9F1),
                                .good = rgb(0x0B3B7A),
                                .attention = rgb(0x652A00),
                                .band = rgb(0xD6E3DD),
                                .lamp_red = rgb(0xD31310),
                                .lamp_white = rgb(0xFFFEF8),
                                .shelf = rgb(0x0E1012),
                                .shelf_edge = rgb(0x6B7074),
                                .dial = rgb(0x050607),
                                .dial_ink = rgb(0xFBF5E2),
                                .dial_soft = rgb(0xD2CDBF),
                                .needle = rgb(0xFFD76A),
                                .strip = rgb(0x0E1012, 228),
                                .flap_range = rgb(0xF0EAD8),
                                .normal_range = rgb(0x7FB26F),
                                .caution_range = rgb(0xE0BC55),
                                .never_line = rgb(0xCC5443)};

// For a dark room: warm and dim, so that the eyes stay used to the dark.
constexpr Palette night{.paper = rgb(0x1A1511),
                        .paper_edge = rgb(0x3A3026),
                        .ink = rgb(0xC9B08A),
                        .ink_soft = rgb(0xAB9472),
                        .rule = rgb(0x43382B),
                        .accent = rgb(0xC08B45),
                        .accent_ink = rgb(0x17120D),
                        .good = rgb(0x7D9CC0),
                        .attention = rgb(0xDF9148),
                        .band = rgb(0x352D20),
                        .lamp_red = rgb(0xA81A17),
                        .lamp_white = rgb(0xD9CFB8),
                        .shelf = rgb(0x100D0A),
                        .shelf_edge = rgb(0x2E261D),
                        .dial = rgb(0x090706),
                        .dial_ink = rgb(0xBFA27A),
                        .dial_soft = rgb(0x9A8465),
                        .needle = rgb(0xC9963F),
                        .strip = rgb(0x100D0A, 228),
                        .flap_range = rgb(0x978A72),
                        .normal_range = rgb(0x4C6243),
                        .caution_range = rgb(0x8A7133),
                        .never_line = rgb(0x85372B)};

}  // namespace

const Palette& palette_of(Look look) {
    switch (look) {
    case Look::high_contrast: return high_contrast;
    case Look::night: return night;
    case Look::standard: break;
    }
    return standard;
}

}  // namespace slopewise
