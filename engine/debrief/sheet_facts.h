// What the sheet says besides the flight; one function makes it for the command line and for the screen.
#pragma once

#include <cstdint>
#include <string>

#include "debrief/reviewed_flight.h"
#include "record/circumstances.h"

namespace slopewise {

// All of it may be empty.
struct SheetFacts {
    std::string student;    // name or code
    std::string date;       // as it shall stand there
    std::string aids;       // "path guide 4 s, called 2 times"
    std::string device;     // "stick and lever"
    std::string version;    // of the program
    std::string estimate;   // what the student thought against what was; see estimate_sentence
    std::string own_words;  // the student's
};

// "Aids: the magnifier. Covered: airspeed. Eyes outside; peeks: 4; inside 12 % of the time, at most 0.9 s at
// once."
std::string aids_sentence(const RecordedAids& aids);

SheetFacts sheet_facts(const Circumstances& circumstances, const ReviewedFlight& flight);

// "2026-03-14" of the day in UTC; empty for 0, a time that is not known. Days are counted by the proleptic
// Gregorian calendar (ISO 8601).
std::string date_text(std::int64_t unix_s);

}  // namespace slopewise
