#include "ui/flight_session.h"

namespace slopewise {

FlightSession begin_session(Scenario scenario) {
    FlightSession session;
    session.scenario = std::move(scenario);
    session.attempt = begin_attempt(session.scenario);
    session.before = session.attempt.flight;
    session.instruments = settled_instruments(session.attempt.flight);
    session.recording = begin_recording(session.scenario.lesson);
    session.track = begin_track(session.scenario, session.attempt);
    return session;
}

Events tick_session(FlightSession& session, const Controls& controls) {
    session.before = session.attempt.flight;
    const Events events = tick(session.scenario, session.attempt, controls);
    session.instruments = advance_instruments(session.instruments, session.attempt.flight);
    record(session.recording, controls, session.attempt);
    extend(session.track, session.scenario, session.attempt, events);
    if (events.scoring_ended)
        session.summary = summarise(session.scenario, session.track, session.attempt.end);
    return events;
}

}  // namespace slopewise
