// The printed pages of a class: their numbers against published ones and against the screens', and texts that
// stay texts.
#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <sstream>

#include "base/units.h"
#include "debrief/criteria_words.h"
#include "debrief/html_text.h"
#include "handout/handout.h"
#include "handout/handout_numbers.h"
#include "handout/lesson_plan.h"
#include "handout/page.h"
#include "lesson/approach_choice.h"
#include "lesson/briefing.h"
#include "lesson/where_and_when.h"
#include "tests/fixtures.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

Scenario base_of(const char* aircraft_id = "tourer", const char* runway_id = "larkmoor") {
    const Aircraft& aircraft = *find_aircraft(shipped(), aircraft_id);
    const Lesson free = lesson_of(ApproachChoice{}, *find_lesson(shipped(), "final_calm"));
    return make_scenario(lesson_at(free, {aircraft_id, runway_id, {}}, aircraft), aircraft,
                         *find_runway(shipped(), runway_id));
}

bool has(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

std::string source_text(const std::string& file) {
    std::stringstream text;
    text << std::ifstream(std::string(SLOPEWISE_SOURCE_DIR "/") + file).rdbuf();
    return text.str();
}

// What stands between two marks, each time.
std::vector<std::string> all_between(const std::string& text, const std::string& from,
                                     const std::string& to) {
    std::vector<std::string> found;
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at)) {
        at += from.size();
        found.push_back(text.substr(at, text.find(to, at) - at));
    }
    return found;
}

}  // namespace

TEST_CASE("handout: heights on the path are those of 3 degrees, 318 ft a mile") {
    // FAA Order 8260.3: 318 ft a nautical mile at 3.0 degrees; here of the eye above the aim point.
    const HandoutNumbers numbers = handout_numbers(base_of(), School{});
    const double expected_ft[] = {954.6, 636.4, 318.2, 159.1};  // distance x tan 3 degrees, by hand
    for (std::size_t i = 0; i < 4; ++i) {
        // 1 ft: what the page rounds to.
        CHECK(std::abs(ft_from_m(numbers.heights[i].height_m) - expected_ft[i]) < 1.0);
        // 1 in 60: half a degree is 53 ft at a mile, near enough for 1 ft a mile.
        CHECK(std::abs(ft_from_m(numbers.heights[i].half_degree_m) -
                       53.2 * nm_from_m(numbers.heights[i].distance_m)) < 1.0);
    }
}

TEST_CASE(
    "handout: sink is the ground speed by the path's tangent, and a headwind asks for less of it and more "
    "power") {
    const HandoutNumbers numbers = handout_numbers(base_of(), School{});
    for (std::size_t i = 0; i < numbers.winds.size(); ++i) {
        const HandoutWind& wind = numbers.winds[i];
        REQUIRE(wind.flyable);
        // 1 kt along a 3-degree path is 5.307 ft/min (101.27 x tan 3 degrees). 0.5 ft/min: what the page
        // rounds to.
        CHECK(std::abs(fpm_from_mps(wind.sink_mps) - 5.307 * kt_from_mps(wind.ground_speed_mps)) < 0.5);
        if (i == 0) continue;
        CHECK(wind.sink_mps < numbers.winds[i - 1].sink_mps);
        CHECK(wind.power > numbers.winds[i - 1].power);
        // A knot of steady headwind takes a knot off the ground speed.
        CHECK(std::abs(kt_from_mps(numbers.winds[i - 1].ground_speed_mps - wind.ground_speed_mps) - 5.0) <
              0.1);
    }
    const Scenario base = base_of();
    const Briefing briefing = make_briefing(make_scenario(lesson_of({3, StartSide::on, 15.0}, base.lesson),
                                                          base.aircraft, base.surroundings.runway));
    CHECK(numbers.winds[3].sink_mps == briefing.sink_mps);
    CHECK(numbers.winds[3].power == briefing.power);
    CHECK(numbers.winds[3].pitch_rad == briefing.pitch_rad);
}

TEST_CASE("handout: the target rises by the school's share of gust less wind") {
    School school;
    for (const double share : {0.0, 0.5, 1.0}) {
        school.gust_share = share;
        const HandoutNumbers numbers = handout_numbers(base_of(), school);
        for (std::size_t i = 0; i < numbers.gusts.size(); ++i)
            // 1e-9 kt: only rounding of the units stands between.
            CHECK(std::abs(kt_from_mps(numbers.gusts[i].target_mps) -
                           (65.0 + share * 5.0 * static_cast<double>(i))) < 1e-9);
    }
}

TEST_CASE("handout: the lights turn where FAA AC 150/5345-28 sets them") {
    const auto check = [](const char* runway, std::initializer_list<double> turning_deg) {
        const std::vector<HandoutLights> lights = handout_numbers(base_of("tourer", runway), School{}).lights;
        REQUIRE(lights.size() == turning_deg.size() + 1);
        std::size_t i = 0;
        for (const double angle_deg : turning_deg) {
            // 0.005 degrees: the tables give hundredths.
            CHECK(std::abs(deg_from_rad(lights[i].from_rad) - angle_deg) < 0.005);
            CHECK(lights[i].from_rad == lights[i + 1].to_rad);
            CHECK(lights[i].white == lights[i].units - static_cast<int>(i));
            ++i;
        }
        CHECK(lights.front().to_rad == 0.0);
        CHECK(lights.back().from_rad == 0.0);
    };
    check("larkmoor", {3.50, 3.17, 2.83, 2.50});
    const std::string page = handout_html(base_of(), School{});
    CHECK(has(page, "<td>2 white 2 red</td><td>2.83\u00b0 to 3.17\u00b0</td><td>on the path</td>"));
    CHECK(has(page, "<td>4 red</td><td>below 2.50\u00b0</td><td>low</td>"));
}

TEST_CASE("handout: it says the school's own criteria and convention, and where its numbers come from") {
    School school;
    school.criteria.decision.slow_mps = mps_from_kt(3.0);
    school.criteria.convention = Convention::pitch_for_path;
    school.flap_schedule[0] = {m_from_ft(700.0), 1};
    school.flap_step_count = 1;
    const std::string page = handout_html(base_of(), school);
    for (const std::string& line : criteria_lines(school.criteria)) CHECK(has(page, html_text(line)));
    CHECK(
        has(page, "<td>high and slow</td><td>height for speed</td><td><b>nose down, for the path</b></td>"));
    CHECK(has(page,
              "<td>low and slow</td><td>too little energy</td><td><b>more power, for the speed</b></td>"));
    CHECK(has(page, "by 700 ft."));
    CHECK(has(page, "common practice, no source"));
    CHECK(has(page, "Not an approved training device"));
    CHECK_FALSE(has(page, "nan"));
    // Sources are numbered as they are read: each first mark is one more than those before it.
    int most = 0;
    for (const std::string& marks : all_between(page, "<sup>[", "]</sup>")) {
        std::stringstream numbers(marks);
        for (std::string one; std::getline(numbers, one, ',');) {
            CHECK(std::stoi(one) <= most + 1);
            most = std::max(most, std::stoi(one));
        }
    }
    CHECK(most >= 10);
}

TEST_CASE("handout: it can be made for every aircraft at every airfield") {
    for (const Aircraft& aircraft : shipped().aircraft)
        for (const Runway& runway : shipped().runways) {
            CAPTURE(aircraft.id);
            CAPTURE(runway.id);
            const Scenario base = base_of(aircraft.id.c_str(), runway.id.c_str());
            if (!base.start_trim.flyable) continue;
            const std::string page = handout_html(base, School{});
            CHECK(has(page, html_text(aircraft.name)));
            CHECK_FALSE(has(page, "nan"));
        }
}

TEST_CASE("handout and lesson plan: a wind that the engine cannot hold is told, not given as a figure") {
    Scenario base = base_of();
    const HandoutNumbers usual = handout_numbers(base, School{});
    const double calm = usual.winds.front().power, windy = usual.winds.back().power;
    REQUIRE(calm < windy);
    // Full power is now enough in calm air and too little in 20 kt.
    base.aircraft.engine.rated_power_w *= 0.5 * (calm + windy);
    const HandoutNumbers weak = handout_numbers(base, School{});
    CHECK(weak.winds.front().flyable);
    CHECK_FALSE(weak.winds.back().flyable);
    CHECK(has(handout_html(base, School{}), "<td>20</td><td>cannot be flown steadily</td>"));
    CHECK(has(lesson_plan_html(base, School{}), "Read the two rows of the handout."));
    base.aircraft.engine.rated_power_w *= 0.5;
    CHECK_FALSE(handout_numbers(base, School{}).winds.front().flyable);
    CHECK(has(handout_html(base, School{}), "<td>0</td><td>cannot be flown steadily</td>"));
    CHECK(has(lesson_plan_html(base, School{}), "Read the two rows of the handout."));
}

TEST_CASE("handout: pitch has a plus, a true minus, or no sign where it rounds to nothing") {
    Scenario base = base_of();
    bool up = false, down = false, level = false;
    for (double kt = 55.0; kt < 85.0; kt += 0.25) {
        base.lesson.target_cas_mps = mps_from_kt(kt);
        const HandoutWind calm = handout_numbers(base, School{}).winds.front();
        if (!calm.flyable) continue;
        const double pitch_deg = deg_from_rad(calm.pitch_rad);
        // One of each is enough; 0.05 degrees: what the page rounds to.
        bool& seen = std::abs(pitch_deg) < 0.049 ? level : pitch_deg > 0.051 ? up : down;
        if (seen || (pitch_deg < 0.0 && pitch_deg > -0.051 && &seen == &down)) continue;
        seen = true;
        const std::string page = handout_html(base, School{});
        const std::string row = all_between(page, "<tr><td>0</td>", "</tr>").front();
        const std::string sign = &seen == &level ? "<td>0.0\u00b0" : &seen == &up ? "<td>+" : "<td>\u2212";
        CHECK_MESSAGE(has(row, sign), row);
    }
    CHECK(up);
    CHECK(down);
    CHECK(level);
}

TEST_CASE("handout: of the school's flap only what the aircraft has is given") {
    School school;
    school.flap_schedule[0] = {m_from_ft(900.0), 1};
    school.flap_schedule[1] = {m_from_ft(600.0), 2};
    school.flap_schedule[2] = {m_from_ft(400.0), 3};
    school.flap_step_count = 3;
    const Scenario base = base_of();
    REQUIRE(base.aircraft.flap_count == 3);  // up, half, landing
    const std::string page = handout_html(base, school);
    CHECK(has(page, "Flap: half by 900 ft, landing by 600 ft."));
    CHECK_FALSE(has(page, "400 ft"));
}

TEST_CASE("handout: a source that is marked again keeps its number") {
    SourceMarks marks;
    CHECK(marks.mark({"sink_formula", "path_heights"}) == "<sup>[1, 2]</sup>");
    CHECK(marks.mark({"path_heights"}) == "<sup>[2]</sup>");
    CHECK_FALSE(has(marks.list(), "<b>3</b>"));
}

TEST_CASE("handout and lesson plan: a name with markup stays a name, and nothing runs or loads") {
    School school;
    school.name = "<script>alert(1)</script> & \"Co\"";
    for (const std::string& page : {handout_html(base_of(), school), lesson_plan_html(base_of(), school)}) {
        CHECK(has(page, html_text(school.name)));
        CHECK_FALSE(has(page, "<script"));
        CHECK_FALSE(has(page, "http"));
        CHECK_FALSE(has(page, "<img"));
        CHECK_FALSE(has(page, "<link"));
    }
}

TEST_CASE("lesson plan: every button and key that it names stands on the class's screens") {
    const std::string page = lesson_plan_html(base_of(), School{});
    const std::string screens =
        source_text("ui/screens/class_room.cpp") + source_text("ui/screens/welcome.cpp");
    REQUIRE(!screens.empty());
    const std::vector<std::string> buttons = all_between(page, "<b class=\"press\">", "</b>");
    CHECK(buttons.size() >= 15);
    for (const std::string& button : buttons) CHECK_MESSAGE(has(screens, "\"" + button + "\""), button);
    for (const std::string switched : {"Slope lights", "Path from the side", "Calm air beside it"}) {
        CHECK(has(page, switched));
        CHECK(has(screens, "\"" + switched + "\""));
    }
    const std::string panels =
        source_text("ui/screens/ask_panel.cpp") + source_text("ui/screens/boards_panel.cpp");
    for (const std::string named : {"All sets", "Take away (CSV)", "Stills", "Reveal"}) {
        CHECK(has(page, "<i>" + named + "</i>"));
        CHECK_MESSAGE(has(panels, "\"" + named + "\""), named);
    }
    const std::string keys = source_text("ui/input.cpp");
    const auto heard = [&](const char* name) { return has(keys, std::string("Key::") + name); };
    for (const std::string& key : all_between(page, "<kbd>", "</kbd>")) {
        if (key == "PageDown") CHECK(heard("page_down, DoWithQuestions"));
        else if (key == "PageUp") CHECK(heard("page_up, DoWithQuestions"));
        else if (key == "B") CHECK(heard("b, ShowToClass"));
        else if (key == "P") CHECK(heard("p, FreezeOrRun"));
        else if (key == "Z") CHECK(heard("z, PutPanelAway"));
        else if (key == "G") CHECK(heard("g, GoAround"));
        else if (key == "Bksp") CHECK(heard("backspace, CloseClassRoom"));
        else CHECK_MESSAGE(false, key);
    }
}

TEST_CASE(
    "lesson plan: its twenty minutes follow on each other without a gap, with room for names and initials") {
    const std::string page = lesson_plan_html(base_of(), School{});
    int at = 0;
    for (const std::string& row : all_between(page, "<tr><td>", "</td>")) {
        const std::size_t dash = row.find("\u2013");
        REQUIRE(dash != std::string::npos);
        CHECK(std::stoi(row.substr(0, dash)) == at);
        at = std::stoi(row.substr(dash + 3));
    }
    CHECK(at == 20);
    for (const char* room : {"Instructor", "Class", "Date", "Initials ____", "Notes"}) CHECK(has(page, room));
    for (const char* set :
         {"energy states", "read the lights", "where would we hit", "stable or not", "what do you do first"})
        CHECK(has(page, std::string("<i>") + set + "</i>"));
    CHECK(has(page, "nothing here says that anyone is ready to land"));
}
