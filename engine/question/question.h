// Questions for a class, as data: how the approach stands when it is frozen, what is asked about it, what is
// hidden meanwhile. What is right is never written down: it is worked out from the flight (answer.h).
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "drill/control_deck.h"
#include "drill/drill_start.h"
#include "world/outlook.h"

namespace slopewise {

enum class QuestionKind {
    energy_state,  // high or low, fast or slow
    lights,        // what the slope lights say
    where_hit,     // short of the aim point, at it or beyond it, if nothing is changed
    stable,        // by the school's criteria
    first_action,  // what is moved first
    moves_first,   // one control is moved: what answers first
};
inline constexpr std::array<std::string_view, 6> question_kind_names{
    "energy_state", "lights", "where_hit", "stable", "first_action", "moves_first"};
inline constexpr std::array<std::string_view, 6> question_kind_titles{
    "Energy state",     "What the lights say", "Where would we hit",
    "Stable at a gate", "What to move first",  "What answers first"};

// What can be hidden from the class while it is asked.
enum class ClassAid {
    lights,
    dials,
    side_profile,
    airspeed,
    altimeter,
    vertical_speed,
    power,
    flap,
    trim,
    stall_warning
};
inline constexpr std::array<std::string_view, 10> class_aid_names{
    "lights",         "dials", "side_profile", "airspeed", "altimeter",
    "vertical_speed", "power", "flap",         "trim",     "stall_warning"};
using AidsHidden = std::array<bool, class_aid_names.size()>;

// Names of the steps of a control, in the order of ControlStep.
inline constexpr std::array<std::string_view, 7> control_step_names{
    "power_up", "power_down", "nose_up", "nose_down", "flap_down", "trim_up", "trim_down"};

inline constexpr std::size_t most_questions = 40;
inline constexpr std::size_t most_question_failures = 4;

struct Question {
    QuestionKind kind = QuestionKind::energy_state;
    std::string words;               // one's own; empty: the usual ones of the kind
    DrillStart stands;               // how it is at the freeze: it comes there straight
    std::string runway_id;           // empty: where the class flies
    std::optional<Outlook> outlook;  // none: a clear day
    std::vector<Failure> failures;
    double run_s = 4.0;      // it moves for so long before the freeze, so that there is motion to be seen
    double run_on_s = 10.0;  // and after the reveal; 0: it does not
    AidsHidden hidden{};
    bool side_profile_after = true;            // the path from the side is shown with the reveal
    ControlStep step = ControlStep::power_up;  // of moves_first: what is moved,
    double step_share = 0.2;                   // and by how much of its travel
};

struct QuestionSet {
    std::string id;
    std::string title, about;
    int place = 99;  // in the list, of shipped ones
    std::vector<Question> questions;
};

}  // namespace slopewise
