#include "data/read_practice.h"

#include "base/units.h"
#include "data/read_happenings.h"
#include "data/read_start.h"

namespace slopewise {
namespace {

SetUp read_set_up(Fields& fields) {
    SetUp set_up;
    set_up.name = fields.text("name", 60);
    set_up.unstable = fields.flag_or("unstable", false);
    set_up.lights_hidden = fields.flag_or("lights_hidden", false);
    set_up.start = read_start(fields.object("start"));
    set_up.runway_id = fields.text_or("runway", "", 40);
    if (fields.has("wind")) set_up.wind = read_wind(fields.object("wind"));
    if (fields.has("failure")) set_up.failure = read_failure(fields.object("failure"));
    fields.finish();
    return set_up;
}

std::vector<double> read_chain(Fields& fields) {
    std::vector<double> chain_m;
    for (const double distance_nm : fields.numbers("chain_nm", 1, most_chain_starts, {0.25, 10.0})) {
        if (!chain_m.empty() && m_from_nm(distance_nm) <= chain_m.back())
            fields.report("chain_nm", "has " + number_text(distance_nm) + " after a start further out",
                          "the nearest first");
        chain_m.push_back(m_from_nm(distance_nm));
    }
    return chain_m;
}

}  // namespace

Practice read_practice(Fields fields) {
    Practice practice;
    practice.vary_start = fields.flag_or("vary_start", false);
    practice.vary_wind = fields.flag_or("vary_wind", false);
    if (fields.has("runways")) practice.runways = fields.texts("runways", 1, most_practice_runways, 40);
    if (fields.has("set_ups")) {
        for (Fields& set_up : fields.list("set_ups", 2, most_set_ups))
            practice.set_ups.push_back(read_set_up(set_up));
    }
    if (fields.has("chain_nm")) practice.chain_m = read_chain(fields);
    fields.finish();
    return practice;
}

Traffic read_traffic(Fields fields) {
    Traffic traffic;
    traffic.ahead_m = m_from_nm(fields.number("ahead_nm", {0.2, 10.0}));
    traffic.path_rad = rad_from_deg(fields.number("path_deg", {2.0, 6.0}));
    traffic.touchdown_m = m_from_ft(fields.number("touchdown_beyond_threshold_ft", {0.0, 5000.0}));
    traffic.ground_speed_mps = mps_from_kt(fields.number("ground_speed_kt", {50.0, 200.0}));
    traffic.span_m = m_from_ft(fields.number("wing_span_ft", {30.0, 270.0}));
    fields.finish();
    return traffic;
}

}  // namespace slopewise
