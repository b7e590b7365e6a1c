// What a flight sounds like now, from its truth: a failed or covered instrument changes nothing of it.
#pragma once

#include "ui/flight_session.h"
#include "ui/settings.h"
#include "ui/view.h"

namespace slopewise {

// Silent in a pause, while an answer is waited for and where the user wants no sound.
SoundView sound_view(const FlightSession& session, bool stall_warning, const Settings& settings);

// The user's choice alone, for the sheet where it is made; nothing is heard.
SoundView chosen_sound(const Settings& settings);

}  // namespace slopewise
