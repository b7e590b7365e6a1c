// Who has which control: a student and a partner (an instructor, or a model pilot) share one aeroplane. What
// is handed over is said and answered in words, so that nobody is in doubt: the positive three-step exchange
// of flight controls (FAA-H-8083-9, Aviation Instructor's Handbook, from memory). Taking back asks nobody.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

#include "flight/controls.h"

namespace slopewise {

// What the student has; the partner has the rest. The hand on the lever sets the flap as well; the hand on
// the stick trims as well.
enum class ControlShare { both, power, pitch, none };
inline constexpr std::array<std::string_view, 4> control_share_names{"both", "power", "pitch", "none"};
inline constexpr std::array<std::string_view, 4> control_share_words{
    "You have power and pitch", "You have power", "You have pitch", "You watch"};

enum class Speaker { student, partner };

// What was said, and when.
struct ControlCall {
    std::int64_t tick = 0;
    Speaker speaker = Speaker::partner;
    std::string_view words;  // "You have power."

    friend bool operator==(const ControlCall&, const ControlCall&) = default;
};

struct SharedControls {
    ControlShare share = ControlShare::none;    // as it is
    ControlShare offered = ControlShare::none;  // what waits for the student's answer
    bool waiting = false;
    std::vector<ControlCall> calls;  // everything said, oldest first
};

// The partner offers a share: "You have power." Nothing moves until the student answers. An offer of what the
// student has already does nothing.
void offer_controls(SharedControls& shared, ControlShare share, std::int64_t tick);

// The student answers "I have power.", the partner confirms it, and from this tick the share holds. False,
// and nothing happens, where nothing was offered.
bool accept_controls(SharedControls& shared, std::int64_t tick);

// The partner takes everything back at once: "I have control."; the student answers "You have control."
void take_back_controls(SharedControls& shared, std::int64_t tick);

// The student gives everything up: "You have control."; the partner answers "I have control."
void give_up_controls(SharedControls& shared, std::int64_t tick);

// The controls that fly, each from the one who has it. Anyone who has a control may say the go-around.
Controls merged_controls(ControlShare share, const Controls& student, const Controls& partner);

}  // namespace slopewise
