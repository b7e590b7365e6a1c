// The parts of the view, each made from just the engine state it shows.
#pragma once

#include "lesson/approach_choice.h"
#include "ui/flight_session.h"
#include "ui/settings.h"
#include "ui/view.h"

namespace slopewise {

ChoiceView choice_view(const ApproachChoice& choice, const Scenario& scenario);

BriefingView briefing_view(const Scenario& scenario, const Settings& settings);

// `blend`: share of a tick past the last whole one, for the picture only.
FlightView flight_view(const FlightSession& session, const Settings& settings, double blend);

SummaryView summary_view(const FlightSession& session);

// The lamps left to right as seen from the approach. `from_inner`: white fraction of each unit from the
// one nearest the runway outwards, negative where it shows nothing.
LightPicture light_picture(const Scenario& scenario, const std::array<double, 4>& from_inner);

// "3 NM, above the path, 10 kt headwind".
std::string setup_words(const Scenario& scenario);

// Across the view, fixed: stated on the screen, never changed silently (angles are what is taught).
inline constexpr double horizontal_fov_deg = 40.0;

}  // namespace slopewise
