// The drills: the one that is open, what it came to, and the results that are kept.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "data/drill_log.h"
#include "drill/flown_drill.h"
#include "ui/card_session.h"
#include "ui/screens/screens.h"

namespace slopewise {

struct DrillDesk {
    std::vector<KeptDrillResult> kept;  // of all students, oldest first
    int edition = 0;                    // counts the changes of these
    std::string trouble;                // kept results that cannot be read, or a drill that cannot be flown

    std::string id;                     // of the drill that is open
    Screen behind = Screen::drills;     // where leaving it leads
    std::optional<CardSession> cards;   // one of cards, while it is answered
    std::optional<FlownDrill> flown;    // one that is flown; its flight is App::flight
    std::optional<DrillResult> result;  // what it came to
};

inline constexpr std::string_view drill_results_key = "slopewise-drills";
inline constexpr std::string_view damaged_drill_results_key = "slopewise-drills-damaged";

// A student's results, oldest first.
std::vector<DrillResult> results_of(const DrillDesk& desk, const std::string& student);

}  // namespace slopewise
