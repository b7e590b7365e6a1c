#include "debrief/reviewed_flight.h"

#include <algorithm>

namespace slopewise {

ReviewedFlight review_flight(const Scenario& scenario, const Criteria& criteria, const Track& track, End end,
                             double panel_share) {
    ReviewedFlight flight;
    flight.scenario = scenario;
    flight.criteria = criteria;
    flight.track = track;
    flight.review = review_of(scenario, criteria, track, end);
    flight.diagnosis = diagnose(approach_of(scenario, criteria, track, flight.review, panel_share));
    return flight;
}

std::string no_fault_words(const ReviewedFlight& flight) {
    return std::ranges::all_of(flight.review.stability, &Stability::stable)
               ? "No fault stands out."
               : "No known fault explains what was not stable. Begin with the worst moment.";
}

ReviewedFlight review_recording(const Recording& recording, const Scenario& scenario,
                                const Criteria& criteria) {
    Track track;
    const Replay again = replay(recording, scenario, [&](const Attempt& attempt, const Events& events) {
        if (attempt.tick == 0) {
            track = begin_track(scenario, attempt);
        } else {
            extend(track, scenario, attempt, events);
        }
    });
    ReviewedFlight flight =
        review_flight(scenario, criteria, track, again.attempt.end, recording.circumstances.aids.panel_share);
    flight.first_diverged_tick = again.first_diverged_tick;
    return flight;
}

}  // namespace slopewise
