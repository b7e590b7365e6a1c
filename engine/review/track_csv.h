// The track as a CSV text: a caution line, a header with units, one row a point.
#pragma once

#include <string>

#include "review/track.h"

namespace slopewise {

// Decimal point, comma separator, LF line ends, UTF-8; a first line beginning "#" carries the caution.
std::string track_csv(const Track& track);

// A line a column: track.csv, its name, what it means.
std::string track_dictionary();

// The caution that goes with every sheet and file.
inline constexpr const char* file_caution =
    "Ground study aid. Not an approved training device. Time may not be logged or credited. "
    "Not a substitute for instruction or the flight manual.";

}  // namespace slopewise
