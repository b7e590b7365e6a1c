// Where the numbers come from: asked for on a sheet and left again, and what it then says.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string>

#include "sources/sources.h"
#include "tests/engine/told_figures.h"
#include "tests/ui/test_host.h"
#include "ui/app.h"
#include "ui/criteria_fields.h"
#include "ui/display.h"
#include "ui/make_view.h"
#include "ui/sky_view.h"
#include "ui/sources_view.h"
#include "ui/views.h"

using namespace slopewise;
using namespace slopewise::test;

namespace {

constexpr std::array<Screen, 7> sheets{Screen::welcome,        Screen::choices,  Screen::briefing,
                                       Screen::summary,        Screen::criteria, Screen::progress,
                                       Screen::screen_and_help};

// What a key does on a screen.
void press_key(App& app, Key key, Host& host) {
    RawInput raw;
    raw.pressed[static_cast<std::size_t>(key)] = true;
    for (const Action& action : read_shortcuts(raw, app.screen)) apply(app, action, host);
}

bool entry_tells(std::string_view id, double figure) {
    const std::vector<ToldFigure> told = told_figures(find_taught_number(id)->says);
    return std::ranges::any_of(
        told, [&](const ToldFigure& one) { return std::abs(one.value - figure) <= one.rounding * 1.001; });
}

}  // namespace

TEST_CASE("sources: Q on every sheet with numbers opens them, and Escape or Q leads back there") {
    TestHost host;
    App app = make_app(shipped(), host);
    for (const Screen sheet : sheets) {
        for (const Key back : {Key::escape, Key::q}) {
            CAPTURE(static_cast<int>(sheet));
            app.screen = sheet;
            press_key(app, Key::q, host);
            CHECK(app.screen == Screen::sources);
            press_key(app, back, host);
            CHECK(app.screen == sheet);
        }
    }
}

TEST_CASE("sources: in flight and on sheets without numbers Q opens nothing") {
    TestHost host;
    App app = make_app(shipped(), host);
    for (const Screen sheet : {Screen::stick_sense, Screen::where_and_when, Screen::estimate,
                               Screen::take_away, Screen::logbook, Screen::replay}) {
        app.screen = sheet;
        press_key(app, Key::q, host);
        CHECK(app.screen == sheet);
    }
    app.screen = Screen::choices;
    apply(app, StartFlight{}, host);
    apply(app, OpenSources{}, host);
    CHECK(app.screen == Screen::flight);
}

TEST_CASE("sources: a sheet's own topics come first, and all the others after them") {
    for (const auto& [sheet, first] :
         {std::pair{Screen::briefing, "Path and picture"}, std::pair{Screen::summary, "Gates and limits"},
          std::pair{Screen::progress, "Learning"}}) {
        const SourcesView view = sources_view(sheet, 0, shipped());
        CHECK(view.groups.front().title == first);
        REQUIRE(view.groups.size() == source_topic_names.size() + 2);  // and the lessons and the drills
        std::size_t entries = 0;
        for (std::size_t i = 0; i < source_topic_names.size(); ++i) entries += view.groups[i].entries.size();
        CHECK(entries == taught_numbers().size());
    }
}

TEST_CASE("sources: a topic that is chosen stands alone, until another sheet asks anew") {
    TestHost host;
    App app = make_app(shipped(), host);
    press_key(app, Key::q, host);
    const SourcesView all = make_view(app).sources;
    const int lessons = static_cast<int>(all.topics.size()) - 1;
    for (int topic = 1; topic < lessons; ++topic) {
        apply(app, ChooseSourceTopic{topic}, host);
        const SourcesView one = make_view(app).sources;
        REQUIRE(one.groups.size() == 1);
        CHECK(one.groups[0].title == source_topic_names[static_cast<std::size_t>(topic - 1)]);
        CHECK(one.topic == topic);
    }
    apply(app, ChooseSourceTopic{lessons}, host);
    const SourcesView taught = make_view(app).sources;
    REQUIRE(taught.groups.size() == 2);
    CHECK(taught.groups[0].entries.size() > 50);  // two and more for each lesson of the syllabus
    CHECK(taught.groups[1].entries.size() == shipped().drills.size());
    press_key(app, Key::escape, host);
    press_key(app, Key::q, host);
    CHECK(make_view(app).sources.topic == 0);
}

TEST_CASE("sources: the mirror reads every entry with its document and how sure it is") {
    TestHost host;
    App app = make_app(shipped(), host);
    press_key(app, Key::q, host);
    const std::string text = make_view(app).mirror.screen;
    CHECK(text.find("Where the numbers come from. ") != std::string::npos);
    for (const TaughtNumber& entry : taught_numbers()) {
        CAPTURE(std::string(entry.id));
        const std::size_t at = text.find(entry.says);
        REQUIRE(at != std::string::npos);
        const std::string line = text.substr(at, text.find('\n', at) - at);
        CHECK(line.find(entry.document) != std::string::npos);
        CHECK(line.ends_with(std::string(words_of(entry.sureness)) + ")"));
    }
}

TEST_CASE("sources: screen and help tells the key") {
    TestHost host;
    App app = make_app(shipped(), host);
    apply(app, OpenScreenAndHelp{}, host);
    const std::vector<KeyHint> keys = make_view(app).screen_and_help.keys;
    CHECK(std::ranges::count(keys, "Q", &KeyHint::key) == 1);
}

TEST_CASE("sources: every limit that the criteria sheet shows is told in an entry") {
    // By the label of its field; the gate's own limits stand in more than one entry.
    const std::vector<std::pair<std::string, std::vector<std::string_view>>> entries{
        {"Path within", {"limit_path"}},
        {"or within", {"limit_path"}},
        {"Slow by at most", {"speed_limits", "speed_near"}},
        {"Fast by at most", {"speed_limits", "speed_near"}},
        {"Sink off by", {"limit_sink"}},
        {"Sink at most", {"limit_most_sink", "limit_most_sink_near"}},
        {"Time to decide", {"decision_time"}},
        {"Pitch range before", {"limit_settled"}},
        {"Lever step before", {"limit_settled"}},
        {"Power over idle", {"limit_power"}},
        {"An error is over", {"answer_band"}},
        {"and over", {"answer_band"}}};
    for (const CriteriaView::Group& group : criteria_view(Criteria{}).groups) {
        for (const CriteriaView::Field& field : group.fields) {
            if (field.kind != CriteriaView::Kind::number) continue;
            CAPTURE(group.title + ": " + field.label);
            const auto found =
                std::ranges::find(entries, field.label, [](const auto& one) { return one.first; });
            REQUIRE(found != entries.end());
            CHECK(std::ranges::any_of(found->second,
                                      [&](std::string_view id) { return entry_tells(id, field.number); }));
        }
    }
}

TEST_CASE("sources: what they tell of the view is what the view is") {
    CHECK(entry_tells("view_width", horizontal_fov_deg));
    CHECK(entry_tells("true_size", horizontal_fov_deg / 2.0));
    const Catalog catalog = shipped();
    Scenario scenario = scenario_of(catalog, *base_lesson(catalog));
    const std::vector<ToldFigure> offered = told_figures(find_taught_number("visibilities")->says);
    const std::vector<std::string> shown = where_and_when_view(catalog, {}, scenario).visibilities;
    REQUIRE(offered.size() == shown.size());
    for (std::size_t i = 0; i < shown.size(); ++i)
        CHECK(told_figures(shown[i]).front().value == offered[i].value);

    // Lit below the visibility that is told, and not at it.
    const double lit_below_m = 1000.0 * told_figures(find_taught_number("runway_lights_lit")->says)[0].value;
    scenario.lesson.outlook.visibility_m = lit_below_m;
    CHECK(sky_view(scenario, 0.0).lights_setting == 0.0);
    scenario.lesson.outlook.visibility_m = lit_below_m - 1.0;
    CHECK(sky_view(scenario, 0.0).lights_setting > 0.0);
}
