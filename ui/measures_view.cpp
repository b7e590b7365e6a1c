// Everything else that was measured of an attempt, in groups with units.
#include "ui/measures_view.h"

#include "base/units.h"
#include "debrief/criteria_words.h"
#include "ui/format.h"
#include "ui/views.h"

namespace slopewise {
namespace {

using Group = MeasuresView::Group;
using Rows = std::vector<LabelledValue>;

const std::string none = "\u2013";

LabelledValue row(std::string label, std::string value, std::string unit, std::string note = "") {
    return {std::move(label), std::move(value), std::move(unit), std::move(note)};
}

// A time that may not have come: negative.
LabelledValue seconds(std::string label, double time_s, std::string note = "") {
    if (time_s < 0.0) return row(std::move(label), none, "", "never");
    return row(std::move(label), number_words(time_s, 1), "s", std::move(note));
}

std::string of(int some, int all) { return std::to_string(some) + " of " + std::to_string(all); }

Group energy_group(const Energy& energy) {
    constexpr const char* names[] = {"On path and speed", "High and fast", "High and slow", "Low and fast",
                                     "Low and slow"};
    Group group{"Energy: share of time", {}, ""};
    for (std::size_t i = 0; i < energy.share.size(); ++i)
        group.rows.push_back(row(names[i], number_words(100.0 * energy.share[i]), "%"));
    group.rows.push_back(row("Both out, low and slow", number_words(energy.low_and_slow_s, 1), "s"));
    return group;
}

Group control_group(const ControlActivity& controls) {
    return {"Control activity",
            {row("Stick reversals", number_words(controls.stick_reversals_per_min(), 1), "/min"),
             row("Lever reversals", number_words(controls.lever_reversals_per_min(), 1), "/min"),
             row("Stick rate, RMS", number_words(100.0 * controls.stick_rate_rms_per_s, 1), "%/s"),
             row("Largest lever step", number_words(100.0 * controls.largest_lever_step), "%", "in 2 s"),
             row("Pitch scatter", number_words(deg_from_rad(controls.pitch_scatter_rad), 2), "\u00b0")},
            ""};
}

Group answer_group(const Answers& a) {
    Group group{"Answers", {}, ""};
    Rows& rows = group.rows;
    rows.push_back(row("Path errors answered", of(a.path_answered, a.path_errors), ""));
    if (a.path_answered > 0) rows.push_back(seconds("Time to a right-way input", a.path_reaction_s, "mean"));
    if (a.path_errors > 0)
        rows.push_back(row("First input the wrong way", of(a.path_wrong_way, a.path_errors), ""));
    if (a.path_settled > 0) rows.push_back(seconds("Time to settle", a.path_settling_s, "mean"));
    rows.push_back(row("Overshoots", std::to_string(a.overshoots), ""));
    rows.push_back(row("Light changes answered", of(a.lights_answered, a.light_changes), ""));
    if (a.lights_answered > 0) {
        rows.push_back(seconds("Time to answer the lights", a.light_reaction_s, "mean"));
        rows.push_back(row("Lights, the wrong way", of(a.lights_wrong_way, a.lights_answered), ""));
    }
    return group;
}

std::string landing_flap_words(const Configuration& configuration) {
    if (configuration.landing_at_start) return "at the start";
    return configuration.landing_height_m < 0.0 ? "never"
                                                : number_words(ft_from_m(configuration.landing_height_m));
}

Group configuration_group(const Configuration& c) {
    const bool height = !c.landing_at_start && c.landing_height_m >= 0.0;
    Group group{"Flap and trim", {row("Landing flap set", landing_flap_words(c), height ? "ft" : "")}, ""};
    for (const FlapStep& step : c.steps) {
        const std::string name = "Flap " + std::to_string(step.from) + " to " + std::to_string(step.to);
        group.rows.push_back(row(name + ", ballooned", number_words(ft_from_m(step.balloon_m)), "ft"));
        group.rows.push_back(seconds(name + ", re-trimmed", step.retrim_s));
    }
    group.rows.push_back(row("Above the flap's limit", number_words(c.over_flap_speed_s, 1), "s"));
    group.rows.push_back(
        row("Stick held at the end", signed_words(100.0 * c.held_stick, 1), "%", "last 30 s"));
    return group;
}

Group aim_group(const AimDrift& aim) {
    Group group{"Where the path pointed", {}, "Beyond the aim point; short of it is negative."};
    for (std::size_t i = 0; i < aim_heights_ft.size(); ++i) {
        const std::string label = "At " + number_words(aim_heights_ft[i]) + " ft";
        if (aim.known[i]) group.rows.push_back(row(label, signed_words(ft_from_m(aim.long_m[i])), "ft"));
        else group.rows.push_back(row(label, none, "", "not reached"));
    }
    group.rows.push_back(row("Wander", number_words(ft_from_m(aim.wander_m)), "ft", "below 500 ft"));
    if (aim.ducking_known)
        group.rows.push_back(row("Path at 50 less 200 ft", signed_words(deg_from_rad(aim.ducking_rad), 2),
                                 "\u00b0", aim.ducking_rad < 0.0 ? "ducks under" : ""));
    return group;
}

Group touchdown_group(const Touchdown& t) {
    Group group{"Touchdown, an estimate", {}, ""};
    if (!t.known) {
        group.note = "None: the approach did not come down to 50 ft.";
        return group;
    }
    group.rows = {
        row("Straight on, no flare", signed_words(ft_from_m(t.from_threshold_m)), "ft", "from the threshold"),
        row("The same", signed_words(ft_from_m(t.from_aim_m)), "ft", "from the aim point"),
        row("With a usual flare",
            number_words(ft_from_m(t.float_least_m)) + "\u2013" + number_words(ft_from_m(t.float_most_m)),
            "ft", "from the threshold"),
        row("Sink at 50 ft", number_words(fpm_from_mps(t.sink_mps)), "ft/min"),
        row("Speed at 50 ft", signed_words(kt_from_mps(t.speed_mps), 1), "kt", "off target")};
    group.note = "Never scored: the flare is not flown here.";
    return group;
}

Group go_around_group(const GoAroundFigures& g) {
    Group group{"Go-around",
                {row("Begun at", number_words(ft_from_m(g.height_m)), "ft"),
                 seconds("Full power after", g.full_power_s),
                 row("Lowest", number_words(ft_from_m(g.lowest_m)), "ft"),
                 row("Slowest", number_words(kt_from_mps(g.slowest_mps)), "kt"),
                 row("Most pitch", signed_words(deg_from_rad(g.most_pitch_rad), 1), "\u00b0"),
                 seconds("First flap up after", g.first_flap_s)},
                ""};
    if (g.flap_before_climb) group.note = "Flap was raised while still sinking.";
    if (g.flap_all_at_once)
        group.note += group.note.empty() ? "Flap was raised all at once." : " And all at once.";
    if (group.note.empty())
        group.note = "Of the " + number_words(g.flown_on_s) + " s that were flown on; a minute at most.";
    return group;
}

Group setup_group(const FlightSession& session) {
    const Scenario& scenario = session.scenario;
    const Lesson& lesson = scenario.lesson;
    return {"Set-up and aids",
            {row("Target speed", number_words(kt_from_mps(lesson.target_cas_mps)), "kt"),
             row("Headwind", number_words(kt_from_mps(lesson.wind.headwind_mps)), "kt"),
             row("Turbulence, W20", number_words(kt_from_mps(lesson.turbulence_w20_mps)), "kt"),
             row("Seed of the air", std::to_string(lesson.seed), "")},
            setup_words(scenario) + ". " + aids_words(session)};
}

TextTable band_rows(const Bands& bands) {
    constexpr const char* names[] = {"Beyond 2 NM", "2 NM to 500 ft", "500 to 300 ft", "300 to 200 ft",
                                     "200 to 50 ft"};
    TextTable table{"Bias and scatter by distance; how busy the hands were",
                    {"", "Path bias", "scatter", "Path bias", "scatter", "Speed bias", "scatter",
                     "Stick turns", "Lever turns"},
                    {"", "\u00b0", "\u00b0", "ft", "ft", "kt", "kt", "/min", "/min"},
                    {}};
    for (std::size_t i = 0; i < bands.size(); ++i) {
        const Band& band = bands[i];
        if (band.points == 0) continue;
        table.rows.push_back(
            {names[i], signed_words(deg_from_rad(band.path_rad.bias), 2),
             number_words(deg_from_rad(band.path_rad.scatter), 2), signed_words(ft_from_m(band.path_m.bias)),
             number_words(ft_from_m(band.path_m.scatter)), signed_words(kt_from_mps(band.speed_mps.bias), 1),
             number_words(kt_from_mps(band.speed_mps.scatter), 1),
             number_words(band.controls.stick_reversals_per_min()),
             number_words(band.controls.lever_reversals_per_min())});
    }
    return table;
}

// Of a table only some columns, in their order.
TextTable columns_of(const TextTable& table, std::string title, std::initializer_list<std::size_t> which) {
    TextTable part{std::move(title), {}, {}, {}};
    part.rows.resize(table.rows.size());
    for (const std::size_t i : which) {
        part.heads.push_back(table.heads[i]);
        part.units.push_back(table.units[i]);
        for (std::size_t k = 0; k < table.rows.size(); ++k) part.rows[k].push_back(table.rows[k][i]);
    }
    return part;
}

}  // namespace

MeasuresView measures_view(const FlightSession& session) {
    const Review& review = session.reviewed->review;
    MeasuresView view;
    view.bands = band_rows(review.bands);
    view.short_bands = columns_of(view.bands, "Bias and scatter by distance", {0, 1, 2, 5, 6});
    view.groups = {energy_group(review.energy),  control_group(review.controls),
                   answer_group(review.answers), configuration_group(review.configuration),
                   aim_group(review.aim),        touchdown_group(review.touchdown)};
    if (review.go_around.flown) view.groups.push_back(go_around_group(review.go_around));
    view.groups.push_back(setup_group(session));
    view.held_to = criteria_lines(session.reviewed->criteria);
    return view;
}

}  // namespace slopewise
