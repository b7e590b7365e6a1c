// The debrief on one page: a self-contained HTML text that prints to one A4 or Letter page.
#pragma once

#include <string>

#include "debrief/reviewed_flight.h"
#include "debrief/sheet_facts.h"

namespace slopewise {

// Texts are escaped; there is no script and nothing is loaded. The caution stands in the footer.
std::string sheet_html(const ReviewedFlight& flight, const SheetFacts& facts);

// "Strongest: airspeed, in tolerance for 98 % of the approach." Empty where nothing reached half of it.
std::string strongest_sentence(const Summary& summary);

}  // namespace slopewise
