#include "drill/flown_drill.h"

#include "drill/draw.h"
#include "drill/drill_words.h"
#include "drill/go_around_steps.h"
#include "drill/path_power.h"

namespace slopewise {
namespace {

template <class Settings>
const Settings* settings_of(const FlownDrill& flown) {
    return std::get_if<Settings>(&flown.drill.settings);
}

// The start drawn by the seed, and what else the drill's kind sets.
struct Setter {
    FlownDrill& flown;
    const Scenario& base;
    Random& random;

    void operator()(const SpeedHold& settings) { flown.scenario = scenario_from(settings.start, base); }
    void operator()(const PathByPower& settings) {
        Scenario scenario = scenario_from(drawn(settings.starts), base);
        Lesson lesson = scenario.lesson;
        lesson.tolerances.path_rad = settings.band_rad;
        lesson.tolerances.path_floor_m = settings.band_floor_m;
        lesson.turbulence_w20_mps = settings.turbulence_w20_mps;
        lesson.seed = flown.seed;
        flown.scenario = make_scenario(lesson, base.aircraft, base.surroundings.runway);
    }
    void operator()(const GoAroundCall& settings) {
        flown.scenario = scenario_from(settings.start, base);
        flown.call_s = draw_from(random, settings.call_s);
    }
    void operator()(const TellAndFly& settings) {
        flown.scenario = scenario_from(drawn(settings.starts), base);
    }
    template <class Cards>
    void operator()(const Cards&) {}

    const DrillStart& drawn(const std::vector<DrillStart>& starts) {
        return starts[draw_index(random, starts.size())];
    }
};

ControlShare share_of(DrillKind kind) {
    if (kind == DrillKind::path_by_power) return ControlShare::power;
    return kind == DrillKind::student_tells ? ControlShare::none : ControlShare::both;
}

std::vector<Figure> told_figures(const FlownDrill& flown, const Track& track, const Attempt& attempt,
                                 const Criteria& criteria) {
    const Review review = review_of(flown.scenario, criteria, track, attempt.end);
    std::vector<Figure> figures{{Measure::path_percent, 100.0 * review.summary.path_share},
                                {Measure::speed_percent, 100.0 * review.summary.speed_share},
                                {Measure::commands, static_cast<double>(flown.told.size())}};
    if (const Stability* gate = stability_at(review, criteria.decision_gate_ft)) {
        figures.push_back({Measure::stable_at_gate, gate->stable() ? 1.0 : 0.0});
        figures.push_back({Measure::misses, review.decision == Decision::miss ? 1.0 : 0.0});
    }
    return figures;
}

}  // namespace

FlownDrill begin_flown(const Drill& drill, const Scenario& base, std::uint64_t seed) {
    FlownDrill flown;
    flown.drill = drill;
    flown.seed = seed;
    Random random{seed};
    std::visit(Setter{flown, base, random}, drill.settings);
    flown.partner = make_partner(flown.scenario, seed);
    flown.follower = make_command_pilot(flown.scenario);
    offer_controls(flown.sharing, share_of(kind_of(drill)), 0);
    accept_controls(flown.sharing, 0);
    return flown;
}

Controls flown_controls(FlownDrill& flown, const Attempt& attempt, const Controls& student) {
    if (settings_of<TellAndFly>(flown) != nullptr)
        return fly(flown.follower, sight_of(flown.scenario, attempt));
    if (flown.sharing.share == ControlShare::both) return student;
    return merged_controls(flown.sharing.share, student,
                           partner_controls(flown.partner, flown.sharing.share, flown.scenario, attempt));
}

void advance_flown(FlownDrill& flown, const Attempt& attempt) {
    if (const SpeedHold* settings = settings_of<SpeedHold>(flown))
        advance(flown.speed_hold, *settings, flown.scenario, attempt);
}

void tell(FlownDrill& flown, const Attempt& attempt, Command command) {
    const TellAndFly* settings = settings_of<TellAndFly>(flown);
    if (settings == nullptr) return;
    flown.told.push_back({attempt.tick, command});
    tell(flown.follower, *settings, command);
}

bool is_finished(const FlownDrill& flown, const Attempt& attempt) {
    if (const GoAroundCall* settings = settings_of<GoAroundCall>(flown))
        return attempt.at_rest || attempt.on_ground || time_s(attempt) >= flown.call_s + settings->look_s;
    if (settings_of<SpeedHold>(flown) != nullptr && flown.speed_hold.task == SpeedHoldState::Task::done)
        return true;
    return attempt.end != End::none;
}

FlownView flown_view(const FlownDrill& flown, const Attempt& attempt) {
    FlownView view;
    view.share = control_share_words[static_cast<std::size_t>(flown.sharing.share)];
    switch (kind_of(flown.drill)) {
    case DrillKind::speed_by_attitude:
        view.say =
            speed_hold_words(flown.speed_hold, *settings_of<SpeedHold>(flown), flown.scenario, attempt);
        view.lights_shown = view.path_counts = false;
        break;
    case DrillKind::go_around:
        view.called = time_s(attempt) >= flown.call_s;
        view.say = view.called ? "Go around!" : "Fly the approach";
        break;
    case DrillKind::student_tells:
        view.telling = true;
        view.share = "You tell, the model flies";
        view.say = flown.told.empty()
                       ? "Tell the pilot what to do"
                       : std::string(command_words[static_cast<std::size_t>(flown.told.back().command)]);
        break;
    default: view.say = "Hold the path with power; the nose holds the speed"; break;
    }
    return view;
}

DrillResult result_of(const FlownDrill& flown, const Track& track, const Attempt& attempt,
                      const Criteria& criteria) {
    std::vector<Figure> figures;
    switch (kind_of(flown.drill)) {
    case DrillKind::speed_by_attitude:
        figures = speed_hold_figures(*settings_of<SpeedHold>(flown), flown.scenario, track);
        break;
    case DrillKind::path_by_power: figures = path_power_figures(flown.scenario, track); break;
    case DrillKind::go_around:
        figures = go_around_drill_figures(flown.scenario, track, attempt.end, flown.call_s);
        break;
    default: figures = told_figures(flown, track, attempt, criteria); break;
    }
    return drill_result(flown.drill, flown.seed, is_finished(flown, attempt), std::move(figures));
}

}  // namespace slopewise
