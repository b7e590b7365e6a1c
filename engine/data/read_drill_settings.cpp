#include "data/read_drill_settings.h"

#include "base/units.h"
#include "flight/model_pilot.h"
#include "review/diagnosis/fault.h"

namespace slopewise {
namespace {

constexpr Range distance_nm{0.25, 10.0};

double share(Fields& fields, std::string_view key) { return fields.number(key, {0.5, 50.0}) / 100.0; }

// Two keys, the second not less than the first.
Interval interval(Fields& fields, std::string_view least_key, std::string_view most_key, Range allowed) {
    const Interval found{fields.number(least_key, allowed), fields.number(most_key, allowed)};
    if (found.most < found.least)
        fields.report(most_key, "is " + number_text(found.most),
                      "not less than " + std::string(least_key) + ", " + number_text(found.least));
    return found;
}

Interval scaled(const Interval& interval, double (*unit)(double)) {
    return {unit(interval.least), unit(interval.most)};
}

std::vector<double> numbers(Fields& fields, std::string_view key, Range allowed, double (*unit)(double)) {
    std::vector<double> found;
    const JsonNode* list = fields.raw(key, JsonNode::Kind::list);
    if (list == nullptr) return found;
    for (const JsonNode& item : list->items) {
        const bool good =
            item.kind == JsonNode::Kind::number && item.number >= allowed.low && item.number <= allowed.high;
        if (!good)
            fields.report(key, "holds something else",
                          "numbers, " + number_text(allowed.low) + " to " + number_text(allowed.high));
        else found.push_back(unit(item.number));
    }
    if (list->items.empty() || list->items.size() > 40)
        fields.report(key, "has " + std::to_string(list->items.size()) + " entries", "1 to 40");
    return found;
}

// The distance may be left out where a gate gives it.
DrillStart read_start(Fields fields, bool at_gate = false) {
    DrillStart start;
    if (!at_gate) start.distance_m = m_from_nm(fields.number("distance_nm", distance_nm));
    start.offset_rad = rad_from_deg(fields.number_or("offset_deg", 0.0, {-2.0, 3.0}));
    start.steeper_rad = rad_from_deg(fields.number_or("steeper_deg", 0.0, {-5.0, 5.0}));
    start.faster_mps = mps_from_kt(fields.number_or("faster_kt", 0.0, {-15.0, 30.0}));
    start.flap_short = fields.has("flap_short") ? fields.integer("flap_short", 0, 3) : 0;
    start.headwind_mps = mps_from_kt(fields.number_or("headwind_kt", 0.0, {-15.0, 40.0}));
    fields.finish();
    return start;
}

std::vector<DrillStart> read_starts(Fields& fields, std::string_view key, bool at_gate = false) {
    std::vector<DrillStart> starts;
    for (const Fields& start : fields.list(key, 1, 40)) starts.push_back(read_start(start, at_gate));
    return starts;
}

LightCards read_lights(Fields& fields) {
    LightCards cards;
    cards.exposure_s = interval(fields, "least_exposure_s", "most_exposure_s", {0.1, 60.0});
    cards.distance_m =
        scaled(interval(fields, "least_distance_nm", "most_distance_nm", {0.1, 10.0}), m_from_nm);
    cards.most_error_rad = rad_from_deg(fields.number("most_error_deg", {0.6, 2.0}));
    return cards;
}

PictureCards read_pictures(Fields& fields) {
    PictureCards cards;
    cards.distances_m = numbers(fields, "distances_nm", distance_nm, m_from_nm);
    cards.errors_rad = numbers(fields, "errors_deg", {-2.0, 2.0}, rad_from_deg);
    cards.exposure_s = fields.number_or("exposure_s", 0.0, {0.0, 60.0});
    cards.horizon_shown = fields.flag_or("horizon", true);
    return cards;
}

ImpactCards read_impacts(Fields& fields) {
    ImpactCards cards;
    cards.distances_m = numbers(fields, "distances_nm", distance_nm, m_from_nm);
    cards.clip_s = fields.number("clip_s", {0.0, 30.0});
    cards.most_error_rad = rad_from_deg(fields.number("most_error_deg", {0.0, 1.5}));
    cards.beyond_aim_m =
        scaled(interval(fields, "least_beyond_ft", "most_beyond_ft", {-1500.0, 3000.0}), m_from_ft);
    return cards;
}

ControlCards read_controls(Fields& fields) {
    ControlCards cards;
    cards.start = read_start(fields.object("start"));
    cards.run_s = fields.number("run_s", {3.0, 30.0});
    cards.lever_step = share(fields, "lever_step_percent");
    cards.stick_step = share(fields, "stick_step_percent");
    cards.trim_step = share(fields, "trim_step_percent");
    cards.same_speed_mps = mps_from_kt(fields.number("same_speed_kt", {0.2, 10.0}));
    cards.same_sink_mps = mps_from_fpm(fields.number("same_sink_fpm", {10.0, 300.0}));
    cards.same_height_m = m_from_ft(fields.number("same_height_ft", {2.0, 100.0}));
    return cards;
}

QuadrantCards read_quadrants(Fields& fields) {
    QuadrantCards cards;
    cards.distances_m = numbers(fields, "distances_nm", distance_nm, m_from_nm);
    cards.exposure_s = fields.number("exposure_s", {0.2, 60.0});
    cards.error_rad = scaled(interval(fields, "least_error_deg", "most_error_deg", {0.3, 2.0}), rad_from_deg);
    cards.speed_error_mps =
        scaled(interval(fields, "least_speed_error_kt", "most_speed_error_kt", {3.0, 20.0}), mps_from_kt);
    return cards;
}

GateCards read_gates(Fields& fields) {
    GateCards cards;
    cards.gates_ft = numbers(fields, "gates_ft", {200.0, 1000.0}, [](double ft) { return ft; });
    cards.cases = read_starts(fields, "cases", true);
    cards.shift_rad = rad_from_deg(fields.number_or("shift_deg", 0.0, {0.0, 0.5}));
    cards.shift_mps = mps_from_kt(fields.number_or("shift_kt", 0.0, {0.0, 5.0}));
    return cards;
}

std::string read_pilot(Fields& fields) {
    std::string name = fields.text("pilot", 40);
    if (!name.empty() && !pilot_skill(name))
        fields.report("pilot", "is \"" + name + "\", which is no model pilot", "");
    return name;
}

std::vector<std::string> read_fault_ids(Fields& fields, std::string_view key) {
    std::vector<std::string> ids;
    const JsonNode* list = fields.raw(key, JsonNode::Kind::list);
    if (list == nullptr) return ids;
    for (const JsonNode& item : list->items) {
        if (find_fault(item.text) == nullptr)
            fields.report(key, "holds \"" + item.text + "\", which is no fault", "");
        ids.push_back(item.text);
    }
    return ids;
}

FaultCards read_faults(Fields& fields) {
    FaultCards cards;
    for (Fields& flight : fields.list("flights", 1, 40)) {
        FaultCards::Flight one;
        one.pilot = read_pilot(flight);
        one.start = read_start(flight.object("start"));
        flight.finish();
        cards.flights.push_back(std::move(one));
    }
    cards.others = read_fault_ids(fields, "others");
    cards.throughout = read_fault_ids(fields, "throughout");
    cards.before_s = fields.number("before_s", {0.0, 30.0});
    cards.after_s = fields.number("after_s", {1.0, 60.0});
    return cards;
}

SpeedHold read_speed_hold(Fields& fields) {
    SpeedHold hold;
    hold.start = read_start(fields.object("start"));
    hold.band_mps = mps_from_kt(fields.number("band_kt", {1.0, 20.0}));
    hold.hold_s = fields.number("hold_s", {5.0, 300.0});
    hold.hands_off_s = fields.number("hands_off_s", {2.0, 60.0});
    return hold;
}

PathByPower read_path_by_power(Fields& fields) {
    PathByPower path;
    path.starts = read_starts(fields, "starts");
    path.band_rad = rad_from_deg(fields.number("band_deg", {0.1, 2.0}));
    path.band_floor_m = m_from_ft(fields.number("band_floor_ft", {0.0, 100.0}));
    path.turbulence_w20_mps = mps_from_kt(fields.number_or("turbulence_kt", 0.0, {0.0, 30.0}));
    return path;
}

GoAroundCall read_go_around(Fields& fields) {
    GoAroundCall call;
    call.start = read_start(fields.object("start"));
    call.call_s = interval(fields, "earliest_call_s", "latest_call_s", {1.0, 120.0});
    call.look_s = fields.number("look_s", {10.0, 60.0});
    return call;
}

TellAndFly read_telling(Fields& fields) {
    TellAndFly telling;
    telling.starts = read_starts(fields, "starts");
    telling.lever_step = share(fields, "lever_step_percent");
    telling.pitch_step_rad = rad_from_deg(fields.number("pitch_step_deg", {0.1, 5.0}));
    telling.trim_s = fields.number("trim_s", {0.5, 10.0});
    return telling;
}

}  // namespace

DrillSettings read_drill_settings(DrillKind kind, Fields fields) {
    const auto finished = [&](DrillSettings settings) {
        fields.finish();
        return settings;
    };
    switch (kind) {
    case DrillKind::read_the_lights: return finished(read_lights(fields));
    case DrillKind::read_the_picture: return finished(read_pictures(fields));
    case DrillKind::where_would_we_hit: return finished(read_impacts(fields));
    case DrillKind::one_control: return finished(read_controls(fields));
    case DrillKind::quadrant_snap: return finished(read_quadrants(fields));
    case DrillKind::gate_call: return finished(read_gates(fields));
    case DrillKind::find_the_fault: return finished(read_faults(fields));
    case DrillKind::speed_by_attitude: return finished(read_speed_hold(fields));
    case DrillKind::path_by_power: return finished(read_path_by_power(fields));
    case DrillKind::go_around: return finished(read_go_around(fields));
    case DrillKind::student_tells: break;
    }
    return finished(read_telling(fields));
}

}  // namespace slopewise
