// The decks at their limits: what cannot be flown, shown or drawn makes no card, and never an endless search.
#include <algorithm>
#include <cmath>

#include "base/units.h"
#include "drill/control_deck.h"
#include "drill/draw.h"
#include "drill/fault_deck.h"
#include "drill/gate_deck.h"
#include "drill/light_deck.h"
#include "drill/quadrant_deck.h"
#include "drill/still.h"
#include "tests/check.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

template <class Settings>
const Settings& settings_of(std::string_view id) {
    return std::get<Settings>(find_drill(shipped(), id)->settings);
}

// 50 kt with flap up is below the stall.
DrillStart too_slow() {
    DrillStart start;
    start.faster_mps = -mps_from_kt(15.0);
    start.flap_short = 2;
    return start;
}

}  // namespace

TEST_CASE("decks: nothing is drawn from nothing") {
    Random random{1};
    CHECK(draw_rounds(random, 0, 5).empty());
    CHECK(draw_rounds(random, 3, 5).size() == 5);
}

TEST_CASE("decks: starts that cannot be flown make no cards") {
    const Scenario base = shipped_scenario("final_calm");
    ControlCards controls = settings_of<ControlCards>("one_control");
    controls.start = too_slow();
    CHECK(control_deck(controls, 5, base, 1).empty());
    GateCards gates = settings_of<GateCards>("gate_call");
    gates.cases = {too_slow()};
    CHECK(gate_deck(gates, 2, base, Criteria{}, 1).empty());
    FaultCards faults = settings_of<FaultCards>("find_the_fault");
    faults.flights = {{"good", too_slow()}};
    CHECK(fault_deck(faults, 1, base, Criteria{}, 1).cards.empty());
}

TEST_CASE("gate cards: a gate below the height where scoring ends is not passed") {
    CHECK_FALSE(pass_gate(DrillStart{}, 30.0, shipped_scenario("final_calm"), Criteria{}).flown);
}

TEST_CASE("fault cards: a flight without a fault is no card") {
    FaultCards settings = settings_of<FaultCards>("find_the_fault");
    DrillStart start;
    start.distance_m = m_from_nm(2.0);
    settings.flights = {{"good", start}};
    CHECK(fault_deck(settings, 1, shipped_scenario("final_calm"), Criteria{}, 1).cards.empty());
}

TEST_CASE(
    "fault cards: neither a fault that was found nor one nobody knows is offered beside the right one") {
    FaultCards settings = settings_of<FaultCards>("find_the_fault");
    const Scenario base = shipped_scenario("final_calm");
    const FaultDeck deck = fault_deck(settings, 1, base, Criteria{}, 3);
    REQUIRE(deck.cards.size() == 1);
    const Fault& found = *deck.flights.front()->diagnosis.priority()->fault;
    settings.others = {std::string(found.id), "no_such_fault"};
    const FaultDeck lone = fault_deck(settings, 1, base, Criteria{}, 3);
    REQUIRE(lone.cards.size() == 1);
    CHECK(lone.cards.front().choices == std::vector<std::string>{std::string(found.title)});
}

TEST_CASE("light cards: lights so soft that no place is clear of a change still make a card each") {
    Scenario base = shipped_scenario("final_calm");
    for (LightUnit& unit : base.lights.units) unit.transition_rad = rad_from_deg(10.0);
    const LightCards& settings = settings_of<LightCards>("read_the_lights");
    const std::vector<Card> cards = light_deck(settings, 2, base, 1);
    REQUIRE(cards.size() == 2);
    for (const Card& card : cards)
        CHECK(std::abs(card.truth_rad) <= settings.most_error_rad + 1e-9);  // rounding
}

TEST_CASE("quadrant cards: the reason why the nose comes first is in the school's words") {
    const QuadrantCards& settings = settings_of<QuadrantCards>("quadrant_snap");
    const auto told = [&](Convention convention, std::string_view reason) {
        const auto cards = quadrant_deck(settings, 8, shipped_scenario("final_calm"), convention, 3);
        return std::ranges::count_if(
            cards, [&](const Card& card) { return card.reveal.find(reason) != std::string::npos; });
    };
    // Of eight cards, two of each corner: two corners of four ask for the nose.
    CHECK(told(Convention::pitch_for_path, "The nose mends the path") == 4);
    CHECK(told(Convention::power_for_path, "The nose mends the speed") == 4);
    CHECK(told(Convention::both, "change places by the nose") == 4);
}

TEST_CASE("stills: a path that cannot be flown steadily is shown at the attitude of the reference approach") {
    const Scenario base = shipped_scenario("final_calm");
    const Point3 eye = eye_on_line(base.surroundings.runway, m_from_nm(1.0), 0.0);
    const double climb_rad = rad_from_deg(30.0);
    const Picture picture = still_at(base, eye, climb_rad, base.lesson.target_cas_mps);
    const double height_m = eye.z_m - base.aircraft.geometry.eye_up_m;
    CHECK(picture.pitch_rad == reference_trim(base, height_m).pitch_rad);
    CHECK(picture.path_rad == climb_rad);
}
