// A round gauge: its face, ticks, arcs, numerals and the pointer that runs along its rim.
//
// Pointers keep to the outer half, so that the middle is free for the digits: the hand is read at a
// glance, the number from the back of the room.
#pragma once

#include <string>
#include <string_view>

#include <imgui.h>

#include "ui/theme.h"

namespace slopewise {

// Angles are clockwise from straight up, in radians.
struct Dial {
    ImVec2 centre;
    float radius = 0;  // pixels

    float of(double share) const { return radius * static_cast<float>(share); }
    ImVec2 at(double angle_rad, double share) const;  // a place at a share of the radius
    float line() const;                               // the width of a fine line
    bool roomy() const;                               // large enough for numerals
    bool grand() const;                               // large enough for digits of title size
};

void dial_face(ImDrawList* list, const Dial& dial);

void dial_tick(ImDrawList* list, const Dial& dial, double angle_rad, double inner_share, double outer_share,
               ImU32 colour, float width);

void dial_arc(ImDrawList* list, const Dial& dial, double from_rad, double to_rad, double inner_share,
              double outer_share, ImU32 colour);

// Only drawn where there is room.
void dial_numeral(ImDrawList* list, const Dial& dial, double angle_rad, std::string_view words);

// A slender wedge from `inner_share` of the radius to the rim.
void dial_pointer(ImDrawList* list, const Dial& dial, double angle_rad, double inner_share,
                  double outer_share, ImU32 colour, double breadth_share);

// The digits in the middle and the unit under them.
void dial_digits(ImDrawList* list, const Dial& dial, TextSize size, std::string_view digits,
                 std::string_view unit);

// In the place of the digits, and with no pointer: the instrument has failed.
void dial_failed(ImDrawList* list, const Dial& dial, TextSize size);

// A plain lid with the name of what is under it: the instrument is covered.
void dial_cover(ImDrawList* list, const Dial& dial, std::string_view name);

// A whole number with a true minus sign, as on a printed page.
std::string whole_number(double value);

}  // namespace slopewise
