// The track, the summary of it, its words and its file.
#include "review/summary.h"

#include <map>
#include <sstream>

#include "base/units.h"
#include "review/track_csv.h"
#include "review/words.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// The scored rows of a track file, by column.
std::map<std::string, std::vector<double>> scored_columns(const std::string& csv) {
    std::istringstream lines(csv);
    std::string line, cell;
    std::getline(lines, line);
    REQUIRE(line.starts_with("# "));
    std::getline(lines, line);
    std::vector<std::string> names;
    for (std::istringstream header(line); std::getline(header, cell, ',');) names.push_back(cell);
    std::map<std::string, std::vector<double>> columns;
    while (std::getline(lines, line)) {
        std::vector<double> row;
        for (std::istringstream cells(line); std::getline(cells, cell, ',');) row.push_back(std::stod(cell));
        REQUIRE(row.size() == names.size());
        if (row.back() != 1.0) continue;
        for (std::size_t i = 0; i < names.size(); ++i) columns[names[i]].push_back(row[i]);
    }
    return columns;
}

double mean_of(const std::vector<double>& values) {
    double sum = 0.0;
    for (const double value : values) sum += value;
    return sum / static_cast<double>(values.size());
}

double deviation_of(const std::vector<double>& values) {
    double sum = 0.0;
    for (const double value : values) sum += (value - mean_of(values)) * (value - mean_of(values));
    return std::sqrt(sum / static_cast<double>(values.size()));
}

// A flight with both path and speed errors in it: hands that move the levers about on purpose.
Flight untidy_flight(const Scenario& scenario) {
    return fly_with(scenario, 40000, [&](const Attempt& attempt) {
        ControlPositions hands = scenario.start_trim.controls;
        hands.throttle += 0.06 * (static_cast<double>(attempt.tick / 1200 % 3) - 1.0);
        hands.stick = 0.04 * (static_cast<double>(attempt.tick / 700 % 3) - 1.0);
        return quantize(hands);
    });
}

}  // namespace

TEST_CASE("track: ten points a second, the last where scoring ended") {
    const Flight flight = fly_good(shipped_scenario("final_calm"), 1);
    const auto& points = flight.track.points;
    REQUIRE(flight.track.scored == points.size());
    for (std::size_t i = 1; i + 1 < points.size(); ++i)
        CHECK_NEAR(points[i].time_s - points[i - 1].time_s, 0.1, 1e-9);
    CHECK_NEAR(points.back().time_s, static_cast<double>(flight.attempt.end_tick) * tick_s, 1e-9);
}

TEST_CASE("spread: bias squared and scatter squared make the mean square") {
    const Flight flight = untidy_flight(shipped_scenario("final_calm"));
    for (const Spread& spread : {flight.summary.path_rad, flight.summary.path_m, flight.summary.speed_mps}) {
        CHECK(spread.scatter > 0.0);
        CHECK_NEAR(spread.rms * spread.rms, spread.bias * spread.bias + spread.scatter * spread.scatter,
                   1e-12 * spread.rms * spread.rms);  // rounding alone
    }
}

TEST_CASE("summary: the figures come out of the exported file by someone else's arithmetic") {
    const Scenario scenario = shipped_scenario("final_headwind");
    const Flight flight = untidy_flight(scenario);
    auto columns = scored_columns(track_csv(flight.track));
    const Summary& summary = flight.summary;
    const std::size_t rows = columns["time_s"].size();
    CHECK(rows == flight.track.scored);
    // Tolerances: half a unit of the last printed digit.
    CHECK_NEAR(deg_from_rad(summary.path_rad.bias), mean_of(columns["path_deviation_deg"]), 5e-5);
    CHECK_NEAR(deg_from_rad(summary.path_rad.scatter), deviation_of(columns["path_deviation_deg"]), 5e-5);
    CHECK_NEAR(kt_from_mps(summary.speed_mps.bias), mean_of(columns["airspeed_kt"]) - 65.0, 5e-4);
    CHECK_NEAR(kt_from_mps(summary.speed_mps.scatter), deviation_of(columns["airspeed_kt"]), 5e-4);

    double path = 0, speed = 0, sink = 0, all = 0;
    std::array<double, 5> lights{};
    for (std::size_t i = 0; i < rows; ++i) {
        const bool path_in = std::abs(columns["path_deviation_deg"][i]) <= 0.5 ||
                             std::abs(columns["path_deviation_ft"][i]) <= 30.0;
        const double off_kt = columns["airspeed_kt"][i] - 65.0;
        const bool speed_in = off_kt >= -5.0 && off_kt <= 10.0;
        // Knots to feet a minute: 6,076.115 / 60.
        const double reference = columns["ground_speed_kt"][i] * 101.26859 * std::tan(3.0 * pi / 180.0);
        const bool sink_in = std::abs(columns["sink_fpm"][i] - reference) <= 200.0;
        path += path_in;
        speed += speed_in;
        sink += sink_in;
        all += path_in && speed_in && sink_in;
        if (columns["white_count"][i] >= 0) lights[static_cast<std::size_t>(columns["white_count"][i])] += 1;
    }
    const double one_row = 1.0 / static_cast<double>(rows);  // a row on the very edge may round either way
    CHECK_NEAR(summary.path_share, path * one_row, 1.5 * one_row);
    CHECK_NEAR(summary.speed_share, speed * one_row, 1.5 * one_row);
    CHECK_NEAR(summary.sink_share, sink * one_row, 1.5 * one_row);
    CHECK_NEAR(summary.all_share, all * one_row, 1.5 * one_row);
    for (std::size_t white = 0; white < 5; ++white)
        CHECK_NEAR(summary.light_share[white], lights[white] * one_row, 1e-9);
}

TEST_CASE("summary: a gate's values are the means of the two seconds on either side") {
    const Scenario scenario = shipped_scenario("from_above");
    const Flight flight = untidy_flight(scenario);
    REQUIRE(!flight.summary.gates.empty());
    for (const GateValue& gate : flight.summary.gates) {
        if (!gate.reached) continue;
        double path = 0, speed = 0, count = 0;
        for (std::size_t i = 0; i < flight.track.scored; ++i) {
            const TrackPoint& point = flight.track.points[i];
            if (std::abs(point.time_s - gate.time_s) > 2.0) continue;
            path += point.path_error_rad;
            speed += point.cas_mps - scenario.lesson.target_cas_mps;
            count += 1;
        }
        CHECK_NEAR(gate.mean.path_rad, path / count, 1e-12);
        CHECK_NEAR(gate.mean.speed_mps, speed / count, 1e-12);
    }
}

TEST_CASE(
    "summary: gates are those the flight began above, and one not come down to is said to be not reached") {
    const Scenario scenario = shipped_scenario("final_calm");
    CHECK(fly_good(scenario, 1).summary.gates.size() == 4);  // begun at 937 ft: 500, 300, 200 and 50
    const Flight around = fly_with(scenario, 1000, [&](const Attempt&) {
        ControlPositions hands = scenario.start_trim.controls;
        hands.go_around = true;
        return quantize(hands);
    });
    for (const GateValue& gate : around.summary.gates) CHECK_FALSE(gate.reached);
}

TEST_CASE("summary: tolerance is the larger of the angle and the height, so nobody is made to chase lights") {
    const Scenario scenario = shipped_scenario("final_calm");
    TrackPoint point;
    point.cas_mps = scenario.lesson.target_cas_mps;
    point.distance_m = 200.0;
    point.path_offset_m = m_from_ft(29.0);
    point.path_error_rad = rad_from_deg(2.5);
    CHECK(deviations(scenario, point).path_in);  // near: 29 ft is within 30, though 2.5 degrees
    point.distance_m = 5000.0;
    point.path_offset_m = m_from_ft(140.0);
    point.path_error_rad = rad_from_deg(0.49);
    CHECK(deviations(scenario, point).path_in);  // far: 0.49 degrees, though 140 ft
    point.path_error_rad = rad_from_deg(0.51);
    CHECK_FALSE(deviations(scenario, point).path_in);
    point.cas_mps = scenario.lesson.target_cas_mps + mps_from_kt(9.9);
    CHECK(deviations(scenario, point).speed_in);
    point.cas_mps = scenario.lesson.target_cas_mps - mps_from_kt(5.1);
    CHECK_FALSE(deviations(scenario, point).speed_in);
}

TEST_CASE("words: the way back from a start off the path is not the worst moment, what comes after it is") {
    for (const char* lesson : {"from_above", "from_below"}) {
        CAPTURE(lesson);
        const Flight flight = fly_good(shipped_scenario(lesson), 1);
        CHECK(flight.summary.worst.back_on_path > 0);
        CHECK(flight.summary.worst.point >= flight.summary.worst.back_on_path);
        CHECK(worst_sentence(flight.summary, flight.track)
                  .starts_with("Once on the path nothing left its tolerance; the largest deviation was at "));
    }
}

TEST_CASE("summary: on the way back to the path it counts to be left farther off it, and the speed") {
    const Scenario scenario = shipped_scenario("from_above");
    Track track = fly_good(scenario, 1).track;
    const std::size_t early = track.scored / 20;  // high above the path
    REQUIRE(early < summarise(scenario, track, End::reached_floor).worst.back_on_path);
    TrackPoint& point = track.points[early];
    point.sink_mps += mps_from_fpm(900.0);
    CHECK(summarise(scenario, track, End::reached_floor).worst.point != early);
    point.path_offset_m += m_from_ft(200.0);
    CHECK(summarise(scenario, track, End::reached_floor).worst.point == early);
    point.path_offset_m -= m_from_ft(200.0);
    point.cas_mps = scenario.lesson.target_cas_mps - mps_from_kt(12.0);
    CHECK(summarise(scenario, track, End::reached_floor).worst.point == early);
}

TEST_CASE(
    "words: where a flight never came back to its path the worst moment is there, with the lights it "
    "showed") {
    const Scenario scenario = shipped_scenario("from_above");
    const Flight flight =
        fly_with(scenario, 1000, [&](const Attempt&) { return quantize(scenario.start_trim.controls); });
    CHECK(flight.summary.worst.back_on_path == 0);
    const std::string words = worst_sentence(flight.summary, flight.track);
    CHECK(words.starts_with("Worst moment at 7"));
    CHECK(words.find("high") != std::string::npos);
    CHECK(words.find("the lights showing 4 white.") != std::string::npos);
}

TEST_CASE("words: a flight within every tolerance is told so, and how it ended") {
    const Flight flight = fly_good(shipped_scenario("final_calm"), 1);
    CHECK(worst_sentence(flight.summary, flight.track).starts_with("Nothing left its tolerance"));
    CHECK(end_sentence(flight.summary).starts_with("Scoring ended at 50 ft wheel height, 0.1"));
    CHECK(light_words(0) == "4 red");
    CHECK(light_words(1) == "1 white 3 red");
    CHECK(light_words(4) == "4 white");
    CHECK(light_words(-1) == "no lights in view");
}

TEST_CASE("model pilot: flies every free approach to 50 ft, and in tolerance there whatever the seed") {
    for (const Lesson& lesson : shipped().lessons) {
        if (lesson.syllabus.place > 0) continue;
        for (std::uint64_t seed = 1; seed <= 5; ++seed) {
            const Flight flight = fly_good(shipped_scenario(lesson.id), seed);
            CHECK(flight.attempt.end == End::reached_floor);
            const Deviations last = deviations(shipped_scenario(lesson.id), flight.track.points.back());
            CHECK_MESSAGE(last.all_in(), lesson.id);
            if (lesson.start.offset_rad == 0.0) CHECK_NEAR(flight.summary.all_share, 1.0, 1e-9);
        }
    }
}

TEST_CASE("summary: nothing measured has neither bias nor scatter") {
    const Spread spread = spread_of({});
    CHECK(spread.bias == 0.0);
    CHECK(spread.scatter == 0.0);
}

TEST_CASE(
    "track: what is flown after scoring has ended is kept, to the point of rest, and marked as unscored") {
    const Scenario scenario = shipped_scenario("final_calm");
    Flight flight = fly_good(scenario, 1);
    const std::size_t scored = flight.track.scored;
    CHECK(scored == flight.track.points.size());
    ControlPositions hands = positions_of(flight.attempt.controls);
    hands.throttle = 0.0;
    while (!flight.attempt.at_rest) {
        const Events events = tick(scenario, flight.attempt, quantize(hands));
        extend(flight.track, scenario, flight.attempt, events);
    }
    const std::size_t at_rest = flight.track.points.size();
    extend(flight.track, scenario, flight.attempt, Events{});
    CHECK(flight.track.points.size() == at_rest);
    CHECK(flight.track.scored == scored);
    CHECK(at_rest > scored);
    CHECK(scored_columns(track_csv(flight.track)).begin()->second.size() == scored);
    CHECK(flight.track.points.back().ground_speed_mps < 1.0);
}
