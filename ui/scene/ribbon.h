// A band between an upper and a lower line, soft by a pixel all round, gathered end to end: hedges and the
// sides of woods.
#pragma once

#include <array>

#include "ui/scene/painter.h"

namespace slopewise {

class Ribbon {
public:
    static constexpr int most_pieces = 48;

    explicit Ribbon(const Painter& painter) : painter_(painter) {}

    // The next place along it; what exceeds most_pieces is left off.
    void add(const ScreenPoint& upper, const ScreenPoint& lower, const Rgb& upper_colour,
             const Rgb& lower_colour);

    void finish(double alpha) const;

private:
    struct Column {
        ScreenPoint upper, lower;
        Rgb upper_colour, lower_colour;
    };

    bool hidden() const;
    // Moved along the ribbon by so many pixels.
    void write(const Column& column, const ScreenPoint& along_px, double alpha) const;

    const Painter& painter_;
    std::array<Column, most_pieces + 1> columns_;
    std::size_t count_ = 0;
};

}  // namespace slopewise
