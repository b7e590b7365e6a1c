// How the instructor's page and the class window hold together: who is heard, and what has been told.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "lockstep/following.h"
#include "logbook/journal.h"
#include "record/tick_clock.h"
#include "ui/room_shown.h"

namespace slopewise {

// A page that is not heard for so long (s) is gone, or asleep. Each says at least once a second that it is
// there.
inline constexpr double silent_after_s = 3.0;

// The instructor's side.
struct LeadingLink {
    // What the class window knows.
    bool told = false;  // everything, up to these marks
    int run = 0;
    JournalMark rows;
    std::int64_t ticks = 0;
    bool frozen = true;
    int edition = 0;
    std::string settings, kept, hands;
    RoomShown room;
    double told_s = 0;  // when it was spoken to last
    double kept_s = 0;  // when `kept` was looked at last

    bool heard = false;  // a class window is there, or was
    double heard_s = 0;
    bool led_by_other = false;  // it follows another page
    bool taught = false;        // the class was open in the last frame

    // Class windows that nobody leads.
    struct Offer {
        std::string pair, words;
        double heard_s = 0;
    };
    std::vector<Offer> offers;
    double asked_s = -silent_after_s;  // in the lobby, last; at first at once

    int takes_left = 0;  // how often a run is still asked for that a class window shows
    double took_s = 0;
    std::string trouble;  // what did not work; for the instructor
};

// The class window's side.
struct FollowingLink {
    std::string leader;  // the page that leads, or led last
    double heard_s = 0;
    bool leader_left = true;
    int run = 0;
    std::optional<Following> flight;
    TickClock clock;
    bool frozen = true;
    bool lost = true;           // something is missing: everything is asked for
    double put_right_s = -100;  // when it was asked for anew because it differed, last
    std::string kept;           // the instructor's own, to be handed back
    double spoke_s = -silent_after_s, asked_s = -silent_after_s;  // last; at first at once
    std::string trouble;                                          // why there is nothing to show
};

struct ClassLink {
    bool there = false;    // there can be two windows
    bool follows = false;  // this is the class window
    std::string me, pair;  // names of this page and of the two; empty: none yet
    LeadingLink leading;
    FollowingLink following;
};

}  // namespace slopewise
