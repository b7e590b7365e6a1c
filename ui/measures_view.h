// Everything else that was measured of an attempt, below the fold of its sheet.
#pragma once

#include "ui/flight_session.h"
#include "ui/view.h"

namespace slopewise {

MeasuresView measures_view(const FlightSession& session);

}  // namespace slopewise
