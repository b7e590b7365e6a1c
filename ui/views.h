// The parts of the view, each made from just the engine state it shows.
#pragma once

#include "data/catalog.h"
#include "lesson/approach_choice.h"
#include "lesson/where_and_when.h"
#include "ui/debrief_state.h"
#include "ui/flight_session.h"
#include "ui/settings.h"
#include "ui/view.h"

namespace slopewise {

ChoiceView choice_view(const ApproachChoice& choice, const Scenario& scenario);

WhereAndWhenView where_and_when_view(const Catalog& catalog, const WhereAndWhen& chosen,
                                     const Scenario& scenario, RunwayUnit runway_unit = RunwayUnit::metres);

// What was chosen on that sheet.
WhereAndWhen where_and_when(const Catalog& catalog, const WhereAndWhenChoice& choice);

// "by day", "at night, dark ground, rain, visibility 5 km".
std::string outlook_words(const Outlook& outlook);

// "Four-seat tourer, Larkmoor 27, by day".
std::string place_words(const Scenario& scenario);

BriefingView briefing_view(const Scenario& scenario, const Settings& settings);

// What stands unchanged through a flight and its settings: the setup, the keys, names.
void flight_words(const FlightSession& session, const Settings& settings, FlightView& view);

// All the rest, written over what the view held, so that a steady frame takes no memory. `blend`: share of a
// tick past the last whole one, for the picture only.
void flight_view(const FlightSession& session, const Display& wanted, bool peek, double blend,
                 FlightView& view);

// What the side profile shows whatever is flown, and the path as flown so far.
void side_profile_words(const Scenario& scenario, SideProfileView& view);
void side_profile_view(const FlightSession& session, const TrackPoint& now, SideProfileView& view);

ScreenAndHelpView screen_and_help_view(const Settings& settings, bool in_flight);

SummaryView summary_view(const FlightSession& session, const DebriefState& state);

// The lamps left to right as seen from the approach. `from_inner`: white fraction of each unit from the
// one nearest the runway outwards, negative where it shows nothing.
LightPicture light_picture(const Scenario& scenario, const std::array<double, 4>& from_inner);

// The same, written over a picture; its words are made again only when another number of lamps is white.
void light_picture(const Scenario& scenario, const std::array<double, 4>& from_inner, LightPicture& picture);

// The lights as they look with so many units white: those set lowest turn white first.
LightPicture picture_of(const Scenario& scenario, int white);

// Distance, height and airspeed of a point of the track, without the lights.
ProfilePoint profile_point(const TrackPoint& point);

// "airspeed", "vertical speed": of those that are set.
std::vector<std::string> names_of(const InstrumentSet& some);

// "Aids: the magnifier. Covered: airspeed. Eyes outside; peeks: 4; inside 12 % of the time, at most 0.9 s at
// once." Of a reviewed session.
std::string aids_words(const FlightSession& session);

// "3 NM, above the path, 10 kt headwind".
std::string setup_words(const Scenario& scenario);

}  // namespace slopewise
