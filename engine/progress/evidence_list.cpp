#include "progress/evidence_list.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "base/units.h"

namespace slopewise {
namespace {

template <class... Values>
std::string format(const char* pattern, Values... values) {
    char text[200];
    std::snprintf(text, sizeof text, pattern, values...);
    return text;
}

constexpr std::int64_t day_s = 24 * 3600;
constexpr double strong_headwind_mps = mps_from_kt(14.0);  // of 15 kt, the wind near the ground being less

EvidenceItem lamps_item(const DrillResults& drills) {
    EvidenceItem item{"Lights read at a glance: 20 items, 95 % right, half of them within 1.5 s", false,
                      "not done"};
    if (!drills.lamps) return item;
    const auto& lamps = *drills.lamps;
    item.complete = lamps.items >= 20 && lamps.right_share >= 0.95 && lamps.median_s < 1.5;
    item.found = format("%d items, %.0f %% right, median %.1f s", lamps.items, 100.0 * lamps.right_share,
                        lamps.median_s);
    return item;
}

EvidenceItem pictures_item(const DrillResults& drills) {
    EvidenceItem item{"The picture without lights: bias under 0.25\u00b0, 80 % right at half a degree", false,
                      "not done"};
    if (!drills.pictures) return item;
    const auto& pictures = *drills.pictures;
    item.complete = std::abs(pictures.bias_rad) < rad_from_deg(0.25) && pictures.right_share >= 0.80;
    item.found = format("bias %+.2f\u00b0, %.0f %% right", deg_from_rad(pictures.bias_rad),
                        100.0 * pictures.right_share);
    return item;
}

// Varied: begun on both sides of the path or on it and off it, and in more than one wind.
bool varied(std::span<const AttemptRow> rows) {
    const auto offset = [](const AttemptRow& a, const AttemptRow& b) {
        return a.start_offset_rad < b.start_offset_rad;
    };
    const auto wind = [](const AttemptRow& a, const AttemptRow& b) {
        return a.headwind_mps < b.headwind_mps;
    };
    if (rows.empty()) return false;
    const auto [low, high] = std::minmax_element(rows.begin(), rows.end(), offset);
    const auto [calm, windy] = std::minmax_element(rows.begin(), rows.end(), wind);
    return high->start_offset_rad - low->start_offset_rad >= rad_from_deg(0.5) &&
           windy->headwind_mps - calm->headwind_mps >= mps_from_kt(5.0);
}

EvidenceItem curve_item(std::span<const AttemptRow> unaided, const CusumParameters& parameters) {
    const LearningRow row = learning_row(unaided);
    const Cusum curve = learning_cusum(parameters, row.passes);
    EvidenceItem item{"The learning curve signals on unaided approaches from varied starts and winds", false,
                      ""};
    item.complete = curve.signal_at >= 0 && varied(unaided);
    item.found = format("%zu unaided, %zu count, sum %.2f of %.1f", unaided.size(), row.passes.size(),
                        curve.sums.empty() ? 0.0 : curve.sums.back(), parameters.limit);
    if (curve.signal_at >= 0)
        item.found += format(", signalled at unaided attempt %zu",
                             row.at[static_cast<std::size_t>(curve.signal_at)] + 1);
    if (!varied(unaided)) item.found += ", starts and winds not varied";
    return item;
}

EvidenceItem decisions_item(std::span<const AttemptRow> rows) {
    int decisions = 0, misses = 0, unstable = 0;
    for (std::size_t i = rows.size(); i-- > 0 && decisions < 10;) {
        if (rows[i].decision == Decision::none) continue;
        ++decisions;
        misses += rows[i].decision == Decision::miss;
        unstable += !rows[i].stable_at_gate;
    }
    return {"No miss in the last ten decisions at the gate, three or more of them unstable",
            decisions == 10 && misses == 0 && unstable >= 3,
            format("%d decisions, %d unstable, %d missed", decisions, unstable, misses)};
}

EvidenceItem days_item(std::span<const AttemptRow> rows) {
    std::vector<bool> firsts;  // of each new day's first attempt: passed
    std::int64_t last_s = 0;
    for (const AttemptRow& row : rows) {
        if (row.started_unix_s == 0) continue;
        if (last_s == 0 || row.started_unix_s - last_s >= day_s) firsts.push_back(row.passed());
        last_s = row.started_unix_s;
    }
    const std::size_t look = std::min<std::size_t>(firsts.size(), 3);
    const auto passed = std::count(firsts.end() - static_cast<std::ptrdiff_t>(look), firsts.end(), true);
    return {"The first approach of a new day in tolerance, on two of three days", look == 3 && passed >= 2,
            format("%td of the last %zu days", passed, look)};
}

EvidenceItem variants_item(std::span<const AttemptRow> rows) {
    bool no_lights = false, no_airspeed = false, windy = false;
    for (const AttemptRow& row : rows) {
        if (!row.passed()) continue;
        no_lights |= row.lights_hidden;
        no_airspeed |= row.airspeed_hidden;
        windy |= row.headwind_mps >= strong_headwind_mps;
    }
    std::string found;
    const auto add = [&](bool done, const char* name) {
        found += (found.empty() ? "" : ", ") + std::string(name) + (done ? ": passed" : ": not yet");
    };
    add(no_lights, "lights hidden");
    add(no_airspeed, "airspeed hidden");
    add(windy, "15 kt headwind");
    return {"Passed once each: lights hidden, airspeed hidden, 15 kt headwind",
            no_lights && no_airspeed && windy, found};
}

EvidenceItem knowledge_item(const DrillResults& drills) {
    return {"What each control does: questions answered", drills.knowledge.value_or(false),
            !drills.knowledge   ? "not done"
            : *drills.knowledge ? "answered"
                                : "not all right"};
}

}  // namespace

std::vector<EvidenceItem> evidence_list(std::span<const AttemptRow> rows, const CusumParameters& parameters,
                                        const DrillResults& drills) {
    std::vector<AttemptRow> unaided;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(unaided),
                 [](const AttemptRow& row) { return row.unaided; });
    return {lamps_item(drills),      pictures_item(drills), curve_item(unaided, parameters),
            decisions_item(unaided), days_item(unaided),    variants_item(unaided),
            knowledge_item(drills)};
}

std::string evidence_words(std::span<const EvidenceItem> items) {
    const auto complete =
        std::count_if(items.begin(), items.end(), [](const EvidenceItem& item) { return item.complete; });
    if (complete == static_cast<std::ptrdiff_t>(items.size()))
        return "evidence complete: for the instructor to judge";
    return format("%td of %zu items: evidence not yet complete", complete, items.size());
}

}  // namespace slopewise
