#include "logbook/kept_track.h"

#include "debrief/sheet.h"
#include "review/track_csv.h"
#include "tests/fixtures.h"
#include "tests/fuzz/demand.h"
#include "tests/fuzz/readers.h"
#include "tests/fuzz/shipped_texts.h"

namespace slopewise::test {

void meet_kept_track(std::string_view text) {
    const Result<JsonNode> parsed = parse_json(text, "x");
    if (!demand_answer(parsed) || parsed.value->kind != JsonNode::Kind::object) return;
    std::vector<Problem> problems;
    const Track track = read_kept_track(*parsed.value, "x", problems);
    demand_told(problems);
    if (!problems.empty()) return;
    demand(!track.points.empty() && track.scored <= track.points.size(), "a track has points");
    const std::string written = kept_track_text(track);
    const Result<JsonNode> again = parse_json(written, "x", std::size_t{16} << 20);
    demand(again.ok() && kept_track_text(read_kept_track(*again.value, "x", problems)) == written &&
               problems.empty(),
           "a track is kept the same again");
    const Scenario scenario = shipped_scenario("final_calm");
    for (const End end : {End::none, End::reached_floor, End::went_around, End::ground_short, End::overflew})
        demand(sheet_html(review_flight(scenario, Criteria{}, track, end), {}).size() > 1000,
               "what is kept has a sheet");
    demand(track_csv(track).find("nan") == std::string::npos, "a track's figures are numbers");
}

std::vector<std::string> seeds_of_kept_track() {
    std::vector<std::string> seeds{kept_track_text(short_attempt().track)};
    Track approach = fly_good(shipped_scenario("final_calm"), 1).track;
    std::vector<TrackPoint>& points = approach.points;  // every tenth: from the start to the end in few bytes
    for (std::size_t i = 0; i < points.size() / 20; ++i) points[i] = points[20 * i];
    points.resize(points.size() / 20);
    approach.scored = points.size();
    seeds.push_back(kept_track_text(approach));
    return seeds;
}

}  // namespace slopewise::test
