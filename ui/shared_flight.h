// Who has which control in a flight: the student, or a model pilot in the other seat, who flies what the
// student does not have. What flies is merged before it is recorded, so that a recording needs no pilot.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "drill/shared_controls.h"
#include "flight/model_pilot.h"
#include "lesson/hands.h"

namespace slopewise {

struct FlightSession;

struct SharedFlight {
    ControlShare due = ControlShare::both;  // what the lesson gives to the student
    SharedControls control{ControlShare::both, ControlShare::both, false, {}};
    std::optional<ModelPilot> partner;  // once there is something for him to do
    std::int64_t partner_ticks = 0;     // that he flew what is due to the student, while scored
    std::size_t calls_shown = 0;        // of what was said
    std::int64_t call_ticks = 0;        // for which the last of it is still shown
};

// What a lesson's words for it are here.
ControlShare share_of(Hands hands);
Hands hands_of(ControlShare share);

// Before the first tick: where the lesson gives only a part, it is offered, and the flight waits.
void begin_sharing(FlightSession& session);

// "power both waiting": what the student has, what is due to him, whether an offer waits for his answer; for
// another window with the same flight, where it is set as far as it makes sense.
std::string sharing_text(const FlightSession& session);
void set_sharing(FlightSession& session, std::string_view text);

// Offered and not yet answered: nothing moves.
bool waits_for_answer(const FlightSession& session);

// The key of the exchange: takes what is offered; else gives everything up, or takes it back.
void exchange_controls(FlightSession& session);

// One who goes around has all controls.
void take_all_controls(FlightSession& session);

// The controls that fly in the coming tick. Call it once a tick.
Controls shared_controls(FlightSession& session, const Controls& student);

// The hands rest on what the other pilot moves, so that nothing jumps when it is taken back.
void follow_partner(const FlightSession& session, ControlPositions& hands);

// "You have power, I have pitch"; nothing while the student has everything as a matter of course.
std::string_view sharing_words(const FlightSession& session);

// What was said just now, or what waits for an answer; nothing mostly.
void exchange_caption(const FlightSession& session, std::string_view exchange_key, std::string& words);

}  // namespace slopewise
