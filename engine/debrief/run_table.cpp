#include "base/units.h"
#include "debrief/flight_tables.h"

namespace slopewise {
namespace {

using F = const ReviewedFlight&;
using RunColumn = Column<ReviewedFlight>;

double percent(double share) { return 100.0 * share; }
double light_percent(F f, std::size_t white) { return percent(f.review.summary.light_share[white]); }
double quadrant_percent(F f, Quadrant quadrant) {
    return percent(f.review.energy.share[static_cast<std::size_t>(quadrant)]);
}
double drift_ft(F f, std::size_t i) {
    return known_if(f.review.aim.known[i], ft_from_m(f.review.aim.long_m[i]));
}

constexpr RunColumn columns[] = {
    {"scored_s", 3, "time from the start to the end of scoring",
     [](F f) { return f.review.summary.scored_s; }},
    {"end", 0, "how scoring ended: 1 at 50 ft, 2 go-around, 3 ground short of the runway, 4 overflew, 0 not",
     [](F f) { return static_cast<double>(f.review.summary.end); }},
    {"decision", 0, "at the decision gate: 0 none, 1 right, 2 miss, 3 cautious",
     [](F f) { return static_cast<double>(f.review.decision); }},
    {"path_bias_deg", 4, "mean path deviation, high positive",
     [](F f) { return deg_from_rad(f.review.summary.path_rad.bias); }},
    {"path_scatter_deg", 4, "standard deviation about that mean",
     [](F f) { return deg_from_rad(f.review.summary.path_rad.scatter); }},
    {"path_rms_deg", 4, "root mean square; its square is bias squared plus scatter squared",
     [](F f) { return deg_from_rad(f.review.summary.path_rad.rms); }},
    {"path_bias_ft", 2, "mean height off the path",
     [](F f) { return ft_from_m(f.review.summary.path_m.bias); }},
    {"path_scatter_ft", 2, "standard deviation about that mean",
     [](F f) { return ft_from_m(f.review.summary.path_m.scatter); }},
    {"speed_bias_kt", 3, "mean airspeed less target",
     [](F f) { return kt_from_mps(f.review.summary.speed_mps.bias); }},
    {"speed_scatter_kt", 3, "standard deviation about that mean",
     [](F f) { return kt_from_mps(f.review.summary.speed_mps.scatter); }},
    {"speed_rms_kt", 3, "root mean square", [](F f) { return kt_from_mps(f.review.summary.speed_mps.rms); }},
    {"path_in_percent", 2, "points with the path in tolerance",
     [](F f) { return percent(f.review.summary.path_share); }},
    {"speed_in_percent", 2, "points with the speed in tolerance",
     [](F f) { return percent(f.review.summary.speed_share); }},
    {"sink_in_percent", 2, "points with the sink in tolerance",
     [](F f) { return percent(f.review.summary.sink_share); }},
    {"all_in_percent", 2, "points with all three in tolerance",
     [](F f) { return percent(f.review.summary.all_share); }},
    {"lights_0_white_percent", 2, "points with no unit seen white", [](F f) { return light_percent(f, 0); }},
    {"lights_1_white_percent", 2, "points with one unit seen white", [](F f) { return light_percent(f, 1); }},
    {"lights_2_white_percent", 2, "points with two units seen white",
     [](F f) { return light_percent(f, 2); }},
    {"lights_3_white_percent", 2, "points with three units seen white",
     [](F f) { return light_percent(f, 3); }},
    {"lights_4_white_percent", 2, "points with four units seen white",
     [](F f) { return light_percent(f, 4); }},
    {"lights_unseen_percent", 2, "points with no unit in view",
     [](F f) { return percent(f.review.summary.light_unseen_share); }},
    {"light_changes", 0, "changes of the light picture",
     [](F f) { return double(f.review.summary.light_changes); }},
    {"energy_centre_percent", 2, "points with path and speed in tolerance",
     [](F f) { return quadrant_percent(f, Quadrant::centre); }},
    {"high_fast_percent", 2, "other points high and fast",
     [](F f) { return quadrant_percent(f, Quadrant::high_fast); }},
    {"high_slow_percent", 2, "other points high and slow",
     [](F f) { return quadrant_percent(f, Quadrant::high_slow); }},
    {"low_fast_percent", 2, "other points low and fast",
     [](F f) { return quadrant_percent(f, Quadrant::low_fast); }},
    {"low_slow_percent", 2, "other points low and slow",
     [](F f) { return quadrant_percent(f, Quadrant::low_slow); }},
    {"low_and_slow_s", 2, "time low and slow, both out of tolerance",
     [](F f) { return f.review.energy.low_and_slow_s; }},
    {"stick_reversals_per_min", 3, "times the stick turned back by more than 3 % of its travel",
     [](F f) { return f.review.controls.stick_reversals_per_min(); }},
    {"lever_reversals_per_min", 3, "times the lever turned back by more than 2 % of its travel",
     [](F f) { return f.review.controls.lever_reversals_per_min(); }},
    {"stick_rate_rms_percent_per_s", 3, "root mean square rate of the stick",
     [](F f) { return percent(f.review.controls.stick_rate_rms_per_s); }},
    {"largest_lever_step_percent", 2, "largest change of the lever within two seconds",
     [](F f) { return percent(f.review.controls.largest_lever_step); }},
    {"pitch_scatter_deg", 4, "standard deviation of the pitch",
     [](F f) { return deg_from_rad(f.review.controls.pitch_scatter_rad); }},
    {"path_errors", 0, "times the path left the answer band",
     [](F f) { return double(f.review.answers.path_errors); }},
    {"path_errors_answered", 0, "of those, how many had a right-way input",
     [](F f) { return double(f.review.answers.path_answered); }},
    {"path_reaction_s", 3, "mean time from leaving the answer band to the first right-way input",
     [](F f) { return known_if(f.review.answers.path_answered > 0, f.review.answers.path_reaction_s); }},
    {"path_wrong_way_first", 0, "path errors whose first input went the wrong way",
     [](F f) { return double(f.review.answers.path_wrong_way); }},
    {"path_settling_s", 3, "mean time until the path was back in the answer band",
     [](F f) { return known_if(f.review.answers.path_settled > 0, f.review.answers.path_settling_s); }},
    {"overshoots", 0, "corrections that went out on the other side within 20 s",
     [](F f) { return double(f.review.answers.overshoots); }},
    {"light_calls", 0, "changes of the lights that asked for an input",
     [](F f) { return double(f.review.answers.light_changes); }},
    {"light_calls_answered", 0, "of those, how many had an input within 5 s",
     [](F f) { return double(f.review.answers.lights_answered); }},
    {"light_reaction_s", 3, "mean time to that input",
     [](F f) { return known_if(f.review.answers.lights_answered > 0, f.review.answers.light_reaction_s); }},
    {"light_wrong_way_first", 0, "of those inputs, how many went the wrong way",
     [](F f) { return double(f.review.answers.lights_wrong_way); }},
    {"landing_flap_at_ft", 1, "wheel height at which landing flap was set for good; empty: never",
     [](F f) {
         return known_if(f.review.configuration.landing_height_m >= 0.0,
                         ft_from_m(f.review.configuration.landing_height_m));
     }},
    {"flap_steps", 0, "changes of the flap setting",
     [](F f) { return double(f.review.configuration.steps.size()); }},
    {"over_flap_speed_s", 2, "time above the limiting speed of the flap that was out",
     [](F f) { return f.review.configuration.over_flap_speed_s; }},
    {"held_stick_percent", 3, "mean stick of the last 30 s: what the trim did not carry",
     [](F f) { return percent(f.review.configuration.held_stick); }},
    {"aim_drift_500_ft", 1, "where the flight path at 500 ft met the ground, beyond the aim point",
     [](F f) { return drift_ft(f, 0); }},
    {"aim_drift_300_ft", 1, "the same at 300 ft", [](F f) { return drift_ft(f, 1); }},
    {"aim_drift_200_ft", 1, "the same at 200 ft", [](F f) { return drift_ft(f, 2); }},
    {"aim_drift_100_ft", 1, "the same at 100 ft", [](F f) { return drift_ft(f, 3); }},
    {"aim_wander_ft", 1, "standard deviation of the same, each second below 500 ft",
     [](F f) { return ft_from_m(f.review.aim.wander_m); }},
    {"ducking_deg", 4, "path deviation at 50 ft less that at 200 ft; negative ducks under",
     [](F f) { return known_if(f.review.aim.ducking_known, deg_from_rad(f.review.aim.ducking_rad)); }},
    {"touchdown_beyond_threshold_ft", 1, "wheels on the runway, straight on from 50 ft with no flare",
     [](F f) { return known_if(f.review.touchdown.known, ft_from_m(f.review.touchdown.from_threshold_m)); }},
    {"touchdown_beyond_aim_ft", 1, "the same from the aim point",
     [](F f) { return known_if(f.review.touchdown.known, ft_from_m(f.review.touchdown.from_aim_m)); }},
    {"sink_at_50_ft_fpm", 2, "where scoring ended at 50 ft",
     [](F f) { return known_if(f.review.touchdown.known, fpm_from_mps(f.review.touchdown.sink_mps)); }},
    {"speed_at_50_ft_kt", 3, "likewise, less target",
     [](F f) { return known_if(f.review.touchdown.known, kt_from_mps(f.review.touchdown.speed_mps)); }},
    {"go_around_from_ft", 1, "wheel height at which the go-around began",
     [](F f) { return known_if(f.review.go_around.flown, ft_from_m(f.review.go_around.height_m)); }},
    {"go_around_full_power_s", 2, "from there until the lever was at 95 % or more; empty: it never was",
     [](F f) { return known_if(f.review.go_around.full_power_s >= 0.0, f.review.go_around.full_power_s); }},
    {"go_around_lowest_ft", 1, "least wheel height in the minute from there",
     [](F f) { return known_if(f.review.go_around.flown, ft_from_m(f.review.go_around.lowest_m)); }},
    {"go_around_slowest_kt", 3, "least airspeed likewise",
     [](F f) { return known_if(f.review.go_around.flown, kt_from_mps(f.review.go_around.slowest_mps)); }},
    {"go_around_most_pitch_deg", 3, "greatest pitch likewise",
     [](F f) { return known_if(f.review.go_around.flown, deg_from_rad(f.review.go_around.most_pitch_rad)); }},
    {"worst_at_s", 3, "when the largest deviation was, not counting the way back from a start off the path",
     [](F f) { return f.track.points[f.review.summary.worst.point].time_s; }},
    {"worst_tolerances", 3, "how many times its tolerance it was",
     [](F f) { return f.review.summary.worst.severity; }},
};

}  // namespace

Table run_table(const ReviewedFlight& flight) {
    Table table{"run", "", {}, {}};
    set_heads(table, columns);
    add_row(table, columns, "", flight);
    return table;
}

}  // namespace slopewise
