// The whole program but its window, flown for hours by a model pilot: each shipped lesson in turn through
// briefing, flight, estimate, sheet, replay and logbook, and between them the drills.
#pragma once

#include <cstdint>
#include <vector>

namespace slopewise::test {

// What the program holds, with nothing open but the list of lessons.
struct SoakSample {
    double flown_h = 0.0;  // of flight, not of looking at sheets
    std::int64_t held_bytes =
        0;  // asked for and not given back (mallinfo2; 0 under a sanitizer, which has its own)
    std::int64_t resident_bytes = 0;
    std::int64_t logbook_bytes = 0;  // the rows of the list and the drills' results, which are meant to stay
    int attempts = 0, drills = 0;
};

struct SoakResult {
    std::vector<SoakSample> samples;  // the first before anything is flown, then one each so many hours
    int frames = 0;
    int kept = 0;     // attempts that the store took
    int scored = 0;   // flights that came to their end
    int lessons = 0;  // of those shipped, flown at least once
    std::int64_t most_vertices = 0;
};

// The clock owes a flight at most a quarter of a second a frame (tick_clock.h), so this is as coarse as it
// can be.
inline constexpr double soak_frame_s = 0.25;

// Flies for so many simulated hours. The store forgets all but the newest attempts, as a device of its own
// memory would not: what is measured is the program.
SoakResult soak(double hours, double sample_each_h);

// How much more is held at the end than at the first sample at or after `from_h`, less what the logbook is
// meant to keep. Bytes.
std::int64_t growth_bytes(const SoakResult& result, double from_h);

// Room for what differs from sample to sample: the store's last three attempts and the one that is shown
// (0.3 to 0.7 MB each). A leak of a tenth of a flight would be 6 MB in six hours.
inline constexpr std::int64_t most_growth_bytes = std::int64_t{4} << 20;

}  // namespace slopewise::test
