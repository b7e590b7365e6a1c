// The figures of one reviewed flight as tables.
#pragma once

#include "debrief/reviewed_flight.h"
#include "debrief/table.h"

namespace slopewise {

Table setup_table(const ReviewedFlight& flight);   // one row: what was flown and what it was held to
Table run_table(const ReviewedFlight& flight);     // one row: the whole approach
Table gate_table(const ReviewedFlight& flight);    // where it began, and a row a gate below that
Table band_table(const ReviewedFlight& flight);    // a row a distance band
Table answer_table(const ReviewedFlight& flight);  // a row a path error left to answer

// All of them, in the order above. The track's own file is track_csv().
std::vector<Table> flight_tables(const ReviewedFlight& flight);

// Every table's columns and the track's.
std::string flight_dictionary(const ReviewedFlight& flight);

}  // namespace slopewise
