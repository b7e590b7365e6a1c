// What many tests start from: the shipped data, and plain aeroplanes, runways and air whose behaviour can be
// worked out on paper.
#pragma once

#include <string_view>
#include <vector>

#include "data/catalog.h"
#include "lesson/demonstrate.h"
#include "record/recording.h"
#include "review/summary.h"

namespace slopewise::test {

// The data files compiled in, and all of them read.
std::vector<DataFile> shipped_files();
const Catalog& shipped();
const Aircraft& tourer();
Scenario shipped_scenario(std::string_view lesson_id);

// A level runway at sea level, 30 m wide, 1,500 m long, its aim point 300 m in, lights on the left at 3
// degrees.
Runway plain_runway();

// Still standard air over the plain runway.
Surroundings still_air();

// The propeller aeroplane of the worked examples in Anderson, Introduction to Flight, chapter 6 ("CP-1"):
// span 10.912 m, wing area 16.165 m2, weight 13,127.5 N, zero-lift drag 0.025, span efficiency 0.8, 230 hp at
// 746 W, propeller efficiency 0.8. One flap setting, no idle power, no windmilling drag; a lift slope that
// the examples do not need, and so chosen: 5 per radian. `lift_at_zero` is the lift coefficient at zero angle
// of attack.
Aircraft textbook_aircraft(double lift_at_zero);

// One flight from the start of scoring to its end, by the good model pilot, with all that is made of it.
struct Flight {
    Attempt attempt;
    Track track;
    Recording recording;
    Summary summary;
};
Flight fly_good(const Scenario& scenario, std::uint64_t seed);

// Flies with the controls that `hands(attempt)` gives, until scoring has ended or so many ticks have passed.
template <class Hands>
Flight fly_with(const Scenario& scenario, std::int64_t most_ticks, Hands&& hands) {
    Flight flight;
    flight.attempt = begin_attempt(scenario);
    flight.track = begin_track(scenario, flight.attempt);
    flight.recording = begin_recording(scenario.lesson);
    while (flight.attempt.end == End::none && flight.attempt.tick < most_ticks) {
        const Controls controls = hands(flight.attempt);
        const Events events = tick(scenario, flight.attempt, controls);
        record(flight.recording, controls, flight.attempt);
        extend(flight.track, scenario, flight.attempt, events);
    }
    flight.summary = summarise(scenario, flight.track, flight.attempt.end);
    return flight;
}

}  // namespace slopewise::test
