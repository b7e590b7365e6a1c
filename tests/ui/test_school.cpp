// The school's settings in the program: kept, chosen, handed over, taken in, and what they change.
#include <doctest/doctest.h>

#include <string>

#include "data/school_file.h"
#include "tests/check.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/logbook_events.h"
#include "ui/make_view.h"
#include "ui/school_desk.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

// The tourer as a school's own aeroplane: another id, name and approach speed.
std::string own_aircraft() {
    for (const EmbeddedFile& file : embedded_files()) {
        std::string text(file.bytes);
        const std::size_t id = text.find("\"id\": \"tourer\"");
        if (id == std::string::npos) continue;
        text.replace(id, 14, "\"id\": \"school_single\"");
        return text;
    }
    return {};
}

// Lets the user choose a file that holds this, and takes all of it in.
void take_in(App& app, TestHost& host, const std::string& text) {
    host.store.import_lines = {text};
    apply(app, TakeInSchool{}, host);
    for (int i = 0; i < 10; ++i) take_logbook_events(app, host);
}

bool has_aircraft(const App& app, std::string_view id) { return find_aircraft(app.catalog, id) != nullptr; }

}  // namespace

TEST_CASE("school: what is chosen on its sheet is kept and can be handed over as its file") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenScreenAndHelp{}, host);
    apply(app, OpenSchool{}, host);
    CHECK(app.screen == Screen::school);
    const SchoolView sheet = make_view(app).school;
    REQUIRE(sheet.rows.size() == 5);
    for (int row = 0; row < 5; ++row) {
        const int last = static_cast<int>(sheet.rows[static_cast<std::size_t>(row)].choices.size()) - 1;
        apply(app, ChooseForSchool{row, last == 2 ? 1 : last}, host);
    }
    CHECK(app.settings.school.criteria.convention == Convention::pitch_for_path);
    CHECK(app.settings.school.gust_share == 0.5);
    CHECK(app.settings.school.runway_unit == RunwayUnit::feet);
    CHECK(app.settings.school.pressure_unit == PressureUnit::inches_of_mercury);
    CHECK(app.settings.school.stick_hand == StickHand::left);

    App again = make_app(shipped(), host);
    CHECK(school_text(again.settings.school) == school_text(app.settings.school));
    apply(app, HandOverSchool{}, host);
    CHECK(host.file == school_text(app.settings.school));
    CHECK(make_view(app).mirror.screen.find("Runways in: feet") != std::string::npos);
    apply(app, CloseSchool{}, host);
    CHECK(app.screen == Screen::screen_and_help);
}

TEST_CASE("school: a file is taken in with its aircraft, kept, and replaced by the next") {
    TestHost host;
    App app = make_app(shipped(), host);
    take_in(
        app, host,
        R"({"kind": "school", "name": "North field", "flap_schedule": [{"by_ft": 800, "setting": 2}], "aircraft": )" +
            own_aircraft() + "}");
    CHECK(app.school_news.front().starts_with("Taken in"));
    CHECK(app.settings.school.name == "North field");
    REQUIRE(has_aircraft(app, "school_single"));
    CHECK(has_aircraft(app, "tourer"));
    app.settings.where_and_when.aircraft_id = "school_single";
    apply(app, OpenBriefing{}, host);
    apply(app, AnswerStickSense{true}, host);
    const BriefingView briefing = make_view(app).briefing;
    CHECK(briefing.reminders.back() == "Flap: landing by 800 ft.");

    App again = make_app(shipped(), host);
    CHECK(has_aircraft(again, "school_single"));
    CHECK(again.settings.where_and_when.aircraft_id == "school_single");

    take_in(again, host, R"({"kind": "school", "name": "South field"})");
    CHECK_FALSE(has_aircraft(again, "school_single"));
    CHECK(again.settings.where_and_when.aircraft_id == "tourer");
    CHECK(chosen_scenario(again).aircraft.id == "tourer");
}

TEST_CASE("school: a bad file changes nothing, and each mistake is told") {
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings.school.name = "North field";
    const std::string before = school_text(app.settings.school);
    take_in(app, host, R"({"kind": "school", "name": "South field", "gust_percent": 140, "colour": 1})");
    CHECK(school_text(app.settings.school) == before);
    REQUIRE(app.school_news.size() == 3);
    CHECK(app.school_news[0] == "The file was not taken in; everything is as it was.");
    CHECK(app.school_news[1].ends_with(":1: /gust_percent is 140; allowed: 0 to 100"));
    // One that would take the place of an aeroplane that comes with the program.
    std::string same = own_aircraft();
    same.replace(same.find("school_single"), 13, "tourer");
    take_in(app, host, R"({"kind": "school", "aircraft": )" + same + "}");
    CHECK(school_text(app.settings.school) == before);
    CHECK(app.school_news.back().find("comes with the program") != std::string::npos);
    // Given up before a file was chosen, the logbook's own import is not taken for it.
    app.school_import.emplace();
    apply(app, ImportFile{}, host);
    CHECK_FALSE(app.school_import.has_value());
}

TEST_CASE("school: settings kept before there were schools keep their limits") {
    const std::string old =
        R"({"kind": "settings", "stick_sense": "ask", "criteria": {"kind": "criteria", "decision_s": 5}})";
    const KeptSettings read = parse_settings(old);
    REQUIRE(read.problems.empty());
    CHECK(read.settings.school.criteria.decision_s == 5.0);
    const KeptSettings bad = parse_settings(
        R"({"kind": "settings", "stick_sense": "ask", "school": {"kind": "school", "name": "North field", "runway_unit": "yd"}})");
    REQUIRE(bad.problems.size() == 1);
    CHECK(bad.problems[0].path == "/school/runway_unit");
    CHECK(bad.settings.school.name == "North field");
}

// Motion of one hand: every key means on the left what its opposite means on the right.
TEST_CASE("school: with the stick under the left hand the keys change places, and the hints say so") {
    Settings left;
    left.up_key_pushes = true;
    left.school.stick_hand = StickHand::left;
    const auto held = [&](Key key, const Settings& settings) {
        PilotHands hands;
        hands.at.throttle = 0.5;
        hands.at.flap = 1;
        RawInput raw;
        raw.wall_s = 0.1;
        raw.held[static_cast<std::size_t>(key)] = raw.pressed[static_cast<std::size_t>(key)] = true;
        read_input(hands, raw, settings, 3);
        return hands.at;
    };
    CHECK(held(Key::e, left).stick == held(Key::up, Settings{true}).stick);
    CHECK(held(Key::e, left).stick < 0.0);
    CHECK(held(Key::d, left).stick > 0.0);
    CHECK(held(Key::up, left).throttle > 0.5);
    CHECK(held(Key::up, left).stick == 0.0);
    CHECK(held(Key::j, left).flap == 2);
    CHECK(held(Key::u, left).flap == 0);
    CHECK(held(Key::r, left).trim > 0.0);
    CHECK(held(Key::f, left).trim < 0.0);
    CHECK(held(Key::g, left).throttle == 0.5);
    CHECK(key_hints(left).front().key == "E D");
    CHECK(key_hints({}).front().key == "\u2191 \u2193");
}

TEST_CASE("school: runways in feet, and where they are chosen") {
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings.school.runway_unit = RunwayUnit::feet;
    apply(app, OpenWhereAndWhen{}, host);
    bool feet = false;
    // Larkmoor is 1500 m by 30 m: 4921 by 98 ft (1 ft is 0.3048 m).
    for (const auto& airfield : make_view(app).where_and_when.airfields)
        feet |= airfield.about.starts_with("4921 \u00d7 98 ft, ");
    CHECK(feet);
}

// Standard pressure is 1013.25 hPa or 29.92 inHg (ICAO Doc 7488); larkmoor lies as its file says.
TEST_CASE("school: the altimeter's setting is briefed in the school's unit") {
    CHECK(pressure_words(101325.0, PressureUnit::hectopascals) == "1013 hPa");
    CHECK(pressure_words(101399.0, PressureUnit::hectopascals) == "1013 hPa");
    CHECK(pressure_words(101325.0, PressureUnit::inches_of_mercury) == "29.92 inHg");
    TestHost host;
    App app = make_app(shipped(), host);
    app.settings.school.pressure_unit = PressureUnit::inches_of_mercury;
    app.settings.up_key_pushes = true;
    apply(app, OpenBriefing{}, host);
    bool briefed = false;
    for (const std::string& line : make_view(app).briefing.reminders)
        briefed |=
            line.starts_with("The altimeter is set to ") && line.find(" inHg and reads") != std::string::npos;
    CHECK(briefed);
}
