// The debrief of one flight as JSON: the tables of the CSV files, the decision and the diagnosis.
#pragma once

#include <string>

#include "debrief/flight_tables.h"

namespace slopewise {

std::string review_json(const ReviewedFlight& flight);

// A table as JSON: a list of objects, unknown figures null. Numbers have the digits of the CSV, so that both
// are the same.
std::string table_json(const Table& table);

}  // namespace slopewise
