// What the school sets, on its sheet: chosen by rows, handed over and taken in as one file.
#pragma once

#include <string>

#include "review/school.h"
#include "ui/app.h"

namespace slopewise {

SchoolView school_view(const App& app);

// A choice of a row of that sheet.
void choose_for_school(School& school, int row, int choice);

// "Flap: approach by 1000 ft, landing by 500 ft." Empty where the school sets none for this aircraft.
std::string flap_schedule_words(const School& school, const Aircraft& aircraft);

// "1013 hPa", "29.92 inHg"; whole hectopascals are rounded down (ICAO Annex 3, appendix 3; recalled).
std::string pressure_words(double pressure_pa, PressureUnit unit);

// Lets the user choose a file. What it brings comes as the store's events of an import.
void begin_school_import(App& app, Host& host);

// True when the event was of that import and is done with.
bool take_school_event(App& app, const StoreEvent& event, Host& host);

// Puts the school's own aircraft among those to be flown, in the place of the one it had before. What comes
// with the program stays: an aircraft of the same id is refused, and told of.
std::vector<Problem> put_school_aircraft(App& app, const School& before);

}  // namespace slopewise
