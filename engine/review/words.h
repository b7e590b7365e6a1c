// The summary in words: short, spoken English, the same on every screen, sheet and command line.
#pragma once

#include <array>
#include <string>

#include "review/summary.h"

namespace slopewise {

// What so many units, so many of them white, are called: "2 white 2 red", "4 red", "no lights in view"; a
// VASI's two bars "red over white".
std::string light_words(int white_count, int units_showing = 4, LightSite::Kind kind = LightSite::Kind::papi);

// The same, written over `words`, whose memory is used again.
void light_words(int white_count, int units_showing, LightSite::Kind kind, std::string& words);

// How many units of the picture a track point shows.
int units_showing(const std::array<double, 4>& white_fraction);

// "Worst moment: 410 ft, 1.2 NM out: 0.8° (102 ft) low, 6 kt slow, showing 1 white 3 red."
// or that nothing left its tolerance.
std::string worst_sentence(const Summary& summary, const Track& track);

// "Scoring ended at 50 ft wheel height, 0.17 NM from the aim point."
std::string end_sentence(const Summary& summary);

}  // namespace slopewise
