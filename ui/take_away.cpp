#include "ui/take_away.h"

#include "data/recording_file.h"
#include "data/review_json.h"
#include "debrief/flight_tables.h"
#include "debrief/sheet.h"
#include "review/track_csv.h"

namespace slopewise {
namespace {

constexpr const char* csv = "text/csv";
constexpr const char* json = "application/json";

struct Kind {
    const char* name;
    const char* about;
    const char* what;  // of the file's name
    const char* media_type;
    std::string (*text)(const FlightSession&);
};

template <Table (*table)(const ReviewedFlight&)>
std::string table_text(const FlightSession& session) {
    return csv_text(table(*session.reviewed));
}

constexpr Kind kinds[] = {
    {"Sheet to print", "one page of A4 or Letter; open it and print it", "sheet.html", "text/html",
     [](const FlightSession& s) {
         return sheet_html(*s.reviewed, sheet_facts(s.recording.circumstances, *s.reviewed));
     }},
    {"Figures (JSON)", "every table below in one file, with the diagnosis", "figures.json", json,
     [](const FlightSession& s) { return review_json(*s.reviewed); }},
    {"Recording (JSON)", "the controls, exactly: it can be flown again", "recording.json", json,
     [](const FlightSession& s) { return recording_text(s.recording); }},
    {"Gates (CSV)", "a row for each gate", "gates.csv", csv, table_text<gate_table>},
    {"Whole run (CSV)", "one row of all figures", "run.csv", csv, table_text<run_table>},
    {"Bands (CSV)", "bias and scatter by distance", "bands.csv", csv, table_text<band_table>},
    {"Answers (CSV)", "a row for each path error", "answers.csv", csv, table_text<answer_table>},
    {"Set-up (CSV)", "what was flown, and held to what", "setup.csv", csv, table_text<setup_table>},
    {"Track (CSV)", "ten rows a second", "track.csv", csv,
     [](const FlightSession& s) { return track_csv(s.track); }},
    {"What the columns mean (CSV)", "every column of every table", "dictionary.csv", csv,
     [](const FlightSession& s) { return flight_dictionary(*s.reviewed); }}};

}  // namespace

TakeAwayView take_away_view(const DebriefState& state) {
    TakeAwayView view;
    for (const Kind& kind : kinds) view.offers.push_back({kind.name, kind.about});
    if (!state.handed_over.empty()) view.handed_over = "Handed over: " + state.handed_over;
    return view;
}

File file_to_take(const FlightSession& session, int index) {
    const Kind& kind = kinds[static_cast<std::size_t>(index)];
    return {file_name(session.scenario.lesson.id, session.recording.circumstances.started_unix_s, kind.what),
            kind.media_type, kind.text(session)};
}

std::string file_name(std::string_view lesson_id, std::int64_t started_unix_s, std::string_view what) {
    constexpr std::size_t most = 40;
    std::string name = "slopewise-";
    for (const char c : lesson_id.substr(0, most)) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        name += plain || c == '-' ? c : '_';
    }
    const std::string date = date_text(started_unix_s);
    if (!date.empty()) name += "-" + date;
    return name + "-" + std::string(what);
}

}  // namespace slopewise
