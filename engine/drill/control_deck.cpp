#include "drill/control_deck.h"

#include <cmath>

#include "base/units.h"
#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/still.h"
#include "lesson/demonstrate.h"

namespace slopewise {
namespace {

constexpr std::array<std::string_view, 3> questions{"how is the speed?", "where is the aeroplane?",
                                                    "how is the sink?"};

std::vector<std::string> choices_of(ControlEffect effect) {
    switch (effect) {
    case ControlEffect::speed: return {"faster", "the same", "slower"};
    case ControlEffect::path: return {"above the path", "the same", "below the path"};
    case ControlEffect::sink: break;
    }
    return {"more sink", "the same", "less sink"};
}

struct Found {
    double change = 0.0, same = 1.0;

    bool clear() const { return std::abs(change) < 0.5 * same || std::abs(change) > 1.5 * same; }
    int choice() const { return change > same ? 0 : (change < -same ? 2 : 1); }
};

Found found_of(const ControlCards& settings, const ControlOutcome& outcome, ControlEffect effect) {
    switch (effect) {
    case ControlEffect::speed: return {outcome.speed_mps, settings.same_speed_mps};
    case ControlEffect::path: return {outcome.height_m, settings.same_height_m};
    case ControlEffect::sink: break;
    }
    return {outcome.sink_mps, settings.same_sink_mps};
}

std::string size_phrase(const ControlCards& settings, ControlStep step) {
    switch (step) {
    case ControlStep::power_up:
    case ControlStep::power_down:
        return drill_format(" by %.0f %% of the lever", 100.0 * settings.lever_step);
    case ControlStep::nose_up:
    case ControlStep::nose_down:
        return drill_format(" by %.0f %% of its travel and held", 100.0 * settings.stick_step);
    case ControlStep::trim_up:
    case ControlStep::trim_down: return drill_format(" by %.0f %% of the wheel", 100.0 * settings.trim_step);
    case ControlStep::flap_down: break;
    }
    return "";
}

std::string reveal_of(const Track& track, const ControlOutcome& outcome) {
    const TrackPoint& first = track.points.front();
    return drill_format("Speed %.0f to %.0f kt. Sink %.0f to %.0f ft/min. %.0f ft %s the path.",
                        kt_from_mps(first.cas_mps), kt_from_mps(first.cas_mps + outcome.speed_mps),
                        fpm_from_mps(first.sink_mps), fpm_from_mps(first.sink_mps + outcome.sink_mps),
                        std::abs(ft_from_m(outcome.height_m)), outcome.height_m < 0.0 ? "below" : "above");
}

Card card_of(const ControlCards& settings, const Scenario& scenario, ControlStep step, ControlEffect effect,
             const Track& track) {
    const ControlOutcome outcome = control_outcome(track);
    const std::string_view words = control_step_words[static_cast<std::size_t>(step)];
    Card card;
    card.picture = still_at(scenario, eye_position(scenario.aircraft, scenario.start_state));
    card.picture.pitch_rad = scenario.start_state.pitch_rad;
    card.picture.flap = scenario.lesson.start.flap;
    card.picture.airspeed_shown = true;
    card.question = std::string(words) + size_phrase(settings, step) +
                    drill_format(", all else held. After %.0f s, ", settings.run_s) +
                    std::string(questions[static_cast<std::size_t>(effect)]);
    card.facts = {drill_format("Trimmed on the path at %.0f kt", kt_from_mps(track.points.front().cas_mps))};
    card.spoken = card.facts.front() + ".";
    card.choices = choices_of(effect);
    card.right = found_of(settings, outcome, effect).choice();
    card.distance_m = track.points.front().distance_m;
    card.reveal = reveal_of(track, outcome);
    card.control_step = static_cast<int>(step);
    return card;
}

}  // namespace

Scenario control_scenario(const ControlCards& settings, const Scenario& base) {
    return scenario_from(settings.start, base);
}

Controls stepped_controls(const ControlCards& settings, const Scenario& scenario, ControlStep step) {
    ControlPositions hands = scenario.start_trim.controls;
    switch (step) {
    case ControlStep::power_up: hands.throttle += settings.lever_step; break;
    case ControlStep::power_down: hands.throttle -= settings.lever_step; break;
    case ControlStep::nose_up: hands.stick += settings.stick_step; break;
    case ControlStep::nose_down: hands.stick -= settings.stick_step; break;
    case ControlStep::flap_down: ++hands.flap; break;
    case ControlStep::trim_up: hands.trim += settings.trim_step; break;
    case ControlStep::trim_down: hands.trim -= settings.trim_step; break;
    }
    return quantize(hands);
}

Track fly_control_step(const ControlCards& settings, const Scenario& scenario, ControlStep step) {
    const Controls controls = stepped_controls(settings, scenario, step);
    Attempt attempt = begin_attempt(scenario);
    Track track = begin_track(scenario, attempt);
    while (time_s(attempt) < settings.run_s) {
        const Events events = tick(scenario, attempt, controls);
        extend(track, scenario, attempt, events);
    }
    return track;
}

ControlOutcome control_outcome(const Track& track) {
    const TrackPoint& first = track.points.front();
    const double end_s = track.points.back().time_s;
    ControlOutcome sum;
    double count = 0.0;
    for (const TrackPoint& p : track.points) {
        if (end_s - p.time_s >= 1.0) continue;
        sum.speed_mps += p.cas_mps - first.cas_mps;
        sum.height_m += p.path_offset_m - first.path_offset_m;
        sum.sink_mps += p.sink_mps - first.sink_mps;
        count += 1.0;
    }
    return {sum.speed_mps / count, sum.height_m / count, sum.sink_mps / count};
}

std::vector<Card> control_deck(const ControlCards& settings, int items, const Scenario& base,
                               std::uint64_t seed) {
    const Scenario scenario = control_scenario(settings, base);
    if (!scenario.start_trim.flyable) return {};
    std::vector<Card> all;
    for (std::size_t i = 0; i < control_step_words.size(); ++i) {
        const auto step = static_cast<ControlStep>(i);
        const Track track = fly_control_step(settings, scenario, step);
        for (const ControlEffect effect : {ControlEffect::speed, ControlEffect::path, ControlEffect::sink})
            if (found_of(settings, control_outcome(track), effect).clear())
                all.push_back(card_of(settings, scenario, step, effect, track));
    }
    Random random{seed};
    std::vector<Card> cards;
    for (const std::size_t i : draw_rounds(random, all.size(), static_cast<std::size_t>(items)))
        cards.push_back(all[i]);
    return cards;
}

}  // namespace slopewise
