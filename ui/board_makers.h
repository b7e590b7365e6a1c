// What stands on each board, made of the flight that the class has. Public to boards_view alone.
#pragma once

#include "board/stills.h"
#include "ui/flight_session.h"
#include "ui/view.h"

namespace slopewise {

inline constexpr std::array<const char*, still_set_count> still_set_names{"Paths", "Widths", "Slopes",
                                                                          "Hours"};

enum class ExplainPage { side, motion, headwind, width, slope };
inline constexpr std::array<const char*, 5> explain_names{"From the side", "What moves", "Headwind", "Width",
                                                          "Slope"};

// `display` decides how the slope lights' magnifier looks. Each writes over an empty view; what is to be
// found out is left out unless `revealed`.
void stills_board(const Scenario& flown, const Display& display, StillSet set, bool revealed,
                  BoardsView& view);
void outlines_board(const Scenario& flown, ExplainPage page, bool revealed, BoardsView& view);
void side_board(const Scenario& flown, bool revealed, BoardsView& view);
void headwind_board(const Scenario& flown, bool revealed, BoardsView& view);
// The present picture; where the flight comes down nowhere ahead, one from 1 NM on the path.
void motion_board(const FlightSession& session, bool revealed, BoardsView& view);

// "1.2° (127 ft at 1 NM) low": a path flown in place of the nominal one (rad), both to the aim point.
std::string off_path_words(double flown_rad, double nominal_rad);

}  // namespace slopewise
