#include "ui/school_desk.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "base/pressure_units.h"
#include "data/school_file.h"
#include "ui/format.h"

namespace slopewise {
namespace {

// The rows of the sheet: their words, and how a choice is read from and written to a school.
struct Row {
    const char* label;
    std::vector<std::string> choices;
    int (*chosen)(const School&);
    void (*choose)(School&, int);
};

constexpr std::array<double, 3> gust_shares{0.0, 0.5, 1.0};

int gust_choice(const School& school) {
    const auto* const found = std::ranges::find(gust_shares, school.gust_share);
    return found == gust_shares.end() ? -1 : static_cast<int>(found - gust_shares.begin());
}

const std::vector<Row>& rows() {
    static const std::vector<Row> all{
        {"The path is corrected with",
         {"power", "pitch", "either"},
         [](const School& s) { return static_cast<int>(s.criteria.convention); },
         [](School& s, int choice) { s.criteria.convention = static_cast<Convention>(choice); }},
        {"Added for gusts, of the gust factor",
         {"nothing", "half", "all"},
         gust_choice,
         [](School& s, int choice) { s.gust_share = gust_shares[static_cast<std::size_t>(choice)]; }},
        {"Runways in",
         {"metres", "feet"},
         [](const School& s) { return static_cast<int>(s.runway_unit); },
         [](School& s, int choice) { s.runway_unit = static_cast<RunwayUnit>(choice); }},
        {"Pressure in",
         {"hPa", "inHg"},
         [](const School& s) { return static_cast<int>(s.pressure_unit); },
         [](School& s, int choice) { s.pressure_unit = static_cast<PressureUnit>(choice); }},
        {"The stick keys lie under the",
         {"right hand", "left hand"},
         [](const School& s) { return static_cast<int>(s.stick_hand); },
         [](School& s, int choice) { s.stick_hand = static_cast<StickHand>(choice); }}};
    return all;
}

std::vector<std::string> fact_words(const App& app) {
    const School& school = app.settings.school;
    std::vector<std::string> facts{"Name: " +
                                   (school.name.empty() ? std::string("none given") : school.name)};
    facts.push_back(school.aircraft ? "Own aircraft: " + school.aircraft->aircraft.name +
                                          ". Choose it under \"Where and when\"."
                                    : "Own aircraft: none; its file may hold one.");
    const Aircraft* flown = find_aircraft(app.catalog, app.settings.where_and_when.aircraft_id);
    const std::string flap = flown != nullptr ? flap_schedule_words(school, *flown) : "";
    facts.push_back(flap.empty() ? "Flap: landing flap from the start; its file may say by what heights."
                                 : flap);
    return facts;
}

void tell(App& app, std::vector<std::string> news) { app.school_news = std::move(news); }

std::vector<std::string> refusal_words(const std::vector<Problem>& problems) {
    std::vector<std::string> news{"The file was not taken in; everything is as it was."};
    for (const Problem& problem : problems) news.push_back(to_text(problem));
    return news;
}

void take_in(App& app, std::string_view text, const std::string& file, Host& host) {
    Result<School> read = read_school(text, file);
    if (!read.ok()) return tell(app, refusal_words(read.problems));
    School before = std::exchange(app.settings.school, std::move(*read.value));
    if (const std::vector<Problem> problems = put_school_aircraft(app, before); !problems.empty()) {
        app.settings.school = std::move(before);
        return tell(app, refusal_words(problems));
    }
    WhereAndWhen& there = app.settings.where_and_when;
    if (find_aircraft(app.catalog, there.aircraft_id) == nullptr)
        there.aircraft_id = WhereAndWhen{}.aircraft_id;
    tell(app, {"Taken in: " + file + "."});
    ++app.edition;
    host.save(settings_key, settings_text(app.settings));
}

}  // namespace

SchoolView school_view(const App& app) {
    SchoolView view;
    for (const Row& row : rows())
        view.rows.push_back({row.label, row.choices, row.chosen(app.settings.school)});
    view.facts = fact_words(app);
    view.news = app.school_news;
    return view;
}

void choose_for_school(School& school, int row, int choice) {
    const Row& chosen = rows()[static_cast<std::size_t>(row)];
    chosen.choose(school, choice);
}

std::string flap_schedule_words(const School& school, const Aircraft& aircraft) {
    std::string words;
    for (std::size_t i = 0; i < school.flap_step_count; ++i) {
        const ScheduledFlap& step = school.flap_schedule[i];
        if (step.setting >= aircraft.flap_count) continue;
        words += (words.empty() ? "Flap: " : ", ") +
                 aircraft.flaps[static_cast<std::size_t>(step.setting)].name + " by " +
                 number_words(ft_from_m(step.by_height_m)) + " ft";
    }
    return words.empty() ? words : words + ".";
}

std::string pressure_words(double pressure_pa, PressureUnit unit) {
    if (unit == PressureUnit::inches_of_mercury) return number_words(inhg_from_pa(pressure_pa), 2) + " inHg";
    return number_words(std::floor(hpa_from_pa(pressure_pa))) + " hPa";
}

void begin_school_import(App& app, Host& host) {
    if (app.logbook.import && app.logbook.import->running) return;
    app.school_import.emplace();
    tell(app, {});
    host.logbook().choose_import();
}

bool take_school_event(App& app, const StoreEvent& event, Host& host) {
    using Kind = StoreEvent::Kind;
    if (!app.school_import) return false;
    switch (event.kind) {
    case Kind::import_began: app.school_file = event.words; break;
    case Kind::import_line:
        for (const std::string& line : event.texts) *app.school_import += line + "\n";
        host.logbook().next_import_line();
        break;
    case Kind::import_failed:
        tell(app, {app.school_file + " " + event.words + "."});
        app.school_import.reset();
        break;
    case Kind::import_ended: {
        const std::string text = std::move(*app.school_import);
        app.school_import.reset();
        take_in(app, text, app.school_file, host);
        break;
    }
    default: return false;
    }
    return true;
}

std::vector<Problem> put_school_aircraft(App& app, const School& before) {
    std::vector<Aircraft>& all = app.catalog.aircraft;
    const std::optional<SchoolAircraft>& own = app.settings.school.aircraft;
    const bool had = before.aircraft.has_value();
    if (own && !(had && before.aircraft->aircraft.id == own->aircraft.id) &&
        find_aircraft(app.catalog, own->aircraft.id) != nullptr)
        return {{app.school_file, 0, "/aircraft/id", "is that of an aircraft that comes with the program",
                 "an id of the school's own"}};
    if (had) std::erase_if(all, [&](const Aircraft& one) { return one.id == before.aircraft->aircraft.id; });
    if (own) all.push_back(own->aircraft);
    return {};
}

}  // namespace slopewise
