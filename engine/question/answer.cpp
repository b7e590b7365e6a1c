#include "question/answer.h"

#include <algorithm>
#include <cmath>

#include "base/exact_math.h"
#include "base/units.h"
#include "drill/drill_words.h"
#include "drill/light_deck.h"
#include "drill/quadrant_deck.h"
#include "question/answer_parts.h"
#include "review/aim_point.h"
#include "review/stability.h"
#include "review/words.h"

namespace slopewise {
namespace {

constexpr const char* untrusted = "not to be trusted";

std::string speed_phrase(double off_mps) {
    const double off_kt = kt_from_mps(off_mps);
    if (std::abs(off_kt) < 0.5) return "on speed";
    return drill_format("%.0f kt %s", std::abs(off_kt), off_kt < 0.0 ? "slow" : "fast");
}

std::string state_phrase(const TrackPoint& now, const Deviations& off) {
    return sentence(path_phrase(off.path_rad, now.distance_m)) + " and " + speed_phrase(off.speed_mps);
}

// The choices follow Quadrant, with the centre last.
int choice_of(Quadrant quadrant) { return quadrant == Quadrant::centre ? 4 : static_cast<int>(quadrant) - 1; }

// Where only one of the two is off, the sign of the other decides, and a class may rightly argue.
std::string one_sided(const Deviations& off) {
    if (off.path_in == off.speed_in) return "";
    return off.path_in ? "The path is within its tolerance: only the speed is off."
                       : "The speed is within its tolerance: only the path is off.";
}

Answer energy_answer(const FlownSoFar& flown) {
    const TrackPoint now = observe(flown.scenario, flown.attempt);
    const Deviations off = deviations(flown.scenario, now);
    return {choice_of(quadrant_of(off)), state_phrase(now, off) + ".", one_sided(off)};
}

Answer action_answer(const FlownSoFar& flown) {
    const TrackPoint now = observe(flown.scenario, flown.attempt);
    const Deviations off = deviations(flown.scenario, now);
    const Quadrant quadrant = quadrant_of(off);
    Answer answer{4, state_phrase(now, off), one_sided(off)};
    if (quadrant == Quadrant::centre) {
        answer.reveal += ": within tolerance, leave it alone.";
        return answer;
    }
    const FirstAction action = first_action(quadrant);
    answer.right = static_cast<int>(action);
    answer.reveal += ": " + action_words(action, flown.criteria.convention) +
                     (action == FirstAction::more_power   ? ". Too little energy."
                      : action == FirstAction::less_power ? ". Too much energy."
                                                          : ". The energy is enough, in the wrong place.");
    return answer;
}

Answer lights_answer(const FlownSoFar& flown) {
    const Scenario& scenario = flown.scenario;
    const TrackPoint now = observe(scenario, flown.attempt);
    const LightSystem& lights = scenario.lights;
    const std::vector<std::string> choices = light_choices(lights);
    const std::string eye = " The eye is " + path_phrase(now.path_error_rad, now.distance_m) + " at " +
                            distance_phrase(now.distance_m) + ".";
    const std::string seen = sentence(light_words(now.white_count, units_showing(now.white_fraction),
                                                  scenario.surroundings.runway.lights.kind));
    if (const std::string fault = light_fault_words(scenario, flown.attempt); !fault.empty())
        return {static_cast<int>(choices.size()),
                sentence(fault) + ": believe the picture, not the lights." + eye, ""};
    if (now.white_count < 0) return {static_cast<int>(choices.size()), "No lights are in view." + eye, ""};
    const int right = light_choice(lights, now.white_count);
    Answer answer{right, seen + ": " + choices[static_cast<std::size_t>(right)] + "." + eye, ""};
    for (int i = 0; i < lights.pattern; ++i) {
        const LightUnit& unit = lights.units[static_cast<std::size_t>(i)];
        const double angle_rad =
            unit_eye_angle_rad(unit, eye_position(scenario.aircraft, flown.attempt.flight));
        if (std::abs(angle_rad - unit.setting_rad) < unit.transition_rad)
            answer.close = "A lamp is just changing its colour.";
    }
    return answer;
}

Answer hit_answer(const FlownSoFar& flown) {
    const TrackPoint now = observe(flown.scenario, flown.attempt);
    if (now.sink_mps <= 0.0) return {2, "It is not descending: it meets no ground here.", ""};
    const double beyond_m =
        impact_beyond_aim_m(now.eye_height_m, now.distance_m, now.ground_speed_mps, now.sink_mps);
    Answer answer;
    answer.right = std::abs(beyond_m) < at_aim_point_m ? 1 : (beyond_m < 0.0 ? 0 : 2);
    const double descent_rad = exact::atan2(now.sink_mps, now.ground_speed_mps);
    answer.reveal =
        drill_format("Descending at %.1f\u00b0 over the ground, straight on meets the runway's level ",
                     deg_from_rad(descent_rad)) +
        place_phrase(beyond_m) + ".";
    // A quarter of the margin, 50 ft, is argued about and not seen (our figure, no source).
    if (std::abs(std::abs(beyond_m) - at_aim_point_m) < 0.25 * at_aim_point_m)
        answer.close = "It is near the limit of what counts as at the aim point, 200 ft either side.";
    return answer;
}

Answer stable_answer(const FlownSoFar& flown) {
    const GateValue gate = gate_now(flown);
    const Stability stability = stability_at(flown.scenario, flown.criteria, gate);
    Answer answer;
    answer.right = stability.stable() ? 0 : 1;
    answer.reveal =
        drill_format("At %.0f ft: ", gate.height_ft) + stability_words(stability) + ". " +
        sentence(path_phrase(gate.mean.path_rad, gate.distance_m)) + ", " +
        speed_phrase(gate.mean.speed_mps) +
        drill_format(", sink %.0f ft/min, power %.0f %%.", fpm_from_mps(gate.sink_mps), 100.0 * gate.power);
    if (is_near_a_limit(flown, gate))
        answer.close = "It is within a tenth of a limit that the call hangs on.";
    return answer;
}

Answer moved_answer(const Question& question, const FlownSoFar& flown) {
    const FirstSeen first = first_seen(question, flown);
    Answer answer;
    const std::vector<std::string> choices =
        answer_choices(question, flown.scenario, flown.criteria.convention);
    answer.right = first.what;
    answer.reveal = sentence(choices[static_cast<std::size_t>(first.what)]);
    if (first.what < 2) answer.reveal += drill_format(" after %.1f s", first.after_s);
    answer.reveal += drill_format(
        ". Against the same flight left alone, the speed changes by at most %.0f kt within %.0f s, the sink "
        "by "
        "%.0f ft/min.",
        std::abs(kt_from_mps(first.speed_mps)), answers_within_s, std::abs(fpm_from_mps(first.sink_mps)));
    if (first.next_after_s - first.after_s < 0.5)
        answer.close = "The other answers within half a second of it.";
    return answer;
}

}  // namespace

std::string asked_words(const Question& question) {
    if (!question.words.empty()) return question.words;
    switch (question.kind) {
    case QuestionKind::energy_state: return "High or low? Fast or slow?";
    case QuestionKind::lights: return "What do the lights say?";
    case QuestionKind::where_hit: return "Where would we hit, if nothing is changed?";
    case QuestionKind::stable: return "Stable at this gate, or going around?";
    case QuestionKind::first_action: return "What do you move first?";
    case QuestionKind::moves_first: break;
    }
    return std::string(control_step_words[static_cast<std::size_t>(question.step)]) +
           " only, all else held. What is seen to answer first?";
}

std::vector<std::string> answer_choices(const Question& question, const Scenario& scenario,
                                        Convention convention) {
    switch (question.kind) {
    case QuestionKind::energy_state:
        return {"high and fast", "high and slow", "low and fast", "low and slow", "on path and on speed"};
    case QuestionKind::lights: {
        std::vector<std::string> choices = light_choices(scenario.lights);
        choices.push_back(untrusted);
        return choices;
    }
    case QuestionKind::where_hit:
        return {"short of the aim point", "at the aim point", "beyond the aim point"};
    case QuestionKind::stable: return {"stable: continue", "not stable: go around"};
    case QuestionKind::first_action: {
        std::vector<std::string> choices;
        for (int i = 0; i < 4; ++i) choices.push_back(action_words(static_cast<FirstAction>(i), convention));
        choices.push_back("nothing: leave it alone");
        return choices;
    }
    case QuestionKind::moves_first: break;
    }
    return {"the airspeed", "the sink", "neither within ten seconds"};
}

Answer work_out(const Question& question, const FlownSoFar& flown) {
    switch (question.kind) {
    case QuestionKind::energy_state: return energy_answer(flown);
    case QuestionKind::lights: return lights_answer(flown);
    case QuestionKind::where_hit: return hit_answer(flown);
    case QuestionKind::stable: return stable_answer(flown);
    case QuestionKind::first_action: return action_answer(flown);
    case QuestionKind::moves_first: break;
    }
    return moved_answer(question, flown);
}

}  // namespace slopewise
